import { type ExactLength, exactLength } from '../../lengths/length.ts';

/**
 * How much of a space lies between the end of a segment and the mark nearest
 * to it, in half spaces: 0 when that mark is on the end itself, 1 for half a
 * space, 2 for a whole one. An end that already carries a mark counts as 2.
 */
export type EndShare = 0 | 1 | 2;

/** A stretch of an opening over which marks are spread evenly, from its own datum. */
export interface Segment {
  from: number;
  to: number;
  head: EndShare;
  tail: EndShare;
}

/** The length of a segment. */
export function lengthOf({ from, to }: Segment): number {
  return to - from;
}

/** How many half spaces a segment is divided into by `count` marks. */
function halvesIn({ head, tail }: Segment, count: number): number {
  return 2 * (count - 1) + head + tail;
}

/**
 * The even pitch of `count` marks in a segment.
 *
 * A segment whose end should carry a mark and has none hangs free there. It
 * counts as half of a space twice as long, as an end of half a space does.
 */
export function pitchOf(segment: Segment, count: number): ExactLength {
  return exactLength((2 * lengthOf(segment)) / Math.max(halvesIn(segment, count), 1));
}

/**
 * Where `count` marks stand when they are spread evenly over a segment.
 *
 * Each place is one division of whole numbers, so that a place which falls
 * exactly midway between two graduations is exactly midway in a double too.
 * A single mark with both ends to carry stands in the middle.
 */
export function placesIn(segment: Segment, count: number): ExactLength[] {
  const { from, to, head } = segment;
  const halves = halvesIn(segment, count);
  if (halves === 0) return count === 1 ? [exactLength((from + to) / 2)] : [];
  return Array.from({ length: count }, (_, i) =>
    exactLength((from * halves + (head + 2 * i) * (to - from)) / halves),
  );
}

/** The fewest marks with which no space of the segment is wider than `widest`. */
export function fewestWithin(segment: Segment, widest: number): number {
  return Math.max(0, Math.ceil(countAt(segment, widest)));
}

/** The most marks at exactly this pitch that the segment has room for; under 1 when it has none. */
export function mostAt(segment: Segment, pitch: number): number {
  return Math.floor(countAt(segment, pitch));
}

/** How many marks, 0 or more, bring the even pitch of the segment nearest to `pitch`. */
export function countNearest(segment: Segment, pitch: number): number {
  const fewer = Math.max(0, mostAt(segment, pitch));
  const off = (count: number) => Math.abs(pitchOf(segment, count) - pitch);
  return off(fewer + 1) < off(fewer) ? fewer + 1 : fewer;
}

/** The number of marks, with its fraction, that would have this pitch. */
function countAt(segment: Segment, pitch: number): number {
  return (2 * lengthOf(segment) - (segment.head + segment.tail - 2) * pitch) / (2 * pitch);
}
