import { type ExactLength, exactLength } from '../lengths/length.ts';
import type { Problem } from './problem.ts';
import { type Fit, type Middle, MOST_HOLES } from './strip.ts';
import { JUST_OVER } from './strip-room.ts';

/** Evenly spaced holes along a line. */
export interface FittedRow {
  count: number;
  pitch: ExactLength;
  /** From the start of the line to the first hole. */
  first: ExactLength;
  /** From the last hole to the end of the line. */
  last: ExactLength;
}

export interface FitInput {
  length: ExactLength;
  pitch: ExactLength;
  /** From either end to the nearest hole, at least. */
  end: ExactLength;
  fit: Fit;
  middle: Middle;
  /** The pitch at which holes would touch; less than the one wanted. */
  touching: ExactLength;
}

export type Fitted = { ok: true; row: FittedRow } | { ok: false; problem: Problem };

/** Sums of quotients may be this much off in the last place: less than a millionth of a pitch. */
const NOISE = 1e-6;
/** A loop of fewer holes has no inside. */
const LEAST_IN_LOOP = 3;

/**
 * Fits evenly spaced holes to a length.
 *
 * Keeping the pitch p between ends e: n = ⌊(L − 2e)/p⌋ + 1. Filling: of the pitches
 * (L − 2e)/k the nearest to p. A loop: of the pitches L/n the nearest. Neither comes
 * down to half the pitch, nor to where holes touch. Where the middle is to fall on a
 * hole the count is odd, between two it is even. Derived here.
 */
export function fitRow(input: FitInput): Fitted {
  const { length, pitch, end, fit } = input;
  if (fit === 'loop') return fitLoop(input);
  const room = length - 2 * end;
  if (room < 0) {
    const needed = exactLength(2 * end);
    return { ok: false, problem: { kind: 'ends-too-long', field: 'end', room: length, needed } };
  }
  const spaces = fit === 'fill' ? fillSpaces(room, input) : keptSpaces(room, input);
  if (spaces === undefined) return doesNotFit(length, 2 * end + leastRoom(input));
  if (spaces >= MOST_HOLES) return tooMany(room);
  if (fit === 'fill') return rowOf(spaces, room / spaces, end, length);
  const over = room - spaces * pitch;
  return rowOf(spaces, pitch, fit === 'split' ? end + over / 2 : end, length);
}

function rowOf(spaces: number, pitch: number, first: number, length: number): Fitted {
  return {
    ok: true,
    row: {
      count: spaces + 1,
      pitch: exactLength(pitch),
      first: exactLength(first),
      last: exactLength(length - first - spaces * pitch),
    },
  };
}

/** An odd number of spaces has its middle between two holes. */
function suits(spaces: number, middle: Middle): boolean {
  return middle === 'any' || spaces % 2 === (middle === 'hole' ? 0 : 1);
}

function keptSpaces(room: number, { pitch, middle, fit }: FitInput): number | undefined {
  const most = Math.floor(room / pitch + NOISE);
  // Only where the ends are alike is the middle of the row that of the strip.
  if (fit === 'far-end' || suits(most, middle)) return most;
  return most > 0 ? most - 1 : undefined;
}

function fillSpaces(room: number, { pitch, middle, touching }: FitInput): number | undefined {
  const near = Math.floor(room / pitch + NOISE);
  const possible = [near - 1, near, near + 1, near + 2].filter((spaces) => {
    const own = room / spaces;
    return spaces >= 1 && suits(spaces, middle) && own >= pitch / 2 && own > touching;
  });
  return nearestPitch(possible, (spaces) => room / spaces, pitch);
}

/** What the fewest spaces that suit take, where none suit what there is. */
function leastRoom({ fit, pitch, middle, touching }: FitInput): number {
  if (fit !== 'fill') return pitch;
  return (middle === 'hole' ? 2 : 1) * Math.max(pitch / 2, touching + JUST_OVER);
}

function nearestPitch(
  counts: readonly number[],
  pitchOf: (count: number) => number,
  pitch: number,
): number | undefined {
  const off = (count: number) => Math.abs(pitchOf(count) - pitch);
  return counts.reduce<number | undefined>(
    (best, count) => (best === undefined || off(count) < off(best) ? count : best),
    undefined,
  );
}

function fitLoop({ length, pitch, middle, touching }: FitInput): Fitted {
  const near = Math.floor(length / pitch);
  // A loop has no ends: what is asked for is how many holes, odd or even.
  const counts = [near - 1, near, near + 1, near + 2].filter(
    (count) => count >= LEAST_IN_LOOP && suits(count - 1, middle) && length / count > touching,
  );
  const count = nearestPitch(counts, (holes) => length / holes, pitch);
  if (count === undefined || near < 2) {
    const fewest = suits(LEAST_IN_LOOP - 1, middle) ? LEAST_IN_LOOP : LEAST_IN_LOOP + 1;
    return doesNotFit(length, Math.max(2 * pitch, fewest * (touching + JUST_OVER)));
  }
  if (count > MOST_HOLES) return tooMany(length);
  const own = exactLength(length / count);
  return { ok: true, row: { count, pitch: own, first: exactLength(0), last: own } };
}

function doesNotFit(room: ExactLength, least: number): Fitted {
  const needed = exactLength(least);
  return { ok: false, problem: { kind: 'does-not-fit', field: 'length', room, needed } };
}

function tooMany(room: number): Fitted {
  const least = exactLength(room / (MOST_HOLES - 1));
  return { ok: false, problem: { kind: 'too-close', field: 'pitch', least, most: MOST_HOLES } };
}
