import fc from 'fast-check';
import { expect } from 'vitest';
import type { Bench } from '../../src/calculation/bench.ts';
import type { Calculation, Draft } from '../../src/calculation/calculation.ts';
import type { Drawing } from '../../src/calculation/drawing.ts';
import type { Outputs } from '../../src/calculation/output.ts';
import { CALCULATIONS, DRAWINGS, OUTPUTS } from '../../src/calculations/list.ts';
import type { Dimension, Dimensioned } from '../../src/drawing/dimension.ts';
import { layOut, type Sheet } from '../../src/drawing/dimension-layout.ts';
import { toMm } from '../../src/lengths/length.ts';
import { readLength } from '../../src/lengths/read-length.ts';
import { benchOf } from '../controls/helpers.ts';
import { faultsOf } from '../drawing/dimension-faults.ts';
import { draftsNear } from './any-drafts.ts';
import { workOutputs } from './work-outputs.ts';

/** A small phone, and the same with letters twice as large. */
const SHEETS: readonly Sheet[] = [
  { width: 328, drawing: 190, letter: { wide: 8.5, high: 20 }, row: 24 },
  { width: 328, drawing: 190, letter: { wide: 17, high: 40 }, row: 48 },
];

const unit = fc.constantFrom('cm' as const, 'mm' as const, 'in' as const);

interface Part {
  page: Calculation;
  gives: Outputs;
  drawing: Drawing;
}

/** Holds the laws of a drawing over random drafts; how many of them could be drawn. */
export async function drawnRight(
  id: string,
  how: { numRuns: number; seed: number },
): Promise<{ drawn: number }> {
  const [page, gives, drawing] = await Promise.all([
    CALCULATIONS[id]?.(),
    OUTPUTS[id]?.(),
    DRAWINGS[id]?.(),
  ]);
  if (!page || !gives || !drawing) throw new Error(`${id} has no page, outputs or drawing`);
  expect(drawing.id).toBe(id);
  let drawn = 0;
  fc.assert(
    fc.property(draftsNear(page), unit, (set, benchUnit) => {
      const bench = benchOf({ unit: benchUnit });
      const draft = { ...page.start(bench), ...set };
      const one = drawing.draw(draft, bench);
      if (page.work(draft, bench).ok) expect(one, 'drawn where there is an answer').toBeDefined();
      if (!one) return;
      drawn += 1;
      for (const sheet of SHEETS) expect(faultsOf(layOut(one, sheet))).toEqual([]);
      expect(one.dimensions.flatMap((dimension) => faultOf(dimension))).toEqual([]);
      if (one.toScale) expect(one.dimensions.flatMap((d) => offScale(d, bench))).toEqual([]);
      expect(uncovered({ page, gives, drawing }, draft, bench, one)).toEqual([]);
    }),
    how,
  );
  return { drawn };
}

function faultOf({ from, to, text }: Dimension): string[] {
  const places = [from.x, from.y, to.x, to.y].every(Number.isFinite);
  if (!places) return [`${text} stands nowhere`];
  return /^\s*$|NaN|undefined|Infinity/.test(text) ? [`written “${text}”`] : [];
}

/** A length written on a drawing to scale is as long as it says: to the last figure written. */
function offScale({ from, to, text }: Dimension, { unit: benchUnit }: Bench): string[] {
  const read = /(cm|mm|in)$/.test(text) ? readLength(text.replace(/,/g, ''), benchUnit) : undefined;
  if (!read?.ok) return [];
  const drawn = Math.hypot(to.x - from.x, to.y - from.y);
  return Math.abs(drawn - Math.abs(toMm(read.value))) <= 0.013 + 1e-9 * drawn
    ? []
    : [`${text} is drawn ${drawn} mm long`];
}

/** Lengths and counts that were given and stand nowhere, and dimensions of what isn't there. */
function uncovered(
  { page, gives, drawing }: Part,
  draft: Draft,
  bench: Bench,
  { dimensions }: Dimensioned,
): string[] {
  const asked = page.fields(draft);
  const came = workOutputs(gives, draft, bench);
  const given = dimensions.flatMap(({ by }) => ('given' in by ? [by.given] : []));
  const without = drawing.unplaced(gives.fields.asks(draft));
  const missing = asked
    .filter(({ kind }) => kind === 'length' || kind === 'lengths' || kind === 'count')
    .filter(({ key }) => (draft[key] ?? '').trim() !== '')
    .filter(({ key }) => !given.includes(key) && !without.includes(key))
    .map(({ key }) => `${key} stands nowhere`);
  const unasked = given
    .filter((key) => !asked.some((field) => field.key === key))
    .map((key) => `${key} is not asked for`);
  const unfound = dimensions.flatMap(({ by }) => {
    if (!('found' in by) || came.get(by.found)?.state === 'here') return [];
    return [`${by.found} was not found`];
  });
  return [...missing, ...unasked, ...unfound];
}
