import type { Bounds } from '../lengths/inside-graduation.ts';
import type { ExactLength, Length } from '../lengths/length.ts';

/**
 * What a mark is for. `words/` has the name for each.
 * `sewn` is already made: it is where it was measured and never moves.
 */
export type MarkKind =
  | 'measure'
  | 'closure'
  | 'level'
  | 'sewn'
  | 'press'
  | 'stitch'
  | 'mitre'
  | 'hole'
  | 'corner'
  | 'centre'
  | 'fold'
  | 'placement'
  | 'notch';

/** A place on a run, measured from the run's datum. */
export interface Mark {
  at: ExactLength;
  /** From the strip's edge, where a run has marks at several distances across it. */
  across?: ExactLength;
  /** What is written beside the mark: a number, or a letter. */
  label: string;
  kind: MarkKind;
  /**
   * Of `at`, what lies in folds before it: marked by itself, so that what shows when all is
   * folded is as near on any tape as an unfolded run is.
   */
  taken?: ExactLength;
  /** What it must stay strictly between on any tape, as stitching between a hem's two folds. */
  inside?: Bounds;
  /** Where it was planned, when it is made and `at` is where it was measured. */
  planned?: ExactLength;
}

/** Where the tape's zero is held. `words/` has the name for each. */
export type Datum =
  | 'zero'
  | 'top-edge'
  | 'raw-edge'
  | 'raw-corner'
  | 'first-hole'
  | 'cut-end'
  | 'hole-before'
  | 'edge-corner'
  | 'strip-begins'
  | 'elastic-meets';

/** A line along which things are marked: the common currency of every calculation. */
export interface Run {
  datum: Datum;
  length: Length;
  /** In order from the datum. */
  marks: readonly Mark[];
}
