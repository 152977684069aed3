import { inches, type Length, mm } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-placket-words.ts`. */
export type PlacketQuote =
  | 'lap-strip'
  | 'two-strips'
  | 'zip-seam'
  | 'zip-left'
  | 'zip-pairs'
  | 'side-split';

/**
 * A strip for a continuous lap, and how many openings long it is.
 *
 * Reference: a sewing book of 1944, as quoted at sewdecadesago.com, post 1638.
 */
export const LAP_STRIP: Quoted<{ wide: Length; openings: 2 }, PlacketQuote> = {
  value: { wide: inches(2), openings: 2 },
  quote: 'lap-strip',
  grade: 'page',
};

/**
 * Two strips of a placket: the lap, the facing, and how much longer than the opening.
 *
 * Reference: the same page.
 */
export const TWO_STRIPS: Quoted<{ lap: Length; facing: Length; more: Length }, PlacketQuote> = {
  value: { lap: inches(3), facing: inches(2), more: inches(1) },
  quote: 'two-strips',
  grade: 'page',
};

/**
 * The seam a zip needs; a narrower one is extended.
 *
 * Reference: Univ. of Nebraska Extension, EC73-422, Zipper Methods.
 */
export const ZIP_SEAM: Quoted<Length, PlacketQuote> = {
  value: inches(5 / 8),
  quote: 'zip-seam',
  grade: 'manual',
};

/**
 * How much of a zip may be left below its opening, unstitched from outside.
 *
 * Reference: Univ. of Hawaii Extension Circular 352.
 */
export const ZIP_LEFT: Quoted<Length, PlacketQuote> = {
  value: inches(1),
  quote: 'zip-left',
  grade: 'manual',
};

/** Lengths of zips as the trade pairs them. */
export interface ZipPair {
  inches: number;
  cm: number;
}

/**
 * Zips as they are sold: the pair is the nearest centimetre, so that one of both is short.
 *
 * Reference: supplydivision.co.uk, sewing guide.
 */
export const ZIP_PAIRS: Quoted<readonly ZipPair[], PlacketQuote> = {
  value: [
    { inches: 4, cm: 10 },
    { inches: 5, cm: 13 },
    { inches: 6, cm: 15 },
    { inches: 7, cm: 18 },
    { inches: 8, cm: 20 },
    { inches: 9, cm: 23 },
    { inches: 10, cm: 25 },
    { inches: 11, cm: 28 },
    { inches: 12, cm: 30 },
    { inches: 13, cm: 33 },
    { inches: 14, cm: 36 },
    { inches: 16, cm: 41 },
    { inches: 18, cm: 46 },
    { inches: 20, cm: 51 },
    { inches: 22, cm: 56 },
    { inches: 24, cm: 61 },
  ],
  quote: 'zip-pairs',
  grade: 'page',
};

/**
 * A dress's side placket: how many of its parts lie above the waist, of how many.
 *
 * Reference: an older instruction, as quoted at bywayofthanks.wordpress.com, February 2016.
 */
export const SIDE_SPLIT: Quoted<{ above: 1; of: 3 }, PlacketQuote> = {
  value: { above: 1, of: 3 },
  quote: 'side-split',
  grade: 'page',
};

/** Of a zip that is shortened, what is left below its new stop: common practice, no source. */
export const ZIP_TAIL = mm(15);
