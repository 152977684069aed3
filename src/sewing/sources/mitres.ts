import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-mitre-words.ts`. */
export type MitreQuote = 'mitre-trim';

/**
 * How far outside the diagonal crease a mitre is trimmed.
 *
 * Reference: Hand Sewing Lessons, model 7, chestofbooks.com; McGlauflin, Handicraft for Girls, bitlit.ru.
 */
export const MITRE_TRIM: Quoted<Length, MitreQuote> = {
  value: ((UNITS_PER_INCH * 1) / 4) as Length,
  quote: 'mitre-trim',
  grade: 'manual',
};
