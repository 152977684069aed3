import type { Length } from '../../lengths/length.ts';
import type { LacingKind } from './lacing-kinds.ts';
import type { Repeat } from './lacing-repeat.ts';

export interface LacingInput {
  kind: LacingKind;
  /** The maker's own repeat, where that is the kind. */
  own?: Repeat | undefined;
  /** Holes laced, 2 to 2,000. */
  holes: number;
  pitch: Length;
  /** Edge to the middle of the holes. */
  margin: Length;
  /** All that the lace passes through, at most two pitches and 30 mm. */
  thickness: Length;
  /** Width of the lace; as the margin, when not known. */
  lace?: Length | undefined;
  /** How far outside the edge it goes, where the kind does. */
  outside: Length;
  /** From one end of the row, or from its middle with both ends of the lace. */
  start: 'end' | 'middle';
  /** Left at each end of the lace. */
  tail: Length;
  /** The longest lace to work with at a time. */
  longest: Length;
}
