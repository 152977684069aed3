import type { Bench } from '../../../calculation/bench.ts';
import type { PieceSaid } from '../../../garment/record/piece-said.ts';
import type { FileRead } from './outline-file.tsx';
import type { OutlineShown } from './outline-shown.ts';

/** What of a piece is said anew; undefined is said no more. */
export type PieceSet = { [Key in keyof PieceSaid]?: PieceSaid[Key] | undefined };

export interface OutlinesProps {
  bench: Bench;
  /** Of the cloth. */
  name: string;
  pieces: readonly OutlineShown[];
  /** All pieces lie the same way on it. */
  nap: boolean;
  /** Why the last thing wasn't done, in words. */
  said: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain: (() => void) | undefined;
  /**
   * Reads outlines from a file.
   * @param unitMm how long a unit of it is, where it doesn't say so
   */
  onRead: (file: File, unitMm?: number) => Promise<FileRead>;
  onSay: (need: string, set: PieceSet) => void;
  onBack: () => void;
}

/** What of a piece is typed just now; sides and points by their place. */
export type Typing =
  | { what: 'long' | 'top' | 'bottom' | 'adds' | 'tilt' | 'match' }
  | { what: 'bow' | 'point'; at: number };

export interface OneProps extends OutlinesProps {
  one: OutlineShown;
}
