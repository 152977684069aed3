import type { Published, Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-size-words.ts`. */
export type SizeQuote =
  | 'shirt-stitches'
  | 'trouser-stitches'
  | 'needle-sizes'
  | 'needle-conflict'
  | 'lines-per-inch';

/**
 * Stitches to the inch on shirts, least and most.
 *
 * Reference: US Army TM 10-8400-201-23, table 5-1.
 */
export const SHIRT_STITCHES: Quoted<readonly [number, number], SizeQuote> = {
  value: [10, 14],
  quote: 'shirt-stitches',
  grade: 'manual',
};

/**
 * Stitches to the inch on trousers, least and most.
 *
 * Reference: US Army TM 10-8400-201-23, table 5-1.
 */
export const TROUSER_STITCHES: Quoted<readonly [number, number], SizeQuote> = {
  value: [12, 16],
  quote: 'trouser-stitches',
  grade: 'manual',
};

/**
 * Metric needle sizes beside US sizes. Where two sources conflict the rule below US 19 is followed.
 *
 * Reference: apparelscience.com, needle-number-system; from US 21, supplydivision.co.uk, sewing guide.
 */
export const NEEDLE_SIZES: Quoted<readonly (readonly [us: number, metric: number])[], SizeQuote> = {
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
  quote: 'needle-sizes',
  grade: 'page',
};

/**
 * The US size a second source gives for a metric size, against the rule.
 *
 * Reference: supplydivision.co.uk, sewing guide.
 */
export const NEEDLE_CONFLICT: Quoted<{ metric: number; us: readonly [number, number] }, SizeQuote> =
  {
    value: { metric: 80, us: [12, 13] },
    quote: 'needle-conflict',
    grade: 'page',
  };

/**
 * Button lines in an inch.
 *
 * Reference: sizes.com, people/buttons; workroombuttons.com, international-standard.
 */
export const LINES_PER_INCH: Quoted<number, SizeQuote> = {
  value: 40,
  quote: 'lines-per-inch',
  grade: 'page',
};

/**
 * Lines that buttons are commonly sold in.
 *
 * Reference: workroombuttons.com, international-standard; gentsshop.co.uk.
 * It says: button sizes from 14 to 60 lines.
 */
export const COMMON_BUTTON_LINES: Published<readonly number[]> = {
  value: [14, 16, 18, 20, 22, 24, 28, 30, 32, 36, 40, 45, 50, 60],
  grade: 'page',
};
