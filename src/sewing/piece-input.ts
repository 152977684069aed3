import { type Length, ZERO } from '../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from './length-checks.ts';
import type { Problem } from './problem.ts';

/** The two ways a piece is measured. */
export type Way = 'width' | 'length';

/** Sides nearer to the bottom than this, or further than what is left of 180, are not reckoned with. Ours. */
const FLATTEST = 10;
/** Cloth that loses more than this is none to cut a garment from. Ours. */
const MOST_SHRINKAGE = 50;

export interface PieceInput {
  /** What `width` and `length` are: the finished size that is wanted, or what was cut. */
  given: 'finished' | 'cut';
  /** Finished, of the whole piece where the bottom is; cut, as the hand cuts it: on the fold half. */
  width: Length | undefined;
  length: Length | undefined;
  /** One side lies on the fold: it takes nothing, and the piece opens to twice as wide. */
  fold: boolean;
  /** What each edge takes for the seam, hem or facing that finishes it; on the fold both sides are one. */
  edges: { top: Length; bottom: Length; side: Length; other: Length };
  /** Inside the finished corner of bottom and side, in degrees: under 90 the piece is widest below. */
  angle: number;
  /** What the cloth loses after it is cut, per cent. */
  shrinks: { across: number; along: number };
}

/** What is wrong with what one way is worked out from, by the fields of the calculation. */
export function wayProblems(input: PieceInput, way: Way): Problem[] {
  const { top, bottom, side, other } = input.edges;
  const size = input[way];
  return [
    ...(size === undefined ? [] : mustBePositive(way, size)),
    ...(way === 'length'
      ? [...mustNotBeNegative('top', top), ...mustNotBeNegative('bottom', bottom)]
      : [
          ...mustNotBeNegative('side', side),
          ...mustNotBeNegative('otherSide', other),
          ...angleProblems(input.angle),
        ]),
    ...(way === 'length'
      ? mustShrink('shrinksAlong', input.shrinks.along)
      : mustShrink('shrinksAcross', input.shrinks.across)),
  ];
}

/** What is wrong with the slant of the sides. */
export function angleProblems(given: number): Problem[] {
  const [least, most] = [FLATTEST, 180 - FLATTEST];
  if (given >= least && given <= most) return [];
  return [{ kind: 'out-of-range', field: 'angle', given, least, most }];
}

/** What is wrong with a piece that has neither way. */
export function sizeProblems({ width, length }: PieceInput): Problem[] {
  if (width !== undefined || length !== undefined) return [];
  return [{ kind: 'not-positive', field: 'width', given: ZERO }];
}

function mustShrink(field: string, given: number): Problem[] {
  if (given >= 0 && given <= MOST_SHRINKAGE) return [];
  return [{ kind: 'out-of-range', field, given, least: 0, most: MOST_SHRINKAGE }];
}
