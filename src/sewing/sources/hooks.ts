import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Published, Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-hook-words.ts`. */
export type HookQuote = 'hook-set-back-eighth' | 'hook-set-back-quarter';

const EIGHTH_INCH = (UNITS_PER_INCH / 8) as Length;
const QUARTER_INCH = (UNITS_PER_INCH / 4) as Length;

/**
 * How far a hook is set back from the edge.
 *
 * Reference: New Mexico State University, Guide C-232; School Sewing, §133.
 */
export const HOOK_SET_BACK_EIGHTH: Quoted<Length, HookQuote> = {
  value: EIGHTH_INCH,
  quote: 'hook-set-back-eighth',
  grade: 'manual',
};

/**
 * How far a hook is set back from the edge.
 *
 * Reference: Butterick, The New Dressmaker (1921), ch. 24; Text-Book on Domestic Art, Hooks and Eyes.
 */
export const HOOK_SET_BACK_QUARTER: Quoted<Length, HookQuote> = {
  value: QUARTER_INCH,
  quote: 'hook-set-back-quarter',
  grade: 'manual',
};

/**
 * From hook to hook at a waist closing, hooks and eyes alternating.
 *
 * Reference: Butterick, The New Dressmaker (1921), p. 117.
 * It says: hooks 1 1/4 in apart on a waist closing, hooks and eyes alternating.
 */
export const HOOK_PITCH: Published<Length> = {
  value: (UNITS_PER_INCH * 1.25) as Length,
  grade: 'manual',
};
