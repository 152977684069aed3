import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { HoleRow, StripInput } from './strip.ts';

/** This much over touching, a hundredth of a millimetre, holes are shown to be apart. */
const JUST_OVER = 80;

/** From the outer edge of the strip to each row. */
export function rowsAcross({ rows, margin, width }: StripInput): ExactLength[] {
  return rows === 'one' ? [margin] : [margin, exactLength(width - margin)];
}

/** Bent flat round R, a row at a from the outer edge of a strip W wide lies at R + W/2 − a. */
function lineOf(radius: number, { width }: StripInput, across: number): number {
  return radius + width / 2 - across;
}

/** A row's own length for each length of the strip: more outside a bend, less inside. */
export function stretchOf(strip: StripInput, across: number): number {
  return strip.radius === undefined ? 1 : lineOf(strip.radius, strip, across) / strip.radius;
}

/** Of a triangle with this angle between two sides: the side across from it, by the cosine rule. */
export function thirdSide(one: number, other: number, angle: number): number {
  // No difference of squares, which would leave nothing of what is small beside both.
  return Math.hypot(one - other, 2 * Math.sqrt(one * other) * Math.sin(angle / 2));
}

/** From hole to hole, centre to centre and straight across, so far apart along the strip. */
export function apart(strip: StripInput, [one, other]: [number, number], along: number): number {
  const { radius } = strip;
  if (radius === undefined) return Math.hypot(along, one - other);
  return thirdSide(lineOf(radius, strip, one), lineOf(radius, strip, other), along / radius);
}

/** From a hole to a square cut so far from it along the strip. */
export function toCut(strip: StripInput, across: number, along: number): number {
  const { radius } = strip;
  if (radius === undefined) return along;
  // Past a quarter of the way round, what is nearest is farther than straight in.
  return lineOf(radius, strip, across) * Math.sin(Math.min(along / radius, Math.PI / 2));
}

/**
 * How far along the strip a cut is so far from a hole: where it is bent, from one on
 * the innermost row, and nowhere when that row's radius is less.
 */
export function alongFor(strip: StripInput, distance: number): number {
  const { radius } = strip;
  if (radius === undefined) return distance;
  const innermost = lineOf(radius, strip, Math.max(...rowsAcross(strip)));
  if (distance > innermost) return Number.POSITIVE_INFINITY;
  return radius * Math.asin(distance / innermost);
}

/** Half a hole, as much of the strip's length as it takes. */
export function halfHole(strip: StripInput): number {
  return alongFor(strip, strip.hole / 2);
}

/** From a corner as far as the mitre goes, at so much from the outer edge. */
export function backOf(across: number, angle: number): number {
  return across / Math.tan((angle * Math.PI) / 360);
}

/**
 * The pitch along the strip at which holes touch. A loop is cut between two holes,
 * of staggered rows a quarter of a pitch from both. At a corner sharper than 60° the
 * holes before and after the one in it are the nearest: 2·p·sin(φ/2) apart.
 */
export function touchingPitch(strip: StripInput): ExactLength {
  const { corners, angle, fit, rows } = strip;
  if (corners.length > 0) {
    return exactLength(strip.hole / Math.min(1, 2 * Math.sin((angle * Math.PI) / 360)));
  }
  return exactLength(halfHole(strip) * (fit === 'loop' && rows === 'staggered' ? 4 : 2));
}

/** No pitch is brought below half of what was wanted, nor to where holes touch. */
export function leastPitch(strip: StripInput): ExactLength {
  return exactLength(Math.max(strip.pitch / 2, touchingPitch(strip) + JUST_OVER));
}

/** The least from a hole of one row to a hole of the other; undefined where there is one row. */
export function betweenRows(strip: StripInput, rows: readonly HoleRow[]): ExactLength | undefined {
  const [row, second] = rows;
  if (!row || !second) return undefined;
  // Along corners each row is filled by itself: anywhere two holes may stand side by side.
  const staggered = strip.rows === 'staggered' && strip.corners.length === 0;
  const pitch = (row.pitches[0] ?? 0) / stretchOf(strip, row.across);
  return exactLength(apart(strip, [row.across, second.across], staggered ? pitch / 2 : 0));
}
