import { modulo } from '../graduations/tick-classes.ts';
import type { NumberRead } from '../numbers/number-row.ts';
import {
  CLEARLY_MORE,
  DIGITS,
  EVERY,
  LEAST_DIFFERENT,
  LEAST_DIGITS,
  LEAST_SHARE,
  OFF_LINE,
} from './limits.ts';

/** Digits 1 to 9 on the lines between two numbers. */
export interface DigitsBetween {
  /** Graduations from one digit to the next. */
  readonly every: number;
  /** A graduation that would have the 0: the lines of the numbers are whole tens of digits from it. */
  readonly zeroTick: number;
  /** Whether they rise with the graduations, or fall: a row may be followed against its tape. */
  readonly direction: 1 | -1;
}

const DIRECTIONS = [1, -1] as const;

/** Finds out whether a row is the digits between numbers; undefined when it is not surely so. */
export function digitsBetween(reads: readonly NumberRead[]): DigitsBetween | undefined {
  const single = reads.filter(({ text, value }) => text.length === 1 && value > 0);
  const ways = EVERY.flatMap((every) => DIRECTIONS.map((direction) => ({ every, direction })));
  const counted = ways
    .flatMap(({ every, direction }) => {
      const zeros = single.flatMap(({ cell, value }) => {
        const line = Math.round(cell.middle);
        const near = Math.abs(cell.middle - line) < OFF_LINE * every;
        const zero = modulo(line - direction * value * every, DIGITS * every);
        return near ? [{ value, zero }] : [];
      });
      return [...new Set(zeros.map(({ zero }) => zero))].map((zero) => {
        const values = zeros.filter((one) => one.zero === zero).map(({ value }) => value);
        const different = new Set(values).size;
        return { every, direction, zero, count: values.length, different };
      });
    })
    .sort((one, other) => other.count - one.count);
  const [best, second] = counted;
  if (!best) return undefined;
  const sure =
    best.count >= LEAST_DIGITS &&
    best.different >= LEAST_DIFFERENT &&
    best.count >= LEAST_SHARE * single.length &&
    best.count >= CLEARLY_MORE * (second?.count ?? 0);
  if (!sure) return undefined;
  return { every: best.every, zeroTick: best.zero, direction: best.direction };
}

/** Whether a graduation is one of those that numbers stand on, when digits are counted between them. */
export function isNumbered(tick: number, { every, zeroTick }: DigitsBetween): boolean {
  return modulo(tick - zeroTick, DIGITS * every) === 0;
}
