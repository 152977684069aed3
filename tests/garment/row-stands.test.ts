import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { waysOutOf } from '../../src/garment/actions/decide.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { HOLES, HOOKS, waistcoat } from './trial/waistcoat.ts';

const now = 5;
const tape = 8000;
const after = (state: State, ...actions: readonly Action[]) =>
  actions.reduce((so, action) => act(so, action).state, state);
const START = () => begin(waistcoat, KNOWN);
const press = (id: string, more: object = {}): Action =>
  ({ ...{ do: 'make', home: HOOKS, id, tape, now }, ...more }) as Action;
const front = (text: string): Action => ({
  ...{ do: 'choose', place: { quantity: 'front' }, parts: typed(text), now },
});
const resultAt = ({ answer }: State, home = HOOKS) => {
  const result = answer.values.get(home);
  if (!result) throw new Error(home);
  return result;
};
const placesAt = (state: State) => {
  const result = resultAt(state);
  if (!result.ok) throw new Error(JSON.stringify(result.trouble));
  return (result.value as Run).marks.map(({ at }) => Math.round(at / 80) / 100);
};
const SAID = { conflict: [], fewer: false };

test('while nothing can be asked a row under way stands as it was begun, and is undecided', () => {
  const state = after(START(), press('a'), press('b', { measured: mm(82) }), {
    ...{ do: 'decide', home: HOOKS, way: 'asked', now },
  });
  const asked = resultAt(state);
  const waits = after(state, front(''));
  expect(placesAt(waits)).toEqual([12, 82, 153, 224, 295, 366, 437]);
  const result = resultAt(waits);
  expect(result).toMatchObject({
    ...{ ok: true, state: 'partly made', undecided: true, ends: {}, row: SAID },
    made: ['a', 'b', ...Array<undefined>(5).fill(undefined)],
  });
  expect(result.ok && result.value).toMatchObject({
    length: mm(438),
    marks: [
      { label: '1', kind: 'measure' },
      { label: '2', kind: 'measure' },
      ...Array.from({ length: 5 }, () => ({ kind: 'measure' })),
    ],
  });
  expect(asked.ok && (asked.value as Run).datum).toBe('top-edge');
  expect(result.ok && (result.value as Run).datum).toBe('top-edge');
  expect(waits.answer.conflicts).toEqual([]);
  expect(waysOutOf(waits, HOOKS)).toEqual([]);
  // Asked again, it goes on as it was.
  expect(placesAt(after(waits, front('46.3')))).toEqual(placesAt(state));
});

test.each([[82], [84]])(
  'it goes on as it did, made before or behind where it was shown: at %i mm',
  (measured) => {
    const state = after(START(), press('a'), press('b', { measured: mm(measured) }));
    const off = measured - 83;
    const places = [12, 83 + off, ...[154, 225, 296, 367, 438].map((at) => at + off)];
    expect(placesAt(state)).toEqual(places);
    const waits = after(state, front(''));
    expect(placesAt(waits)).toEqual(places);
    expect(resultAt(waits)).toMatchObject({ value: { length: mm(Math.max(438, 438 + off)) } });
  },
);

test('a row that is wholly made stands where it is made, whatever is asked', () => {
  const all = after(START(), ...Array.from({ length: 7 }, (_, i) => press(`h${i}`)));
  const moved = after(all, { do: 'measure', fact: 'h6', measured: mm(439), now }, front(''));
  expect(placesAt(moved)).toEqual([12, 83, 154, 225, 296, 367, 439]);
  expect(resultAt(moved)).toMatchObject({ ok: true, state: 'made', row: SAID });
  expect(resultAt(moved)).not.toHaveProperty('undecided');
  expect(moved.answer.steps.find(({ home }) => home === HOOKS)).toMatchObject({
    ...{ made: 7, of: 7, ready: true },
  });
});

test('one of which it isn’t known how it was begun waits for what the plan waits for', () => {
  const { record } = after(START(), press('a'), front(''));
  const waits = resultAt(begin({ ...record, begun: {} }, KNOWN));
  expect(waits).toEqual({
    ok: false,
    trouble: {
      ...{ kind: 'waits', field: '', for: 'hooks||marks?asked', root: homeOf('front') },
    },
    row: SAID,
  });
  // Where the plan can’t be at all, it waits for that.
  const never = after(START(), press('a'), front('1')).record;
  expect(resultAt(begin({ ...never, begun: {} }, KNOWN))).toMatchObject({
    trouble: { kind: 'waits', root: 'hooks||marks?asked' },
  });
});

test('a strip of the garment is measured from its end again, where no top edge is asked for', () => {
  const strip = {
    ...{ name: 'Strip', calculation: 'toy-strip', rank: 4 },
    fields: { length: [quantity('long')], pitch: typed('5'), end: typed('5') },
  };
  const long = { name: 'Long', kind: 'length', rank: 1, parts: typed('20') };
  const state = begin(garmentOf({ quantities: { long }, works: { strip } }), KNOWN);
  const waits = after(state, { do: 'make', home: HOLES, id: 'h', tape, now } as Action, {
    do: 'choose',
    place: { quantity: 'long' },
    parts: typed(''),
    now,
  });
  expect(resultAt(waits, HOLES)).toMatchObject({ ok: true, value: { datum: 'zero' } });
});

test('a row that can be placed in no way is undecided, and says what differs', () => {
  const far = after(START(), press('a'), press('b'), press('c', { measured: mm(240) }));
  expect(resultAt(far)).toEqual({
    ok: false,
    trouble: { kind: 'undecided' },
    row: { conflict: ['c'], fewer: false },
  });
});
