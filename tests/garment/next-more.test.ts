import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { shownOn } from '../../src/garment/actions/make.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { afterNext, besides, type Next, nextCut, nextOf } from '../../src/garment/next/next.ts';
import { workLines } from '../../src/garment/next/work-lines.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, output, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { HOLES, HOOKS, waistcoat } from './trial/waistcoat.ts';

const now = 1;
const TAPE = 8000;
const at = (id: string, key: string, side = '') => homeOf(id, side, key);

/** Invented: a hem, and strips for both sides that lace takes its holes from. */
const hem = (depth: string, rank: number) => ({
  ...{ name: 'Hem', calculation: 'toy-hem', rank },
  fields: { depth: typed(depth), turned: typed('twice') },
});
const strips = {
  ...{ name: 'Strips', calculation: 'toy-strip', rank: 2, sides: ['left', 'right'] },
  fields: { length: typed('20'), pitch: typed('5'), end: typed('5'), fit: typed('fill') },
  own: { right: { length: typed('20') } },
};

const pressed = (state: State, home: string, more: object = {}) =>
  act(state, {
    ...{ do: 'make', home, tape: TAPE, id: `f${state.record.edits}`, now },
    ...more,
  } as Action).state;
const on = (value: number) => shownOn(TAPE, undefined, value);
function keyAt(state: State, home: string) {
  const next = nextOf(state.answer, home);
  if (next.kind !== 'step') throw new Error(next.kind);
  return next;
}
const homes = (steps: readonly { home: string }[]) => steps.map(({ home }) => home);

test('with all made the key asks about what was made otherwise, and else says that all is', () => {
  const works = { hem: hem('2', 1) };
  const [first, allowance] = [at('hem', 'first-turn'), at('hem', 'allowance')];
  const begun = pressed(begin(garmentOf({ works }), KNOWN), first, { measured: mm(25) });
  const all = pressed(begun, allowance);
  expect(nextOf(all.answer)).toEqual({ kind: 'decide', home: first });
  const noted = act(all, { do: 'decide', home: first, way: 'noted', now }).state;
  expect(nextOf(noted.answer)).toEqual({ kind: 'all made' });
});

test('after the only step that is still to be made none comes, nor one that is passed over', () => {
  const [first, allowance] = [at('hem', 'first-turn'), at('hem', 'allowance')];
  const state = begin(garmentOf({ works: { hem: hem('2', 1) } }), KNOWN);
  expect(afterNext(state.answer, first)).toBe(allowance);
  expect(afterNext(state.answer, allowance)).toBe(first);
  expect(afterNext(pressed(state, first).answer, allowance)).toBeUndefined();
  const passed = act(state, { do: 'pass', home: first, over: true, now }).state;
  expect(afterNext(passed.answer, allowance)).toBeUndefined();
});

test('the number behind is of the same work and side, and still to be made', () => {
  const sided = { ...hem('2', 2), sides: ['left', 'right'], own: { right: { depth: typed('3') } } };
  const works = { other: hem('5', 1), hem: sided, last: hem('7', 3) };
  const state = begin(garmentOf({ works }), KNOWN);
  const right = at('hem', 'first-turn', 'right');
  const behind = at('hem', 'allowance', 'right');
  expect(keyAt(state, right).after).toEqual({ home: behind, value: mm(60) });
  expect(keyAt(state, behind).after).toBeUndefined();
  expect(keyAt(pressed(state, behind), right).after).toBeUndefined();
  // What follows them is of the other side, and of another work.
  expect(keyAt(state, at('hem', 'allowance', 'left')).after).toBeUndefined();
  expect(keyAt(state, at('other', 'allowance')).after).toBeUndefined();
  // Of a row that comes next no one number is the next.
  expect(keyAt(begin(waistcoat, KNOWN), at('strip', 'cut')).after).toBeUndefined();
});

test('the mark before stands where it is made', () => {
  const state = begin(waistcoat, KNOWN);
  expect(keyAt(state, HOOKS).mark).toEqual({ rank: 0, before: undefined });
  expect(keyAt(pressed(state, HOOKS), HOOKS).mark).toEqual({ rank: 1, before: mm(12) });
});

test('what waits for a decision of another work shows that one', () => {
  const state = pressed(begin(waistcoat, KNOWN), at('strip', 'cut'), { measured: mm(630) });
  const holes = pressed(pressed(state, HOLES), HOLES, { measured: mm(13) });
  expect(nextOf(holes.answer, at('lace', 'lace'))).toEqual({ kind: 'decide', home: HOLES });
});

test('what waits for a row under way whose number is gone says that nothing is decided there', () => {
  const row = pressed(begin(waistcoat, KNOWN), HOLES);
  const place = { quantity: 'armhole' };
  const gone = act(row, { do: 'choose', place, parts: typed(''), now }).state;
  const lace = at('lace', 'lace');
  expect(gone.answer.conflicts).toEqual([]);
  expect(nextOf(gone.answer, lace)).toMatchObject({
    ...{ kind: 'missing', step: { home: lace }, trouble: { kind: 'undecided' } },
  });
});

test('with one press goes the same step of another side: of the same number, and the same mark', () => {
  const works = { strips, hem: hem('20', 1) };
  const state = begin(garmentOf({ works }), KNOWN);
  const [left, right] = ['left', 'right'].map((side) => at('strips', 'cut', side)) as [
    string,
    string,
  ];
  const with_ = (so: State, home: string) => homes(besides(so.answer, keyAt(so, home), on));
  expect(with_(state, left)).toEqual([right]);
  expect(with_(state, right)).toEqual([left]);
  expect(with_(state, at('hem', 'first-turn'))).toEqual([]);
  expect(with_(pressed(state, right), left)).toEqual([]);
  const longer = { ...strips, own: { right: { length: typed('21') } } };
  expect(with_(begin(garmentOf({ works: { strips: longer } }), KNOWN), left)).toEqual([]);
  const unread = { ...strips, own: { right: { length: typed('') } } };
  expect(with_(begin(garmentOf({ works: { strips: unread } }), KNOWN), left)).toEqual([]);
  const [holes, others] = ['left', 'right'].map((side) => at('strips', 'holes', side)) as [
    string,
    string,
  ];
  expect(with_(state, holes)).toEqual([others]);
  expect(with_(pressed(state, others), holes)).toEqual([]);
  // The second mark of one side is where the first of the other is.
  const on10 = { ...strips, own: { right: { length: typed('30'), end: typed('10') } } };
  const one = pressed(begin(garmentOf({ works: { strips: on10 } }), KNOWN), holes);
  expect([keyAt(one, holes).value, keyAt(one, others).value]).toEqual([mm(100), mm(100)]);
  expect(with_(one, holes)).toEqual([]);
});

test('nor does another step that comes to the same number', () => {
  const square = {
    ...{ name: 'Square', calculation: 'toy-piece', rank: 1, sides: ['left', 'right'] },
    fields: { length: typed('60'), width: typed('60') },
  };
  const state = begin(garmentOf({ works: { square } }), KNOWN);
  const [left, right] = ['left', 'right'].map((side) => at('square', 'cut-width', side));
  expect(homes(besides(state.answer, keyAt(state, left ?? ''), on))).toEqual([right]);
});

test('before what can’t be undone the next such step is told, round to the first, made and passed over left out', () => {
  const works = { strips, last: { ...strips, rank: 3, sides: undefined, own: undefined } };
  const state = begin(garmentOf({ works }), KNOWN);
  const [left, right, last] = [
    ...['left', 'right'].map((side) => at('strips', 'cut', side)),
    at('last', 'cut'),
  ] as [string, string, string];
  const cutAfter = (so: State, home: string) => nextCut(so.answer, keyAt(so, home))?.home;
  expect(cutAfter(state, left)).toBe(right);
  expect(cutAfter(state, last)).toBe(left);
  expect(cutAfter(pressed(state, right), left)).toBe(last);
  const passed = act(state, { do: 'pass', home: right, over: true, now }).state;
  expect(cutAfter(passed, left)).toBe(last);
  const only = pressed(pressed(state, left), right);
  // The step itself is one that can't be undone.
  expect(cutAfter(only, last)).toBe(last);
  expect(cutAfter(pressed(only, last), at('last', 'holes'))).toBeUndefined();
  const decide: Next = { kind: 'decide', home: left };
  expect(nextCut(state.answer, decide)?.home).toBe(right);
  expect(nextCut(state.answer, { kind: 'all made' })?.home).toBe(left);
});

test('a work as a line: how far it is, what is in the way, and the number it is known by', () => {
  const lines = (state: State) =>
    workLines(state.answer).map(({ steps: _, shows, ...line }) => ({
      ...line,
      shows: shows && { ...shows, value: typeof shows.value === 'number' ? shows.value : 'row' },
    }));
  const works = {
    hem: hem('2', 1),
    strip: { ...strips, sides: undefined, own: undefined },
    off: { ...hem('9', 3), off: true },
    lattice: { name: 'Lattice', calculation: 'lattice', rank: 4, fields: {} },
    follow: {
      ...{ name: 'Hooks', calculation: 'toy-follow', rank: 5 },
      fields: { row: [output('strip', 'holes')], by: typed('1') },
    },
    bare: { ...hem('', 6), name: 'Bare' },
  };
  const state = begin(garmentOf({ works }), KNOWN);
  const open = { state: 'open', conflict: false, waits: false } as const;
  const [first, allowance] = [at('hem', 'first-turn'), at('hem', 'allowance')];
  const holes = at('strip', 'holes');
  const hemLine = { id: 'hem', name: 'Hem', ...open };
  const [bareFirst] = lines(state).slice(-1);
  expect(lines(state).slice(0, 4)).toEqual([
    { ...hemLine, shows: { home: first, kind: 'length', value: mm(20), made: [] } },
    {
      ...{ id: 'strip', name: 'Strips', ...open },
      shows: { home: holes, kind: 'run', value: 'row', made: [false, false, false] },
    },
    { id: 'lattice', name: 'Lattice', ...open, waits: true, shows: undefined },
    {
      ...{ id: 'follow', name: 'Hooks', ...open },
      shows: {
        home: at('follow', 'marks'),
        kind: 'run',
        value: 'row',
        made: [false, false, false],
      },
    },
  ]);
  expect(bareFirst).toMatchObject({ id: 'bare', waits: true, shows: undefined });

  const hole = pressed(pressed(state, first, { measured: mm(25) }), holes);
  expect(lines(hole).slice(0, 2)).toEqual([
    {
      ...hemLine,
      ...{ state: 'begun', conflict: true },
      shows: { home: allowance, kind: 'length', value: mm(45), made: [] },
    },
    {
      ...{ id: 'strip', name: 'Strips', ...open, state: 'begun' },
      shows: { home: holes, kind: 'run', value: 'row', made: [true, false, false] },
    },
  ]);
  const done = pressed(hole, allowance);
  expect(lines(done)[0]).toMatchObject({
    state: 'done',
    shows: { home: first, value: mm(25) },
  });
  // The same line as long as nothing of its work is otherwise.
  expect(workLines(done.answer)[1]).toBe(workLines(hole.answer)[1]);
  expect(workLines(done.answer)[0]).not.toBe(workLines(hole.answer)[0]);
  const steps = workLines(state.answer)[1]?.steps ?? [];
  expect(homes(steps)).toEqual([at('strip', 'cut'), holes]);
});

test('a line has its steps as they are made, where a side is made apart, and waits while one lacks its number', () => {
  const movedSides = { left: { cut: { stage: 'edge', rank: 9 } } };
  const works = {
    strips: { ...strips, movedSides },
    piece: {
      ...{ name: 'Piece', calculation: 'toy-piece', rank: 3 },
      fields: { length: typed('60') },
    },
  };
  const [apart, piece] = workLines(begin(garmentOf({ works }), KNOWN).answer);
  expect(homes(apart?.steps ?? [])).toEqual(
    ['right', 'left'].flatMap((side) => [at('strips', 'cut', side), at('strips', 'holes', side)]),
  );
  expect(piece).toMatchObject({
    waits: true,
    shows: { home: at('piece', 'cut-length'), value: mm(600) },
  });
});
