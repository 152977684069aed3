import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test, vi } from 'vitest';
import { type Held, heldOf } from '../../../src/calculation/page.ts';
import { stateOf } from '../../../src/calculation/parted.ts';
import { centre } from '../../../src/calculations/centre/centre.ts';
import { Tally } from '../../../src/controls/follow/tally.tsx';
import { benchOf } from '../helpers.ts';

afterEach(cleanup);

const speak = vi.fn();
const services = { speak, keepAwake: () => () => undefined };
let draft: Held = {};

function Counting({ first, voice }: { first: Held; voice: 'on' | 'off' }) {
  const [typed, setTyped] = useState(stateOf(first));
  draft = heldOf(typed);
  return (
    <Tally
      calculation={centre}
      state={typed}
      bench={benchOf({ voice })}
      services={services}
      onState={setTyped}
      onTape={() => undefined}
      onLeave={() => undefined}
    />
  );
}

function count(set: Held = {}, voice: 'on' | 'off' = 'off') {
  render(<Counting first={{ ...centre.start(benchOf()), ...set }} voice={voice} />);
}

const press = (name: RegExp) => fireEvent.click(screen.getByRole('button', { name }));

test('the lower half counts, and says the middle at each hole', () => {
  count({ count: '25' });
  press(/One more hole/);
  expect(screen.getByText(/between holes 13 and 14: 13 on each side/)).toBeTruthy();
  press(/One more hole/);
  expect(screen.getByText(/The middle is hole 14: 13 on each side/)).toBeTruthy();
  expect(draft.count).toBe('27');
});

test('one less takes a slip back; starting again can be taken back too', () => {
  count({ count: '9' });
  press(/One less/);
  expect(draft.count).toBe('8');
  press(/Start again/);
  expect(draft.count).toBe('0');
  press(/Back to 8/);
  expect(draft.count).toBe('8');
});

test('what was started again can be had back after a reload, until counting goes on', () => {
  count({ count: '9', other: '3' });
  press(/Start again/);
  const left = draft;
  cleanup();
  count(left);
  press(/Other end/);
  expect(screen.queryByRole('button', { name: /Back to/ })).toBeNull();
  press(/Other end|First end/);
  press(/Back to 9/);
  expect(draft.count).toBe('9');
  press(/Start again/);
  press(/One more hole/);
  expect(screen.queryByRole('button', { name: /Back to/ })).toBeNull();
  expect(draft.count).toBe('1');
});

test('each hole is spoken when the voice is on', () => {
  count({ count: '4' }, 'on');
  press(/One more hole/);
  expect(speak).toHaveBeenLastCalledWith('5');
});

test('from the other end, both must meet', () => {
  count({ count: '5', other: '4' });
  expect(screen.getByText(/Counted 5 from one end and 4 from the other/)).toBeTruthy();
  press(/Other end/);
  expect(screen.getByRole('heading').textContent).toBe('From the other end');
  press(/One more hole/);
  expect(draft.other).toBe('5');
  expect(screen.queryByText(/from one end and/)).toBeNull();
});

test('nonsense in the address counts from nothing; 2,000 is the end', () => {
  count({ count: '-3' });
  press(/One more hole/);
  expect(draft.count).toBe('1');
  cleanup();
  count({ count: '2000' });
  press(/One more hole/);
  expect(draft.count).toBe('2000');
});

test('what is spoken is the count, also where it ends', () => {
  count({ count: '2000' }, 'on');
  press(/One more hole/);
  expect(speak).toHaveBeenLastCalledWith('2000');
  cleanup();
  count({ count: '0' }, 'on');
  press(/One less/);
  expect(speak).toHaveBeenLastCalledWith('0');
});

const alarm = () => screen.queryByText(/from one end and/);

test('counting again raises no alarm before the count is finished', () => {
  count({ count: '27', other: '27' });
  press(/Start again/);
  press(/One more hole/);
  press(/One more hole/);
  expect(alarm()).toBeNull();
  expect(screen.getByText('Counted from the other end before: 27.')).toBeTruthy();
  // After a reload it is still being counted.
  const left = draft;
  cleanup();
  count(left);
  expect(alarm()).toBeNull();
  press(/That was the last/);
  expect(alarm()?.textContent).toMatch(/Counted 2 from one end and 27 from the other/);
});

test('a count past the other one disagrees at once; one that meets it never', () => {
  count({ count: '3', other: '2', 'counting-from': 'other' });
  press(/One more hole/);
  expect(alarm()).toBeNull();
  press(/One more hole/);
  expect(alarm()?.textContent).toMatch(/Counted 3 from one end and 4 from the other/);
});

test('an older address still says which end is counted from', () => {
  count({ count: '3', other: '2', end: 'other' });
  press(/One more hole/);
  expect(screen.getByText(/^3/, { selector: '.big b' })).toBeTruthy();
  press(/Other end/);
  expect(draft['counting-from']).toBe('');
});

test('a measured length is not held against a count that has just begun', () => {
  count({ count: '0', pitch: '8 mm', measured: '208 mm' });
  for (let i = 0; i < 3; i++) press(/One more hole/);
  expect(screen.queryByText(/is expected and/)).toBeNull();
  press(/That was the last/);
  expect(screen.getByText(/is expected and/)).toBeTruthy();
});

test('going to the other end finishes this one', () => {
  count({ count: '5', other: '5' });
  press(/One less/);
  expect(alarm()).toBeNull();
  press(/Other end/);
  expect(alarm()).toBeTruthy();
});
