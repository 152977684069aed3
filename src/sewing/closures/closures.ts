import { type ExactLength, exactLength, type Length, ZERO } from '../../lengths/length.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import { aroundSewn, type GivesWay } from './around-sewn.ts';
import { closureProblems } from './closure-checks.ts';
import { type ClosuresInput, itemWidth, keptPitch } from './closure-input.ts';
import { type ClosureRow, closureRow, type Layout } from './closure-row.ts';
import { evenRow } from './even.ts';
import { followedRow } from './followed-row.ts';
import { levelRows } from './level-rows.ts';

/** What was done about a level. */
export interface LevelAnswer {
  at: Length;
  /** How far the nearest mark is from it: not 0 only where a sewn mark serves it, or it gives way. + is below. */
  off: ExactLength;
  /** Both answers, one of them the plan's own; none where it cannot be had, or its items would overlap. */
  twoPitches?: ClosureRow | undefined;
  movedEnds?: ClosureRow | undefined;
}

/** The row to mark, and beside it what else could be done about a level. */
export interface ClosurePlan extends ClosureRow {
  level: LevelAnswer | undefined;
  /** What could not be kept around what is sewn. */
  givesWay: readonly GivesWay[];
}

/**
 * Spaces closures along an opening. At most 2,000; problems name the input's own keys.
 *
 * With S the length between first and last (or the whole opening, where the
 * ends are shares of a space):
 * - by count n: pitch S/(n − 1); with ends of a whole space S/(n + 1), of half
 *   a space S/n. One alone, between given ends, stands in the middle of what is left.
 * - by widest pitch: the fewest marks, at least one, whose pitch is not wider.
 * - by exact pitch, and by gap (pitch = gap + width): from the top, as many as
 *   there is room for; the remainder lies below the last one.
 * - a level: see `twoPitches` and `movedEnds`. A widest pitch holds on both sides
 *   of it; an exact pitch runs through it and leaves a remainder at either end.
 * - another row followed: its places, and nothing else is read of the spacing.
 * - some already sewn: see `shareOut`. An exact pitch becomes the nearest even one.
 *
 * Source of dividing by spaces rather than closures: Butterick, The New
 * Dressmaker (1921), ch. 24; the rest is arithmetic, derived here.
 */
export function spaceClosures(input: ClosuresInput): Outcome<ClosurePlan> {
  if (input.follow) return following(input, input.follow);
  return answerUnless(closureProblems(input), () => {
    if (input.sewn?.length) return around(input, input.sewn);
    return input.level === undefined ? evenly(input) : throughLevel(input, input.level);
  });
}

function following(input: ClosuresInput, places: readonly ExactLength[]): Outcome<ClosurePlan> {
  const layout = followedRow(input, places);
  return layout.ok ? plan(input, layout.value, undefined) : layout;
}

function evenly(input: ClosuresInput): Outcome<ClosurePlan> {
  const layout = evenRow(input);
  return layout.ok ? plan(input, layout.value, undefined) : layout;
}

function throughLevel(input: ClosuresInput, level: Length): Outcome<ClosurePlan> {
  const rows = levelRows(input, level);
  if (!rows.ok) return rows;
  const { twoPitches, movedEnds } = rows.value;
  const moves = keptPitch(input.rule) !== undefined || input.levelBy === 'moved-ends';
  const chosen = moves ? movedEnds : twoPitches;
  if (!chosen) return refused(moves ? levelOffEdge(input, level) : TOO_FEW);
  return plan(input, chosen, {
    at: level,
    off: ZERO,
    twoPitches: twoPitches && offered(input, twoPitches),
    movedEnds: movedEnds && offered(input, movedEnds),
  });
}

/** Only a count of two cannot carry top, level and bottom. */
const TOO_FEW = { kind: 'too-few', field: 'count', least: 3, given: 2 } as const;

/** Moved ends cannot be had where the closure on the level would hang over an edge; one wider than the opening always does. */
function levelOffEdge(input: ClosuresInput, given: Length): Problem {
  const { opening } = input;
  const width = itemWidth(input) ?? ZERO;
  if (width > opening) return { kind: 'too-long', field: 'width', most: opening, given: width };
  const half = width / 2;
  const most = exactLength(opening - half);
  return { kind: 'outside', field: 'level', given, least: exactLength(half), most };
}

function around(input: ClosuresInput, sewn: readonly Length[]): Outcome<ClosurePlan> {
  const row = aroundSewn(input, sewn);
  if (!row.ok) return row;
  const { layout, level, givesWay } = row.value;
  return plan(input, layout, level, givesWay);
}

/** The plan for a layout, unless its items would overlap. */
function plan(
  input: ClosuresInput,
  layout: Layout,
  level: LevelAnswer | undefined,
  givesWay: readonly GivesWay[] = [],
): Outcome<ClosurePlan> {
  const given = itemWidth(input);
  const row = closureRow(input.opening, layout, given);
  const gap = row.gap ?? 0;
  if (given !== undefined && gap < 0) {
    return refused({ kind: 'overlap', field: 'width', given, pitch: exactLength(gap + given) });
  }
  return { ok: true, value: { ...row, level, givesWay } };
}

/** A row to show beside the plan, unless its items would overlap. */
function offered(input: ClosuresInput, layout: Layout): ClosureRow | undefined {
  const row = closureRow(input.opening, layout, itemWidth(input));
  return (row.gap ?? 0) < 0 ? undefined : row;
}
