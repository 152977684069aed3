import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-buttonhole-words.ts`. */
export type ButtonholeQuote =
  | 'buttonhole-as-the-button'
  | 'buttonhole-and-an-eighth'
  | 'buttonhole-by-girth'
  | 'buttonhole-diameter'
  | 'buttonhole-round'
  | 'buttonhole-diameter-and-an-eighth'
  | 'buttonhole-past-centre'
  | 'buttonhole-above-button'
  | 'overlap-half-and-quarter'
  | 'overlap-three-quarters'
  | 'overlap-diameter'
  | 'overlap-small-button';

const EIGHTH_INCH = (UNITS_PER_INCH / 8) as Length;
const QUARTER_INCH = (UNITS_PER_INCH / 4) as Length;

/**
 * What is added to diameter and thickness.
 *
 * Reference: sewing.about.com, aa060399.
 */
export const BUTTONHOLE_AS_THE_BUTTON: Quoted<Length, ButtonholeQuote> = {
  value: 0 as Length,
  quote: 'buttonhole-as-the-button',
  grade: 'page',
};

/**
 * What is added to diameter and thickness.
 *
 * Reference: frkbustad.blogspot.com, 2010/09; caseysclothingclass.blogspot.com, 2008/04.
 */
export const BUTTONHOLE_AND_AN_EIGHTH: Quoted<Length, ButtonholeQuote> = {
  value: EIGHTH_INCH,
  quote: 'buttonhole-and-an-eighth',
  grade: 'page',
};

/**
 * What is added to half the girth, measured with a ribbon round the widest part.
 *
 * Reference: New Mexico State University, Guide C-231, aces.nmsu.edu/pubs/_c/C231.
 */
export const BUTTONHOLE_BY_GIRTH: Quoted<Length, ButtonholeQuote> = {
  value: EIGHTH_INCH,
  quote: 'buttonhole-by-girth',
  grade: 'manual',
};

/**
 * What is added to the diameter.
 *
 * Reference: Th. de Dillmont, Encyclopedia of Needlework.
 */
export const BUTTONHOLE_DIAMETER: Quoted<Length, ButtonholeQuote> = {
  value: 0 as Length,
  quote: 'buttonhole-diameter',
  grade: 'manual',
};

/**
 * How many times the diameter, for a round button.
 *
 * Reference: K. H. Watson, Textiles and Clothing.
 */
export const BUTTONHOLE_ROUND: Quoted<number, ButtonholeQuote> = {
  value: 1.25,
  quote: 'buttonhole-round',
  grade: 'manual',
};

/**
 * What is added to the diameter.
 *
 * Reference: sewing reference book, trantor.is, ch0708.
 */
export const BUTTONHOLE_DIAMETER_AND_AN_EIGHTH: Quoted<Length, ButtonholeQuote> = {
  value: EIGHTH_INCH,
  quote: 'buttonhole-diameter-and-an-eighth',
  grade: 'page',
};

/**
 * How far past the centre line, toward the edge, a horizontal buttonhole starts.
 *
 * Reference: New Mexico State University, Guide C-231, aces.nmsu.edu/pubs/_c/C231.
 */
export const BUTTONHOLE_PAST_CENTRE: Quoted<Length, ButtonholeQuote> = {
  value: EIGHTH_INCH,
  quote: 'buttonhole-past-centre',
  grade: 'manual',
};

/**
 * How far below the top of a vertical buttonhole the button sits, at most.
 *
 * Reference: sewing reference book, trantor.is, ch0708; ASDP standards, p. 24, mysuitshop.com.
 */
export const BUTTONHOLE_ABOVE_BUTTON: Quoted<Length, ButtonholeQuote> = {
  value: EIGHTH_INCH,
  quote: 'buttonhole-above-button',
  grade: 'page',
};

/**
 * Least overlap past the centre line: this many diameters and this much more.
 *
 * Reference: ASDP standards, p. 24, mysuitshop.com/ASDP_standards24.php.
 */
export const OVERLAP_HALF_AND_QUARTER: Quoted<
  { diameters: number; more: Length },
  ButtonholeQuote
> = {
  value: { diameters: 0.5, more: QUARTER_INCH },
  quote: 'overlap-half-and-quarter',
  grade: 'page',
};

/**
 * Least overlap past the centre line.
 *
 * Reference: sewing reference book, trantor.is, ch0708.
 */
export const OVERLAP_THREE_QUARTERS: Quoted<{ diameters: number; more: Length }, ButtonholeQuote> =
  {
    value: { diameters: 0.75, more: 0 as Length },
    quote: 'overlap-three-quarters',
    grade: 'page',
  };

/**
 * Least overlap past the centre line.
 *
 * Reference: dresspatternmaking.com, button extension.
 */
export const OVERLAP_DIAMETER: Quoted<{ diameters: number; more: Length }, ButtonholeQuote> = {
  value: { diameters: 1, more: 0 as Length },
  quote: 'overlap-diameter',
  grade: 'page',
};

/**
 * Least overlap past the centre line for buttons of about 3/8 in.
 *
 * Reference: dresspatternmaking.com, button extension.
 */
export const OVERLAP_SMALL_BUTTON: Quoted<{ diameters: number; more: Length }, ButtonholeQuote> = {
  value: { diameters: 1.5, more: 0 as Length },
  quote: 'overlap-small-button',
  grade: 'page',
};
