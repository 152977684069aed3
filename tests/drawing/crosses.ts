import type { Box } from '../../src/drawing/dimension-layout.ts';
import type { Point } from '../../src/drawing/figure.ts';

/** A line may touch what is written by its looks' thickness, in px. */
const HAIR = 1.5;

/** Whether a line through some points runs through a box. */
export function crosses(points: readonly Point[], box: Box): boolean {
  return points.slice(1).some((to, i) => isThrough(points[i] ?? to, to, box));
}

/** The part of a straight line that is inside a box, by clipping it at each side in turn. */
function isThrough(from: Point, to: Point, { x, y, width, height }: Box): boolean {
  let [enters, leaves] = [0, 1];
  const sides = [
    [to.x - from.x, x + HAIR - from.x, x + width - HAIR - from.x],
    [to.y - from.y, y + HAIR - from.y, y + height - HAIR - from.y],
  ] as const;
  for (const [by, low, high] of sides) {
    if (by === 0) {
      if (low > 0 || high < 0) return false;
      continue;
    }
    const [one, other] = [low / by, high / by];
    enters = Math.max(enters, Math.min(one, other));
    leaves = Math.min(leaves, Math.max(one, other));
  }
  return enters < leaves;
}
