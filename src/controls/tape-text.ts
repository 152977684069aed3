import type { ExactLength } from '../lengths/length.ts';
import { showExact, shownText, showOnTape } from '../lengths/show-length.ts';
import { type Bench, tapeStep } from './bench.ts';

/** A length rounded to the tape in hand, as text: "15.4 cm". */
export function onTape(x: ExactLength, bench: Bench): string {
  return shownText(showOnTape(x, tapeStep(bench), bench.unit), bench.decimalMark);
}

/** A length in the bench's unit, to a hundredth of a millimetre or so, as text. */
export function exactly(x: ExactLength, bench: Bench): string {
  const places = bench.unit === 'mm' ? 2 : 3;
  return shownText(showExact(x, bench.unit, places), bench.decimalMark);
}
