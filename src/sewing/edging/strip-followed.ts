import { type ExactLength, exactLength, type Length, ZERO } from '../../lengths/length.ts';
import { NOISE, placeProblems } from '../followed-places.ts';
import { middleOf } from '../hole-place.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import type { Mark } from '../run.ts';
import { type HoleRow, MOST_HOLES, type StripHoles, type StripInput } from './strip.ts';
import { stripProblems } from './strip-checks.ts';
import { betweenRows, halfHole, rowsAcross, stretchOf, touchingPitch } from './strip-room.ts';

/**
 * The holes of a strip that lie where those of another one do, as two that are laced together want
 * them. A second row is level with the first, or midway between its holes (derived here); bent flat
 * each row has the same places along the middle line.
 *
 * Problems: those of `stripProblems`; of what is followed, holes that would break a cut end or each
 * other, lie twice, or are too many; rows that touch.
 */
export function followedHoles(
  input: StripInput,
  follow: readonly ExactLength[],
): Outcome<StripHoles> {
  // What the strip itself has wrong is said first: the room for its holes depends on it.
  const own = stripProblems({ ...input, pitch: input.length, end: undefined });
  const problems = own.length > 0 ? own : followProblems(input, follow);
  return answerUnless(problems, () => {
    const rows = rowsOf(input, follow);
    const beside = betweenRows(input, rows);
    if (beside !== undefined && beside <= input.hole) {
      return refused({ kind: 'overlap', field: 'margin', given: input.hole, pitch: beside });
    }
    const count = rows.reduce((sum, row) => sum + row.count, 0);
    return { ok: true, value: { rows, count, over: { start: ZERO, end: ZERO } } };
  });
}

/** The widest step of a row that is followed, or the whole where there is but one place. */
export function widestOf(follow: readonly ExactLength[], whole: Length): Length {
  const steps = stepsOf(follow);
  return steps.length === 0 ? whole : (Math.round(Math.max(...steps)) as Length);
}

function stepsOf(places: readonly ExactLength[]): number[] {
  return places.slice(1).map((at, i) => at - (places[i] ?? at));
}

function followProblems(input: StripInput, follow: readonly ExactLength[]): Problem[] {
  const [across = ZERO] = rowsAcross(input);
  const stretch = stretchOf(input, across);
  const half = halfHole(input);
  const room = {
    least: exactLength(half * stretch),
    most: exactLength((input.length - half) * stretch),
    count: MOST_HOLES,
  };
  const places = placeProblems(follow, room);
  const steps = stepsOf(follow);
  if (places.length > 0 || steps.length === 0) return places;
  const least = exactLength(Math.min(...steps) / stretch);
  return least <= touchingPitch(input)
    ? [{ kind: 'overlap', field: 'follow', given: input.hole, pitch: least }]
    : [];
}

function rowsOf(input: StripInput, follow: readonly ExactLength[]): HoleRow[] {
  const [first = ZERO] = rowsAcross(input);
  const stretch = stretchOf(input, first);
  const midway = follow.slice(1).map((at, i) => exactLength((at + (follow[i] ?? at)) / 2));
  return rowsAcross(input).flatMap((across, i) => {
    const places = i === 1 && input.rows === 'staggered' ? midway : follow;
    return places.length > 0
      ? [rowOf(input, places, across, stretchOf(input, across) / stretch)]
      : [];
  });
}

/** @param more how much longer this row is than the one whose places are given */
function rowOf(
  input: StripInput,
  places: readonly ExactLength[],
  across: ExactLength,
  more: number,
): HoleRow {
  const count = places.length;
  const marks = places.map((at, i): Mark => {
    const kind = i === (count - 1) / 2 ? 'centre' : 'hole';
    return { at: exactLength(at * more), label: String(i + 1), kind };
  });
  const long = input.length * stretchOf(input, across);
  const [start, last] = [marks[0]?.at ?? ZERO, marks.at(-1)?.at ?? ZERO];
  return {
    runs: [{ datum: 'cut-end', length: Math.round(long) as Length, marks }],
    count,
    pitches: pitchesOf(stepsOf(places).map((step) => exactLength(step * more))),
    across,
    ends: { start, end: exactLength(long - last) },
    middle: middleOf(count),
  };
}

/** The one pitch of even steps, else the least and the widest of them. */
function pitchesOf([first, ...more]: readonly ExactLength[]): ExactLength[] {
  if (first === undefined) return [];
  const least = more.reduce((a, b) => exactLength(Math.min(a, b)), first);
  const widest = more.reduce((a, b) => exactLength(Math.max(a, b)), first);
  return widest - least <= NOISE ? [first] : [least, widest];
}
