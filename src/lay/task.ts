import type { Outline, Point } from './outline.ts';

/**
 * What is to be laid on which cloth. All lengths in millimetres; x along the cloth, y across it
 * from the selvedge (or from the fold, where the cloth is folded). Grain lies along x.
 */
export interface LayTask {
  /** Usable width, above 0; of folded cloth, one layer's. */
  width: number;
  pieces: readonly LayPiece[];
  /** Least distance between two pieces, 0 or more. */
  gap?: number;
  /** Places of the cloth that no piece may touch. */
  flaws?: readonly Outline[];
  /** Pieces that stay where they are: already cut, or put there by the maker. */
  laid?: readonly Laid[];
  /** How far the pattern of the cloth repeats; 0 for a direction it doesn't repeat in. */
  repeat?: Repeat;
}

export interface Repeat {
  along: number;
  across: number;
}

export interface LayPiece {
  id: string;
  /** Its cut outline. Of a piece on the fold the half, with its fold edge at the lowest y. */
  outline: Outline;
  /** How many of it, 1 or more. */
  count: number;
  /** The ways it may be turned, in degrees: 0 alone with a nap, 0 and 180 without one. */
  turns: readonly number[];
  /** Whether its edge of lowest y must lie on the fold, at y = 0. */
  onFold?: boolean;
  /** A place of the outline that must fall on the start of a repeat. */
  match?: Point;
}

/** Where a piece lies: the middle of its box, and how it is turned. */
export interface Laid {
  id: string;
  turn: number;
  x: number;
  y: number;
}

/** A lay: where each piece lies, and how much of the cloth's length they take. */
export interface Lay {
  laid: readonly Laid[];
  length: number;
}
