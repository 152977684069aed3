import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Published } from './published.ts';

const EIGHTH_INCH = (UNITS_PER_INCH / 8) as Length;
const QUARTER_INCH = (UNITS_PER_INCH / 4) as Length;

/**
 * How far a hook is set back from the edge.
 *
 * Reference: New Mexico State University, Guide C-232; School Sewing, §133.
 */
export const HOOK_SET_BACK_EIGHTH: Published<Length> = {
  value: EIGHTH_INCH,
  says: 'hooks are set 1/8 in back from the edge',
  source: 'Guide C-232, extension sheet; School Sewing, textbook',
  grade: 'manual',
};

/**
 * How far a hook is set back from the edge.
 *
 * Reference: Butterick, The New Dressmaker (1921), ch. 24; Text-Book on Domestic Art, Hooks and Eyes.
 */
export const HOOK_SET_BACK_QUARTER: Published<Length> = {
  value: QUARTER_INCH,
  says: 'hooks are set 1/4 in back from the edge',
  source: 'The New Dressmaker, handbook, 1921; Text-Book on Domestic Art',
  grade: 'manual',
};

/**
 * From hook to hook at a waist closing, hooks and eyes alternating.
 *
 * Reference: Butterick, The New Dressmaker (1921), p. 117.
 */
export const HOOK_PITCH: Published<Length> = {
  value: (UNITS_PER_INCH * 1.25) as Length,
  says: 'hooks 1 1/4 in apart on a waist closing, hooks and eyes alternating',
  source: 'The New Dressmaker, handbook, 1921',
  grade: 'manual',
};
