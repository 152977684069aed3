import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { middleOf } from './hole-place.ts';
import { answerUnless, type Outcome, refused } from './problem.ts';
import type { Mark } from './run.ts';
import type { HoleRow, StripInput } from './strip.ts';
import { stripProblems } from './strip-checks.ts';
import { turnedRows } from './strip-corners.ts';
import { type FittedRow, fitRow } from './strip-fit.ts';
import { rowsAcross, stretchOf, touchingMargin, touchingPitch } from './strip-room.ts';

/** The holes of a strip. */
export interface StripHoles {
  rows: readonly HoleRow[];
  /** Holes in all. */
  count: number;
  /** What the pitch wanted leaves over at each end beyond the end asked for; nothing where it is filled. */
  over: { start: ExactLength; end: ExactLength };
}

/**
 * The holes along a strip, in one row or two.
 *
 * Both rows are measured from the same end. Staggered, the second is half a pitch
 * on, and ends where the first does. Bent flat round a radius R, a row at a from
 * the outer edge of a strip W wide lies at R + W/2 − a: it has the count of the
 * middle line and a pitch of its own. At corners a hole stands where the lines of
 * the margins cross, and each side is filled. Derived here; the corner hole also
 * in the leathercraft pages of kingslan, "start from the centre".
 *
 * Problems: those of `stripProblems`, a length that nothing fits, more holes than
 * are counted, rows that touch at the pitch found, corners that are no places of the
 * strip. An answer has no holes that overlap or break an edge or a cut end.
 */
export function stripHoles(input: StripInput): Outcome<StripHoles> {
  return answerUnless(stripProblems(input), () =>
    input.corners.length > 0 ? turned(input) : straight(input),
  );
}

/** From a cut end to the first hole, where nothing is said. */
export function usualEnd({ end, pitch }: Pick<StripInput, 'end' | 'pitch'>): ExactLength {
  return end ?? exactLength(pitch / 2);
}

function turned(input: StripInput): Outcome<StripHoles> {
  const found = turnedRows(input, usualEnd(input));
  if (!found.ok) return refused(found.problem);
  const none = exactLength(0);
  return { ok: true, value: holesIn(found.rows, { start: none, end: none }) };
}

function straight(input: StripInput): Outcome<StripHoles> {
  const { length, pitch, fit, middle, margin, rows: wanted } = input;
  const end = usualEnd(input);
  const touching = touchingPitch(input);
  const fitted = fitRow({ length, pitch, end, fit, middle, touching });
  if (!fitted.ok) return refused(fitted.problem);
  const first = fit === 'loop' ? betweenCut(fitted.row, wanted) : fitted.row;
  const second = wanted === 'staggered' ? halfOn(first, input) : first;
  if (wanted === 'staggered' && second) {
    const under = touchingMargin(input, first.pitch);
    if (margin >= under)
      return refused({ kind: 'not-under', field: 'margin', under, given: margin });
  }
  const plans = [first, second];
  const rows = rowsAcross(input).flatMap((across, i) => {
    const plan = plans[i];
    return plan ? [holeRow(plan, across, input)] : [];
  });
  const over = (space: number) => exactLength(fit === 'loop' ? 0 : space - end);
  return { ok: true, value: holesIn(rows, { start: over(first.first), end: over(first.last) }) };
}

function holesIn(rows: readonly HoleRow[], over: StripHoles['over']): StripHoles {
  return { rows, count: rows.reduce((sum, { count }) => sum + count, 0), over };
}

/** A loop is cut between holes: midway from the last to the first of them. */
function betweenCut(row: FittedRow, rows: StripInput['rows']): FittedRow {
  const first = exactLength(row.pitch / (rows === 'staggered' ? 4 : 2));
  return { ...row, first, last: exactLength(row.pitch - first) };
}

/** The second row of two staggered ones; undefined where there is no room for a hole of it. */
function halfOn(row: FittedRow, input: StripInput): FittedRow | undefined {
  const half = row.pitch / 2;
  const end = usualEnd(input);
  // As many again where the strip goes on that far, as on a loop; else one less.
  const asMany = input.fit === 'loop' || row.last - half >= end;
  const count = asMany ? row.count : row.count - 1;
  if (count === 0) return undefined;
  return {
    count,
    pitch: row.pitch,
    first: exactLength(row.first + half),
    last: exactLength(row.last + (asMany ? -half : half)),
  };
}

function holeRow(plan: FittedRow, across: ExactLength, input: StripInput): HoleRow {
  // On the flat the same length on every row; bent, longer outside and shorter inside.
  const stretch = stretchOf(input, across);
  const marks = Array.from({ length: plan.count }, (_, i): Mark => {
    const at = exactLength((plan.first + i * plan.pitch) * stretch);
    return { at, label: String(i + 1), kind: i === (plan.count - 1) / 2 ? 'centre' : 'hole' };
  });
  const length = Math.round(input.length * stretch) as Length;
  return {
    runs: [{ datum: 'cut-end', length, marks }],
    count: plan.count,
    pitches: [exactLength(plan.pitch * stretch)],
    across,
    ends: { start: exactLength(plan.first * stretch), end: exactLength(plan.last * stretch) },
    middle: middleOf(plan.count),
  };
}
