import type { Published } from './published.ts';

/**
 * Stitches to the inch on shirts, least and most.
 *
 * Reference: US Army TM 10-8400-201-23, table 5-1.
 */
export const SHIRT_STITCHES: Published<readonly [number, number]> = {
  value: [10, 14],
  says: '10 to 14 stitches to the inch on shirts',
  source: 'TM 10-8400-201-23, army manual, table 5-1',
  grade: 'manual',
};

/**
 * Stitches to the inch on trousers, least and most.
 *
 * Reference: US Army TM 10-8400-201-23, table 5-1.
 */
export const TROUSER_STITCHES: Published<readonly [number, number]> = {
  value: [12, 16],
  says: '12 to 16 stitches to the inch on trousers',
  source: 'TM 10-8400-201-23, army manual, table 5-1',
  grade: 'manual',
};

/**
 * Metric needle sizes beside US sizes. Where two sources conflict the rule below US 19 is followed.
 *
 * Reference: apparelscience.com, needle-number-system; from US 21, supplydivision.co.uk, sewing guide.
 */
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
  source: 'a teaching page on needle numbers; from US 21, a trade guide',
  grade: 'page',
};

/**
 * The US size a second source gives for a metric size, against the rule.
 *
 * Reference: supplydivision.co.uk, sewing guide.
 */
export const NEEDLE_CONFLICT: Published<{ metric: number; us: readonly [number, number] }> = {
  value: { metric: 80, us: [12, 13] },
  says: 'metric 80 is US 12 by the rule, US 13 in one trade guide',
  source: 'a trade sewing guide',
  grade: 'page',
};

/**
 * Button lines in an inch.
 *
 * Reference: sizes.com, people/buttons; workroombuttons.com, international-standard.
 */
export const LINES_PER_INCH: Published<number> = {
  value: 40,
  says: '40 button lines to the inch',
  source: 'a reference page on button sizes; a trade table',
  grade: 'page',
};

/**
 * Lines that buttons are commonly sold in.
 *
 * Reference: workroombuttons.com, international-standard; gentsshop.co.uk.
 */
export const COMMON_BUTTON_LINES: Published<readonly number[]> = {
  value: [14, 16, 18, 20, 22, 24, 28, 30, 32, 36, 40, 45, 50, 60],
  says: 'button sizes from 14 to 60 lines',
  source: 'two trade tables of button sizes',
  grade: 'page',
};
