import type { Published } from './published.ts';

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
