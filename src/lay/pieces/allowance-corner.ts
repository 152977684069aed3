import type { Outline, Point } from '../outline.ts';

/** A straight way of an outline that runs counter-clockwise, and how wide its allowance is. */
export interface Way {
  from: Point;
  to: Point;
  /** Its direction, of length 1. */
  u: Point;
  length: number;
  wide: number;
}

/**
 * How far from its corner a mitre may reach, in widths of the wider allowance: a sharper point is
 * cut off square there. Common practice, no source.
 */
export const MITRE_MOST = 3;

/** Less of a turn than this is a straight way on, as a sine. */
const STRAIGHT = 1e-12;

/** What lies between the strips of two ways at the corner where the first ends. */
export function cornerFill(before: Way, after: Way): Outline[] {
  const [[ux, uy], [vx, vy]] = [before.u, after.u];
  const turn = { sin: ux * vy - uy * vx, cos: ux * vx + uy * vy };
  if (Math.abs(turn.sin) < STRAIGHT) return [];
  const reach = reachOf(before.wide, after.wide, turn);
  if (turn.sin < 0) return hollowFill(before, after, reach);
  if (reach.past >= 0 && reach.ahead >= 0) return kite(before, after, reach);
  // A mitre would cut into the wider strip: it ends square, down to the narrower one.
  const wide = Math.min(before.wide, after.wide);
  return kite({ ...before, wide }, { ...after, wide }, reachOf(wide, wide, turn));
}

/** Where the outer edges of both strips meet: past the end of the first, ahead of the second. */
interface Reach {
  past: number;
  ahead: number;
}

/** Two lines, each at its distance from a side: from their equations, with the turn between them. */
const reachOf = (
  wide: number,
  next: number,
  { sin, cos }: { sin: number; cos: number },
): Reach => ({
  past: (next - wide * cos) / sin,
  ahead: (wide - next * cos) / sin,
});

/** Where a strip's outer edge ends, drawn out by so much along it. */
function outerEnd({ u: [ux, uy], wide }: Way, [x, y]: Point, along: number): Point {
  return [x + uy * wide + ux * along, y - ux * wide + uy * along];
}

function kite(before: Way, after: Way, { past }: Reach): Outline[] {
  const corner = after.from;
  const widest = Math.max(before.wide, after.wide);
  if (widest === 0) return [];
  const [one, other] = [outerEnd(before, corner, 0), outerEnd(after, corner, 0)];
  const tip = outerEnd(before, corner, past);
  const far = distance(corner, tip);
  const most = MITRE_MOST * widest;
  if (far <= most) return [[corner, one, tip, other]];
  const cut = (end: Point): Point => {
    const [dx, dy] = [(tip[0] - corner[0]) / far, (tip[1] - corner[1]) / far];
    const already = (end[0] - corner[0]) * dx + (end[1] - corner[1]) * dy;
    const share = (most - already) / (far - already);
    return [end[0] + share * (tip[0] - end[0]), end[1] + share * (tip[1] - end[1])];
  };
  return [[corner, one, cut(one), cut(other), other]];
}

/**
 * In a hollow corner the strips lie over each other; a wider one is drawn out until it meets the
 * edge of the narrower, where that is as long.
 */
function hollowFill(before: Way, after: Way, { past, ahead }: Reach): Outline[] {
  const corner = after.from;
  const tip = outerEnd(before, corner, past);
  const most = MITRE_MOST * Math.max(before.wide, after.wide);
  if (distance(corner, tip) > most) return [];
  if (past > 0 && -ahead <= after.length) return [[corner, tip, outerEnd(before, corner, 0)]];
  if (ahead > 0 && -past <= before.length) return [[corner, outerEnd(after, corner, 0), tip]];
  return [];
}

const distance = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
