/** A place on the cloth: x along its length, y across its width, in millimetres. */
export type Point = readonly [x: number, y: number];

/** The corners of a piece in turn, the first not repeated; counter-clockwise once tidied. */
export type Outline = readonly Point[];

export interface Box {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

/** The area within, in mm²; below zero for an outline that runs clockwise. */
export function signedArea(outline: Outline): number {
  let twice = 0;
  outline.forEach(([x, y], i) => {
    const [u, v] = outline[(i + 1) % outline.length]!;
    twice += x * v - u * y;
  });
  return twice / 2;
}

export function boxOf(outline: Outline): Box {
  const box = { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity };
  for (const [x, y] of outline) {
    box.x0 = Math.min(box.x0, x);
    box.x1 = Math.max(box.x1, x);
    box.y0 = Math.min(box.y0, y);
    box.y1 = Math.max(box.y1, y);
  }
  return box;
}

/** Above zero where c lies to the left of the way from a to b; its size twice the triangle. */
export const left = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/**
 * The outline without doubled corners and corners on a straight edge, counter-clockwise. An
 * outline that closes by naming its first corner again is taken as well.
 */
export function tidied(outline: Outline): Outline {
  const corners = [...outline];
  const box = boxOf(corners);
  const size = Math.max(box.x1 - box.x0, box.y1 - box.y0);
  const least = size * 1e-9;
  let i = 0;
  let kept = 0;
  while (kept < corners.length && corners.length > 3) {
    i %= corners.length;
    const before = corners[(i + corners.length - 1) % corners.length]!;
    const here = corners[i]!;
    const after = corners[(i + 1) % corners.length]!;
    const doubled = Math.hypot(here[0] - after[0], here[1] - after[1]) < least;
    if (doubled || Math.abs(left(before, here, after)) < least * size) {
      corners.splice(i, 1);
      i = (i + corners.length - 1) % corners.length;
      kept = 0;
    } else {
      i++;
      kept++;
    }
  }
  return signedArea(corners) < 0 ? corners.reverse() : corners;
}

const QUARTERS = new Map([
  [0, [1, 0]],
  [90, [0, 1]],
  [180, [-1, 0]],
  [270, [0, -1]],
]);

/** The outline turned counter-clockwise about 0, in degrees; exact by quarter turns. */
export function turned(outline: Outline, degrees: number): Outline {
  const angle = ((degrees % 360) + 360) % 360;
  const radians = (angle * Math.PI) / 180;
  const [cos, sin] = QUARTERS.get(angle) ?? [Math.cos(radians), Math.sin(radians)];
  return outline.map(([x, y]) => [cos! * x - sin! * y, sin! * x + cos! * y]);
}

export const moved = (outline: Outline, dx: number, dy: number): Outline =>
  outline.map(([x, y]) => [x + dx, y + dy]);

/** The outline as in a mirror laid along the length, still counter-clockwise. */
export const mirrored = (outline: Outline): Outline =>
  outline.map(([x, y]): Point => [x, -y]).reverse();

/** The outline moved so that the middle of its box is at 0. */
export function centred(outline: Outline): Outline {
  const { x0, y0, x1, y1 } = boxOf(outline);
  return moved(outline, -(x0 + x1) / 2, -(y0 + y1) / 2);
}
