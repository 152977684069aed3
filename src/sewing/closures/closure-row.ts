import { type ExactLength, exactLength, type Length, ZERO } from '../../lengths/length.ts';
import type { Mark, MarkKind, Run } from '../run.ts';

/** Neighbouring spaces of one pitch. */
export interface Stretch {
  spaces: number;
  pitch: ExactLength;
  /** Both its ends are sewn and nothing is planned between them. */
  asMade: boolean;
}

/** What a kept pitch leaves over, beyond the ends asked for. */
export interface Remainder {
  above: ExactLength;
  below: ExactLength;
}

/** A mark before it is numbered. */
export interface Place {
  at: ExactLength;
  kind: MarkKind;
}

/** Places in order from the datum, and the pitches between them. */
export interface Layout {
  places: readonly Place[];
  stretches: readonly Stretch[];
  remainder?: Remainder;
}

/** A row of closures along an opening, measured from its top edge. */
export interface ClosureRow {
  /** Marks in order, labelled '1' and up. */
  run: Run;
  count: number;
  /** In order from the datum: one when the row is even, none for a single mark. */
  stretches: readonly Stretch[];
  /** From each edge of the opening to the mark nearest to it. */
  ends: { top: ExactLength; bottom: ExactLength };
  /** How far the width of the first and of the last hangs over its edge: 0 where it is not known. */
  overhang: { top: ExactLength; bottom: ExactLength };
  /** The least clear gap between a planned item and its neighbour, when the items' width is known. */
  gap: ExactLength | undefined;
  /** Only where a pitch is kept exactly. */
  remainder: Remainder | undefined;
}

/** Numbers a layout, of at least one place, along an opening and says what is left between items of a width. */
export function closureRow(opening: Length, layout: Layout, width: Length | undefined): ClosureRow {
  const marks = layout.places.map(({ at, kind }, i): Mark => ({ at, kind, label: String(i + 1) }));
  const ends = { top: marks[0]!.at, bottom: exactLength(opening - marks.at(-1)!.at) };
  return {
    run: { datum: 'top-edge', length: opening, marks },
    count: marks.length,
    stretches: layout.stretches,
    ends,
    overhang: { top: over(ends.top, width), bottom: over(ends.bottom, width) },
    gap: leastGap(layout.stretches, width),
    remainder: layout.remainder,
  };
}

function over(end: ExactLength, width: Length | undefined): ExactLength {
  return width === undefined ? ZERO : exactLength(Math.max(0, width / 2 - end));
}

function leastGap(stretches: readonly Stretch[], width: Length | undefined) {
  const planned = stretches.filter(({ asMade }) => !asMade).map(({ pitch }) => pitch);
  if (width === undefined || planned.length === 0) return undefined;
  return exactLength(planned.reduce((least, pitch) => Math.min(least, pitch), Infinity) - width);
}

/** A stretch of planned marks, or none where there are no spaces. */
export function planned(spaces: number, pitch: ExactLength): Stretch[] {
  return spaces > 0 ? [{ spaces, pitch, asMade: false }] : [];
}
