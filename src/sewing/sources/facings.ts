import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Published } from './published.ts';

/**
 * The seam that joins a facing to the piece.
 *
 * Reference: an older Butterick text, fashion-design-drawing.com, Skirts, part 5.
 */
export const FACING_SEAM: Published<Length> = {
  value: ((UNITS_PER_INCH * 3) / 8) as Length,
  says: 'a facing is joined by a seam of 3/8 in, its free edge turned under narrowly',
  source: 'an older dressmaking text on skirts, about 1911',
  grade: 'manual',
};
