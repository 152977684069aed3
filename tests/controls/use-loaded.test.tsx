import {
  act,
  cleanup,
  fireEvent,
  render,
  renderHook,
  screen,
  waitFor,
} from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { Waiting } from '../../src/app/waiting.tsx';
import { loadAhead, useLoaded } from '../../src/controls/use-loaded.ts';

afterEach(cleanup);

function Screen({ load }: { load: () => Promise<string> }) {
  const loaded = useLoaded(load);
  if (loaded.state === 'here') return <p>{loaded.value}</p>;
  return <Waiting loaded={loaded} onHome={() => undefined} />;
}

test('a part that can’t be fetched is said, and can be tried again', async () => {
  const load = vi.fn(async () => 'the tape');
  load.mockRejectedValueOnce(new Error('no connection'));
  render(<Screen load={load} />);
  expect((await screen.findByRole('alert')).textContent).toMatch(/could not be fetched/);
  fireEvent.click(screen.getByRole('button', { name: 'Try again' }));
  expect(await screen.findByText('the tape')).toBeTruthy();
});

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
    await new Promise((done) => setTimeout(done));
  });
  expect(result.current).toMatchObject({ value: 'hem' });
});
