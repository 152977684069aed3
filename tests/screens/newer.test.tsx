import { cleanup, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { garmentWords } from '#words/garment/garment-words.ts';
import { newerWords } from '#words/phone/newer-words.ts';
import { notKept, part } from '../../src/app/garment/deeds.ts';
import { Fetched } from '../../src/screens/garments/fetched.tsx';
import { hostHas, NEWER_PAGE } from '../controls/host.ts';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  document.head.innerHTML = '';
});

const NO_CONNECTION = new TypeError('no connection');
const broken = () => Promise.reject(NO_CONNECTION);

test('a part of the garments gone from a host with a newer build is said to be that', async () => {
  hostHas(NEWER_PAGE);
  render(<Fetched load={broken} give={{}} />);
  await screen.findByText(newerWords.screen);
  expect(screen.queryByText(garmentWords.notFetched)).toBeNull();
});

test('one that can’t be fetched without a connection can be tried again', async () => {
  hostHas(NO_CONNECTION);
  render(<Fetched load={broken} give={{}} />);
  await waitFor(() => expect(fetch).toHaveBeenCalledOnce());
  expect(screen.getByRole('alert').textContent).toBe(garmentWords.notFetched);
  expect(screen.getByRole('button', { name: garmentWords.again })).toBeTruthy();
});

test.each([
  ['a newer build', NEWER_PAGE, newerWords.deed],
  ['no answer', NO_CONNECTION, garmentWords.notFetched],
])('a deed whose part can’t be fetched, from a host with %s', async (_, page, said) => {
  hostHas(page);
  const error = await part(broken()).catch((thrown: unknown) => thrown);
  expect(await notKept(error)).toBe(said);
});
