import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-tuck-words.ts`. */
export type TuckQuote = 'takes' | 'tucks-worked' | 'groups' | 'card';

/**
 * Depths of cloth that a tuck takes up: it rests on one of them.
 *
 * Reference: Home and School Sewing, chapter 21.
 */
export const TUCK_TAKES: Quoted<number, TuckQuote> = { value: 2, quote: 'takes', grade: 'manual' };

/**
 * Tucks are one more than the gaps between them; the page rounds gaps up.
 *
 * Reference: National Instructional Media Institute (Government of India), CITS Dress Making, Trade Practical, vol. 2, 2024, page 209.
 */
export const TUCKS_WORKED: Quoted<number, TuckQuote> = {
  value: 1,
  quote: 'tucks-worked',
  grade: 'manual',
};

/**
 * Groups stand as far apart as one is wide; a gauge card drifts.
 *
 * Reference: Home and School Sewing, chapter 21; School Needlework, on tucking.
 */
export const GROUPS_APART: Quoted<number, TuckQuote> = {
  value: 1,
  quote: 'groups',
  grade: 'manual',
};
