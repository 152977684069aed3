import { type ExactLength, exactLength } from '../../lengths/length.ts';

/** The side of the strip a lace lies on. */
export type Face = 'front' | 'back';

/** A place the lace comes to. */
export interface LacePoint {
  /** In pitches from the hole the repeat starts at. */
  along: number;
  /** From the strip's edge: more than nothing on the strip, less outside it. */
  across: ExactLength;
  face: Face;
  /** How often it then goes round lace that lies there. */
  turns?: number;
}

/**
 * A lacing as data: the places the lace comes to, the first of them in a hole, until
 * it is at the first again, `advance` pitches on (a whole number, at least 1). Two
 * places one after the other differ in place, or in face: then it passes through the
 * strip, or round its edge.
 */
export interface Repeat {
  points: readonly LacePoint[];
  advance: number;
}

/** What a path is made of. */
export interface PathParts {
  straight: ExactLength;
  /** How often it passes from face to face. */
  passes: number;
  turns: number;
}

/**
 * The way of a lace over so many stitches (one less than holes), from the first hole to
 * the last. When the stitches are no multiple of the repeat, the last repeat ends at the
 * first hole that is as far on as the last one, having passed through it.
 */
export function pathOf(repeat: Repeat, stitches: number): LacePoint[] {
  const { points, advance } = repeat;
  const whole = Math.floor(stitches / advance);
  const path: LacePoint[] = [];
  for (let i = 0; i < whole; i++) path.push(...shifted(points, i * advance));
  const rest = lastRepeat(repeat, stitches - whole * advance);
  path.push(...shifted(rest, whole * advance));
  return path;
}

/** The part of one repeat that reaches so many stitches on; for none, where it starts. */
function lastRepeat({ points, advance }: Repeat, stitches: number): LacePoint[] {
  const [first] = points;
  if (!first || stitches === 0) return points.slice(0, 1);
  const closed = [...points, ...shifted([first], advance)];
  const target = first.along + stitches;
  const end = closed.findIndex(
    ({ along, across }) => across === first.across && along >= target && Number.isInteger(along),
  );
  const [last, next] = [closed[end], closed[end + 1]];
  return closed.slice(0, last && next && isPass(last, next) ? end + 2 : end + 1);
}

function shifted(points: readonly LacePoint[], by: number): LacePoint[] {
  return points.map((point) => ({ ...point, along: point.along + by }));
}

/** Whether the lace goes from face to face here. */
export function isPass(from: LacePoint, to: LacePoint): boolean {
  return from.along === to.along && from.across === to.across && from.face !== to.face;
}

/** The straight parts, passes and turns of a path, for a pitch. */
export function partsOf(path: readonly LacePoint[], pitch: ExactLength): PathParts {
  let straight = 0;
  let passes = 0;
  let turns = 0;
  path.forEach((to, i) => {
    const from = path[i - 1];
    if (!from) return;
    if (isPass(from, to)) passes++;
    else straight += Math.hypot((to.along - from.along) * pitch, to.across - from.across);
    turns += to.turns ?? 0;
  });
  return { straight: exactLength(straight), passes, turns };
}
