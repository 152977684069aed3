import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-circle-words.ts`. */
export type CircleQuote = 'pi' | 'hang';

/**
 * π as a page on bell skirts takes it: a radius 1.3 % too long, an edge as much. Its results are cut off
 * after a decimal (9.6 for 9.68), which leaves 0.5 %.
 *
 * Reference: rukodelkino.com, skirt of the bell cut.
 */
export const SHORT_PI: Quoted<number, CircleQuote> = { value: 3.1, quote: 'pi', grade: 'page' };

/**
 * Hours that a skirt cut on the bias hangs before its hem is levelled, least and most: 24 or 48.
 *
 * Reference: extension circulars on hems, which differ.
 */
export const HANGS: Quoted<readonly [number, number], CircleQuote> = {
  value: [24, 48],
  quote: 'hang',
  grade: 'manual',
};
