import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-repeat-words.ts`. */
export type RepeatQuote = 'one-repeat';

/**
 * Whole repeats to buy beyond what pieces take.
 *
 * Reference: sew4home.com, on buying patterned cloth.
 */
export const ONE_REPEAT: Quoted<1, RepeatQuote> = { value: 1, quote: 'one-repeat', grade: 'page' };
