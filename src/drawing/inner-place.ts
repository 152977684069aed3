import type { Point } from './figure.ts';

/** How many places are looked at across an outline and down it. */
const LOOKS = 24;

/**
 * The place within an outline that is farthest from its sides, of a grid of places: for what is
 * written in it. Undefined where none of them lies within.
 */
export function innerPlace(outline: readonly Point[]): { at: Point; room: number } | undefined {
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - top];
  let best: { at: Point; room: number } | undefined;
  for (let i = 1; i < LOOKS; i++) {
    for (let j = 1; j < LOOKS; j++) {
      const at = { x: left + (wide * i) / LOOKS, y: top + (high * j) / LOOKS };
      const room = isWithin(outline, at) ? fromSides(outline, at) : 0;
      if (room > (best?.room ?? 0)) best = { at, room };
    }
  }
  return best;
}

function isWithin(outline: readonly Point[], { x, y }: Point): boolean {
  return outline.reduce((inside, a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    const crosses = a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x);
    return crosses ? !inside : inside;
  }, false);
}

function fromSides(outline: readonly Point[], at: Point): number {
  return outline.reduce((least, a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    const [u, v] = [b.x - a.x, b.y - a.y];
    const along = ((at.x - a.x) * u + (at.y - a.y) * v) / (u * u + v * v || 1);
    const t = Math.min(1, Math.max(0, along));
    return Math.min(least, Math.hypot(at.x - a.x - t * u, at.y - a.y - t * v));
  }, Number.POSITIVE_INFINITY);
}
