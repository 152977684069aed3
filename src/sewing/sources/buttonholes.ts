import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Published } from './published.ts';

const EIGHTH_INCH = (UNITS_PER_INCH / 8) as Length;
const QUARTER_INCH = (UNITS_PER_INCH / 4) as Length;

/**
 * What is added to diameter and thickness.
 *
 * Reference: sewing.about.com, aa060399.
 */
export const BUTTONHOLE_AS_THE_BUTTON: Published<Length> = {
  value: 0 as Length,
  says: 'length = diameter + thickness',
  source: 'a teaching page on buttonholes',
  grade: 'page',
};

/**
 * What is added to diameter and thickness.
 *
 * Reference: frkbustad.blogspot.com, 2010/09; caseysclothingclass.blogspot.com, 2008/04.
 */
export const BUTTONHOLE_AND_AN_EIGHTH: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'length = diameter + thickness + 1/8 in',
  source: 'two teaching pages, 2008 and 2010',
  grade: 'page',
};

/**
 * What is added to half the girth, measured with a ribbon round the widest part.
 *
 * Reference: New Mexico State University, Guide C-231, aces.nmsu.edu/pubs/_c/C231.
 */
export const BUTTONHOLE_BY_GIRTH: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'length = half the girth + 1/8 in',
  source: 'Guide C-231, extension sheet',
  grade: 'manual',
};

/**
 * What is added to the diameter.
 *
 * Reference: Th. de Dillmont, Encyclopedia of Needlework.
 */
export const BUTTONHOLE_DIAMETER: Published<Length> = {
  value: 0 as Length,
  says: 'length = diameter',
  source: 'Encyclopedia of Needlework, handbook',
  grade: 'manual',
};

/**
 * How many times the diameter, for a round button.
 *
 * Reference: K. H. Watson, Textiles and Clothing.
 */
export const BUTTONHOLE_ROUND: Published<number> = {
  value: 1.25,
  says: 'length = 1 1/4 × diameter, for a round button',
  source: 'Textiles and Clothing, textbook',
  grade: 'manual',
};

/**
 * What is added to the diameter.
 *
 * Reference: sewing reference book, trantor.is, ch0708.
 */
export const BUTTONHOLE_DIAMETER_AND_AN_EIGHTH: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'length = diameter + 1/8 in',
  source: 'a sewing reference book, chapter 7',
  grade: 'page',
};

/**
 * How far past the centre line, toward the edge, a horizontal buttonhole starts.
 *
 * Reference: New Mexico State University, Guide C-231, aces.nmsu.edu/pubs/_c/C231.
 */
export const BUTTONHOLE_PAST_CENTRE: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'a horizontal buttonhole starts 1/8 in (3 mm) past the centre line toward the edge',
  source: 'Guide C-231, extension sheet',
  grade: 'manual',
};

/**
 * How far below the top of a vertical buttonhole the button sits, at most.
 *
 * Reference: sewing reference book, trantor.is, ch0708; ASDP standards, p. 24, mysuitshop.com.
 */
export const BUTTONHOLE_ABOVE_BUTTON: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'a vertical buttonhole lies on the centre line, the button within its top 1/8 in',
  source: 'a sewing reference book, chapter 7; tailoring standards, p. 24',
  grade: 'page',
};

/**
 * Least overlap past the centre line: this many diameters and this much more.
 *
 * Reference: ASDP standards, p. 24, mysuitshop.com/ASDP_standards24.php.
 */
export const OVERLAP_HALF_AND_QUARTER: Published<{ diameters: number; more: Length }> = {
  value: { diameters: 0.5, more: QUARTER_INCH },
  says: 'at least half the diameter + 1/4 in',
  source: 'tailoring standards, p. 24',
  grade: 'page',
};

/**
 * Least overlap past the centre line.
 *
 * Reference: sewing reference book, trantor.is, ch0708.
 */
export const OVERLAP_THREE_QUARTERS: Published<{ diameters: number; more: Length }> = {
  value: { diameters: 0.75, more: 0 as Length },
  says: 'at least 3/4 of the diameter',
  source: 'a sewing reference book, chapter 7',
  grade: 'page',
};

/**
 * Least overlap past the centre line.
 *
 * Reference: dresspatternmaking.com, button extension.
 */
export const OVERLAP_DIAMETER: Published<{ diameters: number; more: Length }> = {
  value: { diameters: 1, more: 0 as Length },
  says: 'at least the diameter',
  source: 'a teaching page on button stands',
  grade: 'page',
};

/**
 * Least overlap past the centre line for buttons of about 3/8 in.
 *
 * Reference: dresspatternmaking.com, button extension.
 */
export const OVERLAP_SMALL_BUTTON: Published<{ diameters: number; more: Length }> = {
  value: { diameters: 1.5, more: 0 as Length },
  says: '1 1/2 × the diameter, for buttons of about 3/8 in',
  source: 'a teaching page on button stands',
  grade: 'page',
};
