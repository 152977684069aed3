import { toGraduation } from '../lengths/graduation.ts';
import type { ExactLength } from '../lengths/length.ts';
import { type Shown, shownNumber, shownText } from '../lengths/show-length.ts';
import { type Bench, tapeStep } from './bench.ts';
import { exactly, numberAtMost, numberOnTape } from './tape-text.ts';

/**
 * A length on the nearest graduation; what would be nothing there is said exactly, since
 * "press 0 in" helps nobody.
 */
export function numberSaid(x: ExactLength, bench: Bench): Shown | string {
  return toGraduation(x, tapeStep(bench)) === 0 ? exactly(x, bench) : numberOnTape(x, bench);
}

/** The same as text. */
export function said(x: ExactLength, bench: Bench): string {
  return textOf(numberSaid(x, bench), bench);
}

/** What may be no more, as text: on the last graduation that isn't, or exactly under the first. */
export function saidAtMost(x: ExactLength, bench: Bench): string {
  return textOf(numberAtMost(x, bench), bench);
}

function textOf(number: Shown | string, bench: Bench): string {
  return typeof number === 'string' ? number : shownText(number, bench.decimalMark);
}

/** A part of a whole as a percentage to a tenth, without its sign. */
export function percentText(part: number, bench: Bench): string {
  return shownNumber(100 * part, 1, bench.decimalMark);
}
