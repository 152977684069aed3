import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Published } from './published.ts';

/** Lace for each length of edge, least and most published, without an allowance for the ends. */
type Factor = Published<readonly [number, number]>;

/**
 * In and out along one row.
 *
 * Reference: Texas 4-H L-382, Lacing Leather; kingsmerecrafts.info, page38 (18 in → 27 in); e-scoutcraft.com, leather/lacing; leathercircle.com, lace-leather.
 */
export const RUNNING: Factor = {
  value: [1.5, 1.5],
  says: 'running stitch: 1½ times the edge; an edge of 18 in takes 27 in',
  source: 'Lacing Leather, extension sheet L-382; three teaching pages agree',
  grade: 'manual',
};

/**
 * Round the edge once at each hole. The sources differ.
 *
 * Reference: Texas 4-H L-382, Lacing Leather (2½); leathercircle.com, lace-leather (3½).
 */
export const WHIP: Factor = {
  value: [2.5, 3.5],
  says: 'whip stitch: 2½ times the edge in one source, 3½ in another',
  source: 'Lacing Leather, extension sheet L-382 (2½); a trade page on lace (3½)',
  grade: 'manual',
};

/**
 * Whipped there and back, so that the slants cross.
 *
 * Reference: kingsmerecrafts.info, page126.
 */
export const CROSS: Factor = {
  value: [5, 6],
  says: 'cross stitch: 5 to 6 times the edge',
  source: 'a teaching page on lacing',
  grade: 'page',
};

/**
 * Each loop locked in the one before.
 *
 * Reference: leathercircle.com, lace-leather.
 */
export const SINGLE_LOOP: Factor = {
  value: [6.5, 6.5],
  says: 'single loop: 6½ times the edge',
  source: 'a trade page on lace',
  grade: 'page',
};

/**
 * Each loop locked in the crossing before.
 *
 * Reference: leathercircle.com, lace-leather.
 */
export const DOUBLE_LOOP: Factor = {
  value: [8.5, 8.5],
  says: 'double loop: 8½ times the edge',
  source: 'a trade page on lace',
  grade: 'page',
};

/**
 * Two needles through every hole. The sources differ.
 *
 * Reference: bushcraftuk.com (2½); pastorbobleather.com (3); twigscraft.com (4).
 */
export const SADDLE: Factor = {
  value: [2.5, 4],
  says: 'saddle stitch with two needles: about 2½, 3 or 4 times the seam',
  source: 'three teaching pages: 2½, 3 and 4',
  grade: 'page',
};

/**
 * The longest lace to work with at a time.
 *
 * Reference: L. Griswold, Handicraft; springfieldleather.cld.bz.
 */
export const COMFORTABLE: Published<Length> = {
  value: (72 * UNITS_PER_INCH) as Length,
  says: 'no more than 2 yd of lace at a time',
  source: 'Handicraft, handbook; a trade catalogue agrees',
  grade: 'manual',
};

/**
 * A laced loop that starts and ends outside.
 *
 * Reference: xerxesmillion.blogspot.com, 2020/08.
 */
export const EVEN_HOLES: Published<2> = {
  value: 2,
  says: 'lacing in and out that starts and ends outside needs an even count: of nine slits the last was left unused',
  source: 'a teaching page on a drawstring pouch, 2020',
  grade: 'page',
};
