import {
  type ExactLength,
  exactLength,
  type Length,
  toInches,
  toMm,
} from '../../lengths/length.ts';
import { PLATE_LINES } from '../sources/seams.ts';

/** Where to guide the raw edge: the distance, and the nearest line of a needle plate. */
export interface Guide {
  mm: number;
  inches: number;
  line: Length;
  /** The line less the distance: less than nothing, the edge is kept past the line, away from the needle. */
  off: ExactLength;
}

/** The plate line nearest to a distance from the needle. */
export function guideFor(distance: ExactLength): Guide {
  const line = PLATE_LINES.reduce((best, next) =>
    Math.abs(next - distance) < Math.abs(best - distance) ? next : best,
  );
  const off = exactLength(line - distance);
  return { mm: toMm(distance), inches: toInches(distance), line, off };
}
