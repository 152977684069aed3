import { sizesWords as words } from '#words/calculations/sizes-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer } from '../../calculation/calculation.ts';
import {
  type ExactLength,
  exactLength,
  type Length,
  mm,
  UNITS_PER_INCH,
} from '../../lengths/length.ts';
import { showExact, shownNumber, shownText } from '../../lengths/show-length.ts';
import { UNITS_PER } from '../../lengths/unit.ts';
import { nearestButton } from '../../sewing/closures/buttons.ts';
import type { Outcome } from '../../sewing/problem.ts';
import { followsRule } from '../../sewing/seams/needles.ts';
import {
  COMMON_BUTTON_LINES,
  LINES_PER_INCH,
  NEEDLE_CONFLICT,
  NEEDLE_SIZES,
  SHIRT_STITCHES,
  TROUSER_STITCHES,
} from '../../sewing/sources/sizes.ts';
import type { Sizes } from './fields.ts';
import { needleOf, stitchOf } from './worked.ts';

const INCH = UNITS_PER_INCH as Length;

const NOTHING = { offers: [], warnings: [], cautions: [], runs: [] } as const;

/** A stitch length from millimetres, stitches to the inch or to the centimetre. */
export function stitchAnswer(given: number, by: Sizes['stitchBy'], bench: Bench): Outcome<Answer> {
  const outcome = stitchOf(given, by);
  if (!outcome.ok) return outcome;
  const { length, perInch, perCm } = outcome.value;
  const long = text(length, 'mm', 2, bench);
  return answer({
    ...NOTHING,
    headline:
      by === 'in' || by === 'cm'
        ? { number: long, after: words.stitchLong }
        : { number: round(perInch, 1, bench), after: words.perInch },
    sentence: words.stitchSentence(long, round(perInch, 1, bench)),
    lines: [
      { label: words.stitchBy.mm, value: long },
      { label: words.stitchBy.in, value: round(perInch, 2, bench) },
      { label: words.stitchBy.cm, value: round(perCm, 2, bench) },
      { label: words.inUse, value: words.inUseOf(SHIRT_STITCHES, TROUSER_STITCHES) },
    ],
    workings: [
      {
        formula: stitchFormula(given, by, long, round(perInch, 2, bench), bench),
        source: words.stitchSource,
      },
    ],
  });
}

/** The way from what was given to the other. */
function stitchFormula(
  given: number,
  by: Sizes['stitchBy'],
  long: string,
  perInch: string,
  bench: Bench,
): string {
  const inch = text(INCH, 'mm', 1, bench);
  if (by !== 'in' && by !== 'cm') return words.stitchFormula(inch, long, perInch);
  return words.longFormula(
    by === 'in' ? inch : text(mm(10), 'mm', 0, bench),
    round(given, 4, bench),
    long,
  );
}

/** A button's diameter in lines, millimetres and inches, and the size sold nearest to it. */
export function buttonAnswer(diameter: Length, bench: Bench): Outcome<Answer> {
  const outcome = nearestButton(diameter);
  if (!outcome.ok) return outcome;
  const { size, wider } = outcome.value;
  const lines = round(diameter / UNITS_PER.line, 2, bench);
  const across = text(diameter, 'mm', 3, bench);
  return answer({
    ...NOTHING,
    headline: { number: lines, after: words.lines },
    sentence:
      wider === 0
        ? words.buttonSold(size.lines, across)
        : words.buttonNear(
            size.lines,
            text(size.diameter, 'mm', 3, bench),
            text(exactLength(Math.abs(wider)), 'mm', 3, bench),
            wider > 0,
          ),
    lines: [
      { label: words.inMm, value: across },
      { label: words.inInches, value: text(diameter, 'in', 4, bench) },
      { label: words.sizesSold, value: COMMON_BUTTON_LINES.value.join(', ') },
    ],
    workings: [
      {
        formula: words.buttonFormula(lines, text(INCH, 'mm', 1, bench), across),
        source: words.source(LINES_PER_INCH),
      },
    ],
  });
}

/** A needle's size in the other system. */
export function needleAnswer(given: number, by: Sizes['needleBy'], bench: Bench): Outcome<Answer> {
  const fromUs = by === 'us';
  const outcome = needleOf(given, by);
  if (!outcome.ok) return outcome;
  const { needle, between, disputed } = outcome.value;
  return answer({
    ...NOTHING,
    headline: fromUs
      ? { number: String(needle.metric), after: words.metricNeedle }
      : { number: String(needle.us), after: words.usNeedle },
    sentence: between
      ? words.needleBetween(between[0], between[1])
      : words.needleIs(needle.metric, needle.us, round(needle.metric / 100, 2, bench)),
    lines: NEEDLE_SIZES.value.map(([us, metric]) => ({
      label: words.metricSize(metric),
      value: words.usSize(us),
    })),
    warnings: disputed ? [words.disputed(NEEDLE_CONFLICT)] : [],
    workings: [
      {
        formula: followsRule(needle)
          ? words.needleRule(needle.us, needle.metric)
          : words.needleTable,
        source: words.source(NEEDLE_SIZES),
      },
      {
        formula: words.needleFormula(needle.metric, round(needle.metric / 100, 2, bench)),
        source: '',
      },
    ],
  });
}

function answer(value: Answer): Outcome<Answer> {
  return { ok: true, value };
}

function text(x: ExactLength, unit: 'mm' | 'in', places: number, bench: Bench): string {
  return shownText(showExact(x, unit, places), bench.decimalMark);
}

function round(value: number, places: number, bench: Bench): string {
  return shownNumber(value, places, bench.decimalMark);
}
