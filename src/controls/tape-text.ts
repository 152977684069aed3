import {
  type ExactLength,
  exactLength,
  settled,
  UNITS_PER_INCH,
  UNITS_PER_MM,
} from '../lengths/length.ts';
import { showExact, shownText, showOnTape } from '../lengths/show-length.ts';
import type { Mark } from '../sewing/run.ts';
import { markWords } from '../words/mark-words.ts';
import { type Bench, tapeStep } from './bench.ts';

/** Inches are shown as fractions down to this. */
const INCH_PART = UNITS_PER_INCH / 64;

/** What dividing may leave over in a whole number of steps. */
const NOISE = 1e-6;

/** A length rounded to the tape in hand, as text: "15.4 cm". */
export function onTape(x: ExactLength, bench: Bench): string {
  return shownText(showOnTape(x, tapeStep(bench), bench.unit), bench.decimalMark);
}

/** What a mark is besides a place along the run: its kind, or how far across the strip it is. */
export function wordOf(
  { kind, across }: Pick<Mark, 'kind' | 'across'>,
  bench: Bench,
  acrossWords = markWords.across,
): string {
  return across === undefined ? markWords.kind(kind) : acrossWords(onTape(across, bench));
}

/** A length in the bench's unit, to a hundredth of a millimetre or so, as text. */
export function exactly(x: ExactLength, bench: Bench): string {
  const places = bench.unit === 'mm' ? 2 : 3;
  return shownText(showExact(x, bench.unit, places), bench.decimalMark);
}

/**
 * The most or the least there may be, as `exactly` shows lengths, but never rounded
 * past itself: typed as it is said, it is accepted.
 */
export function bound(x: ExactLength, which: 'most' | 'least', bench: Bench): string {
  const inInches = bench.unit === 'in';
  if (inInches && settled(x) % INCH_PART === 0) return exactly(x, bench);
  const step = inInches ? UNITS_PER_INCH / 1000 : UNITS_PER_MM / 100;
  const steps = settled(x) / step;
  const within = which === 'most' ? Math.floor(steps + NOISE) : Math.ceil(steps - NOISE);
  return exactly(exactLength(within * step), bench);
}
