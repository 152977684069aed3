import type { Comes } from '../../calculation/output.ts';
import { type ExactLength, exactLength, length, settled, ZERO } from '../../lengths/length.ts';
import type { HoleRow, Kept } from '../../sewing/edging/strip.ts';
import { stripHoles } from '../../sewing/edging/strip-holes.ts';
import { widestStep } from '../../sewing/made-run.ts';
import { mapped, type Outcome, refused } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import { type StripAsked, stripOf } from './strip.ts';

/** So many sides of a strip are places of a garment: no regular outline that is edged has more. */
export const MOST_SIDES = 20;

/** What holes are placed by besides the fields. */
export interface Begun {
  /** The strip as it was cut. */
  cut: ExactLength | undefined;
  /** Holes that are kept, as some of them are punched. */
  kept: Kept | undefined;
}

/** The rows of a strip as asked, on the strip as cut, with as many holes as were begun. */
function rowsOf(asked: StripAsked, { cut, kept }: Begun): Outcome<readonly HoleRow[]> {
  const strip = stripOf(asked);
  const long = cut === undefined ? strip.length : length(Math.round(cut));
  return mapped(stripHoles({ ...strip, length: long, kept }), ({ rows }) => rows);
}

/** One side of one row; what isn't there is taken away by the corners, or by a strip too short for it. */
export function sideOf(
  asked: StripAsked,
  begun: Begun,
  [row, side]: readonly [number, number],
): Comes<Run> {
  const outcome = rowsOf(asked, begun);
  if (!outcome.ok) return outcome;
  const runs = outcome.value[row]?.runs;
  if (!runs) return { ok: false, absent: 'length' };
  if (runs.length > MOST_SIDES) {
    const field = 'corners';
    return refused({ kind: 'too-many', field, most: MOST_SIDES - 1, given: runs.length - 1 });
  }
  const run = runs[side];
  return run ? { ok: true, value: run } : { ok: false, absent: 'corners' };
}

/** Holes on the sides of a row: one in a corner is the last of one side and the first of the next. */
export function holesOn(sides: readonly Run[]): number {
  const marks = sides.flatMap((side) => side.marks);
  const corners = marks.filter(({ kind }) => kind === 'corner').length;
  return marks.length - corners / 2;
}

/** The widest pitch of a row, so that no lace for it is too short. */
export function widestPitch(sides: readonly Run[]): Outcome<ExactLength> {
  const [first, ...more] = sides.filter(({ marks }) => marks.length > 1);
  if (!first) return refused({ kind: 'too-few', field: 'length', least: 2, given: holesOn(sides) });
  return [first, ...more]
    .map((side) => mapped(widestStep(side, 'length'), settled))
    .reduce((widest, one) => (widest.ok && one.ok && one.value > widest.value ? one : widest));
}

/** From the first hole of a run to its last. */
export function spanOf({ marks }: Run): ExactLength {
  return settled(exactLength((marks.at(-1)?.at ?? ZERO) - (marks[0]?.at ?? ZERO)));
}
