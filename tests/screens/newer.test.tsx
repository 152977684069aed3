import { cleanup, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { garmentEndWords } from '#words/garment-end-words.ts';
import { garmentWords } from '#words/garment-words.ts';
import { loadNewer, newerWords } from '#words/newer-words.ts';
import { notKept, part } from '../../src/app/garment/deeds.ts';
import { withKept } from '../../src/garment/changes.ts';
import { type Kept, newGarment } from '../../src/garment/garment.ts';
import { Fetched } from '../../src/screens/garments/fetched.tsx';
import { FollowEnd } from '../../src/screens/garments/follow-end.tsx';
import { benchOf } from '../controls/helpers.ts';
import { hostHas, NEWER_PAGE } from '../controls/host.ts';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  document.head.innerHTML = '';
});

const NO_CONNECTION = new TypeError('no connection');
const broken = () => Promise.reject(NO_CONNECTION);

const hooks: Kept = {
  id: 'hooks',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  draft: { u: 'cm' },
  runs: [],
};

/** The end of following, where the one thing to follow gave nothing. */
function showEnd(why: 'missing' | 'unknown') {
  const garment = withKept(newGarment('coat', 'Coat', 1), hooks, 1);
  const none = () => undefined;
  render(
    <FollowEnd
      garment={garment}
      stored={garment}
      stops={[]}
      runs={[]}
      blocked={[{ kept: hooks, why }]}
      bench={benchOf()}
      said={undefined}
      deeds={{ leave: none, keepNow: undefined, openKept: none }}
      onFirstLeft={none}
      onBack={none}
    />,
  );
}

test('at the end of following a calculation gone from a host with a newer build is said to be that', async () => {
  hostHas(NEWER_PAGE);
  showEnd('missing');
  await screen.findByText(`Hooks: ${newerWords.calculation}`);
  expect(screen.getByRole('button', { name: loadNewer })).toBeTruthy();
});

test('without a connection it is to be connected once', async () => {
  hostHas(NO_CONNECTION);
  showEnd('missing');
  await waitFor(() => expect(fetch).toHaveBeenCalledOnce());
  expect(screen.getByText(garmentEndWords.missing('Hooks'))).toBeTruthy();
  expect(screen.queryByRole('button', { name: loadNewer })).toBeNull();
});

test('one that this version never had asks no host', async () => {
  hostHas(NEWER_PAGE);
  showEnd('unknown');
  expect(screen.getByText(garmentEndWords.unknown('Hooks'))).toBeTruthy();
  expect(fetch).not.toHaveBeenCalled();
});

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
