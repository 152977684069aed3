import type { ExactLength } from '../lengths/length.ts';
import { showExact, shownText } from '../lengths/show-length.ts';
import type { Bench } from './bench.ts';

/** Decimals that give any 1/8000 mm back when they are read again, in any unit. */
const ALL_PLACES = 6;

/** A length with all its decimals: typed again or reckoned with as it is shown, it is the same. */
export function asTyped(
  x: ExactLength,
  { unit, decimalMark }: Pick<Bench, 'unit' | 'decimalMark'>,
): string {
  return shownText(showExact(x, unit, ALL_PLACES), decimalMark);
}
