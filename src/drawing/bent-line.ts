import type { Point } from './figure.ts';

/** Points written as `x y, x y`. */
export function pointsOf(written: string): Point[] {
  return written.split(',').map((pair) => {
    const [x = 0, y = 0] = pair.trim().split(' ').map(Number);
    return { x, y };
  });
}

/** Places of a bend from each point to the next. */
const STEPS = 4;

/** A line that bends through points, each bend by the points on both its sides (Catmull and Rom, 1974). */
export function bentThrough(points: readonly Point[]): Point[] {
  const last = points.length - 1;
  const at = (i: number) => points[Math.max(0, Math.min(last, i))] ?? { x: 0, y: 0 };
  const bends = points.slice(0, last).flatMap((_, i) => {
    const near = [at(i - 1), at(i), at(i + 1), at(i + 2)] as const;
    return Array.from({ length: STEPS }, (__, k) => bend(near, k / STEPS));
  });
  return [...bends, at(last)];
}

type Near = readonly [Point, Point, Point, Point];

/** A place of the bend from the second of four points to the third. @param t from 0 to 1 */
function bend([before, from, to, after]: Near, t: number): Point {
  const along = (k: 'x' | 'y') => {
    const [a, b, c, d] = [before[k], from[k], to[k], after[k]];
    const first = 2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t ** 2;
    return (first + (3 * b - a - 3 * c + d) * t ** 3) / 2;
  };
  return { x: along('x'), y: along('y') };
}
