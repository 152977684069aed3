import { NOTHING } from '../rows/points.ts';
import type { Ends, Here, Pair, Result, Value } from './result.ts';
import { same } from './same.ts';

/** How many readings of one number are followed each for itself. */
const MOST_READINGS = 12;

/** How many marks of a row are worked out at ends, so that 2,000 holes stay cheap; at least two readings are. */
const MOST_MARKS_AT_ENDS = 4000;

/** How large a value is, for what is in doubt of it to be compared: of a run, where it ends. */
function sizeOf(value: Value): number {
  return typeof value === 'number' ? value : (value.marks.at(-1)?.at ?? 0);
}

/** How far a reading moves a number. An end that is impossible counts as what the other end says. */
function share(value: Value, pair: Pair): number {
  return Math.max(...pair.map((end) => Math.abs(sizeOf(end ?? value) - sizeOf(value))));
}

/** Doubts that have nothing to do with each other: the root of their squares. Smallest first, so that order is nothing. */
function together(shares: readonly number[]): number {
  const squares = shares.map((one) => one * one).sort((a, b) => a - b);
  return Math.sqrt(squares.reduce((a, b) => a + b, 0));
}

/** The ± of a number, for showing and comparing. */
export function plusMinus(result: Result): number {
  if (!result.ok) return 0;
  return together(Object.values(result.ends).map((pair) => share(result.value, pair)));
}

/** The ± of the place of one mark of a row. */
export function plusMinusAt(row: Here, rank: number): number {
  const now = placeAt(row.value, rank);
  const count = typeof row.value === 'object' ? row.value.marks.length : 0;
  const off = (end: Value | null) =>
    end === null || typeof end !== 'object' || end.marks.length !== count
      ? 0
      : Math.abs(placeAt(end, rank) - now);
  return together(Object.values(row.ends).map((pair) => Math.max(...pair.map(off))));
}

function placeAt(value: Value, rank: number): number {
  return typeof value === 'object' ? (value.marks[rank]?.at ?? 0) : value;
}

type Tried<Found extends { value: Value }> = ({ ok: true } & Found) | { ok: false };

/**
 * Works out at the sources as they are, and with each reading behind them moved to both its
 * ends. Of more than are followed singly the smallest are moved together, as one.
 *
 * @param key names what is moved together
 */
export function through(
  key: string,
  sources: readonly Here[],
  base: Value,
  fn: (values: readonly Value[]) => Tried<{ value: Value }>,
): Ends {
  const ends: Record<string, Pair> = {};
  const put = (reading: string, at: (source: Here, end: 0 | 1) => Value | null) => {
    const pair = ([0, 1] as const).map((end) => {
      const values = sources.map((source) => at(source, end));
      if (values.some((value) => value === null)) return null;
      const there = fn(values as Value[]);
      return there.ok ? there.value : null;
    });
    const [low = null, high = null] = pair;
    if (!(isStill(low, base) && isStill(high, base))) ends[reading] = [low, high];
  };
  const { singly, rest } = followed(sources, base);
  for (const reading of singly) {
    put(reading, ({ ends: its, value }, end) =>
      Object.hasOwn(its, reading) ? (its[reading]?.[end] ?? null) : value,
    );
  }
  if (rest.size > 0) put(`rest:${key}`, (source, end) => movedBy(source, rest, end));
  return ends;
}

/** Readings behind sources: those followed singly, the largest, and the rest. */
function followed(sources: readonly Here[], base: Value) {
  const most = new Map<string, number>();
  for (const { ends, value } of sources) {
    for (const [reading, pair] of Object.entries(ends)) {
      most.set(reading, Math.max(most.get(reading) ?? 0, share(value, pair)));
    }
  }
  const marks = typeof base === 'object' ? base.marks.length : 0;
  const room = Math.max(2, Math.min(MOST_READINGS, Math.floor(MOST_MARKS_AT_ENDS / (2 * marks))));
  if (most.size <= room) return { singly: [...most.keys()], rest: new Set<string>() };
  // As large ones stay as they come.
  const bySize = [...most].sort(([, a], [, b]) => b - a).map(([reading]) => reading);
  return { singly: bySize.slice(0, room - 1), rest: new Set(bySize.slice(room - 1)) };
}

/** A source with several readings moved at once. */
function movedBy({ value, ends }: Here, readings: ReadonlySet<string>, end: 0 | 1): Value {
  if (typeof value !== 'number') return value;
  const moved = Object.entries(ends).filter(([reading]) => readings.has(reading));
  const by = together(moved.map(([, pair]) => share(value, pair)));
  return value + (2 * end - 1) * by;
}

function isStill(end: Value | null, base: Value): boolean {
  if (typeof end === 'number' && typeof base === 'number') return Math.abs(end - base) < NOTHING;
  return same(end, base);
}
