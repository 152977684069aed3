import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import type { Problem } from '../problem.ts';
import { depthIn, foldsOf, thickestFor } from './hem-folds.ts';

/** A hem to be turned up. Every length in 1/8000 mm. */
export interface HemInput {
  /** Finished depth, from the hem line up. */
  depth: Length;
  /** The first turning; nothing for a single turn, as much as the depth for an equal double one. */
  turn: Length;
  /** Of the cloth, when it is to be reckoned with. */
  thickness: Length;
  /** From the inner fold (or the raw edge of a single turn) down to the stitching. */
  edgeStitch: Length;
  /** Finished length of the piece, when the cut length is wanted. */
  finished?: Length | undefined;
  /** What the cut length has at the other end of the piece: its hem or seam. */
  otherEnd?: Length | undefined;
  /** Cloth there is from the hem line to the raw edge, when it is cut already. */
  left?: Length | undefined;
}

/** How long to cut a piece whose finished length is known: with what both its ends take. */
export function cutLengthOf(
  finished: Length | undefined,
  allowance: ExactLength,
  otherEnd: Length | undefined,
): ExactLength | undefined {
  return finished === undefined ? undefined : exactLength(finished + allowance + (otherEnd ?? 0));
}

/** Why a hem can't be, with the field to mend and what would do. */
export function hemProblems(input: HemInput): Problem[] {
  const { depth, turn, thickness, edgeStitch, finished, otherEnd, left } = input;
  const alone = [
    ...mustBePositive('depth', depth),
    ...mustNotBeNegative('turn', turn),
    ...mustNotBeNegative('thickness', thickness),
    ...mustNotBeNegative('edgeStitch', edgeStitch),
    ...mustBePositiveIfGiven('finished', finished),
    ...(otherEnd === undefined ? [] : mustNotBeNegative('otherEnd', otherEnd)),
    ...mustBePositiveIfGiven('left', left),
  ];
  if (alone.length > 0) return alone;
  if (turn > depth) return [{ kind: 'too-long', field: 'turn', most: depth, given: turn }];
  const thickest = thickestFor(depth, turn);
  if (thickness > thickest) {
    return [{ kind: 'too-long', field: 'thickness', most: thickest, given: thickness }];
  }
  const inRound = roundProblems(input, foldsOf(input).last);
  if (inRound.length > 0) return inRound;
  if (finished !== undefined && depth > finished) {
    return [{ kind: 'too-long', field: 'depth', most: finished, given: depth }];
  }
  return left === undefined ? [] : clothProblems(input, left);
}

/**
 * Why a hem can't be stitched so near the hem line: no line can be, in the round of its fold.
 * @param fold what that fold adds; less than nothing where the cloth goes round closely
 */
export function roundProblems(
  { depth, edgeStitch }: Pick<HemInput, 'depth' | 'edgeStitch'>,
  fold: ExactLength,
): Problem[] {
  const under = exactLength(depth + Math.min(0, fold / 2));
  return edgeStitch < under
    ? []
    : [{ kind: 'not-under', field: 'edgeStitch', under, given: edgeStitch }];
}

/** What is too deep for the cloth there is: the hem, or its turning. */
function clothProblems({ depth, turn, thickness }: HemInput, left: Length): Problem[] {
  const folds = foldsOf({ depth, turn, thickness });
  const needed = exactLength(depth + turn + folds.first + folds.last);
  if (needed <= left) return [];
  const half = depthIn(left, 'equal', thickness);
  // Of a hem turned as deep as it is the turn is more than that, too.
  const deepest = turn > half ? half : depthIn(left, turn, thickness);
  // No hem of this cloth is small enough for what there is.
  if (thickness > thickestFor(deepest, turn)) {
    return [{ kind: 'too-short', field: 'left', least: needed, given: left }];
  }
  return turn > half && turn !== depth
    ? [{ kind: 'too-long', field: 'turn', most: half, given: turn }]
    : [{ kind: 'too-long', field: 'depth', most: deepest, given: depth }];
}
