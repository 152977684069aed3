import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from './length-checks.ts';
import type { Problem } from './problem.ts';

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
  /** Cloth there is from the hem line to the raw edge, when it is cut already. */
  left?: Length | undefined;
}

/** What one fold of a cloth takes: half a circle along the middle of it (derived here). */
export function foldOf(thickness: Length): ExactLength {
  return exactLength((Math.PI / 2) * thickness);
}

/** Why a hem can't be, with the field to mend and what would do. */
export function hemProblems(input: HemInput): Problem[] {
  const { depth, turn, thickness, edgeStitch, finished, left } = input;
  const alone = [
    ...mustBePositive('depth', depth),
    ...mustNotBeNegative('turn', turn),
    ...mustNotBeNegative('thickness', thickness),
    ...mustNotBeNegative('edgeStitch', edgeStitch),
    ...(finished === undefined ? [] : mustBePositive('finished', finished)),
    ...(left === undefined ? [] : mustBePositive('left', left)),
  ];
  if (alone.length > 0) return alone;
  if (turn > depth) return [{ kind: 'too-long', field: 'turn', most: depth, given: turn }];
  if (edgeStitch >= depth)
    return [{ kind: 'not-under', field: 'edgeStitch', under: depth, given: edgeStitch }];
  if (finished !== undefined && depth > finished) {
    return [{ kind: 'too-long', field: 'depth', most: finished, given: depth }];
  }
  return left === undefined ? [] : clothProblems(input, left);
}

/** What is too deep for the cloth there is: the hem, or its turning. */
function clothProblems({ depth, turn, thickness }: HemInput, left: Length): Problem[] {
  const folds = foldOf(thickness) * (turn > 0 ? 2 : 1);
  const room = left - folds;
  if (depth + turn <= room) return [];
  if (room <= 0) {
    const least = exactLength(depth + turn + folds);
    return [{ kind: 'too-short', field: 'left', least, given: left }];
  }
  const half = exactLength(room / 2);
  if (turn === depth) return [{ kind: 'too-long', field: 'depth', most: half, given: depth }];
  return turn > half
    ? [{ kind: 'too-long', field: 'turn', most: half, given: turn }]
    : [{ kind: 'too-long', field: 'depth', most: exactLength(room - turn), given: depth }];
}
