import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-facing-words.ts`. */
export type FacingQuote = 'facing-seam';

/**
 * The seam that joins a facing to the piece.
 *
 * Reference: an older Butterick text, fashion-design-drawing.com, Skirts, part 5.
 */
export const FACING_SEAM: Quoted<Length, FacingQuote> = {
  value: ((UNITS_PER_INCH * 3) / 8) as Length,
  quote: 'facing-seam',
  grade: 'manual',
};
