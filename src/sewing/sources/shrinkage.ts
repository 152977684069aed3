import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-shrinkage-words.ts`. */
export type ShrinkageQuote = 'readings' | 'washes';

/**
 * Samples that are measured where that can be.
 *
 * Reference: ISO 5077:2007, 6.2 (three, else one or two), in a copy of its text.
 */
export const READINGS: Quoted<number, ShrinkageQuote> = {
  value: 3,
  quote: 'readings',
  grade: 'manual',
};

/**
 * Washes by default; what goes on shrinking needs more, and their number is told.
 *
 * Reference: scope of ISO 675, in a national standards list of 2008.
 */
export const WASHES: Quoted<number, ShrinkageQuote> = {
  value: 1,
  quote: 'washes',
  grade: 'manual',
};
