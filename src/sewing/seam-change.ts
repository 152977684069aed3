import { type ExactLength, exactLength, type Length, toInches, toMm } from '../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from './length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from './problem.ts';
import { PLATE_LINES } from './sources/seams.ts';

/**
 * What each edge loses or gains when another allowance is wanted than the pattern
 * gives: more than nothing is trimmed, less is added.
 */
export function allowanceChange(pattern: Length, wanted: Length): ExactLength {
  return exactLength(pattern - wanted);
}

/**
 * What sewing at another allowance than planned does to the girth: more than
 * nothing makes it wider. Each seam has two edges (derived here).
 * @param seams how many seams go round, 1 or more
 */
export function girthEffect(planned: Length, sewn: Length, seams: number): ExactLength {
  return exactLength(2 * seams * (planned - sewn));
}

export interface LetOutInput {
  allowance: Length;
  /** The change wanted all round: letting out is more than nothing, taking in less. */
  change: Length;
  seams: number;
  /** What the finish must be left, on each edge. */
  least: ExactLength;
}

/** What to move each edge of each seam by, and what is then left of the allowance. */
export interface LetOut {
  eachEdge: ExactLength;
  left: ExactLength;
}

/**
 * Lets a garment out or takes it in over some seams: the change by twice the
 * seams on each edge (derived here).
 *
 * Problems: no whole number of seams, an allowance of nothing, and letting out
 * more than the finish leaves (with the most there is).
 */
export function letOut({ allowance, change, seams, least }: LetOutInput): Outcome<LetOut> {
  const counted: Problem[] = Number.isInteger(seams)
    ? []
    : [{ kind: 'not-whole', field: 'seams', given: seams }];
  const few: Problem[] =
    seams < 1 ? [{ kind: 'too-few', field: 'seams', least: 1, given: seams }] : [];
  const many: Problem[] =
    seams > 100 ? [{ kind: 'too-many', field: 'seams', most: 100, given: seams }] : [];
  const problems = [...mustBePositive('allowance', allowance), ...counted, ...few, ...many];
  return answerUnless(problems, () => {
    const eachEdge = exactLength(change / (2 * seams));
    const left = exactLength(allowance - eachEdge);
    if (left < least) {
      const most = exactLength(Math.max(0, allowance - least) * 2 * seams);
      return refused({ kind: 'too-long', field: 'change', most, given: change });
    }
    return { ok: true, value: { eachEdge, left } };
  });
}

/** Where to guide the raw edge: the distance, and the nearest line of a needle plate. */
export interface Guide {
  mm: number;
  inches: number;
  line: Length;
  /** The line less the distance. */
  off: ExactLength;
}

/** The plate line nearest to a distance from the needle. */
export function guideFor(distance: ExactLength): Guide {
  const line = PLATE_LINES.reduce((best, next) =>
    Math.abs(next - distance) < Math.abs(best - distance) ? next : best,
  );
  const off = exactLength(line - distance);
  return { mm: toMm(distance), inches: toInches(distance), line, off };
}

/**
 * How far apart to clip a curved seam so that no clip opens by more than is
 * allowed: o·R/A, from the raw edge being longer or shorter than the stitch line
 * by A for every radian (Steiner; derived here).
 */
export function clipSpacing(
  radius: Length,
  allowance: Length,
  opening: Length,
): Outcome<ExactLength> {
  const problems = [
    ...mustBePositive('radius', radius),
    ...mustBePositive('allowance', allowance),
    ...mustNotBeNegative('opening', opening),
  ];
  return answerUnless(problems, () => ({
    ok: true,
    value: exactLength((opening * radius) / allowance),
  }));
}
