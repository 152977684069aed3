import { type ExactLength, exactLength, type Length, LONGEST } from '../../lengths/length.ts';
import { mustBePositive } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';

/** How the curve of a hem line is known. */
export type CurveInput =
  /** The tape straight across the curve, and how far the curve rises from it. */
  | { by: 'rise'; chord: Length; rise: Length; inward: boolean }
  /** The tape round the hem line, and round a line so far above it; longer above is inward. */
  | { by: 'readings'; round: Length; above: Length; apart: Length };

/** What turning a hem up on a curve does to the edge that is turned. */
export interface CurvedHem {
  /** Of the hem line; undefined where it is straight, or as good as. */
  radius: ExactLength | undefined;
  inward: boolean;
  /**
   * What the turned edge has too much (on an outward curve) or too little (on an
   * inward one), as a part of the hem line's length.
   */
  fullness: number;
  /** The same for all of the hem line, where its length is known. */
  excess: ExactLength | undefined;
  /** The deepest hem whose fullness the cloth takes; on an outward curve only. */
  deepest: ExactLength | undefined;
  /** The hem lies flat as it is. */
  fits: boolean;
}

/**
 * A hem of a depth turned up on a curved hem line.
 *
 * Radius from a chord c and rise s: R = c²/(8s) + s/2; from a length l round the
 * hem line and one a above it that differs by x: R = l·a/x. An edge of radius R + d
 * is laid on one of R − d, so 2d/R of the hem line is left over, 4πd on a full
 * circle. The deepest hem a cloth takes that eases in a part q is qR/2. Geometry,
 * derived here.
 *
 * @param ease the part of its length the cloth eases in, 0 to 1
 * Problems: nothing or less in a length, a rise over half the chord, a hem as deep
 * as the radius, an ease no cloth has.
 */
export function curvedHem(depth: Length, curve: CurveInput, ease: number): Outcome<CurvedHem> {
  return answerUnless(curveProblems(depth, curve, ease), (): Outcome<CurvedHem> => {
    const inward = curve.by === 'rise' ? curve.inward : curve.above > curve.round;
    const units = radiusOf(curve);
    if (units > LONGEST) {
      const none = { radius: undefined, deepest: undefined, excess: undefined };
      return { ok: true, value: { ...none, inward, fullness: 0, fits: true } };
    }
    const radius = exactLength(units);
    if (depth >= radius) {
      return refused({ kind: 'not-under', field: 'depth', under: radius, given: depth });
    }
    const fullness = (2 * depth) / radius;
    const excess = curve.by === 'readings' ? exactLength(fullness * curve.round) : undefined;
    const deepest = inward ? undefined : exactLength((ease * radius) / 2);
    const fits = deepest !== undefined && depth <= deepest;
    return { ok: true, value: { radius, inward, fullness, excess, deepest, fits } };
  });
}

/** In 1/8000 mm; infinite where two readings are the same. */
function radiusOf(curve: CurveInput): number {
  if (curve.by === 'rise') {
    return (curve.chord * curve.chord) / (8 * curve.rise) + curve.rise / 2;
  }
  return (curve.round * curve.apart) / Math.abs(curve.round - curve.above);
}

function curveProblems(depth: Length, curve: CurveInput, ease: number): Problem[] {
  const lengths =
    curve.by === 'rise'
      ? { chord: curve.chord, rise: curve.rise }
      : { round: curve.round, above: curve.above, apart: curve.apart };
  const alone = [
    ...mustBePositive('depth', depth),
    ...Object.entries(lengths).flatMap(([field, length]) => mustBePositive(field, length)),
  ];
  if (!(ease >= 0 && ease <= 1)) {
    const given = ease * 100;
    alone.push({ kind: 'out-of-range', field: 'ease', given, least: 0, most: 100 });
  }
  if (alone.length > 0 || curve.by === 'readings') return alone;
  const { chord, rise } = curve;
  const half = exactLength(chord / 2);
  return rise > half ? [{ kind: 'too-long', field: 'rise', most: half, given: rise }] : [];
}
