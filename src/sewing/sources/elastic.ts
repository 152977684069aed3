import { type Length, mm, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-elastic-words.ts`. */
export type ElasticQuote =
  | 'waist-less'
  | 'casing-judged'
  | 'casing-school'
  | 'casing-sheet'
  | 'opening'
  | 'patch';

const inch = (parts: number) => Math.round(UNITS_PER_INCH * parts) as Length;

/**
 * What elastic at a waist is shorter by, least and most, whatever its kind.
 *
 * Reference: two trade pages, which agree.
 */
export const WAIST_LESS: Quoted<readonly [Length, Length], ElasticQuote> = {
  value: [inch(2), inch(4)],
  quote: 'waist-less',
  grade: 'page',
};

/**
 * What a casing is wider than its elastic: three sources, three figures.
 *
 * Reference: judging standards, mysuitshop.com/ASDP_standards23; a school course, moodlehub.ca page
 * 47834; a sewing guideline sheet, 12.150, copy at info.5y1.org.
 */
const CASING_JUDGED: Quoted<Length, ElasticQuote> = {
  value: inch(1 / 8),
  quote: 'casing-judged',
  grade: 'manual',
};
const CASING_SCHOOL: Quoted<Length, ElasticQuote> = {
  value: mm(2),
  quote: 'casing-school',
  grade: 'manual',
};
const CASING_SHEET: Quoted<Length, ElasticQuote> = {
  value: inch(1 / 4),
  quote: 'casing-sheet',
  grade: 'page',
};

/** All three, narrow to wide: they conflict, and none rules. */
export const CASING_MORE = [CASING_SCHOOL, CASING_JUDGED, CASING_SHEET] as const;

/**
 * The opening that is left to thread the elastic is wider than it by this.
 *
 * Reference: allpeoplequilt.com, making a casing: 1 5/8 in for 1 1/2 in of elastic.
 */
export const OPENING_MORE: Quoted<Length, ElasticQuote> = {
  value: inch(1 / 8),
  quote: 'opening',
  grade: 'page',
};

/**
 * The patch under butted ends is as wide as the elastic, and so many times its width long.
 *
 * Reference: the same page: 1 1/2 in takes 1 1/2 × 3 in, 2 in takes 2 × 4 in.
 */
export const PATCH_LONG: Quoted<number, ElasticQuote> = { value: 2, quote: 'patch', grade: 'page' };
