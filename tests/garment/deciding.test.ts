import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { waysOutOf } from '../../src/garment/actions/decide.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { HOLES, HOOKS, waistcoat } from './trial/waistcoat.ts';

const now = 5;
const tape = 8000;
const CUT = homeOf('back', '', 'cut-length');
/** Invented: a back as long as a number that was read to 2 mm. */
const back = garmentOf({
  quantities: {
    ...{ long: { name: 'Back', kind: 'length', rank: 1, parts: typed('60'), plusMinus: mm(2) } },
  },
  works: {
    back: {
      ...{ name: 'Back', calculation: 'toy-piece', rank: 1 },
      fields: { length: [quantity('long')], bottom: typed('2') },
    },
  },
});
const on = (record: typeof back, ...actions: readonly Action[]): State =>
  actions.reduce((state, action) => act(state, action).state, begin(record, KNOWN));
const make = (id: string, home: string, more: object = {}): Action => ({
  ...{ do: 'make', home, id, tape, now },
  ...more,
});
const long = (text: string): Action => ({
  ...{ do: 'choose', place: { quantity: 'long' }, parts: typed(text), now },
});
const decide = (home: string, way: string, more: object = {}): Action => ({
  ...{ do: 'decide', home, way, now },
  ...more,
});
const noted = (state: State, more: object = {}) =>
  act(state, decide(CUT, 'noted', more)).state.record.decisions[CUT];

test('there is no way out where nothing is made, or made without a number, nor while nothing is asked', () => {
  const ways = (state: State, home: string) => waysOutOf(state, home).map(({ way }) => way);
  expect(ways(on(back), CUT)).toEqual([]);
  expect(ways(on(back), 'none||none')).toEqual([]);
  const cut = make('cut', CUT, { measured: mm(650) });
  expect(ways(on(back, cut), CUT)).toEqual(['noted']);
  expect(ways(on(back, cut, long('')), CUT)).toEqual([]);
  const before: Action = { do: 'make before', homes: [HOOKS], id: 'b', now };
  expect(ways(on(waistcoat, before), HOOKS)).toEqual([]);
});

test('that a piece is as it is answers its fact, what is asked, and how sure both are', () => {
  const cut = (measured: number, by: number, more: object = {}) =>
    noted(on(back, make('cut', CUT, { measured, tape: by })), more);
  // The number that was read is known to 2 mm, which is more than half a graduation.
  const answer = { way: 'noted', facts: ['cut'], asked: mm(620), tolerance: mm(2) };
  expect(cut(mm(650), mm(1))).toStrictEqual(answer);
  expect(cut(mm(650), mm(10))).toStrictEqual({ ...answer, tolerance: mm(5) });
  const allow = mm(3);
  expect(cut(mm(650), mm(1), { allow })).toStrictEqual({ ...answer, tolerance: allow, allow });
});

test('of a row it names every fact, in whatever order the marks were made', () => {
  const press = (id: string, measured?: number): Action =>
    make(id, HOOKS, measured === undefined ? {} : { measured });
  const state = on(waistcoat, press('c'), press('a', mm(95)), decide(HOOKS, 'spread'));
  expect(state.record.decisions[HOOKS]).toMatchObject({ way: 'spread', facts: ['a', 'c'] });
});

test('only what is open is decided: not beside it, nor by a way that isn’t there', () => {
  const open = on(
    { ...waistcoat, works: { ...waistcoat.works, ...back.works }, quantities: waistcoatAndBack },
    make('a', HOOKS),
    make('b', HOOKS, { measured: mm(95) }),
    make('h', HOLES),
    make('cut', CUT),
  );
  expect(open.answer.conflicts.map(({ home }) => home)).toEqual([HOOKS]);
  for (const [home, way] of [
    [HOLES, 'spread'],
    [CUT, 'noted'],
    ['none||none', 'noted'],
  ] as const) {
    const { refused } = act(open, decide(home, way));
    expect(refused).toEqual({ why: 'not there', what: 'conflict' });
  }
  expect(act(open, decide(HOOKS, 'noted')).refused).toEqual({ why: 'not there', what: 'way' });
});
const waistcoatAndBack = { ...waistcoat.quantities, ...back.quantities };
