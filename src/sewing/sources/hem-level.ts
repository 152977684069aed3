import { inches, type Length } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-level-words.ts`. */
export type LevelQuote = 'pins';

/**
 * How far apart a hem is pinned to mark it, least and most: about 3 in, or 1 to 3.
 *
 * Reference: Theta Johnson, It's Fun to Sew a Cotton School Dress; A. W. Koester, Hems (extension circulars, which differ).
 */
export const PINS_APART: Quoted<readonly [least: Length, most: Length], LevelQuote> = {
  value: [inches(1), inches(3)],
  quote: 'pins',
  grade: 'manual',
};
