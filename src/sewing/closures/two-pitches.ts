import type { ExactLength, Length } from '../../lengths/length.ts';
import { type Layout, type Place, planned } from './closure-row.ts';
import { fewestWithin, lengthOf, pitchOf, placesIn, type Segment } from './segment.ts';

/** The part of a row above a level that carries a mark, and the part below. */
export function partsAt(row: Segment, level: Length): { above: Segment; below: Segment } {
  return {
    above: { ...row, to: level, tail: 2 },
    below: { ...row, from: level, head: 2 },
  };
}

/**
 * Two even pitches that meet at the level, first and last where they were asked for.
 *
 * Of all ways to divide the other count − 1 marks between above and below, the
 * one whose two pitches differ least (derived here); of equals, the one with
 * fewest above. None when the count cannot carry top, level and bottom; a
 * single mark goes on the level.
 */
export function twoPitches(row: Segment, level: Length, count: number): Layout | undefined {
  if (count === 1) return joined(row, level, 0, 0);
  const { above, below } = partsAt(row, level);
  let best: number | undefined;
  let least = Infinity;
  for (let n = 0; n < count; n++) {
    if (!carries(above, n) || !carries(below, count - 1 - n)) continue;
    const difference = Math.abs(pitchOf(above, n) - pitchOf(below, count - 1 - n));
    if (difference < least) {
      best = n;
      least = difference;
    }
  }
  return best === undefined ? undefined : joined(row, level, best, count - 1 - best);
}

/** The fewest marks whose two pitches are both no wider than `widest`. */
export function twoPitchesWithin(row: Segment, level: Length, widest: Length) {
  const { above, below } = partsAt(row, level);
  return { above: fewestWithin(above, widest), below: fewestWithin(below, widest) };
}

/** Even above and even below, with a mark on the level between them. */
export function joined(row: Segment, level: Length, nAbove: number, nBelow: number): Layout {
  const { above, below } = partsAt(row, level);
  return {
    places: [
      ...placesIn(above, nAbove).map(closure),
      { at: level, kind: 'level' },
      ...placesIn(below, nBelow).map(closure),
    ],
    stretches: [
      ...planned(nAbove, pitchOf(above, nAbove)),
      ...planned(nBelow, pitchOf(below, nBelow)),
    ],
  };
}

/** Can this many marks stand in the part? One with an end to carry needs one there, and only if it has length. */
function carries(part: Segment, count: number): boolean {
  const onEnd = part.head === 0 || part.tail === 0;
  return onEnd ? count > 0 === lengthOf(part) > 0 : true;
}

function closure(at: ExactLength): Place {
  return { at, kind: 'closure' };
}
