import type { Bench } from '../../controls/bench.ts';
import type { Answer, Line } from '../../controls/calculation.ts';
import { STEP } from '../../lengths/graduation.ts';
import { type ExactLength, type Length, mm, toMm, UNITS_PER_INCH } from '../../lengths/length.ts';
import { remainder, showExact, shownText, showOnTape } from '../../lengths/show-length.ts';
import { type BenchUnit, UNITS_PER } from '../../lengths/unit.ts';
import type { Run } from '../../sewing/run.ts';
import { convertWords as words } from '../../words/convert-words.ts';

/** The first unit written; `x` multiplies. */
const UNIT = /[a-wyz"'‘’“”′″]+/i;

/** A length on both tapes: the other system first, then each tape's nearest graduation. */
export function lengthAnswer(length: Length, typed: string, bench: Bench): Answer {
  const wasInches = !/^[cm]?m$/i.test(UNIT.exec(typed)?.[0] ?? bench.unit);
  const metric: BenchUnit = bench.unit === 'mm' ? 'mm' : 'cm';
  const unit = wasInches ? metric : 'in';
  const step = STEP[wasInches ? bench.metric : bench.inch];
  const text = (x: ExactLength, of: BenchUnit, places: number) =>
    shownText(showExact(x, of, places), bench.decimalMark);
  const left = remainder(length, step);
  const asMm = text(length, 'mm', 4);
  const inch = text(UNITS_PER_INCH as Length, 'mm', 1);
  const asInches = decimal(length / UNITS_PER_INCH, bench);
  return {
    headline: { number: showOnTape(length, step, unit), after: '' },
    sentence: words.sentence(
      text(length, wasInches ? 'mm' : 'in', 4),
      left === 0 ? undefined : text(Math.abs(left) as ExactLength, 'mm', 3),
      left < 0,
    ),
    lines: [
      tapeLine(words.metricTape, length, STEP[bench.metric], metric, bench),
      tapeLine(words.inchTape, length, STEP[bench.inch], 'in', bench),
      { label: words.inMm, value: asMm },
      { label: words.inInches, value: `${asInches} in` },
      { label: words.inLines, value: lines(length, bench) },
    ],
    offers: [],
    warnings: [],
    cautions: [],
    runs: [{ name: words.title, item: words.length, run: onRun(length) }],
    workings: [
      {
        formula: wasInches
          ? words.fromInches(asInches, inch, asMm)
          : words.fromMm(asMm, inch, asInches),
        source: words.source,
      },
    ],
  };
}

function tapeLine(label: string, x: Length, step: Length, unit: BenchUnit, bench: Bench): Line {
  const shown = shownText(showOnTape(x, step, unit), bench.decimalMark);
  const left = remainder(x, step);
  const over = shownText(showExact(Math.abs(left) as ExactLength, 'mm', 3), bench.decimalMark);
  return { label, value: left === 0 ? words.justOn(shown) : words.nearest(shown, over, left > 0) };
}

function lines(x: Length, bench: Bench): string {
  return decimal(x / UNITS_PER.line, bench);
}

function decimal(value: number, bench: Bench): string {
  const rounded = String(Math.round(value * 10_000) / 10_000);
  return rounded.replace('.', bench.decimalMark);
}

/** The length as a run with one mark, with some tape beyond it. */
function onRun(length: Length): Run {
  return {
    datum: 'zero',
    length: mm(Math.max(10, toMm(length) * 1.2)),
    marks: [{ at: length, label: '', kind: 'measure' }],
  };
}
