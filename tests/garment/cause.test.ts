import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { causeOf } from '../../src/garment/actions/cause.ts';
import { waysOutOf } from '../../src/garment/actions/decide.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Garment } from '../../src/garment/record/record.ts';
import { lastFromEnd, priceOf, spacesIn } from '../../src/garment/rows/price.ts';
import { mm } from '../../src/lengths/length.ts';
import { dice } from './trial/dice.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
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

const CUT = homeOf('back', '', 'cut-length');
const piece = (rank: number, bottom = typed('2')) => ({
  ...{ name: 'Back', calculation: 'toy-piece', rank },
  fields: { length: [quantity('long')], top: typed('1'), bottom },
});
/** Invented: two pieces as long as the same number says. */
const pieces = (works: object = {}): Garment =>
  garmentOf({
    quantities: { long: { name: 'Back', kind: 'length', rank: 1, parts: typed('60') } },
    works: { back: piece(1), front: piece(2), ...works },
  });
const cut = (more: object = {}): Action => ({
  ...{ do: 'make', home: CUT, tape: TAPE, id: 'cut', now: 1 },
  ...more,
});
const typeAt = (field: string, text: string): Action => ({
  ...{ do: 'choose', place: { work: 'back', field }, parts: typed(text), now: 2 },
});
const longer: Action = { ...elsewhere, place: { quantity: 'long' }, parts: typed('63') } as Action;
const named = (name: string): Action => ({
  ...{ do: 'say', of: 'works', ids: ['back'], set: { name }, now: 3 },
});
const on = (record: Garment, ...actions: readonly Action[]): State =>
  actions.reduce((state, action) => act(state, action).state, begin(record, KNOWN));
const causeAt = (state: State, home = CUT) => causeOf(state, home)?.change.id;
const lastOf = (state: State, back = 1) => state.log.at(-back)?.id;

test('of two changes either of which would do, the later is told', () => {
  const state = on(pieces(), cut(), typeAt('top', '1.04'), typeAt('bottom', '2.04'));
  expect(state.answer.conflicts.map(({ home }) => home)).toEqual([CUT]);
  expect(causeAt(state)).toBe(lastOf(state));
});

test('a later change of the same work that brought nothing is passed over, but not more than 40', () => {
  const state = on(pieces(), cut(), longer, named('Rear'));
  expect(causeAt(state)).toBe(lastOf(state, 2));
  const many = (count: number) =>
    on(pieces(), cut(), longer, ...Array.from({ length: count }, (_, i) => named(`Rear ${i}`)));
  const near = many(39);
  expect(causeAt(near)).toBe(lastOf(near, 40));
  expect(causeAt(many(40))).toBeUndefined();
});

test('changes of what the number doesn’t come from are not even tried, however many came since', () => {
  const front = (name: string): Action => ({
    ...{ do: 'say', of: 'works', ids: ['front'], set: { name }, now: 3 },
  });
  const others = Array.from({ length: 45 }, (_, i) => front(`Fore ${i}`));
  const state = on(pieces(), cut(), longer, ...others);
  expect(causeAt(state)).toBe(lastOf(state, 46));
});

test('a change that something else was made to since is told all the same', () => {
  const front: Action = cut({ home: homeOf('front', '', 'cut-length'), id: 'front' });
  const state = on(pieces(), cut(), longer, front);
  expect(state.answer.conflicts.map(({ home }) => home)).toEqual([CUT]);
  expect(causeAt(state)).toBe(lastOf(state, 2));
});

test('where nothing is in the way, or nothing is there, there is no cause', () => {
  const state = on(pieces(), longer, cut());
  expect(causeOf(state, CUT)).toBeUndefined();
  expect(causeOf(state, 'none||none')).toBeUndefined();
});

test('a change that was in nobody’s way is no cause of anything', () => {
  const state = on(pieces(), cut(), named('Rear'));
  expect(state.answer.conflicts).toEqual([]);
  expect(causeAt(state)).toBeUndefined();
});

test('that a mark was made is none either, though with it taken back another would be as asked', () => {
  const strip = {
    ...{ name: 'Strip', calculation: 'toy-strip', rank: 2 },
    fields: { length: typed('50'), pitch: typed('24'), end: typed('1'), fit: typed('fill') },
  };
  const hem = { name: 'Hem', calculation: 'toy-hem', rank: 1, fields: { depth: typed('14') } };
  const press = (id: string, more: object): Action => ({
    ...{ do: 'make', home: HOLES, tape: TAPE, id, now: 1 },
    ...more,
  });
  const finer: Action = {
    ...{ do: 'choose', place: { work: 'strip', field: 'pitch' }, parts: typed('12'), now: 2 },
  };
  // The middle of three holes is the third of five; with one at 14 before it, it would be the second.
  const two = on(garmentOf({ works: { hem, strip } }), press('b', { rank: 1 }), finer);
  expect(two.answer.conflicts).toEqual([]);
  const also = [homeOf('hem', '', 'allowance')];
  for (const more of [{}, { also }]) {
    const { state } = act(two, press('a', { rank: 0, measured: mm(140), ...more }));
    expect(state.answer.conflicts.map(({ home }) => home)).toEqual([HOLES]);
    expect(state.answer.conflicts[0]?.facts).toContain('b');
    expect(causeOf(state, HOLES)?.change.what).not.toBe('make');
  }
});

test('made otherwise than was asked by then: what was changed before has not brought it', () => {
  const press = (id: string, measured?: number): Action => ({
    ...{ do: 'make', home: HOOKS, tape: TAPE, id, now: 1, ...(measured && { measured }) },
  });
  const top: Action = {
    ...{ do: 'choose', place: { work: 'hooks', field: 'top' }, parts: typed('2.2'), now: 0 },
  };
  const first = after({ ...punched, upTo: 1 } as Action, top, press('f1', 1.2 * CM));
  expect(first.answer.conflicts).toEqual([{ home: HOOKS, facts: ['f1'] }]);
  expect(causeOf(first, HOOKS)).toBeUndefined();
  // With another conflict before it in the garment, too.
  const two = on(
    pieces({ hooks: { ...(waistcoat.works.hooks as object), fields: hooksAlone } }),
    cut({ measured: mm(650) }),
    top,
    press('f1', 1.2 * CM),
  );
  expect(two.answer.conflicts.map(({ home }) => home)).toEqual([CUT, HOOKS]);
  expect(causeOf(two, HOOKS)).toBeUndefined();
});
const hooksAlone = {
  ...{ opening: typed('46.3'), count: typed('7'), top: typed('1.2'), bottom: typed('2.5') },
  ...{ by: typed('count'), ends: typed('given') },
};

test('a change that is of other works, too, is told: a hem put back that two pieces take', () => {
  const hem = { name: 'Hem', calculation: 'toy-hem', rank: 3, fields: { depth: typed('2') } };
  const bottom = [output('hem', 'allowance')];
  const both = { hem, back: piece(1, bottom as never), front: piece(2, bottom as never) };
  const state = on(
    pieces(both),
    { do: 'take off', work: 'hem', leave: 'number', now: 1 },
    cut(),
    { do: 'choose', place: { work: 'hem', field: 'depth' }, parts: typed('3'), now: 2 },
    { do: 'put back', work: 'hem', now: 3 },
  );
  expect(state.answer.conflicts.map(({ home }) => home)).toEqual([CUT]);
  expect(causeAt(state)).toBe(lastOf(state));
});

test('what was made and taken back since is no hindrance, and a measure of long ago hides no cause', () => {
  const front = homeOf('front', '', 'cut-length');
  const state = on(pieces(), cut(), longer, cut({ home: front, id: 'front' }), {
    do: 'unmake',
    fact: 'front',
    now: 4,
  });
  expect(causeAt(state)).toBe(state.log.find(({ what }) => what === 'choose')?.id);
  // Made so long ago that its press is no longer known; only that it was measured since.
  const measured = on(pieces(), cut(), longer, {
    ...{ do: 'measure', fact: 'cut', measured: mm(630.4), now: 5 },
  });
  const later = { ...measured, log: measured.log.slice(1) };
  expect(causeAt(later)).toBe(lastOf(later, 2));
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
