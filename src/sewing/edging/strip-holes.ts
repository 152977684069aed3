import { type ExactLength, exactLength, type Length, ZERO } from '../../lengths/length.ts';
import { middleOf } from '../hole-place.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import type { Mark } from '../run.ts';
import { type HoleRow, MOST_HOLES, type StripHoles, type StripInput } from './strip.ts';
import { stripProblems } from './strip-checks.ts';
import { cornerProblems } from './strip-corner-checks.ts';
import { turnedRows } from './strip-corners.ts';
import { type FittedRow, fitRow, tooMany } from './strip-fit.ts';
import { followedHoles } from './strip-followed.ts';
import { outlineProblems } from './strip-outline-checks.ts';
import { betweenRows, leastPitch, rowsAcross, stretchOf } from './strip-room.ts';
import { isOutline } from './strip-sides.ts';

/**
 * The holes along a strip, in one row or two.
 *
 * Both rows are measured from the same end. Staggered, the second is half a pitch
 * on, and ends where the first does. Bent flat round a radius R, a row at a from
 * the outer edge of a strip W wide lies at R + W/2 − a: it has the count of the
 * middle line and a pitch of its own. At corners a hole stands where the lines of
 * the margins cross, and each side is filled. Derived here; the corner hole also
 * on a teaching page (kingsmerecrafts.info, page97).
 *
 * The places of another strip are followed as they are: see `followedHoles`.
 *
 * Problems: those of `stripProblems`, a length that nothing fits, more holes than
 * are counted, rows that touch at the pitch found, corners that are no places of the
 * strip. An answer has no holes that overlap or break an edge or a cut end.
 */
export function stripHoles(input: StripInput): Outcome<StripHoles> {
  if (input.follow) return followedHoles(input, input.follow);
  return answerUnless(stripProblems(input), () =>
    input.corners.length > 0 ? turned(input) : straight(input),
  );
}

/** From a cut end to the first hole, where nothing is said. */
export function usualEnd({ end, pitch }: Pick<StripInput, 'end' | 'pitch'>): ExactLength {
  return end ?? exactLength(pitch / 2);
}

function turned(input: StripInput): Outcome<StripHoles> {
  const { length, pitch, corners } = input;
  // Each corner may round a side up by a hole.
  if (length / pitch + corners.length >= MOST_HOLES) return refused(tooMany(length));
  const end = usualEnd(input);
  const problems = isOutline(input) ? outlineProblems(input) : cornerProblems(input, end);
  return answerUnless(problems, () => {
    const rows = turnedRows(input, end);
    const over = { start: ZERO, end: ZERO };
    return answerUnless(keptProblems(input, rows), () => ({
      ok: true,
      value: holesIn(rows, over),
    }));
  });
}

/** Filled anew a side always has room; with the holes that are decided it may have too little. */
function keptProblems(input: StripInput, rows: readonly HoleRow[]): Problem[] {
  const { kept } = input;
  if (!kept) return [];
  const row = rows[kept.row];
  const side = row?.runs[kept.side];
  if (!row || !side) return [];
  const lacks = leastPitch(input) - (row.pitches[kept.side] ?? 0);
  if (lacks < 1) return [];
  const needed = exactLength(side.length + (kept.count - 1) * lacks);
  return [{ kind: 'does-not-fit', field: 'corners', room: side.length, needed }];
}

/** Holes decided of the second row decide those of the first: as many, or staggered one more. */
function straight(input: StripInput): Outcome<StripHoles> {
  const { kept } = input;
  if (!kept) return straightRows(input, undefined);
  if (kept.row === 0) return straightRows(input, kept.count);
  const alike = straightRows(input, kept.count);
  if (alike.ok && alike.value.rows[kept.row]?.count === kept.count) return alike;
  return straightRows(input, kept.count + 1);
}

function straightRows(input: StripInput, decided: number | undefined): Outcome<StripHoles> {
  const { length, pitch, fit, middle, hole, rows: wanted } = input;
  const loop = fit === 'loop';
  const end = usualEnd(input);
  const fitted = fitRow({
    length,
    pitch,
    end,
    fit,
    middle,
    least: leastPitch(input),
    count: decided,
  });
  if (!fitted.ok) return fitted;
  const row = fitted.value;
  const half = row.pitch / 2;
  const staggered = wanted === 'staggered';
  // A loop is cut midway between two holes, of whichever row.
  const first = exactLength(loop && staggered ? row.first / 2 : row.first);
  const last = length - first - (row.count - 1) * row.pitch;
  // Staggered, as many again where the strip goes on that far, as on a loop; else, as where it is filled, one less.
  const second = loop || (fit !== 'fill' && last - half >= end) ? row.count : row.count - 1;
  const rows = rowsAcross(input).flatMap((across, i) => {
    const on = staggered && i === 1;
    const count = on ? second : row.count;
    const plan = { ...row, count, first: exactLength(on ? first + half : first) };
    return count > 0 ? [holeRow(plan, across, input)] : [];
  });
  const beside = betweenRows(input, rows);
  if (beside !== undefined && beside <= hole) {
    return refused({ kind: 'overlap', field: 'margin', given: hole, pitch: beside });
  }
  const over = (space: number) => exactLength(loop ? 0 : space - end);
  return { ok: true, value: holesIn(rows, { start: over(first), end: over(last) }) };
}

function holesIn(rows: readonly HoleRow[], over: StripHoles['over']): StripHoles {
  return { rows, count: rows.reduce((sum, { count }) => sum + count, 0), over };
}

function holeRow(
  { count, pitch, first }: FittedRow,
  across: ExactLength,
  input: StripInput,
): HoleRow {
  // On the flat the same length on every row; bent, longer outside and shorter inside.
  const stretch = stretchOf(input, across);
  const own = (x: number) => exactLength(x * stretch);
  const marks = Array.from({ length: count }, (_, i): Mark => {
    const kind = i === (count - 1) / 2 ? 'centre' : 'hole';
    return { at: own(first + i * pitch), label: String(i + 1), kind };
  });
  const length = Math.round(own(input.length)) as Length;
  const last = input.length - first - (count - 1) * pitch;
  return {
    runs: [{ datum: 'cut-end', length, marks }],
    count,
    pitches: [own(pitch)],
    across,
    ends: { start: own(first), end: own(last) },
    middle: middleOf(count),
  };
}
