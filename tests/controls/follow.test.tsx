import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Bench } from '../../src/controls/bench.ts';
import type { Draft } from '../../src/controls/calculation.ts';
import { Follow } from '../../src/controls/follow.tsx';
import { closures } from '../../src/screens/closures/closures.ts';
import { benchOf } from './helpers.ts';

const speak = vi.fn();
const release = vi.fn();
const keepAwake = vi.fn(() => release);
let draft: Draft = {};

beforeEach(() => {
  vi.clearAllMocks();
});
afterEach(cleanup);

function Following({ bench, first }: { bench: Bench; first: Draft }) {
  const [typed, setTyped] = useState(first);
  draft = typed;
  return (
    <Follow
      calculation={closures}
      draft={typed}
      bench={bench}
      services={{ speak, keepAwake }}
      onDraft={setTyped}
      onLeave={() => undefined}
    />
  );
}

function follow(set: Draft = {}, bench = benchOf()) {
  return render(<Following bench={bench} first={{ ...closures.start(bench), ...set }} />);
}

const next = () => fireEvent.click(screen.getByRole('button', { name: /Marked. Next/ }));
const place = () => screen.getByRole('heading').textContent;

test('the lower half leads from mark to mark, to the end and to the first again', () => {
  follow();
  expect(place()).toBe('Hook 1 of 7');
  expect(screen.getByText('from the top edge')).toBeTruthy();
  next();
  expect(place()).toBe('Hook 2 of 7');
  expect(screen.getByText('7.1 cm from the last mark')).toBeTruthy();
  for (let i = 0; i < 5; i++) next();
  expect(place()).toBe('Hook 7 of 7');
  next();
  expect(place()).toBe('All 7 marked');
  fireEvent.click(screen.getByRole('button', { name: /From the first again/ }));
  expect(place()).toBe('Hook 1 of 7');
});

test('keys do the same: space, arrows, and volume where the platform gives it', () => {
  follow();
  for (const key of [' ', 'ArrowRight', 'AudioVolumeUp']) fireEvent.keyDown(document.body, { key });
  expect(place()).toBe('Hook 4 of 7');
  fireEvent.keyDown(document.body, { key: 'ArrowLeft' });
  expect(place()).toBe('Hook 3 of 7');
});

test('the place is in the draft, so a reload comes back to it; nonsense is the first', () => {
  follow({ at: '4' });
  expect(place()).toBe('Hook 5 of 7');
  next();
  expect(draft.at).toBe('5');
  cleanup();
  follow({ at: '-3.7' });
  expect(place()).toBe('Hook 1 of 7');
});

test('it speaks each mark when the voice is on, and once when asked', () => {
  follow({}, benchOf({ voice: 'on' }));
  next();
  expect(speak).toHaveBeenLastCalledWith('Hook 2. 8.3 centimetres. 7.1 centimetres from the last.');
  cleanup();
  speak.mockClear();
  follow();
  next();
  expect(speak).not.toHaveBeenCalled();
  fireEvent.click(screen.getByRole('button', { name: 'Speak' }));
  expect(speak).toHaveBeenCalledOnce();
});

test('the screen is kept on while marks are followed, and let go after', () => {
  const { unmount } = follow();
  expect(keepAwake).toHaveBeenCalledOnce();
  unmount();
  expect(release).toHaveBeenCalledOnce();
});

test('a mark made elsewhere is kept beside its plan, and the rest can be spaced around it', () => {
  follow({ at: '1' });
  fireEvent.click(screen.getByRole('button', { name: 'Made elsewhere' }));
  const field = screen.getByLabelText(/where it really is/);
  fireEvent.input(field, { target: { value: '9' } });
  fireEvent.click(screen.getByRole('button', { name: 'Keep this measure' }));
  expect(draft.made).toBe('2=9');
  expect(screen.getByText('Made at 9 cm: 0.7 cm off the plan')).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Space the rest anew' }));
  expect(draft.sewn).toBe('1.2 cm; 9');
  expect(screen.getByText('9')).toBeTruthy();
});

test('a measure that can’t be read is not taken, and says why', () => {
  follow();
  fireEvent.click(screen.getByRole('button', { name: 'Made elsewhere' }));
  fireEvent.input(screen.getByLabelText(/where it really is/), { target: { value: '9 -1/2' } });
  expect(screen.getByRole('status').textContent).toMatch(/joined or taken away/);
  expect(screen.getByRole('button', { name: 'Keep this measure' })).toHaveProperty(
    'disabled',
    true,
  );
});

test('without marks it says so and leads back', () => {
  follow({ count: '0' });
  expect(screen.getByText(/There are no marks to follow/)).toBeTruthy();
});
