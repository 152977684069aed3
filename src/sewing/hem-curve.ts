import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { mustBePositive } from './length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from './problem.ts';

/** How the curve of a hem line is known. */
export type CurveInput =
  /** The tape straight across the curve, and how far the curve rises from it. */
  | { by: 'rise'; chord: Length; rise: Length }
  /** The tape round the hem line, and round a line one hem depth above it. */
  | { by: 'readings'; round: Length; above: Length };

/** What turning a hem up on a curve does to the edge that is turned. */
export interface CurvedHem {
  radius: ExactLength;
  /**
   * What the turned edge has too much (on an outward curve) or too little (on an
   * inward one), as a part of the hem line's length.
   */
  fullness: number;
  /** The same for all of the hem line, where its length is known. */
  excess: ExactLength | undefined;
  /** The deepest hem whose fullness the cloth takes. */
  deepest: ExactLength;
  fits: boolean;
}

/**
 * A hem of a depth turned up on a curved hem line.
 *
 * Radius from a chord c and rise s: R = c²/(8s) + s/2. An edge of radius R + d is
 * laid on one of R − d, so 2d/R of the hem line is left over, 4πd on a full circle;
 * from two readings it is twice their difference. The deepest hem a cloth takes
 * that eases in a part q is qR/2. Geometry, derived here.
 *
 * @param ease the part of its length the cloth eases in, 0 to 1
 * Problems: nothing or less in a reading, a rise over half the chord, readings of a
 * straight edge, a hem as deep as the radius.
 */
export function curvedHem(depth: Length, curve: CurveInput, ease: number): Outcome<CurvedHem> {
  return answerUnless(curveProblems(curve, ease), () => {
    const radius = exactLength(radiusOf(depth, curve));
    if (depth >= radius) {
      return refused({ kind: 'too-long', field: 'depth', most: radius, given: depth });
    }
    const fullness = (2 * depth) / radius;
    const excess =
      curve.by === 'readings' ? exactLength(2 * (curve.round - curve.above)) : undefined;
    const deepest = exactLength((ease * radius) / 2);
    return { ok: true, value: { radius, fullness, excess, deepest, fits: depth <= deepest } };
  });
}

function radiusOf(depth: Length, curve: CurveInput): number {
  if (curve.by === 'rise') {
    return (curve.chord * curve.chord) / (8 * curve.rise) + curve.rise / 2;
  }
  return (curve.round * depth) / (curve.round - curve.above);
}

function curveProblems(curve: CurveInput, ease: number): Problem[] {
  const most = 100;
  const eased: Problem[] =
    ease >= 0 && ease <= 1
      ? []
      : [{ kind: 'out-of-range', field: 'ease', given: ease * 100, least: 0, most }];
  if (curve.by === 'rise') {
    const { chord, rise } = curve;
    const alone = [...mustBePositive('chord', chord), ...mustBePositive('rise', rise), ...eased];
    if (alone.length > 0) return alone;
    const half = exactLength(chord / 2);
    return rise > half ? [{ kind: 'too-long', field: 'rise', most: half, given: rise }] : [];
  }
  const { round, above } = curve;
  const alone = [...mustBePositive('round', round), ...mustBePositive('above', above), ...eased];
  if (alone.length > 0) return alone;
  return above >= round ? [{ kind: 'too-long', field: 'above', most: round, given: above }] : [];
}
