import { convertLineWords as words } from '#words/calculations/convert-line-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Line, Working } from '../../calculation/calculation.ts';
import { STEP } from '../../lengths/graduation.ts';
import { type ExactLength, type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import {
  remainder,
  showExact,
  shownNumber,
  shownText,
  showOnTape,
} from '../../lengths/show-length.ts';
import { type BenchUnit, UNITS_PER } from '../../lengths/unit.ts';

/** A length on both tapes, each with its nearest graduation, and in other units. */
export function linesOf(length: Length, bench: Bench): Line[] {
  const metric = bench.unit === 'mm' ? 'mm' : 'cm';
  return [
    tapeLine(words.metricTape, length, STEP[bench.metric], metric, bench),
    tapeLine(words.inchTape, length, STEP[bench.inch], 'in', bench),
    { label: words.inMm, value: inMm(length, bench) },
    { label: words.inInches, value: `${inInches(length, bench)} in` },
    {
      label: words.inLines,
      value: shownNumber(length / UNITS_PER.line, 4, bench.decimalMark),
    },
  ];
}

/** How one system is got from the other. */
export function workingOf(length: Length, wasInches: boolean, bench: Bench): Working {
  const inch = inMm(UNITS_PER_INCH as Length, bench);
  const [asInches, asMm] = [inInches(length, bench), inMm(length, bench)];
  return {
    formula: wasInches
      ? words.fromInches(asInches, inch, asMm)
      : words.fromMm(asMm, inch, asInches),
    source: words.source,
  };
}

function tapeLine(label: string, x: Length, step: Length, unit: BenchUnit, bench: Bench): Line {
  const shown = shownText(showOnTape(x, step, unit), bench.decimalMark);
  const left = remainder(x, step);
  const over = shownText(showExact(Math.abs(left) as ExactLength, 'mm', 3), bench.decimalMark);
  return { label, value: left === 0 ? words.justOn(shown) : words.nearest(shown, over, left > 0) };
}

function inMm(x: Length, bench: Bench): string {
  return shownText(showExact(x, 'mm'), bench.decimalMark);
}

function inInches(x: Length, bench: Bench): string {
  return shownNumber(x / UNITS_PER_INCH, 4, bench.decimalMark);
}
