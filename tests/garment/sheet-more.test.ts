import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Kept } from '../../src/garment/record/record.ts';
import { madeRow, rowOf } from '../../src/garment/sheet/row.ts';
import { sheetOf } from '../../src/garment/sheet/sheet.ts';
import { mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';
import { CUTS } from './trial/cuts.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { HOOKS, waistcoat } from './trial/waistcoat.ts';

const now = 5;
const tape = 8000;
const ALLOWANCE = homeOf('hem', '', 'allowance');
const FIRST = homeOf('hem', '', 'first-turn');

/** Invented: a hem turned twice, a back that takes it on two sides, and works that are not on the sheet. */
const coat = garmentOf({
  quantities: { long: { name: 'Back', kind: 'length', rank: 1, parts: typed('60') } },
  works: {
    hem: {
      ...{ name: 'Hem', calculation: 'toy-hem', rank: 1 },
      fields: { depth: typed('2'), turned: typed('twice'), turn: typed('1') },
    },
    back: {
      ...{ name: 'Back', calculation: 'toy-piece', rank: 2, sides: ['left', 'right'] },
      fields: {
        length: [quantity('long')],
        width: typed('40'),
        bottom: [output('hem', 'allowance')],
      },
    },
    off: { name: 'Off', calculation: 'toy-hem', rank: 3, fields: { depth: typed('2') }, off: true },
    lattice: { name: 'Lattice', calculation: 'lattice', rank: 4, fields: {} },
  },
});
const after = (...actions: readonly Action[]): State =>
  actions.reduce((state, action) => act(state, action).state, begin(coat, KNOWN));
const sheet = (state: State) => sheetOf(state.record, state.answer);

test('a sheet has every step in its stage, what works give beside them, and each side that is drawn', () => {
  const { stages, gives, works, quantities, made, of, pending, name, invented } = sheet(after());
  expect(stages.map(({ stage, steps }) => [stage, steps.map(({ step }) => step.home)])).toEqual([
    [
      'cut',
      ['left', 'right'].flatMap((side) => [
        homeOf('back', side, 'cut-width'),
        homeOf('back', side, 'cut-length'),
      ]),
    ],
    ['turn-up', [FIRST, ALLOWANCE]],
  ]);
  // A hem that is closed nowhere has no fullness: it waits for its round.
  expect(gives.map(({ home, number }) => [home, number.is])).toEqual([
    [homeOf('hem', '', 'fullness'), 'waits'],
    [homeOf('back', 'left', 'finished-length'), 'sure'],
    [homeOf('back', 'right', 'finished-length'), 'sure'],
  ]);
  expect(works).toEqual([
    { id: 'hem', side: '' },
    { id: 'back', side: 'left' },
    { id: 'back', side: 'right' },
  ]);
  expect(quantities).toMatchObject([
    { id: 'long', number: { is: 'sure', value: mm(600), off: 0 } },
  ]);
  expect({ made, of, pending, name, invented }).toEqual({
    ...{ made: 0, of: 6, pending: false, name: coat.name, invented: true },
  });
  expect(stages[0]?.steps[1]).toMatchObject({
    ...{ made: false, kind: 'length', number: { is: 'sure', value: mm(630), off: 0 } },
  });
});

test('what an option takes away, here or where it comes from, is not on the sheet', () => {
  const follow = {
    ...{ name: 'Facing', calculation: 'toy-hem', rank: 5 },
    fields: { depth: typed('1'), round: [output('hem', 'first-turn')], above: typed('1') },
  };
  const once = {
    ...(coat.works.hem as object),
    fields: { depth: typed('2'), turned: typed('once') },
  };
  const absent = begin({ ...coat, works: { ...coat.works, hem: once, follow } }, KNOWN);
  const homes = sheet(absent).gives.map(({ home }) => home);
  expect(homes).not.toContain(homeOf('follow', '', 'fullness'));
  const there = begin({ ...coat, works: { ...coat.works, follow } }, KNOWN);
  expect(sheet(there).gives.map(({ home }) => home)).toContain(homeOf('follow', '', 'fullness'));
  // What waits for something else is on it.
  const gone = { ...follow, fields: { ...follow.fields, round: [quantity('none')] } };
  const waits = begin({ ...coat, works: { ...coat.works, follow: gone } }, KNOWN);
  expect(sheet(waits).gives.at(-1)).toMatchObject({
    ...{ home: homeOf('follow', '', 'fullness'), number: { is: 'waits' } },
  });
});

test('what a number takes away has nothing on the sheet, nor has what is said of it', () => {
  const known = new Map([...KNOWN, [CUTS.id, CUTS] as const]);
  const given = (turn: string) => {
    const work = { name: 'Cuts', calculation: CUTS.id, rank: 1 };
    const fields = { length: typed('60'), turn: typed(turn) };
    const state = begin(garmentOf({ works: { cuts: { ...work, fields } } }), known);
    return sheet(state).gives.map(({ home }) => home);
  };
  const [folded, pressed] = ['folded', 'pressed'].map((key) => homeOf('cuts', '', key));
  expect(given('1')).toEqual([folded, pressed]);
  expect(given('0')).toEqual([folded]);
});

test('a number behind which a decision is open is on the sheet without one, a measure of the garment too', () => {
  const eyes = {
    ...{ name: 'Eyes', calculation: 'toy-follow', rank: 9 },
    fields: { row: [output('hooks', 'marks')], by: typed('0') },
  };
  const many = { name: 'Eyes to sew', kind: 'count', rank: 9, parts: [output('eyes', 'count')] };
  const record = {
    ...waistcoat,
    ...{ works: { ...waistcoat.works, eyes }, quantities: { ...waistcoat.quantities, many } },
  };
  const on = (state: State) => sheet(state).quantities.find(({ id }) => id === 'many')?.number;
  const planned = begin(record, KNOWN);
  expect(on(planned)).toEqual({ is: 'sure', value: 7, off: 0 });
  const hook = { do: 'make', home: HOOKS, id: 'f', tape, now, measured: mm(20) } as const;
  const open = act(planned, hook).state;
  expect(on(open)).toEqual({ is: 'undecided' });
  const gives = sheet(open).gives.find(({ home }) => home === homeOf('eyes', '', 'count'));
  expect(gives).toEqual({
    ...{ home: homeOf('eyes', '', 'count'), kind: 'count', number: { is: 'undecided' } },
  });
  const steps = sheet(open).stages.flatMap((stage) => stage.steps);
  const hooks = steps.find(({ step }) => step.home === HOOKS);
  expect(hooks).toMatchObject({ kind: 'run', number: { is: 'undecided', row: {} } });
});

test('a step that waits is on the sheet as one, and beside a row what is made of it', () => {
  const waits = (facts: object) => {
    const front = { ...(waistcoat.quantities.front as object), parts: typed('') };
    const quantities = { ...waistcoat.quantities, front };
    const state = begin({ ...waistcoat, quantities, facts: facts as Kept }, KNOWN);
    const steps = sheet(state).stages.flatMap((stage) => stage.steps);
    return steps.find(({ step }) => step.home === HOOKS)?.number;
  };
  const none = waits({});
  expect(none).toMatchObject({ is: 'waits', trouble: { kind: 'waits' } });
  expect(none).not.toHaveProperty('row');
  const hook = {
    ...{ home: HOOKS, shown: mm(12), plan: mm(12), tape, rule: 1, read: '', when: now },
    mark: { rank: 0, of: 7, asked: mm(12) },
  };
  expect(waits({ f: hook })).toMatchObject({ is: 'waits', row: { marks: [{ at: mm(12) }] } });
});

test('made with a tape a number is as sure as that; wholly made no decision behind it moves it', () => {
  const made = after({ do: 'make', home: FIRST, id: 'f', tape, now } as Action);
  const steps = sheet(made).stages.at(-1)?.steps;
  expect(steps?.[0]).toMatchObject({
    ...{ made: true, number: { is: 'sure', value: mm(10), off: mm(0.5) } },
  });
  const typing = after({
    ...{ do: 'type', place: { quantity: 'long' }, parts: typed('61'), now },
  } as Action);
  expect(sheet(typing).pending).toBe(true);
});

const mark = (at: number, more: object = {}) => ({
  ...{ at: mm(at), label: `m${at}`, kind: 'hole' as const },
  ...more,
});
const run = (marks: readonly object[]): Run =>
  ({ datum: 'cut-end', length: mm(900), marks }) as unknown as Run;
const even = (count: number, step = 10) => Array.from({ length: count }, (_, i) => mark(i * step));

test('of up to 40 marks each has a box, and nothing is said of what lies between', () => {
  const row = rowOf(run(even(40)), undefined, false);
  expect(row.ticks).toHaveLength(40);
  expect(row.between).toBeUndefined();
  expect(rowOf(run(even(41)), undefined, false).ticks).toEqual([0, 9, 19, 29, 39, 40]);
});

test('of a longer row a mark has one, too, where it turns from made to planned, of kind, across, or of space', () => {
  const boxes = (marks: readonly object[], made?: readonly (string | undefined)[]) =>
    rowOf(run(marks), made, false).ticks.map((rank) => rank + 1);
  const always = [1, 10, 20, 30, 40, 50];
  const fifty = even(50);
  expect(boxes(fifty)).toEqual(always);
  expect(boxes(fifty, ['a', 'b', 'c'])).toEqual([1, 3, ...always.slice(1)]);
  const kind = fifty.map((one, i) => (i >= 24 ? { ...one, kind: 'corner' } : one));
  expect(boxes(kind)).toEqual([1, 10, 20, 24, 30, 40, 50]);
  const across = fifty.map((one, i) => (i >= 24 ? { ...one, across: 8 } : one));
  expect(boxes(across)).toEqual([1, 10, 20, 24, 30, 40, 50]);
  const wider = fifty.map((one, i) => (i >= 24 ? { ...one, at: mm(10 * i + 2) } : one));
  expect(boxes(wider)).toEqual([1, 10, 20, 24, 25, 30, 40, 50]);
  // A twentieth of a millimetre is no other space.
  const nearly = fifty.map((one, i) => (i >= 24 ? { ...one, at: mm(10 * i + 0.05) } : one));
  expect(boxes(nearly)).toEqual(always);
});

test('what lies between is said of the marks without a box, from the one before', () => {
  const wider = even(50).map((one, i) => (i >= 9 ? { ...one, at: mm(10 * i + 30) } : one));
  // The ninth and the tenth have boxes: their space of 40 is seen.
  const row = rowOf(run(wider), undefined, false);
  expect(row.ticks.slice(0, 3)).toEqual([0, 8, 9]);
  expect(row.between).toEqual({ least: mm(10), most: mm(10) });
});

test('of spaces that grow from mark to mark the least and the most are told, from a box and to one', () => {
  const space = (i: number) => mm(10) + i * mm(0.04);
  // The sum of the spaces before each.
  const places = Array.from({ length: 41 }, (_, i) => i * space((i - 1) / 2));
  const row = rowOf(run(places.map((at) => ({ ...mark(0), at }))), undefined, false);
  expect(row.ticks).toEqual([0, 9, 19, 29, 39, 40]);
  expect(row.between).toEqual({ least: space(0), most: space(38) });
});

test('a mark says where it is across, and whether it is made', () => {
  const row = rowOf(run([mark(1, { across: 7 }), mark(2)]), ['a'], false);
  expect(row.marks).toEqual([
    { at: mm(1), label: 'm1', kind: 'hole', made: true, across: 7 },
    { at: mm(2), label: 'm2', kind: 'hole', made: false },
  ]);
  expect(rowOf(run(even(3)), ['a', undefined, 'c'], true).marks.map(({ at }) => at)).toEqual([
    0,
    mm(20),
  ]);
});

test('made marks alone are numbered as they were, and the row is as long as the last', () => {
  const fact = (rank: number | undefined, at: number) => ({
    id: `f${at}`,
    fact: {
      ...{ home: 'x||y', shown: mm(at), plan: mm(at), tape, rule: 1, read: '', when: 1 },
      ...(rank !== undefined && { mark: { rank, of: 9, asked: 0 } }),
    },
  });
  expect(madeRow([], 'zero')).toBeUndefined();
  expect(madeRow([fact(2, 20), fact(undefined, 50), fact(4, 80)], 'top-edge')).toEqual({
    ...{ datum: 'top-edge', length: mm(80), ticks: [0, 1, 2], between: undefined },
    marks: [
      { at: mm(20), label: '3', kind: 'measure', made: true },
      { at: mm(50), label: '2', kind: 'measure', made: true },
      { at: mm(80), label: '5', kind: 'measure', made: true },
    ],
  });
});
