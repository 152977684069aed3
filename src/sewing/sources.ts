import { type Length, UNITS_PER_INCH } from '../lengths/length.ts';

/**
 * Every published figure the closing of a garment uses, once.
 *
 * Each is an export of its own with nothing run on loading, so that a page
 * carries only the figures it uses. `says` restates the source; `grade` is what
 * it is: a `manual` (government, university or textbook) or a `page` (trade or
 * teaching page on the web).
 */
export interface Published<Value> {
  value: Value;
  says: string;
  source: string;
  grade: 'manual' | 'page';
}

const EIGHTH_INCH = (UNITS_PER_INCH / 8) as Length;
const QUARTER_INCH = (UNITS_PER_INCH / 4) as Length;

/** What is added to diameter and thickness. */
export const BUTTONHOLE_AS_THE_BUTTON: Published<Length> = {
  value: 0 as Length,
  says: 'length = diameter + thickness',
  source: 'sewing.about.com, aa060399',
  grade: 'page',
};

/** What is added to diameter and thickness. */
export const BUTTONHOLE_AND_AN_EIGHTH: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'length = diameter + thickness + 1/8 in',
  source: 'frkbustad.blogspot.com, 2010/09; caseysclothingclass.blogspot.com, 2008/04',
  grade: 'page',
};

/** What is added to half the girth, measured with a ribbon round the widest part. */
export const BUTTONHOLE_BY_GIRTH: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'length = half the girth + 1/8 in',
  source: 'New Mexico State University, Guide C-231',
  grade: 'manual',
};

/** What is added to the diameter. */
export const BUTTONHOLE_DIAMETER: Published<Length> = {
  value: 0 as Length,
  says: 'length = diameter',
  source: 'Th. de Dillmont, Encyclopedia of Needlework',
  grade: 'manual',
};

/** How many times the diameter, for a round button. */
export const BUTTONHOLE_ROUND: Published<number> = {
  value: 1.25,
  says: 'length = 1 1/4 × diameter, for a round button',
  source: 'K. H. Watson, Textiles and Clothing',
  grade: 'manual',
};

/** What is added to the diameter. */
export const BUTTONHOLE_DIAMETER_AND_AN_EIGHTH: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'length = diameter + 1/8 in',
  source: 'sewing reference book, trantor.is, ch0708',
  grade: 'page',
};

/** How far past the centre line, toward the edge, a horizontal buttonhole starts. */
export const BUTTONHOLE_PAST_CENTRE: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'a horizontal buttonhole starts 1/8 in (3 mm) past the centre line toward the edge',
  source: 'New Mexico State University, Guide C-231',
  grade: 'manual',
};

/** How far below the top of a vertical buttonhole the button sits, at most. */
export const BUTTONHOLE_ABOVE_BUTTON: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'a vertical buttonhole lies on the centre line, the button within its top 1/8 in',
  source: 'sewing reference book, trantor.is, ch0708; ASDP standards, p. 24',
  grade: 'page',
};

/** Least overlap past the centre line: this many diameters and this much more. */
export const OVERLAP_HALF_AND_QUARTER: Published<{ diameters: number; more: Length }> = {
  value: { diameters: 0.5, more: QUARTER_INCH },
  says: 'at least half the diameter + 1/4 in',
  source: 'ASDP standards, p. 24',
  grade: 'page',
};

/** Least overlap past the centre line. */
export const OVERLAP_THREE_QUARTERS: Published<{ diameters: number; more: Length }> = {
  value: { diameters: 0.75, more: 0 as Length },
  says: 'at least 3/4 of the diameter',
  source: 'sewing reference book, trantor.is, ch0708',
  grade: 'page',
};

/** Least overlap past the centre line. */
export const OVERLAP_DIAMETER: Published<{ diameters: number; more: Length }> = {
  value: { diameters: 1, more: 0 as Length },
  says: 'at least the diameter',
  source: 'dresspatternmaking.com, button extension',
  grade: 'page',
};

/** Least overlap past the centre line for buttons of about 3/8 in. */
export const OVERLAP_SMALL_BUTTON: Published<{ diameters: number; more: Length }> = {
  value: { diameters: 1.5, more: 0 as Length },
  says: '1 1/2 × the diameter, for buttons of about 3/8 in',
  source: 'dresspatternmaking.com, button extension',
  grade: 'page',
};

/** How far a hook is set back from the edge. */
export const HOOK_SET_BACK_EIGHTH: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'hooks are set 1/8 in back from the edge',
  source: 'New Mexico State University, Guide C-232; School Sewing §133',
  grade: 'manual',
};

/** How far a hook is set back from the edge. */
export const HOOK_SET_BACK_QUARTER: Published<Length> = {
  value: QUARTER_INCH,
  says: 'hooks are set 1/4 in back from the edge',
  source: 'Butterick, The New Dressmaker (1921), ch. 24; Text-Book on Domestic Art',
  grade: 'manual',
};

/** From hook to hook at a waist closing, hooks and eyes alternating. */
export const HOOK_PITCH: Published<Length> = {
  value: (UNITS_PER_INCH * 1.25) as Length,
  says: 'hooks 1 1/4 in apart on a waist closing, hooks and eyes alternating',
  source: 'Butterick, The New Dressmaker (1921), p. 117',
  grade: 'manual',
};

/** Stitches to the inch on shirts, least and most. */
export const SHIRT_STITCHES: Published<readonly [number, number]> = {
  value: [10, 14],
  says: '10 to 14 stitches to the inch on shirts',
  source: 'US Army TM 10-8400-201-23, table 5-1',
  grade: 'manual',
};

/** Stitches to the inch on trousers, least and most. */
export const TROUSER_STITCHES: Published<readonly [number, number]> = {
  value: [12, 16],
  says: '12 to 16 stitches to the inch on trousers',
  source: 'US Army TM 10-8400-201-23, table 5-1',
  grade: 'manual',
};

/** Metric needle sizes beside US sizes. Where two sources conflict the rule below US 19 is followed. */
export const NEEDLE_SIZES: Published<readonly (readonly [us: number, metric: number])[]> = {
  value: [
    [9, 65],
    [10, 70],
    [11, 75],
    [12, 80],
    [14, 90],
    [16, 100],
    [18, 110],
    [19, 120],
    [21, 130],
    [22, 140],
    [23, 160],
  ],
  says: 'US 9 to 23 beside metric 65 to 160; below US 19, metric = 60 + 5 × (US − 8)',
  source:
    'apparelscience.com, needle number system; from US 21, supplydivision.co.uk, sewing guide',
  grade: 'page',
};

/** The US size a second source gives for a metric size, against the rule. */
export const NEEDLE_CONFLICT: Published<{ metric: number; us: readonly [number, number] }> = {
  value: { metric: 80, us: [12, 13] },
  says: 'metric 80 is US 12 by the rule, US 13 in one trade guide',
  source: 'supplydivision.co.uk, sewing guide',
  grade: 'page',
};

/** Button lines in an inch. */
export const LINES_PER_INCH: Published<number> = {
  value: 40,
  says: '40 button lines to the inch',
  source: 'sizes.com, buttons; workroombuttons.com, international standard',
  grade: 'page',
};

/** Lines that buttons are commonly sold in. */
export const COMMON_BUTTON_LINES: Published<readonly number[]> = {
  value: [14, 16, 18, 20, 22, 24, 28, 30, 32, 36, 40, 45, 50, 60],
  says: 'button sizes from 14 to 60 lines',
  source: 'workroombuttons.com, international standard; gentsshop.co.uk',
  grade: 'page',
};
