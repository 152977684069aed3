import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { readNow } from '../../src/garment/actions/make.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Begun, Fact, Garment } from '../../src/garment/record/record.ts';
import { mm } from '../../src/lengths/length.ts';
import { work, garment as works } from './materials/garments.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { HOOKS, waistcoat } from './trial/waistcoat.ts';

const now = 5;
const tape = 8000;
const [CUT, HOLES, ROW] = [
  homeOf('back', '', 'cut-length'),
  homeOf('strip', '', 'holes'),
  homeOf('follow', '', 'marks'),
];

/** Invented: a back that is cut, holes 1, 13, 25, 37 and 49 cm along a strip of 50, and a row that follows them. */
const garment: Garment = garmentOf({
  quantities: { long: { name: 'Back', kind: 'length', rank: 1, parts: typed('60') } },
  works: {
    back: {
      ...{ name: 'Back', calculation: 'toy-piece', rank: 1 },
      fields: { length: [quantity('long')], bottom: typed('2') },
    },
    strip: {
      ...{ name: 'Strip', calculation: 'toy-strip', rank: 2 },
      fields: {
        ...{ length: typed('50'), pitch: typed('12'), end: typed('1'), fit: typed('fill') },
      },
    },
    follow: {
      ...{ name: 'Hooks', calculation: 'toy-follow', rank: 3 },
      fields: { row: [{ link: { work: 'strip', output: 'holes' } }], by: typed('1') },
    },
  },
});
const START = begin(garment, KNOWN);
const on = (state: State, ...actions: readonly Action[]): State =>
  actions.reduce((so, action) => act(so, action).state, state);
const make = (id: string, more: object = {}, home = HOLES): Action => ({
  ...{ do: 'make', home, id, tape, now },
  ...more,
});
const choose = (work: string, field: string, text: string): Action => ({
  ...{ do: 'choose', place: { work, field }, parts: typed(text), now },
});
const factsIn = ({ record }: State) => record.facts as Readonly<Record<string, Fact>>;

test('a press keeps what stood on the key, what that was of, and nothing that was not said', () => {
  const { cut } = factsIn(on(START, make('cut', {}, CUT)));
  expect(cut).toStrictEqual({
    ...{ home: CUT, shown: mm(620), plan: mm(620), tape, rule: 1, when: now },
    read: expect.stringMatching(/^.+$/),
  });
  const { first } = factsIn(on(START, make('first', { measured: mm(12) })));
  expect(first).toMatchObject({ measured: mm(12), mark: { rank: 0, of: 5, asked: mm(10) } });
});

test('a mark is shown as the tape in hand can show it', () => {
  // 1 cm and 49 ÷ 3 of 48 is 16 1/3; on a tape of centimetres 16.
  const state = on(START, choose('strip', 'length', '51'), choose('strip', 'pitch', '16.4'));
  const { b } = factsIn(on(state, make('a'), make('b', { tape: mm(10) })));
  expect(b).toMatchObject({ shown: mm(170), tape: mm(10) });
  expect(b?.plan).toBeCloseTo(mm(10) + mm(490) / 3, 3);
});

test('what is counted has no tape', () => {
  const state = works({
    thread: work('thread', 'stitch=lock&by=table&end=3&waste=15&seams=300&spool=10000'),
  });
  const home = homeOf('thread', '', 'spools');
  expect(factsIn(on(state, make('f', {}, home))).f).toMatchObject({ home, shown: 1, tape: 0 });
});

test('one of several ids that is taken refuses them all, and nothing is made', () => {
  const taken = on(START, make('f-2', {}, CUT));
  const done = act(taken, make('f', { upTo: 3 }));
  expect(done).toEqual({ state: taken, refused: { why: 'id taken' } });
});

test('what can’t be made says why: it waits, it is to be decided, or there is no such mark', () => {
  const waits = on(START, { ...choose('', '', ''), place: { quantity: 'long' } } as Action);
  expect(act(waits, make('f', {}, CUT)).refused).toMatchObject({
    ...{ why: 'waits', home: CUT, trouble: { kind: 'waits', root: homeOf('long') } },
  });
  const open = on(START, make('a'), make('b', { measured: mm(150) }));
  expect(act(open, make('c')).refused).toEqual({ why: 'undecided' });
  const mark = { why: 'not there', what: 'mark' };
  expect(act(START, make('f', { upTo: 0 })).refused).toEqual(mark);
  expect(act(START, make('f', { rank: 5 })).refused).toEqual(mark);
  const begun = on(START, make('a', { rank: 1 }));
  expect(act(begun, make('b', { rank: 1 })).refused).toEqual(mark);
  expect(act(begun, make('b', { shown: mm(10) })).refused).toBeUndefined();
});

test('the next mark is the first to come; up to one, all to come before it', () => {
  const second = on(START, make('b', { rank: 1 }));
  const ranks = (state: State) =>
    Object.entries(factsIn(state)).map(([id, { mark }]) => [id, mark?.rank]);
  expect(ranks(on(second, make('a')))).toEqual([
    ['b', 1],
    ['a', 0],
  ]);
  expect(ranks(on(second, make('c', { upTo: 4 })))).toEqual([
    ['b', 1],
    ['c-1', 0],
    ['c-2', 2],
    ['c-3', 3],
  ]);
});

test('a mark remembers where it was asked, also where the row goes on otherwise', () => {
  const off = on(START, make('a'), make('b', { measured: mm(135) }));
  const asBegun = on(off, { do: 'decide', home: HOLES, way: 'as-begun', now }, make('c'));
  // Asked at 25 cm; half a centimetre on, as it was begun.
  expect(factsIn(asBegun).c).toMatchObject({
    ...{ plan: mm(255), mark: { rank: 2, of: 5, asked: mm(250) } },
  });
  // One more is not what is asked: its places are those of the way that was taken.
  const more = on(off, { do: 'decide', home: HOLES, way: 'count:6', now }, make('c'));
  const { c } = factsIn(more);
  expect(c?.mark).toEqual({ rank: 2, of: 6, asked: c?.plan });
});

test('a row keeps from its first mark on how it was begun, and by what', () => {
  const { begun } = on(START, make('a')).record;
  const row = {
    count: 5,
    points: [
      [0, mm(10)],
      [4, mm(490)],
    ],
  };
  expect(begun).toStrictEqual({ [HOLES]: { ...row, by: { pitch: mm(120), fit: 'fill' } } });
  // Of seven hooks by their count no pitch is asked, and none is kept.
  const hooks = on(begin(waistcoat, KNOWN), make('h', {}, HOOKS)).record.begun[HOOKS] as Begun;
  expect(hooks.by).toStrictEqual({ by: 'count', count: 7, ends: 'given' });
  // A row that follows another keeps only that it does.
  expect(on(START, make('a', {}, ROW)).record.begun[ROW]).toMatchObject({
    by: { row: 'followed' },
  });
  expect(on(START, make('cut', {}, CUT)).record.begun).toEqual({});
});

test('with the last mark that is taken back goes what the row began with, and what was decided of it', () => {
  const off = on(START, make('a'), make('b', { measured: mm(150) }), make('cut', {}, CUT));
  const decided = on(off, { do: 'decide', home: HOLES, way: 'spread', now });
  const one = on(decided, { do: 'unmake', fact: 'a', now });
  expect(Object.keys(one.record.facts)).toEqual(['b', 'cut']);
  expect(one.record.begun).toBe(decided.record.begun);
  expect(one.record.decisions).toBe(decided.record.decisions);
  const none = on(one, { do: 'unmake', fact: 'b', now });
  expect([none.record.begun, none.record.decisions]).toEqual([{}, {}]);
  expect(Object.keys(none.record.facts)).toEqual(['cut']);
});

test('a fact that can’t be read is taken back alone', () => {
  const made = on(START, make('a')).record;
  const facts = { ...made.facts, none: null, bare: { shown: 1 }, odd: { home: 7 } };
  const broken = begin({ ...made, facts }, KNOWN);
  for (const fact of ['none', 'bare', 'odd']) {
    const { state, refused } = act(broken, { do: 'unmake', fact, now });
    expect(refused).toBeUndefined();
    const { [fact as 'none']: _, ...left } = facts;
    expect(state.record.facts).toEqual(left);
    expect(state.record.begun).toBe(made.begun);
  }
  expect(act(broken, { do: 'unmake', fact: 'gone', now }).refused).toEqual({
    ...{ why: 'not there', what: 'fact' },
  });
});

test('what a step reads now is what a fact of just that has read; of nothing it is nothing', () => {
  const state = on(START, make('cut', {}, CUT));
  expect(readNow(state.answer, CUT)).toBe(factsIn(state).cut?.read);
  expect(readNow(START.answer, CUT)).toBe(factsIn(state).cut?.read);
  const longer = on(state, { ...choose('', '', '61'), place: { quantity: 'long' } } as Action);
  expect(readNow(longer.answer, CUT)).not.toBe(factsIn(state).cut?.read);
  expect(readNow(state.answer, homeOf('none', '', 'x'))).toBe('');
  const measured = on(START, {
    ...{ do: 'measure', quantity: 'long', measured: mm(610), id: 'm', tape, now },
  });
  expect(readNow(measured.answer, homeOf('long'))).toBe('');
});
