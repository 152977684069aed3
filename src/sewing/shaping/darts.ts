import { type ExactLength, exactLength, type Length, length, ZERO } from '../../lengths/length.ts';
import { mustBePositive } from '../length-checks.ts';
import { answerUnless, mapped, type Outcome, type Problem, refused } from '../problem.ts';
import type { Run } from '../run.ts';
import { type Shares, type Sharing, shareOut } from '../sharing.ts';

/** Seam edges that take a part of the difference, or darts so long. */
export interface Taking extends Sharing {
  /** Of a dart along its middle, in the field that names it; a seam has none. */
  long?: { field: string; length: Length };
}

export interface DartsInput {
  larger: Length;
  smaller: Length;
  kinds: readonly Taking[];
  /** What each is a whole number of. */
  step: Length;
}

export interface Darts extends Shares {
  /** All that seams and darts take. */
  intake: Length;
}

/**
 * What seams and darts take between two girths: the larger less the smaller, shared in whole steps.
 *
 * Source: A. P. Margolis, Make Your Own Dress Patterns, 1985, ch. 2.
 *
 * Problems: a length of nothing, girths the wrong way round, and those of `shareOut`.
 */
export function darts({ larger, smaller, kinds, step }: DartsInput): Outcome<Darts> {
  const problems = [
    ...mustBePositive('larger', larger),
    ...mustBePositive('smaller', smaller),
    ...kinds.flatMap(({ long }) => (long ? mustBePositive(long.field, long.length) : [])),
  ];
  return answerUnless(problems, () => {
    const intake = length(larger - smaller);
    if (intake <= 0) {
      return refused({ kind: 'not-over', field: 'larger', over: smaller, given: larger });
    }
    return mapped(shareOut({ change: intake, kinds, step }), (plan) => ({ ...plan, intake }));
  });
}

/** A girth between the two, so far below the smaller. */
export interface Level {
  at: Length;
  girth: Length;
}

export interface LevelIntake {
  level: Level;
  /** What all take together there. */
  intake: ExactLength;
  /** Of one of each kind, in their order. */
  each: readonly ExactLength[];
}

/**
 * What each takes at levels between: darts with straight legs narrow evenly to their points, and seams take
 * the rest by their shares; or each takes its share of what is taken there, so that darts are curved, too (derived here).
 *
 * Problems: levels out of order, not a girth for each, a girth that lies outside the two, darts that take
 * more than there is, straight ones without a seam beside them.
 */
export function levelIntakes(
  input: DartsInput,
  plan: Darts,
  { levels, girths, legs }: LevelsAsked,
): Outcome<LevelIntake[]> {
  return answerUnless(levelProblems(input, levels, girths, legs), () => {
    const all = levels.map((at, i): LevelIntake => {
      const girth = girths[i] ?? input.smaller;
      const intake = exactLength(input.larger - girth);
      const level = { at, girth };
      const each =
        legs === 'curved' ? byShares(input, intake) : besideDarts(input, plan, at, intake);
      return { level, intake, each };
    });
    const over = all.find(({ each }) => each.some((one) => one < 0));
    if (!over) return { ok: true, value: all };
    const needed = sum(input.kinds, over.each, ({ long }) => long !== undefined);
    return refused({ kind: 'does-not-fit', field: 'girths', room: over.intake, needed });
  });
}

/** Where levels lie, down from the line of the smaller girth. */
export function levelRun(all: readonly LevelIntake[]): Run {
  return {
    datum: 'zero',
    length: all.at(-1)?.level.at ?? ZERO,
    marks: all.map(({ level }, i) => ({ at: level.at, label: String(i + 1), kind: 'level' })),
  };
}

export interface LevelsAsked {
  levels: readonly Length[];
  girths: readonly Length[];
  legs: 'straight' | 'curved';
}

function byShares({ kinds }: DartsInput, intake: ExactLength): ExactLength[] {
  return kinds.map(({ share }) => exactLength((intake * share) / 100));
}

function besideDarts(
  { kinds }: DartsInput,
  { each }: Darts,
  at: Length,
  intake: ExactLength,
): ExactLength[] {
  const widths = kinds.map(({ long }, i) =>
    long ? narrowed(each[i], long.length, at) : exactLength(0),
  );
  const rest = intake - sum(kinds, widths, () => true);
  const seams = kinds.reduce((all, { long, count, share }) => all + (long ? 0 : count * share), 0);
  return kinds.map(({ long, share }, i) =>
    long ? (widths[i] ?? exactLength(0)) : exactLength((rest * share) / seams),
  );
}

/** How wide a dart with straight legs is so far below its widest place. */
function narrowed(width: ExactLength | undefined, long: Length, at: Length): ExactLength {
  return exactLength(((width ?? 0) * Math.max(0, long - at)) / long);
}

function sum(
  kinds: readonly Taking[],
  each: readonly ExactLength[],
  which: (kind: Taking) => boolean,
): ExactLength {
  return exactLength(
    kinds.reduce((all, kind, i) => all + (which(kind) ? kind.count * (each[i] ?? 0) : 0), 0),
  );
}

function levelProblems(
  { larger, smaller, kinds }: DartsInput,
  levels: readonly Length[],
  girths: readonly Length[],
  legs: LevelsAsked['legs'],
): Problem[] {
  const alone = levels.flatMap((at) => mustBePositive('levels', at));
  if (alone.length > 0) return alone;
  const out = levels.find((at, i) => at <= (levels[i - 1] ?? 0));
  if (out !== undefined) return [{ kind: 'not-in-order', field: 'levels', given: out }];
  if (levels.length !== girths.length) {
    return [{ kind: 'not-as-many', field: 'girths', given: girths.length, needed: levels.length }];
  }
  const beyond = girths.find((girth) => girth < smaller || girth > larger);
  if (beyond !== undefined) {
    return [{ kind: 'outside', field: 'girths', given: beyond, least: smaller, most: larger }];
  }
  const seams = kinds.some(({ long, share }) => !long && share > 0);
  if (legs === 'curved' || seams || levels.length === 0) return [];
  return [{ kind: 'too-few', field: 'sides', least: 1, given: 0 }];
}
