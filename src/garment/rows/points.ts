import type { Points } from '../record/record.ts';

/** What is nothing between two places, in 1/8000 mm: the noise of dividing stays far below it. */
export const NOTHING = 0.01;

/** How far a mark may be from where even marks would lie for no point to be kept of it. */
const EVEN = NOTHING / 10;

/** Places as points with even marks between them. */
export function pointsOf(places: readonly number[]): Points {
  const points: [number, number][] = [];
  places.forEach((at, rank) => {
    const [from, start] = points.at(-1) ?? [rank, at];
    const step = (places[from + 1] ?? at) - start;
    const next = start + step * (rank + 1 - from);
    const last = rank === places.length - 1;
    const bends = Math.abs((places[rank + 1] ?? next) - next) > EVEN;
    if (rank === 0 || last || bends) points.push([rank, at]);
  });
  return { count: places.length, points };
}

/** Where the marks of points lie. */
export function placesOf({ count, points }: Points): number[] {
  let next = 0;
  return Array.from({ length: count }, (_, rank) => {
    while ((points[next]?.[0] ?? rank) < rank) next += 1;
    const [to, end] = points[next] ?? [rank, 0];
    if (to === rank) return end;
    const [from, start] = points[next - 1] ?? [rank, end];
    return start + ((end - start) * (rank - from)) / (to - from);
  });
}
