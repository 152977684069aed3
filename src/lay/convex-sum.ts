import { type Outline, type Point, tidied } from './outline.ts';

/**
 * All places reached by a place of the one and then a place of the other (the Minkowski sum), of
 * two convex outlines: their edges in order of direction, as both run counter-clockwise.
 */
export function convexSum(one: Outline, other: Outline): Outline {
  const [first, firstOther] = [fromLowest(one), fromLowest(other)];
  const sum: Point[] = [];
  let i = 0;
  let j = 0;
  while (i < one.length || j < other.length) {
    const [a, b] = [first(i), firstOther(j)];
    sum.push([a[0] + b[0], a[1] + b[1]]);
    const [c, d] = [first(i + 1), firstOther(j + 1)];
    const turn = (c[0] - a[0]) * (d[1] - b[1]) - (c[1] - a[1]) * (d[0] - b[0]);
    const [ended, otherEnded] = [i >= one.length, j >= other.length];
    // Edges of one direction are taken together.
    if (otherEnded || (!ended && turn >= 0)) i++;
    if (ended || (!otherEnded && turn <= 0)) j++;
  }
  return tidied(sum);
}

/** The corners in turn, from the lowest and of those the leftmost. */
function fromLowest(outline: Outline): (i: number) => Point {
  let low = 0;
  outline.forEach(([x, y], i) => {
    const [u, v] = outline[low]!;
    if (y < v || (y === v && x < u)) low = i;
  });
  return (i) => outline[(low + i) % outline.length]!;
}
