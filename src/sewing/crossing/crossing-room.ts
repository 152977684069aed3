import type { Length } from '../../lengths/length.ts';
import { type Crossed, type HoleLine, nearestSquared } from './crossing-holes.ts';

/** How two holes lie to each other where strips cross. */
export type Meeting = 'shared' | 'clear' | 'clash';

/** What the last places of a sum may be off by, in 1/8000 mm. */
export const NOISE = 1e-3;

/** How near the holes of a laid strip come to each other. */
export interface Weighed {
  clashes: number;
  /** From any new hole to the nearest other one, new or made, at the least; infinite where there is none. */
  room: number;
  /** From any new hole to the nearest made one. */
  toMade: number;
}

/** How a hole of the upper strip lies to the nearest of the lower one. */
export function meetingAt(squared: number, hole: Length): Meeting {
  if (squared <= (hole / 4 + NOISE) ** 2) return 'shared';
  return squared < (2 * hole - NOISE) ** 2 ? 'clash' : 'clear';
}

/** How many upper holes clash, and how near any that isn't shared, so is to be punched, comes to another. */
export function weigh(
  { angle, hole }: Crossed,
  over: readonly HoleLine[],
  below: readonly HoleLine[],
): Weighed {
  const turn = (angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  let clashes = 0;
  let squared = Number.POSITIVE_INFINITY;
  const fresh = over.map(({ y, start, pitch, first, last }) => {
    const places: number[] = [];
    for (let i = first; i <= last; i++) {
      const x = start + i * pitch;
      const near = nearestSquared(below, x * cos - y * sin, x * sin + y * cos);
      const meets = meetingAt(near, hole);
      if (meets === 'shared') continue;
      if (meets === 'clash') clashes++;
      squared = Math.min(squared, near);
      places.push(x);
    }
    return places;
  });
  const toMade = Math.sqrt(squared);
  return { clashes, toMade, room: Math.min(toMade, apartBy(over, fresh)) };
}

/** The least distance between places on lines of a strip, in order along each. */
function apartBy(
  [one, other]: readonly HoleLine[],
  [first = [], second = []]: readonly (readonly number[])[],
): number {
  const alone = Math.min(stepOf(first), stepOf(second));
  if (!one || !other) return alone;
  return Math.min(alone, Math.hypot(nearestOf(first, second), other.y - one.y));
}

function stepOf(places: readonly number[]): number {
  let step = Number.POSITIVE_INFINITY;
  for (let i = 1; i < places.length; i++) {
    step = Math.min(step, (places[i] ?? 0) - (places[i - 1] ?? 0));
  }
  return step;
}

/** Between a place of one row and one of another, along. */
function nearestOf(first: readonly number[], second: readonly number[]): number {
  let near = Number.POSITIVE_INFINITY;
  for (let i = 0, j = 0; i < first.length && j < second.length; ) {
    const off = (first[i] ?? 0) - (second[j] ?? 0);
    near = Math.min(near, Math.abs(off));
    if (off < 0) i++;
    else j++;
  }
  return near;
}
