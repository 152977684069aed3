import { expect, test } from 'vitest';
import type { Calculation, NamedRun } from '../../src/calculation/calculation.ts';
import { planOf } from '../../src/calculation/made.ts';
import type { Held } from '../../src/calculation/page.ts';
import { stateOf } from '../../src/calculation/parted.ts';
import { closures } from '../../src/calculations/closures/closures.ts';
import { edging } from '../../src/calculations/edging/edging.ts';
import type { Kept, KeptRun } from '../../src/garment/garment.ts';
import * as garment from '../../src/garment/kept.ts';
import { benchOf } from '../controls/helpers.ts';

const CM = 80_000;
const bench = benchOf();

/** Of what an address holds, fields and page together. */
const keptOf = (of: Calculation, held: Held, on = bench, before?: Kept) =>
  garment.keptOf(of, stateOf(held), on, before);
const isMeasuredElsewhere = (of: Calculation, held: Held, on = bench, before?: Kept) =>
  garment.isMeasuredElsewhere(of, stateOf(held), on, before);

/** Three hooks at 1, 15.5 and 30 cm along 31 cm, their ends given. */
const hooks: Held = {
  ...closures.start(bench),
  ...{ u: 'cm', opening: '31', count: '3', by: 'count', ends: 'given', top: '1', bottom: '1' },
};
const PLANNED = { '1': CM, '2': 15.5 * CM, '3': 30 * CM };
const keptWith = (...runs: KeptRun[]): Kept => ({
  id: 'k',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  draft: hooks,
  runs,
});
const madeOf = (draft: Held, before?: Kept) => keptOf(closures, draft, bench, before).runs[0]?.made;
const rowOf = (draft: Held): NamedRun => {
  const work = closures.work(stateOf(draft).draft, bench);
  const [row] = work.ok ? work.answer.runs : [];
  if (!row) throw new Error('no row');
  return row;
};

test('what is kept is what was typed, where its marks are planned, and what was measured of them', () => {
  const kept = keptOf(closures, { ...hooks, made: '2=15.8' }, bench, undefined);
  expect(kept).toEqual({
    calculation: 'closures',
    draft: hooks,
    runs: [{ planned: PLANNED, made: { '2': '15.8 cm' } }],
  });
});

test('a measure has the unit of what was typed, written out', () => {
  const inches: Held = { ...hooks, u: 'in', opening: '12', made: '2=6 1/4' };
  const { runs } = keptOf(closures, inches, benchOf({ unit: 'in' }), undefined);
  expect(runs[0]?.made).toEqual({ '2': '6 1/4 in' });
  // Of a draft that says no unit nothing is known: the measure stays as typed.
  const { u: _, ...without } = hooks;
  expect(madeOf({ ...without, made: '2=15.8' })).toEqual({ '2': '15.8' });
});

test('where it is kept, what is followed and which mark is counted are not typed', () => {
  const page = { kept: 'coat.k', counting: '1', at: '2', plan: 'q', asked: '2=9', run: '1' };
  expect(keptOf(closures, { ...hooks, ...page }, bench, undefined).draft).toEqual(hooks);
  // A key that only begins or ends like one of them is no page’s.
  const other = { ...hooks, keptback: '1', recounting: '1' };
  expect(keptOf(closures, other, bench, undefined).draft).toEqual(other);
});

test('a draft without an answer keeps what is made as it was', () => {
  const before = keptWith({ planned: PLANNED, made: { '1': '' } }, { planned: {}, made: {} });
  const { draft, runs } = keptOf(closures, { ...hooks, opening: '31 and' }, bench, before);
  expect(runs).toEqual(before.runs);
  expect(draft.opening).toBe('31 and');
});

test('of two rows changed to one the second stays while something of it is made', () => {
  const strip: Held = { ...edging.start(bench), u: 'cm', rows: 'level' };
  const both = keptOf(edging, strip, bench, undefined);
  expect(both.runs).toHaveLength(2);
  const [first, second] = both.runs;
  if (!first || !second) throw new Error('not two rows');
  const one = { ...strip, rows: 'one' };
  const base = { ...keptWith(), calculation: 'edging', draft: strip };
  expect(keptOf(edging, one, bench, { ...base, runs: both.runs }).runs).toHaveLength(1);
  const punched = { ...second, made: { '1': '' } };
  const anew = keptOf(edging, one, bench, { ...base, runs: [first, punched] });
  expect(anew.runs).toHaveLength(2);
  expect(anew.runs[1]).toEqual(punched);
  // One that is passed over on the way there holds its place, with nothing in it.
  const third = keptOf(edging, one, bench, { ...base, runs: [first, second, punched] });
  expect(third.runs.slice(1)).toEqual([{ planned: {}, made: {} }, punched]);
});

test('only what was measured since it was opened is put on what is made by now', () => {
  const before = keptWith({ planned: PLANNED, made: { '1': '1.2 cm', '3': '' } });
  expect(madeOf({ ...hooks, was: '1=1.1 cm', made: '1=1.1 cm; 2=15.8 cm' }, before)).toEqual({
    ...{ '1': '1.2 cm', '2': '15.8 cm', '3': '' },
  });
  // A measure taken away is made as planned.
  expect(madeOf({ ...hooks, was: '1=1.2 cm', made: '' }, before)).toEqual({ '1': '', '3': '' });
});

test('what was measured on another plan is not this one’s, and takes nothing away', () => {
  const before = keptWith({ planned: PLANNED, made: { '1': '1.2 cm' } });
  const other = { ...hooks, plan: 'another', was: '1=1.2 cm', made: '2=15.8 cm' };
  expect(madeOf(other, before)).toEqual({ '1': '1.2 cm' });
  const own = { ...other, plan: planOf(rowOf(hooks).run) };
  expect(madeOf(own, before)).toEqual({ '1': '', '2': '15.8 cm' });
});

test('a mark measured here and otherwise elsewhere since it was opened is found', () => {
  const elsewhere = (made: KeptRun['made'], draft: Held) =>
    isMeasuredElsewhere(closures, { ...hooks, ...draft }, bench, keptWith({ planned: {}, made }));
  expect(elsewhere({ '2': '16 cm' }, { was: '', made: '2=15.8 cm' })).toBe(true);
  expect(elsewhere({ '2': '15.8 cm' }, { was: '', made: '2=15.8 cm' })).toBe(false);
  expect(elsewhere({ '2': '16 cm' }, { was: '2=16 cm', made: '2=15.8 cm' })).toBe(false);
  expect(elsewhere({ '1': '16 cm' }, { was: '', made: '2=15.8 cm' })).toBe(false);
  // Without an answer there are no marks; new on the garment, it was measured nowhere else.
  expect(elsewhere({ '2': '16 cm' }, { opening: '', made: '2=15.8 cm' })).toBe(false);
  expect(isMeasuredElsewhere(closures, { ...hooks, made: '2=15.8' }, bench, undefined)).toBe(false);
});
