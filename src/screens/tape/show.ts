import type { Bench } from '../../controls/bench.ts';
import { STEP } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength, UNITS_PER_MM } from '../../lengths/length.ts';
import { showExact, shownText, showOnTape } from '../../lengths/show-length.ts';
import { type BenchUnit, UNITS_PER } from '../../lengths/unit.ts';

/** Decimals that show a tenth of a millimetre, or nearly. */
const PLACES: Readonly<Record<BenchUnit, number>> = { mm: 1, cm: 2, in: 3 };

/** What a reading looks like. */
export interface ShownReading {
  /** In the bench's unit: "46.32 cm". */
  length: string;
  /** Half width of the interval in the same unit, rounded up: "0.02 cm". */
  within: string;
  /** Both, as they are typed into a field: "46.32 ± 0.02 cm". */
  typed: string;
  /** In the other system: "18.236 in". */
  other: string;
  /** The nearest mark of the other system's tape: "18 1/4 in". */
  mark: string;
}

/** @param mm what was read; `uncertaintyMm` its half width */
export function showReading(mm: number, uncertaintyMm: number, bench: Bench): ShownReading {
  const unit = bench.unit;
  const foreign = unit === 'in' ? 'cm' : 'in';
  const length = exactLength(mm * UNITS_PER_MM);
  const step = unit === 'in' ? STEP[bench.metric] : STEP[bench.inch];
  const shown = inDecimals(length, unit, bench);
  const within = inDecimals(roundedUp(uncertaintyMm, unit), unit, bench);
  return {
    length: shown,
    within,
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
