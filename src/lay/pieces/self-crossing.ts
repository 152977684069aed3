import { left, type Outline, type Point } from '../outline.ts';

/** Where two ways of an outline meet that shouldn't, each by the corner it begins at. */
export interface Crossing {
  way: number;
  other: number;
  at: Point;
}

interface Way {
  i: number;
  a: Point;
  b: Point;
  x0: number;
  x1: number;
}

/** Where an outline crosses itself, touches itself or runs back over itself; the first by x. */
export function selfCrossing(outline: Outline): Crossing | undefined {
  const count = outline.length;
  const ways = outline
    .map((a, i): Way => {
      const b = outline[(i + 1) % count]!;
      return { i, a, b, x0: Math.min(a[0], b[0]), x1: Math.max(a[0], b[0]) };
    })
    .sort((one, other) => one.x0 - other.x0);
  for (let k = 0; k < count; k++) {
    const one = ways[k]!;
    for (let l = k + 1; l < count && ways[l]!.x0 <= one.x1; l++) {
      const found = meeting(one, ways[l]!, count);
      if (found) return found;
    }
  }
  return undefined;
}

function meeting(one: Way, other: Way, count: number): Crossing | undefined {
  const [way, next] = one.i < other.i ? [one, other] : [other, one];
  const found = { way: way.i, other: next.i };
  if (next.i === way.i + 1) return goesBack(way, next) ? { ...found, at: way.b } : undefined;
  if (way.i === 0 && next.i === count - 1) {
    return goesBack(next, way) ? { ...found, at: way.a } : undefined;
  }
  const at = meets(way, next);
  return at && { ...found, at };
}

/** Whether the way after a corner lies on the way before it. */
function goesBack({ a, b }: Way, { b: c }: Way): boolean {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
  const least = 1e-12 * Math.hypot(ux, uy) * Math.hypot(vx, vy);
  return Math.abs(left(a, b, c)) <= least && ux * vx + uy * vy < 0;
}

/** A place two ways share, their ends among it. */
export function meets({ a, b }: Pick<Way, 'a' | 'b'>, { a: c, b: d }: Pick<Way, 'a' | 'b'>) {
  if (Math.max(a[1], b[1]) < Math.min(c[1], d[1])) return undefined;
  if (Math.max(c[1], d[1]) < Math.min(a[1], b[1])) return undefined;
  const [fromC, fromD] = [left(a, b, c), left(a, b, d)];
  const [fromA, fromB] = [left(c, d, a), left(c, d, b)];
  if (fromC === 0 && fromD === 0) return [a, b, c, d].find((p) => spans(a, b, p) && spans(c, d, p));
  if (fromC * fromD > 0 || fromA * fromB > 0) return undefined;
  const share = fromA / (fromA - fromB);
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])] as const;
}

const spans = (a: Point, b: Point, [x, y]: Point) =>
  Math.min(a[0], b[0]) <= x &&
  x <= Math.max(a[0], b[0]) &&
  Math.min(a[1], b[1]) <= y &&
  y <= Math.max(a[1], b[1]);
