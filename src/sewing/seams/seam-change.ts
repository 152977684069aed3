import { type ExactLength, exactLength, type Length, settled } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, refused } from '../problem.ts';
import type { Least } from './seam-finish.ts';

/** The most seams that go round a garment. */
const MOST_SEAMS = 100;

export interface ChangeInput {
  /** The allowance the pattern gives; nothing when it is without. */
  pattern: Length;
  wanted: Length;
  /** How many seams go round, 1 to 100. */
  seams: number;
}

/** Another allowance than the pattern's. */
export interface AllowanceChange {
  /** To trim from each edge; less than nothing is to be added. */
  eachEdge: ExactLength;
  /** What the girth gains when it is sewn so without recutting: two edges a seam. */
  girth: ExactLength;
}

/**
 * What another allowance asks of each edge, and of the girth (derived here).
 *
 * Problems: a pattern allowance below nothing, none wanted, no whole number of seams.
 */
export function changeAllowance({ pattern, wanted, seams }: ChangeInput): Outcome<AllowanceChange> {
  const problems = [
    ...mustNotBeNegative('given', pattern),
    ...mustBePositive('wanted', wanted),
    ...mustBeCount('seams', seams, 1, MOST_SEAMS),
  ];
  return answerUnless(problems, () => {
    const eachEdge = exactLength(pattern - wanted);
    return { ok: true, value: { eachEdge, girth: exactLength(2 * seams * eachEdge) } };
  });
}

export interface LetOutInput {
  allowance: Length;
  /** The change wanted all round: letting out is more than nothing, taking in less. */
  change: Length;
  /** How many seams go round, 1 to 100. */
  seams: number;
  /** What the finish must be left, on each edge. */
  least: Least;
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
 * Problems: no whole number of seams, an allowance of nothing, letting out more
 * than the finish leaves (with the most there is), an allowance that is too small
 * for the finish whatever is done.
 */
export function letOut({ allowance, change, seams, least }: LetOutInput): Outcome<LetOut> {
  return answerUnless(
    [...mustBePositive('allowance', allowance), ...mustBeCount('seams', seams, 1, MOST_SEAMS)],
    () => {
      const eachEdge = exactLength(change / (2 * seams));
      const left = settled(exactLength(allowance - eachEdge));
      if (least.more ? left > least.at : left >= least.at) {
        return { ok: true, value: { eachEdge, left } };
      }
      const bound = exactLength((allowance - least.at) * 2 * seams);
      // An allowance that is too small by itself leaves nothing to let out.
      if (bound > 0) {
        return least.more
          ? refused({ kind: 'not-under', field: 'change', under: bound, given: change })
          : refused({ kind: 'too-long', field: 'change', most: bound, given: change });
      }
      const needed = exactLength(least.at + eachEdge);
      return least.more
        ? refused({ kind: 'not-over', field: 'allowance', over: needed, given: allowance })
        : refused({ kind: 'too-short', field: 'allowance', least: needed, given: allowance });
    },
  );
}
