import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-gather-words.ts`. */
export type GatherQuote =
  | 'frill'
  | 'own-sample'
  | 'ruffle'
  | 'bias-ruffle'
  | 'span'
  | 'rows'
  | 'tiers'
  | 'tier-depths';

type Range = readonly [least: number, most: number];

/**
 * A strip is the finished edge times its fullness.
 *
 * Reference: National Instructional Media Institute (Government of India), CITS Dress Making, Trade Practical, vol. 2, 2024, page 212.
 */
export const FRILL: Quoted<number, GatherQuote> = { value: 3, quote: 'frill', grade: 'manual' };

/**
 * Old inches counted in a new inch of a gathered sample.
 *
 * Reference: stitchcoach.blogspot.com, January 2017.
 */
export const OWN_SAMPLE: Quoted<number, GatherQuote> = {
  value: 2.5,
  quote: 'own-sample',
  grade: 'page',
};

/**
 * Fullness of a ruffle cut straight, least and most.
 *
 * Reference: L. I. Baldt, Clothing for Women, 1916, Constructive Processes, part 4.
 */
export const RUFFLE: Quoted<Range, GatherQuote> = {
  value: [4 / 3, 1.5],
  quote: 'ruffle',
  grade: 'manual',
};

/**
 * The same cut on the bias, which has fullness of itself.
 *
 * Reference: the same, part 5.
 */
export const BIAS_RUFFLE: Quoted<Range, GatherQuote> = {
  value: [1.25, 4 / 3],
  quote: 'bias-ruffle',
  grade: 'manual',
};

/**
 * Fullness by cloth and taste, least and most: outside it is asked about.
 *
 * Reference: teaching pages on the web, which agree on it.
 */
export const SPAN: Quoted<Range, GatherQuote> = { value: [1.5, 3], quote: 'span', grade: 'page' };

/**
 * Between two rows of gathering stitches, inside the allowance, in mm.
 *
 * Reference: Tanzania Institute of Education, Textiles and Garment Construction, Form Three, 2022, page 42.
 */
export const ROWS_APART: Quoted<number, GatherQuote> = { value: 6, quote: 'rows', grade: 'manual' };

/**
 * Fullness of tiers: the first by the waist or yoke, each next by the one above; least and most.
 *
 * Reference: National Instructional Media Institute (Government of India), CITS Dress Making, Trade Theory, 2024, page 250.
 */
export const TIERS: Quoted<{ first: Range; next: Range }, GatherQuote> = {
  value: { first: [1, 1.5], next: [1.5, 2] },
  quote: 'tiers',
  grade: 'manual',
};

/**
 * Depths of tiers in inches, which come to the length of the skirt.
 *
 * Reference: the same.
 */
export const TIER_DEPTHS: Quoted<readonly number[], GatherQuote> = {
  value: [6.25, 6.75, 7.25, 8.75],
  quote: 'tier-depths',
  grade: 'manual',
};
