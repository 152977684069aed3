import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import type { Layout, Place, Stretch } from './closure-row.ts';
import {
  countNearest,
  fewestWithin,
  lengthOf,
  mostAt,
  pitchOf,
  placesIn,
  type Segment,
} from './segment.ts';

/**
 * Marks that are fixed, and the segments between and around them.
 * There is one segment more than there are fixed marks; one of no length takes no mark.
 */
export interface FixedMarks {
  fixed: readonly Place[];
  segments: readonly Segment[];
}

/** A sewn mark this part of the pitch from the level, or from an end, or nearer, is that mark as made. Ours, no source. */
const SERVES = 1 / 4;

/** How the marks to place are held: the pitch the row was planned at, and how near two may stand. */
export interface Held {
  pitch: number;
  /** Centre to centre, 0 where nothing is known of it. */
  least: number;
}

/** Whether a sewn mark is near enough to a place to be its mark as made. */
function served(place: number, sewn: readonly Length[], { pitch }: Held): boolean {
  return sewn.some((at) => Math.abs(at - place) <= pitch * SERVES);
}

/** Whether the level gets a mark of its own: none where a sewn one serves it, or stands too near. */
export function takesLevel(level: Length, sewn: readonly Length[], held: Held) {
  if (served(level, sewn, held)) return 'served';
  return sewn.some((at) => Math.abs(at - level) < held.least) ? 'no-room' : 'free';
}

/**
 * Fixes the marks already sewn, and the level where it gets a mark of its own.
 *
 * A sewn mark at or beyond the place of the first or last one leaves no segment there.
 */
export function fixMarks(
  row: Segment,
  sewn: readonly Length[],
  level: Length | undefined,
): FixedMarks {
  const fixed: Place[] = sewn.map((at) => ({ at, kind: 'sewn' }));
  if (level !== undefined) fixed.push({ at: level, kind: 'level' });
  fixed.sort((a, b) => a.at - b.at);
  const segments = [...fixed, undefined].map((next, i): Segment => {
    const before = fixed[i - 1];
    const from = before ? before.at : Math.min(row.from, next?.at ?? row.from);
    return {
      from,
      to: next ? next.at : Math.max(row.to, from),
      head: before ? 2 : row.head,
      tail: next ? 2 : row.tail,
    };
  });
  return { fixed, segments };
}

/** Whether a segment hangs free at an end that is to carry a mark, with no sewn one to serve it. */
export function wantsEnd(segment: Segment, sewn: readonly Length[], held: Held): boolean {
  const end = segment.head === 0 ? segment.from : segment.tail === 0 ? segment.to : undefined;
  return end !== undefined && lengthOf(segment) > 0 && !served(end, sewn, held);
}

/** The most marks a segment takes with none of them nearer than `least` to a neighbour. */
export function mostIn(segment: Segment, least: number): number {
  return least <= 0 ? Infinity : Math.max(0, mostAt(segment, least));
}

/** How far the mark nearest to the level is from it; + is below. */
export function offLevel(places: readonly Place[], level: Length): ExactLength {
  const offs = places.map(({ at }) => at - level);
  return exactLength(offs.reduce((least, off) => (Math.abs(off) < Math.abs(least) ? off : least)));
}

/**
 * Shares `more` marks over the segments so that the widest space is least.
 *
 * Each next mark goes where the space is widest of those with room (derived here).
 * Giving a mark anywhere else leaves that widest space as it is, so no other
 * sharing does better; tests compare it with every placing on a ruler. A first
 * or last place with no sewn mark at or beyond it hangs free and counts as a
 * space of twice its length.
 *
 * @param first what each segment has to have before any is shared out
 * @param most how many each has room for
 * @returns undefined when there is no room for so many
 */
export function shareOut(
  segments: readonly Segment[],
  more: number,
  first: readonly number[],
  most: readonly number[],
): number[] | undefined {
  const counts = [...first];
  const spaceIn = (i: number) =>
    counts[i]! < most[i]! ? pitchOf(segments[i]!, counts[i]!) : -Infinity;
  const spaces = segments.map((_, i) => spaceIn(i));
  for (let placed = sumOf(first); placed < more; placed++) {
    const widest = spaces.reduce((best, space, i) => (space > spaces[best]! ? i : best), 0);
    if (spaces[widest]! <= 0) return undefined;
    counts[widest] = counts[widest]! + 1;
    spaces[widest] = spaceIn(widest);
  }
  return counts;
}

export function sumOf(counts: readonly number[]): number {
  return counts.reduce((sum, count) => sum + count, 0);
}

/** The fewest marks in each segment that leave no space wider than `widest`. */
export function shareWithin(segments: readonly Segment[], widest: number): number[] {
  return segments.map((segment) =>
    pitchOf(segment, 0) <= widest ? 0 : fewestWithin(segment, widest),
  );
}

/**
 * The number of marks in each segment that brings its pitch nearest to `pitch`.
 * Around marks that are already sewn no pitch can be kept exactly.
 */
export function shareNearest(segments: readonly Segment[], pitch: number): number[] {
  return segments.map((segment) => countNearest(segment, pitch));
}

/** Spreads the given number of marks evenly over each segment, between the fixed ones. */
export function respaced({ fixed, segments }: FixedMarks, counts: readonly number[]): Layout {
  const places: Place[] = [];
  const stretches: Stretch[] = [];
  segments.forEach((segment, i) => {
    const count = counts[i] ?? 0;
    for (const at of placesIn(segment, count)) places.push({ at, kind: 'closure' });
    const next = fixed[i];
    if (next) places.push(next);
    const before = fixed[i - 1];
    const spaces = before && next ? count + 1 : count;
    if (spaces === 0) return;
    const asMade = count === 0 && before?.kind === 'sewn' && next?.kind === 'sewn';
    stretches.push({ spaces, pitch: pitchOf(segment, count), asMade });
  });
  return { places, stretches };
}
