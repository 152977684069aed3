import { type ExactLength, exactLength, type Length, LONGEST } from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';

/** A tapered sleeve or leg: its width at two heights. */
export interface TaperInput {
  /** Across at the hem line. */
  atHem: Length;
  /** Across, `apart` above it. */
  above: Length;
  apart: Length;
  /** Of the hem. */
  depth: Length;
  /** The first turning; nothing for a single turn, at most the depth. */
  turn: Length;
}

/** How wide to cut the allowance, so that it lies flat when it is turned. */
export interface Taper {
  /** Across at the inner fold (or the raw edge of a single turn): the mirror of what it lies on. */
  atDepth: ExactLength;
  /** Across at the raw edge. */
  atRawEdge: ExactLength;
  /** How far each side steps out (or in, below nothing) from the hem line to the inner fold. */
  eachSide: ExactLength;
}

/**
 * The allowance of a tapered piece, cut as the mirror of what it lies on: as wide
 * at the inner fold as the piece is one depth above the hem line. A first turning
 * mirrors back from there. Geometry, derived here.
 *
 * Problems: nothing or less in a length, a turning deeper than the hem, a piece
 * that narrows to nothing (or widens beyond measure) within the hem.
 */
export function trueTaper({ atHem, above, apart, depth, turn }: TaperInput): Outcome<Taper> {
  return answerUnless(taperProblems({ atHem, above, apart, depth, turn }), () => {
    const slope = (above - atHem) / apart;
    const atDepth = atHem + slope * depth;
    if (atDepth <= 0) {
      const over = exactLength(atHem * (1 - apart / depth));
      return refused({ kind: 'not-over', field: 'above', over, given: above });
    }
    if (atDepth > LONGEST) {
      const most = exactLength(atHem + ((LONGEST - atHem) * apart) / depth);
      return refused({ kind: 'too-long', field: 'above', most, given: above });
    }
    return {
      ok: true,
      value: {
        atDepth: exactLength(atDepth),
        atRawEdge: exactLength(atDepth - slope * turn),
        eachSide: exactLength((atDepth - atHem) / 2),
      },
    };
  });
}

function taperProblems({ turn, ...widths }: TaperInput): Problem[] {
  const alone = [
    ...Object.entries(widths).flatMap(([field, length]) => mustBePositive(field, length)),
    ...mustNotBeNegative('turn', turn),
  ];
  if (alone.length > 0 || turn <= widths.depth) return alone;
  return [{ kind: 'too-long', field: 'turn', most: widths.depth, given: turn }];
}
