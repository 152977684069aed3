import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-lacing-words.ts`. */
export type LacingQuote =
  | 'running'
  | 'whip'
  | 'cross'
  | 'single-loop'
  | 'double-loop'
  | 'saddle'
  | 'comfortable'
  | 'even-holes';

/** Lace for each length of edge, least and most published, without an allowance for the ends. */
type Factor = Quoted<readonly [number, number], LacingQuote>;

/**
 * In and out along one row.
 *
 * Reference: Texas 4-H L-382, Lacing Leather; kingsmerecrafts.info, page38 (18 in → 27 in); e-scoutcraft.com, leather/lacing; leathercircle.com, lace-leather.
 */
export const RUNNING: Factor = {
  value: [1.5, 1.5],
  quote: 'running',
  grade: 'manual',
};

/**
 * Round the edge once at each hole. The sources differ.
 *
 * Reference: Texas 4-H L-382, Lacing Leather (2½); leathercircle.com, lace-leather (3½).
 */
export const WHIP: Factor = {
  value: [2.5, 3.5],
  quote: 'whip',
  grade: 'manual',
};

/**
 * Whipped there and back, so that the slants cross.
 *
 * Reference: kingsmerecrafts.info, page126.
 */
export const CROSS: Factor = {
  value: [5, 6],
  quote: 'cross',
  grade: 'page',
};

/**
 * Each loop locked in the one before.
 *
 * Reference: leathercircle.com, lace-leather.
 */
export const SINGLE_LOOP: Factor = {
  value: [6.5, 6.5],
  quote: 'single-loop',
  grade: 'page',
};

/**
 * Each loop locked in the crossing before.
 *
 * Reference: leathercircle.com, lace-leather.
 */
export const DOUBLE_LOOP: Factor = {
  value: [8.5, 8.5],
  quote: 'double-loop',
  grade: 'page',
};

/**
 * Two needles through every hole. The sources differ.
 *
 * Reference: bushcraftuk.com (2½); pastorbobleather.com (3); twigscraft.com (4).
 */
export const SADDLE: Factor = {
  value: [2.5, 4],
  quote: 'saddle',
  grade: 'page',
};

/**
 * The longest lace to work with at a time.
 *
 * Reference: L. Griswold, Handicraft; springfieldleather.cld.bz.
 */
export const COMFORTABLE: Quoted<Length, LacingQuote> = {
  value: (72 * UNITS_PER_INCH) as Length,
  quote: 'comfortable',
  grade: 'manual',
};

/**
 * A laced loop that starts and ends outside.
 *
 * Reference: xerxesmillion.blogspot.com, 2020/08.
 */
export const EVEN_HOLES: Quoted<2, LacingQuote> = {
  value: 2,
  quote: 'even-holes',
  grade: 'page',
};
