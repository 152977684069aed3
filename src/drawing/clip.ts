import type { Point } from './figure.ts';

/** A rectangle, in mm. */
export interface Box {
  from: Point;
  to: Point;
}

/** The parts of a line of several points that lie within a box, each as a line of its own. */
export function clipped(points: readonly Point[], box: Box): Point[][] {
  const parts: Point[][] = [];
  for (const [i, to] of points.entries()) {
    const from = points[i - 1];
    const inside = from && within(from, to, box);
    if (!inside) continue;
    const last = parts.at(-1);
    const end = last?.at(-1);
    if (last && end && same(end, inside[0])) last.push(inside[1]);
    else parts.push(inside);
  }
  return parts;
}

export function isInside({ x, y }: Point, { from, to }: Box): boolean {
  return x >= from.x && x <= to.x && y >= from.y && y <= to.y;
}

/** The part of a straight line within a box: Liang and Barsky, ACM TOG 3 (1984), no. 1. */
function within(from: Point, to: Point, box: Box): [Point, Point] | undefined {
  const way = { x: to.x - from.x, y: to.y - from.y };
  let [enters, leaves] = [0, 1];
  for (const axis of ['x', 'y'] as const) {
    if (way[axis] === 0) {
      if (from[axis] < box.from[axis] || from[axis] > box.to[axis]) return undefined;
      continue;
    }
    const one = (box.from[axis] - from[axis]) / way[axis];
    const other = (box.to[axis] - from[axis]) / way[axis];
    enters = Math.max(enters, Math.min(one, other));
    leaves = Math.min(leaves, Math.max(one, other));
  }
  if (enters > leaves) return undefined;
  const at = (share: number) => ({ x: from.x + share * way.x, y: from.y + share * way.y });
  // Ends that are inside stay exactly where they are.
  return [enters === 0 ? from : at(enters), leaves === 1 ? to : at(leaves)];
}

function same(one: Point, other: Point): boolean {
  return one.x === other.x && one.y === other.y;
}
