import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Published } from './published.ts';

/**
 * How far outside the diagonal crease a mitre is trimmed.
 *
 * Reference: Hand Sewing Lessons, model 7, chestofbooks.com; McGlauflin, Handicraft for Girls, bitlit.ru.
 */
export const MITRE_TRIM: Published<Length> = {
  value: ((UNITS_PER_INCH * 1) / 4) as Length,
  says: 'trim 1/4 in outside the diagonal crease',
  source: 'Hand Sewing Lessons and Handicraft for Girls, school textbooks',
  grade: 'manual',
};
