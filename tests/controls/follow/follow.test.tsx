import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import type { Bench } from '../../../src/calculation/bench.ts';
import type { Calculation } from '../../../src/calculation/calculation.ts';
import { inUnitOf } from '../../../src/calculation/other-unit.ts';
import { type Held, heldOf } from '../../../src/calculation/page.ts';
import { stateOf } from '../../../src/calculation/parted.ts';
import { closures } from '../../../src/calculations/closures/closures.ts';
import { crossing } from '../../../src/calculations/crossing/crossing.ts';
import { Follow } from '../../../src/controls/follow/follow.tsx';
import { benchOf } from '../helpers.ts';

const speak = vi.fn();
const release = vi.fn();
const keepAwake = vi.fn(() => release);
let draft: Held = {};

// What a measure is typed on is fetched when it is wanted first.
beforeAll(async () => {
  follow();
  fireEvent.click(screen.getByRole('button', { name: 'Made elsewhere' }));
  await screen.findByLabelText(/where it really is/, undefined, { timeout: 20_000 });
  cleanup();
});
beforeEach(() => {
  vi.clearAllMocks();
});
afterEach(cleanup);

interface Shown {
  calculation?: Calculation;
  bench: Bench;
  first: Held;
}

function Following({ calculation = closures, bench, first }: Shown) {
  const [typed, setTyped] = useState(stateOf(first));
  draft = heldOf(typed);
  return (
    <Follow
      calculation={calculation}
      state={typed}
      bench={bench}
      services={{ speak, keepAwake }}
      onState={setTyped}
      onTape={() => undefined}
      onLeave={() => undefined}
    />
  );
}

function follow(set: Held = {}, bench = benchOf()) {
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

test('of marks in several rows, how far across each lies is shown and said', () => {
  const bench = benchOf({ unit: 'mm', voice: 'on' });
  const first = crossing.start(bench);
  render(<Following calculation={crossing} bench={bench} first={first} />);
  expect(place()).toBe('New hole 1 of 6');
  const edge = /^\d+ mm in from the first row’s edge, from the first row’s last hole before them$/;
  expect(screen.getByText(edge)).toBeTruthy();
  next();
  expect(speak.mock.lastCall?.[0]).toMatch(/^New hole 2, \d+ millimetres in from the first row/);
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
  expect(draft.made).toBe('2=9 cm');
  expect(screen.getByText('Made at 9 cm: 0.7 cm off the plan')).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Space the rest anew' }));
  expect(draft.sewn).toBe('1.2 cm; 9 cm');
  expect(screen.getByText('9')).toBeTruthy();
});

test('spaced anew the level is kept, and what gives way is said while the rest is followed', () => {
  follow({ count: '3', level: '30', at: '1', made: '2=15 cm' });
  expect(screen.queryByText(/gives way/)).toBeNull();
  fireEvent.click(screen.getByRole('button', { name: 'Space the rest anew' }));
  expect(draft.level).toBe('30');
  expect(screen.getByText(/The bottom end gives way: the last is 16.3 cm/)).toBeTruthy();
  next();
  expect(screen.getByText('30', { selector: 'b' })).toBeTruthy();
  expect(screen.getByText(/gives way/)).toBeTruthy();
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

test('the keys act while the big key has the focus, as it has at the start', () => {
  follow();
  const big = document.activeElement as HTMLElement;
  expect(big.textContent).toContain('Marked. Next');
  fireEvent.keyDown(big, { key: 'ArrowRight' });
  expect(place()).toBe('Hook 2 of 7');
  fireEvent.keyDown(big, { key: 'Backspace' });
  expect(place()).toBe('Hook 1 of 7');
});

test('a key that something else has its own use for does not lead on as well', () => {
  follow();
  fireEvent.keyDown(screen.getByRole('button', { name: /Marked. Next/ }), { key: ' ' });
  fireEvent.keyDown(screen.getByRole('application'), { key: 'ArrowRight' });
  fireEvent.click(screen.getByRole('button', { name: 'Made elsewhere' }));
  for (const key of [' ', 'ArrowRight', 'VolumeUp']) fireEvent.keyDown(document.body, { key });
  expect(place()).toBe('Hook 1 of 7');
});

test('presses quicker than the screen is painted all count', async () => {
  follow();
  for (let i = 0; i < 3; i++) {
    document.body.dispatchEvent(new KeyboardEvent('keydown', { key: 'VolumeUp', bubbles: true }));
    for (let turn = 0; turn < 20; turn++) await Promise.resolve();
  }
  expect(place()).toBe('Hook 4 of 7');
});

test('back stops at the first mark; a place beyond the last is the end', () => {
  follow();
  fireEvent.click(screen.getByRole('button', { name: 'Back one' }));
  expect(place()).toBe('Hook 1 of 7');
  cleanup();
  follow({ at: '99' });
  expect(place()).toBe('All 7 marked');
  fireEvent.click(screen.getByRole('button', { name: 'Back one' }));
  expect(place()).toBe('Hook 7 of 7');
});

test('a run that is not there is the first; without an answer it leads back', () => {
  follow({ run: '9' });
  expect(place()).toBe('Hook 1 of 7');
  cleanup();
  follow({ count: '-1' });
  expect(screen.getByText(/There are no marks to follow/)).toBeTruthy();
});

test('a measure taken away is as planned again', () => {
  follow({ at: '1', made: '2=9 cm' });
  fireEvent.click(screen.getByRole('button', { name: 'Made elsewhere' }));
  const field = screen.getByLabelText(/where it really is/);
  expect(field).toHaveProperty('value', '9 cm');
  fireEvent.input(field, { target: { value: '' } });
  fireEvent.click(screen.getByRole('button', { name: 'It is as planned' }));
  expect(draft.made).toBe('');
});

test.each(['widest', 'exact', 'gap'])(
  'spaced by %s, the rest anew are as many as they were',
  (by) => {
    follow({ by, pitch: '3', gap: '2', width: '1', at: '1', made: '2=4.5 cm' });
    const many = place();
    expect(many).toMatch(/of 1\d$/);
    fireEvent.click(screen.getByRole('button', { name: 'Space the rest anew' }));
    expect(place()).toBe(many);
  },
);

test('what was measured further along is kept when the rest is spaced anew', () => {
  follow({ at: '1', made: '2=9 cm; 5=31 cm' });
  fireEvent.click(screen.getByRole('button', { name: 'Space the rest anew' }));
  expect(draft.sewn).toBe('1.2 cm; 9 cm; 31 cm');
});

test('a measure means the same when the bench is set to another unit', () => {
  follow({ at: '1' });
  fireEvent.click(screen.getByRole('button', { name: 'Made elsewhere' }));
  fireEvent.input(screen.getByLabelText(/where it really is/), { target: { value: '9' } });
  fireEvent.click(screen.getByRole('button', { name: 'Keep this measure' }));
  const inInches = benchOf({ unit: 'in' });
  const there = inUnitOf(inInches, closures, stateOf({ ...draft, u: 'cm' }));
  cleanup();
  follow(heldOf(there), benchOf({ unit: 'in' }));
  expect(screen.getByText(/^Made at/).textContent).toContain('3.543 in');
});

test('a measure of an old address, without its unit, does not follow the bench to another one', () => {
  const old = { ...closures.start(benchOf()), at: '1', made: '2=9', u: 'cm' };
  const there = inUnitOf(benchOf({ unit: 'in' }), closures, stateOf(old));
  expect(there.page.made).toBe('2=9 cm');
  follow(heldOf(there), benchOf({ unit: 'in' }));
  expect(screen.getByText(/^Made at/).textContent).toContain('3.543 in');
});

const button = (name: string | RegExp) => screen.getByRole('button', { name });
const measure = (typed: string) => {
  fireEvent.click(button('Made elsewhere'));
  fireEvent.input(screen.getByLabelText(/where it really is/), { target: { value: typed } });
  fireEvent.click(button('Keep this measure'));
};
const figure = () => document.querySelector('.figure')?.textContent;

test('the step to the next mark is from where the last one was made, on the screen and aloud', () => {
  follow({ at: '1' }, benchOf({ voice: 'on' }));
  measure('9');
  expect(figure()).toBe('9 cm');
  expect(screen.getByText('7.8 cm from the last mark')).toBeTruthy();
  expect(screen.getByText('Planned at 8.3 cm')).toBeTruthy();
  next();
  expect(figure()).toBe('15.4 cm');
  expect(screen.getByText('6.4 cm from the last mark')).toBeTruthy();
  expect(speak).toHaveBeenLastCalledWith(
    'Hook 3. 15.4 centimetres. 6.4 centimetres from the last.',
  );
});

test('a mark that lies back of the one made last is said to', () => {
  follow({ at: '1' });
  measure('16');
  next();
  expect(place()).toBe('Hook 3 of 7');
  expect(screen.getByText('0.6 cm before the last mark')).toBeTruthy();
});

test('a second measure asks which is right, and writes over nothing unasked', () => {
  follow({ at: '1' });
  measure('9');
  measure('9.4');
  expect(screen.getByRole('alert').textContent).toBe(
    'Measured before: 9 cm. Now: 9.4 cm. Which is right?',
  );
  expect(draft.made).toBe('2=9 cm');
  fireEvent.click(button('Leave 9 cm'));
  expect(draft.made).toBe('2=9 cm');
  measure('9.4');
  fireEvent.click(button('Take 9.4 cm instead'));
  expect(draft.made).toBe('2=9.4 cm');
  fireEvent.click(button('Back to 9 cm'));
  expect(draft.made).toBe('2=9 cm');
  expect(screen.queryByRole('button', { name: /^Back to 9/ })).toBeNull();
});

test('the same place measured in another unit is no second measure; a first one can be undone', () => {
  follow({ at: '1' });
  measure('9');
  fireEvent.click(button('Undo this measure'));
  expect(draft.made).toBe('');
  measure('9');
  measure('90 mm');
  expect(screen.queryByRole('alert')).toBeNull();
});

test('what a tape is read for a second time is asked about as well, also after a reload', () => {
  follow({ at: '1', made: '2=9 cm', asked: '2=9.4 ± 0.02 cm' });
  expect(screen.getByRole('alert').textContent).toMatch(
    /Measured before: 9 cm. Now: 9.4 ± 0.02 cm/,
  );
  fireEvent.click(button('Leave 9 cm'));
  expect(draft).toMatchObject({ made: '2=9 cm', asked: '' });
  expect(screen.queryByRole('alert')).toBeNull();
});

test('what was measured on one plan is refused by another, said, and there again with its own', () => {
  follow({ at: '1' });
  measure('9');
  const seven = draft;
  cleanup();
  follow({ ...seven, count: '8' });
  expect(place()).toBe('Hook 1 of 8');
  expect(screen.getByText(/Measured on another plan, and not counted here: Hook 2 at 9 cm/));
  expect(screen.queryByRole('button', { name: 'Space the rest anew' })).toBeNull();
  next();
  expect(figure()).toBe('7.3 cm');
  expect(screen.queryByText(/^Made at/)).toBeNull();
  measure('7');
  const eight = draft;
  cleanup();
  follow({ ...eight, count: '7', at: '1' });
  next();
  expect(screen.getByText('Made at 9 cm: 0.7 cm off the plan')).toBeTruthy();
  expect(screen.getByText(/not counted here: Hook 2 at 7 cm/)).toBeTruthy();
  fireEvent.click(button('Forget them'));
  expect(screen.queryByText(/not counted here/)).toBeNull();
  expect(draft.made).toBe('2=9 cm');
});

test('spaced anew it goes on at the same mark, with nothing refused', () => {
  follow({ at: '2', made: '2=9 cm' });
  fireEvent.click(button('Space the rest anew'));
  expect(place()).toBe('Hook 3 of 7');
  expect(figure()).toBe('16 cm');
  expect(screen.queryByText(/not counted here/)).toBeNull();
});
