import { inches, type Length } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-binding-words.ts`. */
export type BindingQuote = 'band' | 'cord-times' | 'cord-plus';

/**
 * Turned in at both edges of a band that is sewn on double, together.
 *
 * Reference: L. I. Baldt, Clothing for Women, Lippincott 1916, Constructive Processes, part 4.
 */
export const BAND_TURNS: Quoted<Length, BindingQuote> = {
  value: inches(1 / 2),
  quote: 'band',
  grade: 'manual',
};

/** A strip round a cord, in cords: a trade rule. Reference: blog.fabric.com, 2012/02, cotton cording. */
export const CORD_TIMES: Quoted<number, BindingQuote> = {
  value: 8,
  quote: 'cord-times',
  grade: 'page',
};

/** What a strip is wider than its cord, at least: another. Reference: docslib.org/doc/11691304. */
export const CORD_PLUS: Quoted<Length, BindingQuote> = {
  value: inches(3 / 2),
  quote: 'cord-plus',
  grade: 'page',
};
