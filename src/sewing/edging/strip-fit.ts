import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { type Outcome, type Problem, refused } from '../problem.ts';
import { type Fit, type Middle, MOST_HOLES } from './strip.ts';

/** Evenly spaced holes along a line. */
export interface FittedRow {
  count: number;
  pitch: ExactLength;
  /** From the start of the line to the first hole: of a loop half the pitch, as it is cut between two. */
  first: ExactLength;
}

export interface FitInput {
  length: ExactLength;
  pitch: ExactLength;
  /** From either end to the nearest hole, at least. */
  end: ExactLength;
  fit: Fit;
  middle: Middle;
  /** No pitch is brought below this. */
  least: ExactLength;
  /** So many holes, where that is decided already. */
  count?: number | undefined;
}

type SpacesInput = Pick<FitInput, 'pitch' | 'least' | 'fit' | 'middle'>;

/** Sums of quotients may be this much off in the last place: less than a millionth of a pitch. */
const NOISE = 1e-6;
/** A loop of fewer holes has no inside. */
const LEAST_IN_LOOP = 3;

/**
 * Fits evenly spaced holes to a length.
 *
 * Keeping the pitch p between ends e: n = ⌊(L − 2e)/p⌋ + 1. Filling: of the pitches
 * (L − 2e)/k the nearest to p. A loop: of the pitches L/n the nearest. Where the
 * middle is to fall on a hole the count is odd, between two it is even. With the count
 * decided it is kept, wherever the middle falls. Derived here.
 */
export function fitRow(input: FitInput): Outcome<FittedRow> {
  const { length, pitch, end, fit } = input;
  const loop = fit === 'loop';
  const room = loop ? length : length - 2 * end;
  if (room < 0) {
    const needed = exactLength(2 * end);
    return refused({ kind: 'ends-too-long', field: 'end', room: length, needed });
  }
  const spaces = spacesIn(room, input);
  if (spaces === undefined) {
    const needed = exactLength(length - room + leastRoom(input));
    return refused({ kind: 'does-not-fit', field: 'length', room: length, needed });
  }
  const count = loop ? spaces : spaces + 1;
  if (count > MOST_HOLES) return refused(tooMany(room));
  // One hole that was decided before its strip is filled has no space to even out.
  const own = isEvened(fit) && spaces > 0 ? room / spaces : pitch;
  const first = loop ? own / 2 : fit === 'split' ? end + (room - spaces * own) / 2 : end;
  return { ok: true, value: { count, pitch: exactLength(own), first: exactLength(first) } };
}

function spacesIn(room: number, input: FitInput): number | undefined {
  const { count, fit, pitch } = input;
  if (count !== undefined) {
    return room >= leastRoom(input) - NOISE * pitch ? spacesOf(count, fit) : undefined;
  }
  return isEvened(fit) ? nearestSpaces(room, input) : keptSpaces(room, input);
}

function isEvened(fit: Fit): boolean {
  return fit === 'loop' || fit === 'fill';
}

function spacesOf(count: number, fit: Fit): number {
  return fit === 'loop' ? count : count - 1;
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

/** Of all numbers of spaces that suit, the one whose pitch is nearest. */
export function nearestSpaces(room: number, input: SpacesInput): number | undefined {
  const { pitch, least } = input;
  const near = Math.max(fewest(input), Math.floor(room / pitch + NOISE));
  const off = (spaces: number) => Math.abs(room / spaces - pitch);
  return [-2, -1, 0, 1, 2]
    .map((more) => near + more)
    .filter(
      (spaces) =>
        spaces >= fewest(input) && suitsFit(spaces, input) && room / spaces >= least - NOISE,
    )
    .sort((one, other) => off(one) - off(other))[0];
}

/** What the fewest spaces take that suit, or those decided. */
function leastRoom(input: FitInput): number {
  const { fit, count, pitch, least } = input;
  const each = isEvened(fit) ? least : pitch;
  if (count !== undefined) return spacesOf(count, fit) * each;
  const spaces = fewest(input);
  return (suitsFit(spaces, input) ? spaces : spaces + 1) * each;
}

function fewest({ fit }: SpacesInput): number {
  return fit === 'loop' ? LEAST_IN_LOOP : 1;
}

/** A loop has as many holes as spaces: what is asked for is how many, odd or even. */
function suitsFit(spaces: number, { fit, middle }: SpacesInput): boolean {
  return suits(fit === 'loop' ? spaces - 1 : spaces, middle);
}

/** More holes than are counted. */
export function tooMany(room: number): Problem {
  const least = exactLength(room / (MOST_HOLES - 1));
  return { kind: 'too-close', field: 'pitch', least, most: MOST_HOLES };
}
