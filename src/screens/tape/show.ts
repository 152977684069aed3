import type { Bench } from '../../calculation/bench.ts';
import { STEP } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength, UNITS_PER_MM } from '../../lengths/length.ts';
import { showExact, shownText, showOnTape } from '../../lengths/show-length.ts';
import { type BenchUnit, UNITS_PER } from '../../lengths/unit.ts';
import { tapeTolerance } from '../../sewing/wearer/tape-tolerance.ts';

/** Decimals that show a tenth of a millimetre, or nearly. */
const PLACES: Readonly<Record<BenchUnit, number>> = { mm: 1, cm: 2, in: 3 };

/** What a reading looks like. */
export interface ShownReading {
  /** In the bench's unit: "46.32 cm". */
  length: string;
  /** Half width of the interval in the same unit, the tape itself included, rounded up: "0.06 cm". */
  within: string;
  /** The part of it that comes from the picture, in mm, and the tape's own in classes II and III. */
  parts: { picture: string; two: string; three: string };
  /** Both, as they are typed into a field: "46.32 ± 0.06 cm". */
  typed: string;
  /** In the other system: "18.236 in". */
  other: string;
  /** The nearest mark of the other system's tape: "18 1/4 in". */
  mark: string;
}

/**
 * A reading as it is shown. No tape is better than a new one of class II: what that may be off is
 * added to the doubt of the picture. Added and not as squares: a tape that is off is so each time.
 *
 * @param mm what was read, or lies between two lines; `uncertaintyMm` the picture's own half width
 */
export function showReading(mm: number, uncertaintyMm: number, bench: Bench): ShownReading {
  const unit = bench.unit;
  const foreign = unit === 'in' ? 'cm' : 'in';
  const length = exactLength(mm * UNITS_PER_MM);
  const step = unit === 'in' ? STEP[bench.metric] : STEP[bench.inch];
  const shown = inDecimals(length, unit, bench);
  const { II, III } = tapeTolerance(mm);
  const upTo = (doubtMm: number, by: BenchUnit) => inDecimals(roundedUp(doubtMm, by), by, bench);
  const within = upTo(uncertaintyMm + II, unit);
  return {
    length: shown,
    within,
    parts: { picture: upTo(uncertaintyMm, 'mm'), two: upTo(II, 'mm'), three: upTo(III, 'mm') },
    typed: `${shown.replace(/ \w+$/, '')} ± ${within}`,
    other: inDecimals(length, foreign, bench),
    mark: shownText(showOnTape(length, step, foreign), bench.decimalMark),
  };
}

function inDecimals(length: ExactLength, unit: BenchUnit, bench: Bench): string {
  const shown = showExact(length, unit, PLACES[unit]);
  return shownText(shown, bench.decimalMark);
}

/** A doubt is never shown smaller than it is, nor as none. */
function roundedUp(mm: number, unit: BenchUnit): ExactLength {
  const last = UNITS_PER[unit] / 10 ** PLACES[unit];
  const lasts = Math.max(1, Math.ceil((mm * UNITS_PER_MM) / last - 1e-6));
  return exactLength(lasts * last);
}
