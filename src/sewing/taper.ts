import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { mustBePositive } from './length-checks.ts';
import { answerUnless, type Outcome } from './problem.ts';

/** A tapered sleeve or leg: its width at two heights. */
export interface TaperInput {
  /** Across at the hem line. */
  atHem: Length;
  /** Across, one hem depth above it. */
  above: Length;
  depth: Length;
  /** The first turning; nothing for a single turn. */
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
 */
export function trueTaper({ atHem, above, depth, turn }: TaperInput): Outcome<Taper> {
  const problems = [...mustBePositive('atHem', atHem), ...mustBePositive('above', above)];
  return answerUnless(problems, () => {
    const slope = (above - atHem) / depth;
    return {
      ok: true,
      value: {
        atDepth: exactLength(above),
        atRawEdge: exactLength(above - slope * turn),
        eachSide: exactLength((above - atHem) / 2),
      },
    };
  });
}
