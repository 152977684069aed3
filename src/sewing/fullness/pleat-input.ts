import { exactLength, type Length, length } from '../../lengths/length.ts';
import {
  mustBeCount,
  mustBePositive,
  mustBePositiveIfGiven,
  mustNotBeNegative,
} from '../length-checks.ts';
import type { Problem } from '../problem.ts';
import { BOX_TAKES, KNIFE_TAKES } from '../sources/pleats.ts';

/** Folds all one way; away from the middle of each; or towards it. */
export type PleatKind = 'knife' | 'box' | 'inverted';

/** Of knife pleats: each folds where it ends, the last at the seam; or in its middle, half a space from both seams. */
export type PleatEnds = 'fold' | 'half';

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
  ends: PleatEnds;
  /** Left flat after the last pleat. */
  flat: Length;
  /** Of a box pleat, across its front: twice the depth where it isn't given, so that the folds meet behind. */
  face?: Length | undefined;
  /** Added at each end of the strip, and taken by each edge of a join. */
  seam: Length;
}

/** What the pleats themselves lie over when they are folded: all but what stays flat. */
export function pleatedWidth({ finished, flat }: Pick<PleatsInput, 'finished' | 'flat'>): Length {
  return length(finished - flat);
}

/** What is wrong with each number by itself, or with a width that would make too many. */
export function pleatProblems(input: PleatsInput): Problem[] {
  const { finished, rule, depth, flat, face, seam } = input;
  const alone = [
    ...mustBePositive('finished', finished),
    ...mustBePositive('depth', depth),
    ...mustNotBeNegative('seam', seam),
    ...(flat > 0 && flat >= finished
      ? [{ kind: 'not-under', field: 'flat', under: finished, given: flat } as const]
      : mustNotBeNegative('flat', flat)),
    ...mustBePositiveIfGiven('face', face),
    ...(rule.by === 'count'
      ? mustBeCount('count', rule.count, 1, MOST_PLEATS)
      : mustBePositive('width', rule.width)),
  ];
  if (alone.length > 0 || rule.by === 'count') return alone;
  const least = exactLength(pleatedWidth(input) / MOST_PLEATS);
  return rule.width < least
    ? [{ kind: 'too-close', field: 'width', least, most: MOST_PLEATS }]
    : [];
}

/** How many depths one pleat takes up, and who says so. */
export function depthsTaken(kind: PleatKind) {
  return kind === 'knife' ? KNIFE_TAKES : BOX_TAKES;
}
