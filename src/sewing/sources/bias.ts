import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-bias-words.ts`. */
export type BiasQuote = 'third' | 'area' | 'square' | 'table' | 'join';

/**
 * A quick rule for a strip's width along the selvedge: it cuts 5.7 % too narrow, and is shown as that.
 *
 * Reference: A Sewing Course for Teachers, chestofbooks.com, True Bias.
 */
export const THIRD_MORE: Quoted<number, BiasQuote> = {
  value: 4 / 3,
  quote: 'third',
  grade: 'manual',
};

/**
 * Cloth for joined strips by its area: what is wasted are two corners, together the square of the
 * shortest strip over this.
 *
 * Reference: National Instructional Media Institute (Government of India), CITS Dress Making, Trade
 * Practical, vol. 2, 2024, page 220.
 */
export const CORNERS: Quoted<number, BiasQuote> = { value: 2, quote: 'area', grade: 'manual' };

/**
 * A continuous strip by its area alone: the share of the cloth that becomes strip, seams and rounds left out of account.
 *
 * Reference: quilting pages, sewaquilt.com/bias-tape, mydecozo.co.uk, quiltersquestiontime.com.
 */
export const BY_AREA: Quoted<number, BiasQuote> = { value: 1, quote: 'square', grade: 'page' };
