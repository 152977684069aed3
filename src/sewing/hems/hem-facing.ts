import { type ExactLength, exactLength, type Length, ZERO } from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import type { Run } from '../run.ts';
import { foldShare } from './hem-folds.ts';
import { cutLengthOf, type HemInput, hemProblems, roundProblems } from './hem-input.ts';

/** A hem finished with a facing: of `HemInput`, the turning is that of the facing's free edge. */
export interface FacingInput extends HemInput {
  /** The seam that joins facing and piece, along the hem line. */
  seam: Length;
  /** Of a curved hem line, when it is known. */
  radius?: Length | undefined;
}

/** A faced hem: the piece gives only the seam, the facing all the rest. */
export interface Facing {
  /** What the piece is cut longer by: the seam, and what its fold at the hem line adds. */
  allowance: ExactLength;
  /** How deep to cut the facing, or how wide its bias strip: seam, depth, turning and folds. */
  cutDeep: ExactLength;
  /** What the cloth's thickness adds where piece or facing fold at their seam, and at the free edge. */
  folds: { atSeam: ExactLength; first: ExactLength };
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
 * here). At the hem line piece and facing each fold round nothing in the middle of
 * which the seam lies, so each has half of what a fold adds; the free edge has all of
 * its own (`hem-folds.ts`).
 *
 * Source: an older Butterick text on skirts (fashion-design-drawing.com, Skirts, part
 * 5): a seam of 3/8 in joins the facing, its free edge is turned under narrowly.
 *
 * Problems: those of a hem, a seam that lies in the round of its fold, a seam wider than the hem is deep (or
 * than the cloth there is), a facing as deep as the radius.
 */
export function facedHem({ seam, radius, ...input }: FacingInput): Outcome<Facing> {
  const { depth, turn, thickness, edgeStitch, finished, otherEnd } = input;
  return answerUnless(facingProblems({ seam, radius, ...input }), () => {
    const stitchUp = exactLength(depth - edgeStitch);
    const fold = foldShare(thickness, 0);
    const folds = { atSeam: exactLength(fold / 2), first: turn > 0 ? fold : ZERO };
    const allowance = exactLength(seam + folds.atSeam);
    const stitch = exactLength(allowance + stitchUp);
    return {
      ok: true,
      value: {
        allowance,
        folds,
        cutDeep: exactLength(allowance + depth + turn + folds.first),
        stitchUp,
        gives: radius === undefined ? undefined : depth / radius,
        cutLength: cutLengthOf(finished, allowance, otherEnd),
        run: {
          datum: 'raw-edge',
          length: Math.ceil(stitch) as Length,
          marks: [
            { at: seam, label: '1', kind: 'stitch' },
            {
              at: stitch,
              label: '2',
              kind: 'stitch',
              inside: { over: seam, under: exactLength(allowance + depth) },
            },
          ],
        },
      },
    };
  });
}

/**
 * How long a facing is cut: its edge, and a seam at either end (common practice, no source).
 * Problems: an edge of nothing, a seam of less.
 */
export function facingLength(edge: Length, seam: Length): Outcome<ExactLength> {
  const problems = [...mustBePositive('edge', edge), ...mustNotBeNegative('seam', seam)];
  return answerUnless(problems, () => ({ ok: true, value: exactLength(edge + 2 * seam) }));
}

function facingProblems({ seam, left, radius, ...input }: FacingInput): Problem[] {
  const alone = [
    ...hemProblems(input),
    ...mustBePositive('seam', seam),
    ...mustBePositiveIfGiven('left', left),
    ...mustBePositiveIfGiven('radius', radius),
  ];
  if (alone.length > 0) return alone;
  if (radius !== undefined && input.depth >= radius) {
    return [{ kind: 'not-under', field: 'depth', under: radius, given: input.depth }];
  }
  const most = exactLength(Math.min(left ?? input.depth, input.depth));
  if (seam > most) return [{ kind: 'too-long', field: 'seam', most, given: seam }];
  const fold = foldShare(input.thickness, 0);
  const over = exactLength(Math.max(0, -fold / 2));
  return seam > over
    ? roundProblems(input, fold)
    : [{ kind: 'not-over', field: 'seam', over, given: seam }];
}
