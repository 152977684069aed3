import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { Facing, FacingInput } from './hem-facing.ts';

/** What of a facing is made, undefined of what isn't. */
export interface FacingMade {
  /** How deep it was cut. */
  cutDeep?: ExactLength | undefined;
  /** Its seam, from the raw edge. */
  seam?: ExactLength | undefined;
  /** What was turned under of its free edge. */
  turn?: ExactLength | undefined;
}

/** A facing of which some is made: what stands, and what is still to come by it. */
export type FacingStands = Pick<Facing, 'allowance' | 'stitchUp'> & {
  /** Finished, from the hem line up. */
  depth: ExactLength;
  /** Stitching, from the raw edge of the piece. */
  stitch: ExactLength;
};

/**
 * A faced hem with what was cut, sewn and turned under as it was made: what the facing is cut
 * deep, less seam, turning and folds, is its finished depth (the sum of `facedHem` the other
 * way round), and it is stitched as far in from its free edge as asked.
 */
export function facingAsMade(
  plan: Facing,
  { depth: planned, seam, turn }: FacingInput,
  made: FacingMade,
): FacingStands {
  const sewn = (made.seam ?? seam) - seam;
  const cut = (made.cutDeep ?? plan.cutDeep) - plan.cutDeep;
  const deeper = cut - sewn - ((made.turn ?? turn) - turn);
  const allowance = exactLength(plan.allowance + sewn);
  const stitchUp = exactLength(plan.stitchUp + deeper);
  return {
    allowance,
    depth: exactLength(planned + deeper),
    stitchUp,
    stitch: exactLength(allowance + stitchUp),
  };
}
