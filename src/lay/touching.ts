import type { Outline, Point } from './outline.ts';

/** Whether two outlines share more than their edges, or lie nearer than they should. */
export function meet(one: Outline, other: Outline, apart: number, least: number): boolean {
  if (entersOther(one, other, least) || entersOther(other, one, least)) return true;
  if (apart <= 0) return deepIn(middleOf(one), other, least);
  return nearerThan(one, other, apart - least) || nearerThan(other, one, apart - least);
}

/**
 * Whether an edge of one runs within the other: every edge is cut where the other's edges cross
 * it, and the middle of each stretch is looked at.
 */
function entersOther(one: Outline, other: Outline, least: number): boolean {
  return one.some((from, i) => {
    const to = one[(i + 1) % one.length]!;
    const cuts = [0, 1];
    other.forEach((p, j) => {
      const at = crossing(from, to, p, other[(j + 1) % other.length]!);
      if (at !== undefined) cuts.push(at);
    });
    cuts.sort((a, b) => a - b);
    return cuts.some((at, k) => {
      const middle = (at + (cuts[k + 1] ?? at)) / 2;
      const [x, y] = [from[0] + (to[0] - from[0]) * middle, from[1] + (to[1] - from[1]) * middle];
      return deepIn([x, y], other, least);
    });
  });
}

/** Where on the way from a to b, from 0 to 1, the way from c to d is crossed. */
function crossing(a: Point, b: Point, c: Point, d: Point): number | undefined {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const turn = ux * vy - uy * vx;
  if (turn === 0) return undefined;
  const along = ((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / turn;
  const across = ((c[0] - a[0]) * uy - (c[1] - a[1]) * ux) / turn;
  return along > 0 && along < 1 && across >= 0 && across <= 1 ? along : undefined;
}

/** Whether a place lies within an outline, and farther than `least` from its edge. */
function deepIn(place: Point, outline: Outline, least: number): boolean {
  let inside = false;
  let near = Infinity;
  outline.forEach((from, i) => {
    const to = outline[(i + 1) % outline.length]!;
    const crosses = from[1] > place[1] !== to[1] > place[1];
    const at = from[0] + ((to[0] - from[0]) * (place[1] - from[1])) / (to[1] - from[1]);
    if (crosses && place[0] < at) inside = !inside;
    near = Math.min(near, awayFrom(place, from, to));
  });
  return inside && near > least;
}

function awayFrom(place: Point, from: Point, to: Point): number {
  const [ux, uy] = [to[0] - from[0], to[1] - from[1]];
  const length = ux * ux + uy * uy;
  const along = length ? ((place[0] - from[0]) * ux + (place[1] - from[1]) * uy) / length : 0;
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(place[0] - from[0] - t * ux, place[1] - from[1] - t * uy);
}

const nearerThan = (one: Outline, other: Outline, apart: number): boolean =>
  one.some((corner) =>
    other.some((from, i) => awayFrom(corner, from, other[(i + 1) % other.length]!) < apart),
  );

/** A place within the outline: the middle of its widest stretch at half the height of a corner. */
function middleOf(outline: Outline): Point {
  const heights = [...new Set(outline.map(([, y]) => y))].sort((a, b) => a - b);
  const y = (heights[0]! + (heights[1] ?? heights[0]!)) / 2;
  const crossings = outline
    .flatMap((from, i): number[] => {
      const to = outline[(i + 1) % outline.length]!;
      if (from[1] > y === to[1] > y) return [];
      return [from[0] + ((to[0] - from[0]) * (y - from[1])) / (to[1] - from[1])];
    })
    .sort((a, b) => a - b);
  return [((crossings[0] ?? 0) + (crossings[1] ?? 0)) / 2, y];
}
