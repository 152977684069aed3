import type { NumberCell, NumberRead } from '../numbers/number-row.ts';

/** The offset that most numbers of a row agree on: value = direction · line + offset. */
export interface Vote {
  readonly offset: number;
  /** Numbers that say just this offset. */
  readonly agreeing: number;
  /** Numbers that say it but for a digit lost in reading. */
  readonly partial: number;
  /** Digits of the agreeing numbers in all: long numbers agree by chance less often. */
  readonly digits: number;
  /** The most numbers that agree on any other offset. */
  readonly second: number;
  readonly score: number;
  /** Numbers that were read at all. */
  readonly total: number;
}

/** 1 if values grow to the right on the sheet, −1 if to the left. */
export type Direction = 1 | -1;

/**
 * Finds one offset for all numbers of a row; null if nothing was read. A number that only lost
 * a digit supports an offset by half and never opposes it, or a row of hundreds whose leading
 * digits are faint would be voted down by a hundred.
 */
export function vote(
  reads: readonly NumberRead[],
  line: (cell: NumberCell) => number,
  direction: Direction,
): Vote | null {
  const placed = reads.map((read) => ({ read, place: direction * line(read.cell) }));
  let best: Vote | null = null;
  for (const [offset, agreeing] of tally(placed.map(({ read, place }) => read.value - place))) {
    const against = placed.filter(({ read, place }) => read.value !== place + offset);
    const partial = against.filter(({ read, place }) => isPartOf(read, place + offset));
    const others = against.filter((one) => !partial.includes(one));
    const second = Math.max(
      0,
      ...tally(others.map(({ read, place }) => read.value - place)).values(),
    );
    const digits = placed
      .filter((one) => !against.includes(one))
      .reduce((sum, { read }) => sum + read.text.length, 0);
    const score = agreeing + 0.5 * partial.length;
    if (best && score <= best.score) continue;
    best = {
      offset,
      agreeing,
      partial: partial.length,
      digits,
      second,
      score,
      total: reads.length,
    };
  }
  return best;
}

function isPartOf({ text }: NumberRead, value: number): boolean {
  return value > 0 && lostDigits(text, String(value));
}

function tally(values: readonly number[]): Map<number, number> {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return counts;
}

/** Whether `short` is what is left of `full` after one digit or more was lost, the rest in order. */
export function lostDigits(short: string, full: string): boolean {
  if (short.length >= full.length) return false;
  let kept = 0;
  for (const digit of full) if (digit === short[kept]) kept++;
  return kept === short.length;
}
