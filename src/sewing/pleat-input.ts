import { exactLength, type Length } from '../lengths/length.ts';
import { mustBeCount, mustBePositive, mustNotBeNegative } from './length-checks.ts';
import type { Problem } from './problem.ts';
import { BOX_TAKES, KNIFE_TAKES } from './sources/pleats.ts';

/** Folds all one way; away from the middle of each; or towards it. */
export type PleatKind = 'knife' | 'box' | 'inverted';

/** The most pleats a strip is laid in. */
export const MOST_PLEATS = 300;

export interface PleatsInput {
  kind: PleatKind;
  /** From seam to seam when it is pleated. */
  finished: Length;
  /** So many, or as many as bring the width of one nearest to what is wanted. */
  rule: { by: 'count'; count: number } | { by: 'width'; width: Length };
  /** Of one fold, measured once. */
  depth: Length;
  /** Of a box pleat, across its front: twice the depth where it isn't given, so that the folds meet behind. */
  face?: Length | undefined;
  /** Added at each end of the strip, and taken by each edge of a join. */
  seam: Length;
}

/** What is wrong with each number by itself, or with a width that would make too many. */
export function pleatProblems({ finished, rule, depth, face, seam }: PleatsInput): Problem[] {
  const alone = [
    ...mustBePositive('finished', finished),
    ...mustBePositive('depth', depth),
    ...mustNotBeNegative('seam', seam),
    ...(face === undefined ? [] : mustBePositive('face', face)),
    ...(rule.by === 'count'
      ? mustBeCount('count', rule.count, 1, MOST_PLEATS)
      : mustBePositive('width', rule.width)),
  ];
  if (alone.length > 0 || rule.by === 'count') return alone;
  const least = exactLength(finished / MOST_PLEATS);
  return rule.width < least
    ? [{ kind: 'too-close', field: 'width', least, most: MOST_PLEATS }]
    : [];
}

/** How many depths one pleat takes up, and who says so. */
export function depthsTaken(kind: PleatKind) {
  return kind === 'knife' ? KNIFE_TAKES : BOX_TAKES;
}
