import type { Length } from '../../lengths/length.ts';
import {
  mustBeCount,
  mustBePositive,
  mustBePositiveIfGiven,
  mustNotBeNegative,
} from '../length-checks.ts';
import type { Problem } from '../problem.ts';

/** The most pieces a round is made of, and the most circles in it. */
export const MOST_PIECES = 60;
const MOST_CIRCLES = 10;
/** The least that is asked for of how full a flounce is: more than once will do. */
export const LEAST_TIMES = 1.05;

export type CircleKind =
  /** So many circles in all, one or a part of one mostly, in so many panels. */
  | { of: 'skirt'; circles: number; panels: number }
  /** Rings slit and joined, so many times as full at the free edge, or of a radius. */
  | { of: 'flounce'; by: 'times'; times: number }
  | { of: 'flounce'; by: 'radius'; radius: Length }
  /** So many alike, all round so much at the hem. */
  | { of: 'gores'; count: number; hem: Length };

export interface CircleInput {
  kind: CircleKind;
  /** What it is sewn to, all round, with its ease and without allowances. */
  edge: Length;
  /** From the edge down to the hem. */
  long: Length;
  /** Allowances: at the edge, at each side of a piece, at the hem. */
  seam: Length;
  side: Length;
  hem: Length;
  /** The width of the cloth, where it is known. */
  cloth: Length | undefined;
}

/** What is wrong with each number by itself. */
export function circleProblems({
  kind,
  edge,
  long,
  seam,
  side,
  hem,
  cloth,
}: CircleInput): Problem[] {
  const alone = [
    ...mustBePositive('edge', edge),
    ...mustBePositive('long', long),
    ...mustNotBeNegative('seam', seam),
    ...mustNotBeNegative('side', side),
    ...mustNotBeNegative('hem', hem),
    ...mustBePositiveIfGiven('cloth', cloth),
    ...kindProblems(kind),
  ];
  if (alone.length > 0 || kind.of !== 'gores' || kind.hem > edge) return alone;
  return [{ kind: 'not-over', field: 'sweep', over: edge, given: kind.hem }];
}

function kindProblems(kind: CircleKind): Problem[] {
  switch (kind.of) {
    case 'skirt':
      return [
        ...(kind.circles > 0 && kind.circles <= MOST_CIRCLES
          ? []
          : [outOf('circles', kind.circles, 0.05, MOST_CIRCLES)]),
        ...mustBeCount('panels', kind.panels, 1, MOST_PIECES),
      ];
    case 'gores':
      return [
        ...mustBeCount('gores', kind.count, 1, MOST_PIECES),
        ...mustBePositive('sweep', kind.hem),
      ];
    case 'flounce':
      if (kind.by === 'radius') return mustBePositive('radius', kind.radius);
      return kind.times > 1 ? [] : [outOf('times', kind.times, LEAST_TIMES, 20)];
  }
}

function outOf(field: string, given: number, least: number, most: number): Problem {
  return { kind: 'out-of-range', field, given, least, most };
}
