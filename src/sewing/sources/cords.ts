import { type Length, mm, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-cord-words.ts`. */
export type CordQuote = 'casing' | 'child-us' | 'child-eu';

/**
 * What a casing is wider than its cord is thick.
 *
 * Reference: judging standards, mysuitshop.com/ASDP_standards23 (printed 114", read as 1/4).
 */
export const CORD_CASING_MORE: Quoted<Length, CordQuote> = {
  value: (UNITS_PER_INCH / 4) as Length,
  quote: 'casing',
  grade: 'manual',
};

/**
 * The most of a cord at the waist or the lower edge of a child's garment outside its channel, at each
 * end, with the garment at its widest: 3 in, which the standard also gives as 75 mm; the less is taken.
 *
 * Reference: ASTM F1816-18, sizes 2T to 16, and 16 CFR 1120, as testing laboratories give them. Not read themselves.
 */
const CHILD_US: Quoted<Length, CordQuote> = { value: mm(75), quote: 'child-us', grade: 'manual' };

/**
 * The same in Europe, ages 0 to 14.
 *
 * Reference: EN 14682:2007, as a testing laboratory gives it. A 2014 edition exists. Not read themselves.
 */
const CHILD_EU: Quoted<Length, CordQuote> = { value: mm(140), quote: 'child-eu', grade: 'manual' };

/** Both limits, the shorter first. */
export const CHILD_ENDS = [CHILD_US, CHILD_EU] as const;
