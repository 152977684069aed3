import { markWords, tapeWords } from '#words/common/mark-words.ts';
import { downToGraduation, toGraduation, upToGraduation } from '../lengths/graduation.ts';
import { type ExactLength, exactLength, inches, mm, ZERO } from '../lengths/length.ts';
import { remainder, type Shown, showExact, shownText, showOnTape } from '../lengths/show-length.ts';
import type { Mark } from '../sewing/run.ts';
import { type Bench, tapeStep } from './bench.ts';

/** Bounds are said no finer than this: a sixty-fourth of an inch, a hundredth of a millimetre. */
const INCH_PART = inches(1 / 64);
const METRIC_PART = mm(0.01);

/** A length rounded to the tape in hand: to the nearest graduation, unless told which. */
export function numberOnTape(x: ExactLength, bench: Bench, round?: typeof toGraduation): Shown {
  return showOnTape(x, tapeStep(bench), bench.unit, round);
}

/** The same as text: "15.4 cm". */
export function onTape(x: ExactLength, bench: Bench, round?: typeof toGraduation): string {
  return shownText(numberOnTape(x, bench, round), bench.decimalMark);
}

/**
 * What may be no more, on the last graduation that isn't; what is under one graduation,
 * as exactly as it is said: "at most nothing" helps nobody.
 */
export function numberAtMost(x: ExactLength, bench: Bench): Shown | string {
  const shown = numberOnTape(x, bench, downToGraduation);
  return shown.whole === '0' && !shown.decimals ? bound(x, 'most', bench) : shown;
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
 * A length that is measured out at the bench, with what the nearest graduation leaves over, to a
 * sixty-fourth: "1 5/8 in and 3/64 in over". No tape of inches shows decimals; millimetres are read
 * between their lines, and are said as `exactly` says them, as is what is under one graduation.
 */
export function byTape(x: ExactLength, bench: Bench): string {
  const step = tapeStep(bench);
  const shown = exactly(x, bench);
  const left = remainder(x, step);
  if (bench.unit !== 'in' || toGraduation(x, step) === 0 || shown.includes('/')) return shown;
  const mark = onTape(x, bench);
  const off = exactLength(Math.abs(left));
  if (exactly(off, bench) === exactly(ZERO, bench)) return mark;
  const parts = toGraduation(off, INCH_PART);
  return tapeWords.beside(mark, parts === 0 ? tapeWords.hair : exactly(parts, bench), left > 0);
}

/**
 * The most or the least there may be, as `exactly` shows lengths, but never rounded
 * past itself: typed as it is said, it is accepted.
 */
export function bound(x: ExactLength, which: 'most' | 'least', bench: Bench): string {
  const round = which === 'most' ? downToGraduation : upToGraduation;
  const said = round(x, bench.unit === 'in' ? INCH_PART : METRIC_PART);
  // Under the finest that is said, it is said as it is.
  return exactly(said === 0 ? x : said, bench);
}
