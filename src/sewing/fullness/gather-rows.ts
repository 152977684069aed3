import { type ExactLength, exactLength, type Length, mm } from '../../lengths/length.ts';
import { ROWS_APART } from '../sources/gathers.ts';

/** Where both rows lie from the raw edge. */
export interface GatherRows {
  first: ExactLength;
  second: ExactLength;
  /** Both 6 mm apart, with 1 mm to the stitch line at least; else the allowance is too thin for it. */
  roomy: boolean;
}

/** From the second row to the stitch line, at the least: common practice, no source. */
const CLEAR = mm(1);

/** How far apart both rows lie where there is room. */
export const GATHER_APART = mm(ROWS_APART.value);

/** The least allowance with room for both. */
export const GATHER_ROOM = exactLength(2 * GATHER_APART + CLEAR);

/**
 * Two rows of gathering stitches inside an allowance: 6 and 12 mm from the raw edge, which takes 13 mm;
 * thinner ones in thirds of it (derived here).
 *
 * Source of 6 mm: `sources/gathers.ts`.
 */
export function gatherRows(allowance: Length): GatherRows {
  const roomy = allowance >= GATHER_ROOM;
  return roomy
    ? { first: GATHER_APART, second: exactLength(2 * GATHER_APART), roomy }
    : { first: exactLength(allowance / 3), second: exactLength((2 * allowance) / 3), roomy };
}
