import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { type HemInput, hemProblems } from './hem-input.ts';
import { mustBePositive } from './length-checks.ts';
import { answerUnless, type Outcome, type Problem } from './problem.ts';
import type { Run } from './run.ts';

/** A hem finished with a facing: of `HemInput`, the turning is that of the facing's free edge. */
export interface FacingInput extends Omit<HemInput, 'thickness'> {
  /** The seam that joins facing and piece, along the hem line. */
  seam: Length;
  /** Of a curved hem line, when it is known. */
  radius?: Length | undefined;
}

/** A faced hem: the piece gives only the seam, the facing all the rest. */
export interface Facing {
  /** From the raw edge to the hem line. */
  allowance: Length;
  /** How deep to cut the facing, or how wide its bias strip: seam, depth and turning. */
  cutDeep: ExactLength;
  /** Up from the finished edge to the stitching. */
  stitchUp: ExactLength;
  cutLength: ExactLength | undefined;
  /**
   * The part of its length that the free edge of a straight bias strip has to lose on
   * an outward curve, or to gain on an inward one.
   */
  gives: number | undefined;
  /** The facing seam and the stitching, from the raw edge of the piece. */
  run: Run;
}

/**
 * A facing instead of a turned-up hem, where a curve is too full (or too short) to
 * be turned: cut to the same curve it lies flat. A bias strip's free edge, d from a
 * hem line of radius R, has to give d/R, half of what a hem turned up would (derived
 * here).
 *
 * Source: an older Butterick text on skirts (fashion-design-drawing.com, Skirts, part
 * 5): a seam of 3/8 in joins the facing, its free edge is turned under narrowly.
 *
 * Problems: those of a hem, nothing for a seam, a seam wider than the hem is deep (or
 * than the cloth there is), a facing as deep as the radius.
 */
export function facedHem({ seam, radius, ...input }: FacingInput): Outcome<Facing> {
  const { depth, turn, edgeStitch, finished } = input;
  return answerUnless(facingProblems({ seam, radius, ...input }), () => {
    const stitchUp = exactLength(depth - edgeStitch);
    const stitch = exactLength(seam + stitchUp);
    return {
      ok: true,
      value: {
        allowance: seam,
        cutDeep: exactLength(seam + depth + turn),
        stitchUp,
        gives: radius === undefined ? undefined : depth / radius,
        cutLength: finished === undefined ? undefined : exactLength(finished + seam),
        run: {
          datum: 'raw-edge',
          length: stitch as Length,
          marks: [
            { at: seam, label: '1', kind: 'stitch' },
            { at: stitch, label: '2', kind: 'stitch' },
          ],
        },
      },
    };
  });
}

function facingProblems({ seam, left, radius, ...input }: FacingInput): Problem[] {
  const alone = [
    ...hemProblems({ ...input, thickness: 0 as Length }),
    ...mustBePositive('seam', seam),
    ...(left === undefined ? [] : mustBePositive('left', left)),
    ...(radius === undefined ? [] : mustBePositive('radius', radius)),
  ];
  if (alone.length > 0) return alone;
  if (radius !== undefined && input.depth >= radius) {
    return [{ kind: 'not-under', field: 'depth', under: radius, given: input.depth }];
  }
  const most = left !== undefined && left < input.depth ? left : input.depth;
  return seam > most ? [{ kind: 'too-long', field: 'seam', most, given: seam }] : [];
}
