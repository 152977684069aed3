import { left, type Outline, type Point } from './outline.ts';

/** Corners of a part, by their place in the outline. */
type Corners = readonly number[];

/**
 * The outline split into convex parts, each counter-clockwise: triangles first, then neighbours
 * are joined while what they make stays convex.
 */
export function convexParts(outline: Outline): Outline[] {
  return joined(outline, triangles(outline)).map((part) => part.map((corner) => outline[corner]!));
}

/** The i-th of corners that run in a ring. */
const round = <T>(ring: readonly T[], i: number): T => ring[(i + ring.length) % ring.length]!;

/** Cuts one corner off after another, of all that can be cut off the least pointed first. */
function triangles(outline: Outline): Corners[] {
  const rest = outline.map((_, i) => i);
  const found: Corners[] = [];
  while (rest.length > 3) {
    const cut = roundest(outline, rest);
    // Of a rest without an area no corner can be cut off, so one of them is given up.
    if (cut >= 0) found.push([round(rest, cut - 1), rest[cut]!, round(rest, cut + 1)]);
    rest.splice(Math.max(cut, 0), 1);
  }
  return [...found, rest];
}

function roundest(outline: Outline, rest: Corners): number {
  let best = -1;
  let most = 0;
  rest.forEach((corner, i) => {
    const [a, b, c] = [
      outline[round(rest, i - 1)]!,
      outline[corner]!,
      outline[round(rest, i + 1)]!,
    ];
    const area = left(a, b, c);
    if (area <= 0) return;
    const longest = Math.max(squared(a, b), squared(b, c), squared(a, c));
    if (area / longest <= most || holds(outline, rest, a, b, c)) return;
    most = area / longest;
    best = i;
  });
  return best;
}

const squared = (a: Point, b: Point) => (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2;
const same = (a: Point, b: Point) => a[0] === b[0] && a[1] === b[1];

/** Whether another corner of the rest lies in the triangle. */
function holds(outline: Outline, rest: Corners, a: Point, b: Point, c: Point): boolean {
  return rest.some((corner) => {
    const other = outline[corner]!;
    if (same(other, a) || same(other, b) || same(other, c)) return false;
    return left(a, b, other) >= 0 && left(b, c, other) >= 0 && left(c, a, other) >= 0;
  });
}

function joined(outline: Outline, parts: readonly Corners[]): readonly Corners[] {
  for (let i = 0; i < parts.length; i++) {
    for (let j = i + 1; j < parts.length; j++) {
      const both = overSharedEdge(parts[i]!, parts[j]!);
      if (both && isConvex(outline, both)) {
        const others = parts.filter((_, k) => k !== i && k !== j);
        return joined(outline, [...others, both]);
      }
    }
  }
  return parts;
}

/** Two parts as one, where an edge of the one is an edge of the other the other way round. */
function overSharedEdge(one: Corners, other: Corners): Corners | undefined {
  for (let u = 0; u < one.length; u++) {
    const v = other.indexOf(round(one, u + 1));
    if (v < 0 || round(other, v + 1) !== one[u]) continue;
    const around = one.map((_, k) => round(one, u + 1 + k));
    return [...around, ...other.slice(2).map((_, k) => round(other, v + 2 + k))];
  }
  return undefined;
}

const isConvex = (outline: Outline, part: Corners) =>
  part.every((corner, i) => {
    const [next, after] = [outline[round(part, i + 1)]!, outline[round(part, i + 2)]!];
    return left(outline[corner]!, next, after) >= -1e-12;
  });
