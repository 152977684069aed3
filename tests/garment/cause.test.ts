import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { causeOf } from '../../src/garment/actions/cause.ts';
import { waysOutOf } from '../../src/garment/actions/decide.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { lastFromEnd, priceOf, spacesIn } from '../../src/garment/rows/price.ts';
import { dice } from './trial/dice.ts';
import { typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { randomAction } from './trial/random-action.ts';
import { randomGarment } from './trial/random-garment.ts';
import { HOLES, HOOKS, waistcoat } from './trial/waistcoat.ts';

const CM = 80_000;
const TAPE = 8000;

function after(...actions: readonly Action[]): State {
  return actions.reduce((state, action) => act(state, action).state, begin(waistcoat, KNOWN));
}

const punched: Action = { do: 'make', home: HOLES, tape: TAPE, id: 'p', upTo: 57, now: 1 };
const again: Action = {
  do: 'measure',
  quantity: 'armhole',
  measured: 63 * CM,
  tape: TAPE,
  id: 'again',
  now: 2,
};
const elsewhere: Action = {
  do: 'choose',
  place: { quantity: 'front' },
  parts: typed('46.4'),
  now: 3,
};

test('the change that brought a conflict is found behind others that did not', () => {
  const state = after(punched, again, elsewhere);
  const cause = causeOf(state, HOLES);
  expect(cause?.change.what).toBe('measure');
  expect(cause?.without.answer.conflicts).toEqual([]);
  expect(
    act(state, { do: 'undo', change: cause?.change.id ?? 0, now: 4 }).state.answer.conflicts,
  ).toEqual([]);
});

test('that a mark was made elsewhere is no change to take back; that it was measured so later is', () => {
  const press = (id: string, measured?: number): Action => {
    return { do: 'make', home: HOOKS, tape: TAPE, id, now: 1, ...(measured && { measured }) };
  };
  const off = after(press('f1'), press('f2'), press('f3', 15.8 * CM));
  expect(off.answer.conflicts.map(({ home }) => home)).toEqual([HOOKS]);
  expect(causeOf(off, HOOKS)).toBeUndefined();
  const later = after(press('f1'), press('f2'), press('f3'), {
    ...{ do: 'measure', fact: 'f3', measured: 15.8 * CM, now: 2 },
  });
  expect(causeOf(later, HOOKS)?.change.what).toBe('measure');
});

test('what was there before the mark was made elsewhere did not bring that', () => {
  const press = (id: string, measured?: number): Action => {
    return { do: 'make', home: HOOKS, tape: TAPE, id, now: 1, ...(measured && { measured }) };
  };
  const edge = { name: 'Edge', kind: 'length', rank: 9, parts: typed('') } as const;
  const state = after(
    { do: 'add', to: 'quantities', id: 'edge', it: edge, now: 0 },
    { do: 'choose', place: { quantity: 'edge' }, parts: typed('46.3'), now: 0 },
    {
      ...{ do: 'choose', place: { work: 'hooks', field: 'opening' }, now: 0 },
      parts: [{ link: { quantity: 'edge' } }],
    },
    press('f1'),
    press('f2'),
    press('f3', 15.8 * CM),
  );
  expect(state.answer.conflicts.map(({ home }) => home)).toEqual([HOOKS]);
  expect(causeOf(state, HOOKS)).toBeUndefined();
});

test('what is no longer in the log, or was changed again since, is not offered', () => {
  const state = after(punched, again);
  expect(causeOf({ ...state, log: [] }, HOLES)).toBeUndefined();
  expect(causeOf(after(again, punched), HOLES)).toBeUndefined();
});

test('whatever cause is told, taking it back alone ends the conflict and is not refused', () => {
  let told = 0;
  for (let seed = 1; seed <= 120; seed++) {
    const d = dice(seed * 31);
    let state = begin(randomGarment(seed), KNOWN);
    for (let k = 0; k < 15; k++) state = act(state, randomAction(d, state)).state;
    state = act(state, { do: 'settle', now: 1 }).state;
    for (const { home } of state.answer.conflicts) {
      const cause = causeOf(state, home);
      if (!cause) continue;
      told += 1;
      const done = act(state, { do: 'undo', change: cause.change.id, sure: true, now: 2 });
      expect(done.refused).toBeUndefined();
      expect(done.state.answer.conflicts.map((one) => one.home)).not.toContain(home);
    }
  }
  expect(told).toBeGreaterThan(10);
});

test('the price of each way: 8.29 mm for the 21 to come, 7.91 with one more, or 1.0 left at the cut', () => {
  const ways = new Map(
    waysOutOf(after(punched, again), HOLES).map(({ way, row }) => [way, row && priceOf(row)]),
  );
  const mm = (units = 0) => Math.round(units / 80) / 100;
  expect(ways.get('as-begun')).toMatchObject({ count: 78, toCome: 21 });
  expect(mm(ways.get('as-begun')?.spaces?.most)).toBe(8);
  expect(mm(ways.get('as-begun')?.lastFromEnd)).toBe(10);
  expect(ways.get('spread')).toMatchObject({ count: 78, toCome: 21 });
  expect(mm(ways.get('spread')?.spaces?.least)).toBe(8.29);
  expect(mm(ways.get('spread')?.lastFromEnd)).toBe(4);
  expect(ways.get('count:79')).toMatchObject({ count: 79, toCome: 22 });
  expect(mm(ways.get('count:79')?.spaces?.most)).toBe(7.91);
});

test('one mark has no spaces, and no mark ends nothing', () => {
  expect(spacesIn([5])).toBeUndefined();
  expect(lastFromEnd({ datum: 'zero', length: 9 as never, marks: [] })).toBe(9);
});
