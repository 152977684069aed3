import {
  act,
  cleanup,
  fireEvent,
  render,
  renderHook,
  screen,
  waitFor,
} from '@testing-library/preact';
import { render as paint } from 'preact';
import { afterEach, expect, test, vi } from 'vitest';
import { appWords } from '#words/phone/app-words.ts';
import { newerWords } from '#words/phone/newer-words.ts';
import { Waiting } from '../../src/app/start/waiting.tsx';
import { loadAhead, useLoaded } from '../../src/controls/use-loaded.ts';
import { hostHas, NEWER_PAGE } from './host.ts';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  document.head.innerHTML = '';
});

const NO_CONNECTION = new TypeError('no connection');

function Screen({ load }: { load: () => Promise<string> }) {
  const loaded = useLoaded(load);
  if (loaded.state === 'here') return <p>{loaded.value}</p>;
  return <Waiting loaded={loaded} onHome={() => undefined} />;
}

test('a part that another screen has fetched between a look and what follows it is shown', async () => {
  const load = async () => 'the tape';
  const root = document.body.appendChild(document.createElement('div'));
  // Not by the library, which lets everything follow at once.
  paint(<Screen load={load} />, root);
  await loadAhead(load);
  expect(await screen.findByText('the tape')).toBeTruthy();
  paint(null, root);
  root.remove();
});

test('a part that can’t be fetched is said, and can be tried again', async () => {
  hostHas(NO_CONNECTION);
  const load = vi.fn(async () => 'the tape');
  load.mockRejectedValueOnce(NO_CONNECTION);
  render(<Screen load={load} />);
  expect((await screen.findByRole('alert')).textContent).toMatch(/could not be fetched/);
  fireEvent.click(screen.getByRole('button', { name: 'Try again' }));
  expect(await screen.findByText('the tape')).toBeTruthy();
});

test('where the host has a newer build, that is said in place of no connection', async () => {
  hostHas(NEWER_PAGE);
  render(<Screen load={() => Promise.reject(NO_CONNECTION)} />);
  await screen.findByText(newerWords.screen);
  expect(screen.queryByText(appWords.notLoaded)).toBeNull();
});

test.each([
  ['this very build', '<script type="module" src="./assets/base-first.js"></script>'],
  ['a page that asks to log in to the network', '<title>Welcome</title>'],
  ['nothing', NO_CONNECTION],
])('where the host has %s, the part is only missing', async (_, page) => {
  hostHas(page);
  const { result } = renderHook(() => useLoaded(broken));
  await waitFor(() => expect(fetch).toHaveBeenCalledOnce());
  await act(async () => undefined);
  expect(result.current).toMatchObject({ state: 'missing', newer: undefined });
});

const broken = () => Promise.reject(NO_CONNECTION);

test('a part fetched once, or ahead, is there at the next first look', async () => {
  const load = vi.fn(async () => 'the tape');
  render(<Screen load={load} />);
  await screen.findByText('the tape');
  cleanup();
  render(<Screen load={load} />);
  expect(screen.getByText('the tape')).toBeTruthy();
  expect(load).toHaveBeenCalledOnce();

  const ahead = vi.fn(async () => 'the list');
  await loadAhead(ahead);
  render(<Screen load={ahead} />);
  expect(screen.getByText('the list')).toBeTruthy();
});

test('what comes for another part than the one wanted now is not shown', async () => {
  let arrive: (value: string) => void = () => undefined;
  const slow = () =>
    new Promise<string>((done) => {
      arrive = done;
    });
  const quick = async () => 'hem';
  const { result, rerender } = renderHook(({ load }) => useLoaded(load), {
    initialProps: { load: slow as () => Promise<string> },
  });
  rerender({ load: quick });
  await waitFor(() => expect(result.current).toMatchObject({ state: 'here', value: 'hem' }));
  await act(async () => {
    arrive('seam');
  });
  expect(result.current).toMatchObject({ value: 'hem' });
});
