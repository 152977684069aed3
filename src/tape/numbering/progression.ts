import type { NumberRead, NumberRow } from '../numbers/number-row.ts';
import { median } from '../numerics/order.ts';
import {
  ADVANCE_ERROR,
  ADVANCES,
  FEW_SHARE,
  FINER_STEPS,
  LARGEST_SPREAD,
  LEAST_APART,
  MANY_FOR_STRAY,
  OFF_PLACE,
  OFF_PLACE_OF_PART,
  OFF_STEP,
  SAME_START,
  SCORE,
} from './limits.ts';
import { lostDigits } from './vote.ts';

/** Numbers that rise or fall evenly along a row: value = perTick · graduation + offset. */
export interface Progression {
  /** By how much values rise per graduation; negative if they fall to the right. */
  readonly perTick: number;
  readonly offset: number;
  /** From one printed number to the next. */
  readonly step: number;
  /** Graduations from one printed number to the next. */
  readonly subdivisions: number;
  /** Everything that was read in the row, and of it the numbers that fit. */
  readonly reads: readonly NumberRead[];
  readonly agreeing: readonly NumberRead[];
  /** How many different values fit. */
  readonly distinct: number;
  /** Numbers that fit but for a digit lost in reading. */
  readonly partial: number;
  /** Digits of the agreeing numbers in all. */
  readonly digits: number;
  /** Numbers that were read at all. */
  readonly total: number;
  /** How far the numbers' middles scatter, in steps. */
  readonly spread: number;
  readonly score: number;
  /** The most different values that fit any other progression. */
  readonly second: number;
}

type Fit = Omit<Progression, 'second'>;

/** Finds the even row in what was read of a row of numbers; null if no two numbers fit. */
export function progression(reads: readonly NumberRead[], row: NumberRow): Progression | null {
  const fits = [...starts(reads)].flatMap((start) => fitFrom(start, reads, row) ?? []);
  let best: Fit | null = null;
  for (const fit of fits) if (!best || fit.score > best.score) best = fit;
  if (!best) return null;
  const { perTick, offset, step } = best;
  const others = fits
    .filter((fit) => fit.perTick !== perTick || Math.abs(fit.offset - offset) > 0.5 * step)
    .filter(({ agreeing }) => !restsOnOne(agreeing, best));
  return { ...best, second: Math.max(0, ...others.map(({ distinct }) => distinct)) };
}

/**
 * Any two numbers of a progression may fit another: alone they speak for none. Nor does a number
 * that lost a digit, with whatever other, nor one of many with a stray number.
 */
function restsOnOne(pair: readonly NumberRead[], best: Fit): boolean {
  if (pair.length !== 2) return false;
  const others = pair.filter((read) => !best.agreeing.includes(read));
  const strays = others.filter((read) => !hasLostDigits(read, best));
  if (strays.length === 1 && others.length === 1) return best.distinct >= MANY_FOR_STRAY;
  return strays.length < 2;
}

/** Whether it is the number due at its place, but for a digit. */
function hasLostDigits(
  { text, cell }: NumberRead,
  { perTick, offset, step }: Pick<Progression, 'perTick' | 'offset' | 'step'>,
): boolean {
  const wanted = Math.round((perTick * cell.middle + offset) / step) * step;
  return wanted > 0 && lostDigits(text, String(wanted));
}

interface Start {
  readonly perTick: number;
  readonly offset: number;
  /** How far a number may be off, in its own value. */
  readonly tolerance: number;
}

/** The lines through any two numbers that advance like a scale; those nearly alike but once. */
function starts(reads: readonly NumberRead[]): Iterable<Start> {
  const found = new Map<string, Start>();
  reads.forEach((one, index) => {
    for (const other of reads.slice(index + 1)) {
      for (const start of startsOf(one, other)) {
        const key = `${start.perTick}|${Math.round(start.offset / (SAME_START * start.tolerance))}`;
        if (!found.has(key)) found.set(key, start);
      }
    }
  });
  return found.values();
}

function startsOf(one: NumberRead, other: NumberRead): Start[] {
  const rise = other.value - one.value;
  const apart = other.cell.middle - one.cell.middle;
  if (!rise || Math.abs(apart) < LEAST_APART) return [];
  const advance = Math.abs(rise / apart);
  return ADVANCES.filter((step) => Math.abs(Math.log(advance / step)) <= ADVANCE_ERROR).map(
    (step) => {
      const perTick = Math.sign(rise / apart) * step;
      const offset = (restOf(one, perTick) + restOf(other, perTick)) / 2;
      return { perTick, offset, tolerance: step >= 1 ? OFF_PLACE : OFF_PLACE_OF_PART };
    },
  );
}

function restOf({ value, cell }: NumberRead, perTick: number): number {
  return value - perTick * cell.middle;
}

function fitFrom(start: Start, reads: readonly NumberRead[], row: NumberRow): Fit | null {
  const { perTick, tolerance } = start;
  const near = (offset: number) =>
    reads.filter((read) => Math.abs(restOf(read, perTick) - offset) < tolerance);
  const offset = median(near(start.offset).map((read) => restOf(read, perTick)));
  const agreeing = near(offset);
  const values = [...new Set(agreeing.map(({ value }) => value))].sort((a, b) => a - b);
  if (values.length < 2) return null;
  const step = finerStep(commonStep(values), perTick, offset, row);
  const squares = agreeing.reduce((sum, read) => sum + (restOf(read, perTick) - offset) ** 2, 0);
  const spread = Math.sqrt(squares / agreeing.length) / step;
  if (spread > LARGEST_SPREAD) return null;
  const rest = reads.filter((read) => !agreeing.includes(read));
  const partial = rest.filter((read) => hasLostDigits(read, { perTick, offset, step })).length;
  const digits = agreeing.reduce((sum, { text }) => sum + text.length, 0);
  return {
    perTick,
    offset,
    step,
    subdivisions: step / Math.abs(perTick),
    reads,
    agreeing,
    distinct: values.length,
    partial,
    digits,
    total: reads.length,
    spread,
    score: values.length + SCORE.partial * partial + SCORE.digit * digits - SCORE.spread * spread,
  };
}

/** The greatest number that divides all the distances between values. */
function commonStep(values: readonly number[]): number {
  const [first = 0] = values;
  return values.reduce((step, value) => greatestDivisor(value - first, step), 0) || 1;
}

function greatestDivisor(a: number, b: number): number {
  return b ? greatestDivisor(b, a % b) : a;
}

/** Words that were not read may stand on finer steps than the numbers that were. */
function finerStep(step: number, perTick: number, offset: number, row: NumberRow): number {
  const steps = FINER_STEPS.filter((finer) => step % finer === 0 && finer < step);
  const values = row.cells.map(({ middle }) => perTick * middle + offset);
  const needed = steps.find((finer) => {
    const coarser = [...steps, step].filter((one) => one > finer);
    const own = values.filter((value) => isOwn(value, finer, coarser)).length;
    // A single one is chance.
    return own >= 2 && own > FEW_SHARE * values.length;
  });
  return needed ?? step;
}

/** Whether a value is on such a step but on none that is coarser. */
function isOwn(value: number, finer: number, coarser: readonly number[]): boolean {
  const place = value / finer;
  const whole = Math.round(place);
  if (Math.abs(place - whole) >= OFF_STEP) return false;
  return coarser.every((one) => (whole * finer) % one !== 0);
}
