import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import type { Layout, Place, Stretch } from './closure-row.ts';
import {
  countNearest,
  fewestWithin,
  lengthOf,
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

/** A sewn mark this part of the pitch from the level, or nearer, is the level's mark as made. Ours, no source. */
const SERVES_LEVEL = 1 / 4;

/**
 * Fixes the marks already sewn, and the level where none of them serves it.
 *
 * A sewn mark within a quarter of the pitch serves the level: a second one
 * beside it would hold nothing more. A sewn mark at or beyond the place of the
 * first or last one leaves no segment there.
 */
export function fixMarks(
  row: Segment,
  sewn: readonly Length[],
  level: Length | undefined,
  pitch: number,
): FixedMarks {
  const fixed: Place[] = sewn.map((at) => ({ at, kind: 'sewn' }));
  const served = (at: Length) => sewn.some((s) => Math.abs(s - at) <= pitch * SERVES_LEVEL);
  if (level !== undefined && !served(level)) fixed.push({ at: level, kind: 'level' });
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

/** How far the mark that serves the level is from it; + is below. */
export function offLevel({ fixed }: FixedMarks, level: Length): ExactLength {
  const offs = fixed.map(({ at }) => at - level);
  return exactLength(offs.reduce((least, off) => (Math.abs(off) < Math.abs(least) ? off : least)));
}

/**
 * Shares `more` marks over the segments so that the widest space is least.
 *
 * Each next mark goes where the space is widest (derived here). Giving a mark
 * anywhere else leaves that widest space as it is, so no other sharing does
 * better; tests compare it with every sharing there is. A first or last place
 * with no sewn mark at or beyond it hangs free and counts as a space of twice
 * its length, so it is given its mark before any space half as wide is divided,
 * while a sewn mark a hair inside it is taken as that mark as made.
 *
 * @returns undefined when every segment is without length, so that no mark can be put in
 */
export function shareOut(segments: readonly Segment[], more: number): number[] | undefined {
  const counts = segments.map(() => 0);
  const spaces = segments.map((segment) => pitchOf(segment, 0));
  for (let placed = 0; placed < more; placed++) {
    const widest = spaces.reduce((best, space, i) => (space > spaces[best]! ? i : best), 0);
    if (spaces[widest]! <= 0) return undefined;
    const count = counts[widest]! + 1;
    counts[widest] = count;
    spaces[widest] = pitchOf(segments[widest]!, count);
  }
  return counts;
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
  return segments.map((segment) => (lengthOf(segment) > 0 ? countNearest(segment, pitch) : 0));
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
