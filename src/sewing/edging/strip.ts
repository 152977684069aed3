import type { ExactLength, Length } from '../../lengths/length.ts';
import type { HolePlace } from '../hole-place.ts';
import type { Run } from '../run.ts';

/** The most holes on one row: no strip of an edging has more, and a list of more helps nobody. */
export const MOST_HOLES = 2000;

/**
 * How holes are fitted to a length.
 * - `split`: the pitch is kept, what is left over goes to both ends alike.
 * - `far-end`: the pitch is kept from the cut end, what is left over is at the other one.
 * - `fill`: the pitch nearest to the wanted one that leaves nothing over.
 * - `loop`: the strip closes on itself, the pitch divides it evenly.
 */
export type Fit = 'split' | 'far-end' | 'fill' | 'loop';

/** Where the middle of the strip is to fall. */
export type Middle = 'any' | 'hole' | 'between';

/** One row of holes; or two, level with each other or shifted by half a pitch. */
export type Rows = 'one' | 'level' | 'staggered';

export interface StripInput {
  /** Along the strip, on its middle line where it is bent. */
  length: Length;
  width: Length;
  /** Hole to hole, centre to centre, as wanted. */
  pitch: Length;
  /** From the edge to the centres of the holes. */
  margin: Length;
  /** Diameter of the punch. */
  hole: Length;
  rows: Rows;
  fit: Fit;
  middle: Middle;
  /** From a cut end to the first hole, at least, along the strip; half the pitch where it is not said. */
  end?: Length | undefined;
  /** Of the middle line, where the strip is bent flat. */
  radius?: Length | undefined;
  /**
   * Where the edge turns, from the cut end, in order; and the angle inside the corner, in
   * degrees. Closing a loop it is an outline, and may start in a corner (`outlineCorners`).
   */
  corners: readonly Length[];
  angle: number;
  /** Places of another strip's first row that this one follows, in order; then nothing of it is fitted. Only without corners. */
  follow?: readonly ExactLength[] | undefined;
  /** Holes that are decided already, as some of them are punched. */
  kept?: Kept | undefined;
}

/** So many holes on one side of a row, by their indices: a row without corners has one side. */
export interface Kept {
  row: number;
  side: number;
  count: number;
}

/** One row of holes, as runs: a single one, or one for each side between corners. */
export interface HoleRow {
  runs: readonly Run[];
  /** Holes of the row; one at a corner counts once. */
  count: number;
  /**
   * The pitch on this row: the same all along, but from side to side where there are corners; of
   * one that follows another the least and the widest step.
   */
  pitches: readonly ExactLength[];
  /** From the outer edge of the strip to the centres of the holes. */
  across: ExactLength;
  /** Along the row, from the start of the strip to the first hole and from the last to its end; undefined round a closed outline. */
  ends: { start: ExactLength; end: ExactLength } | undefined;
  /** Where the middle of the row is; undefined where there are corners. */
  middle: HolePlace | undefined;
}

/** The holes of a strip. */
export interface StripHoles {
  rows: readonly HoleRow[];
  /** Holes in all. */
  count: number;
  /** What the pitch wanted leaves over at each end beyond the end asked for; nothing where it is filled. */
  over: { start: ExactLength; end: ExactLength };
}
