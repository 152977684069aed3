import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';

/** The most places a hem is measured at. */
const MOST_PLACES = 60;

export interface HemLevelInput {
  /** How far above the floor the raw edge hangs, at places all round. */
  heights: readonly Length[];
  /** Where the finished hem is to be above the floor. */
  hem: Length;
  /** What is turned up of it. */
  allowance: Length;
}

export interface HemLevel {
  /** At each place, from the raw edge up along the cloth; less than nothing lacks. */
  trims: readonly ExactLength[];
  /** The lowest hem that all places can reach. */
  lowest: ExactLength;
}

/**
 * A hem levelled from the floor: trimmed off is (hem − allowance) − height of the raw edge; the lowest hem
 * that clears everywhere is the highest raw edge and the allowance (derived here).
 *
 * Problems: no place, over 60, heights or allowance below nothing, a hem on the floor.
 */
export function hemLevel({ heights, hem, allowance }: HemLevelInput): Outcome<HemLevel> {
  const many: Problem[] = [
    ...(heights.length === 0
      ? [{ kind: 'too-few', field: 'heights', least: 1, given: 0 } as const]
      : []),
    ...(heights.length > MOST_PLACES
      ? [{ kind: 'too-many', field: 'heights', most: MOST_PLACES, given: heights.length } as const]
      : []),
  ];
  const problems = [
    ...many,
    ...heights.flatMap((one) => mustNotBeNegative('heights', one)),
    ...mustBePositive('hem', hem),
    ...mustNotBeNegative('allowance', allowance),
  ];
  return answerUnless(problems, () => ({
    ok: true,
    value: {
      trims: heights.map((height) => exactLength(hem - allowance - height)),
      lowest: exactLength(Math.max(...heights) + allowance),
    },
  }));
}

/**
 * Places to measure at all round, no further apart than told.
 *
 * @param sweep more than nothing
 * @param apart more than nothing
 */
export function hemPlaces(sweep: Length, apart: Length): number {
  return Math.max(1, Math.ceil(sweep / apart));
}
