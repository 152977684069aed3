import type { Point } from '../../outline.ts';
import { CURVE_MM } from './file-problem.ts';

/** Corners one curve may come to. */
const MOST_PARTS = 2000;

const mix = (a: Point, b: Point, t: number): Point => [
  a[0] + t * (b[0] - a[0]),
  a[1] + t * (b[1] - a[1]),
];

/**
 * The corners of a Bézier curve after its first point, with its last. Its chords lie within
 * `CURVE_MM` of it: by the bound on second differences, n² ≥ d (d − 1) m / (8 × tolerance).
 * @param points first, controls, last: 3 or 4
 * @param perMm how many of the points' units a millimetre has
 */
export function bezier(points: readonly Point[], perMm: number): Point[] {
  const degree = points.length - 1;
  let most = 0;
  for (let i = 0; i + 2 < points.length; i++) {
    const [a, b, c] = [points[i]!, points[i + 1]!, points[i + 2]!];
    most = Math.max(most, Math.hypot(a[0] - 2 * b[0] + c[0], a[1] - 2 * b[1] + c[1]));
  }
  const parts = partsFor(Math.sqrt((degree * (degree - 1) * most) / (8 * CURVE_MM * perMm)));
  return Array.from({ length: parts }, (_, i) => {
    if (i + 1 === parts) return points[degree]!;
    let row = points;
    while (row.length > 1) row = row.slice(1).map((b, k) => mix(row[k]!, b, (i + 1) / parts));
    return row[0]!;
  });
}

/** How many chords an arc of this radius and angle needs, in mm and radians. */
const arcParts = (radiusMm: number, angle: number): number =>
  partsFor(Math.abs(angle) / (2 * Math.sqrt((2 * CURVE_MM) / Math.max(radiusMm, CURVE_MM))));

function partsFor(needed: number): number {
  if (!(needed < Infinity)) return 1;
  // What is larger than a bolt of cloth is refused for that later; it needs no fine corners.
  return Math.max(1, Math.min(MOST_PARTS, Math.ceil(needed)));
}

/**
 * The corners of an arc of an ellipse, from one angle on for another, both in radians.
 * @param at the place on the ellipse at an angle
 */
export function arc(at: (angle: number) => Point, from: number, by: number, radiusMm: number) {
  const parts = arcParts(radiusMm, by);
  return Array.from({ length: parts }, (_, i) => at(from + ((i + 1) / parts) * by));
}
