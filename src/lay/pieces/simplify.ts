import { left, type Outline, type Point, tidied } from '../outline.ts';
import { meets } from './self-crossing.ts';

/** The farthest a simplified outline lies outside what it stands for, in mm. */
export const SIMPLIFIED_MM = 1;

/**
 * How far outside the piece, in mm, its outline may lie for so few corners; with more the search
 * takes seconds to begin. Common practice, no source.
 */
const TRIED = [
  { within: 0.1, corners: 20 },
  { within: 0.25, corners: 20 },
  { within: 0.5, corners: 40 },
  { within: 0.7, corners: 40 },
  // A little less than the most, as ways are looked at in places only.
  { within: 0.95, corners: 40 },
] as const;

/** Places this near to the fold are on it, in mm. */
const ON_FLOOR = 1e-6;
/** In so many places of a new way it is seen how far from the piece it runs. */
const LOOKS = 6;

/**
 * An outline of fewer corners around the given one: no place of the piece lies outside it, and it
 * is nowhere farther from the piece than `SIMPLIFIED_MM`. Where that needs more than 40 corners,
 * it has more.
 * @param floor no corner comes to lie below this y, where a fold is
 */
export function simplified(outline: Outline, floor = -Infinity): Outline {
  const plain = tidied(outline);
  let found = plain;
  for (const { within, corners } of TRIED) {
    if (found.length <= corners) break;
    found = tidied(walked({ outline: plain, floor, within }));
  }
  return found;
}

interface Task {
  outline: Outline;
  floor: number;
  within: number;
}

/** A corner, and which of the outline's it stands for: from the first on, so many. */
interface Corner {
  at: Point;
  first: number;
  count: number;
}

/** One corner comes instead of two that follow each other, and ways instead of those between. */
interface Move {
  /** The first of both, by its place in the ring. */
  from: number;
  instead: Corner;
  ways: readonly (readonly [Point, Point])[];
  /** How many corners of the outline the ways run past, from the first of the new corner on. */
  past: number;
}

/** Goes round the outline, leaving out at each place as much as it can, until nothing more goes. */
function walked(task: Task): Outline {
  const ring = task.outline.map((at, first): Corner => ({ at, first, count: 1 }));
  for (let before = 0; before !== ring.length; ) {
    before = ring.length;
    for (let i = 0; i < ring.length; ) {
      const move = cornerMove(ring, i) ?? wayMove(ring, i, task.floor);
      if (ring.length > 4 && move && staysNear(move, task) && isFree(move, ring)) {
        ring[placeIn(ring, move.from)] = move.instead;
        ring.splice(placeIn(ring, move.from + 1), 1);
      } else {
        i++;
      }
    }
  }
  return ring.map(({ at }) => at);
}

const placeIn = ({ length }: readonly unknown[], i: number) => (i + length) % length;
const inRing = (ring: readonly Corner[], i: number) => ring[placeIn(ring, i)]!;

/** A hollow corner is left out by the straight way past it. */
function cornerMove(ring: readonly Corner[], i: number): Move | undefined {
  const [before, here, next] = [inRing(ring, i - 1), inRing(ring, i), inRing(ring, i + 1)];
  if (left(before.at, here.at, next.at) > 0) return undefined;
  const instead = { ...before, count: before.count + here.count };
  return { from: i - 1, instead, ways: [[before.at, next.at]], past: instead.count + next.count };
}

/** A way between two full corners is left out by drawing its neighbours on until they meet. */
function wayMove(ring: readonly Corner[], i: number, floor: number): Move | undefined {
  const [here, next] = [inRing(ring, i), inRing(ring, i + 1)];
  const [before, far] = [inRing(ring, i - 1).at, inRing(ring, i + 2).at];
  if (left(before, here.at, next.at) <= 0 || left(here.at, next.at, far) <= 0) return undefined;
  const at = met(before, here.at, next.at, far);
  if (!at || at[1] < floor - ON_FLOOR) return undefined;
  const tip: Point = at[1] < floor + ON_FLOOR ? [at[0], floor] : at;
  const instead = { at: tip, first: here.first, count: here.count + next.count };
  const ways = [[here.at, tip] as const, [tip, next.at] as const];
  return { from: i, instead, ways, past: instead.count };
}

/** Where the way from a to b, drawn on, meets the one from d to c drawn on. */
function met(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - d[0], c[1] - d[1]];
  const turn = ux * vy - uy * vx;
  // Ways that turn by half a round or more never meet on this side.
  if (turn >= 0) return undefined;
  const share = ((c[0] - b[0]) * vy - (c[1] - b[1]) * vx) / turn;
  const at: Point = [b[0] + share * ux, b[1] + share * uy];
  return Number.isFinite(at[0] + at[1]) ? at : undefined;
}

/** Whether the new ways run near enough to what of the outline they stand for. */
function staysNear({ instead, ways, past }: Move, { outline, within }: Task): boolean {
  const { first } = instead;
  const at = (k: number) => outline[(k + outline.length) % outline.length]!;
  return ways.every(([a, b]) =>
    Array.from({ length: LOOKS + 1 }, (_, k) => k / LOOKS).every((share) => {
      const place: Point = [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
      for (let k = first - 1; k < first + past; k++) {
        if (fromWay(place, at(k), at(k + 1)) <= within) return true;
      }
      return false;
    }),
  );
}

function fromWay([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [ux, uy] = [bx - ax, by - ay];
  const along = ((x - ax) * ux + (y - ay) * uy) / (ux * ux + uy * uy);
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(x - ax - t * ux, y - ay - t * uy);
}

/** Whether the new ways meet nothing else of the outline. */
function isFree({ from, ways }: Move, ring: readonly Corner[]): boolean {
  const ends = new Set([...ways.flat(), inRing(ring, from).at, inRing(ring, from + 1).at]);
  return ring.every(({ at: c }, k) => {
    const d = inRing(ring, k + 1).at;
    // What ends where a new way does is a neighbour, or is left out.
    if (ends.has(c) || ends.has(d)) return true;
    return ways.every(([a, b]) => {
      if (Math.max(a[0], b[0]) < Math.min(c[0], d[0])) return true;
      if (Math.max(c[0], d[0]) < Math.min(a[0], b[0])) return true;
      return !meets({ a, b }, { a: c, b: d });
    });
  });
}
