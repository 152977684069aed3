import {
  CLASS_CONTRAST,
  LIGHTEST,
  LONGEST_BREAK,
  MOST_CONTRAST,
  ONLY_CLASS_MARGIN,
} from './limits.ts';
import type { TickContrast, TickZone } from './tick-contrast.ts';

/** Which side of the row of graduations: 1 is down on the sheet, −1 up. */
export type Side = 1 | -1;

/** Every how many graduations a long line stands, and which it is. */
export interface LongLine {
  /** Graduations from one long line to the next. */
  readonly subdivisions: number;
  /** A long line: the first graduation of the fold with the greatest length. */
  readonly longAt: number;
  /** How far the lines of each class, graduation modulo `subdivisions`, run beyond the common zone, in tenths of a graduation. */
  readonly lengths: readonly number[];
  /** By how much the long line is longer than any other. */
  readonly margin: number;
}

/** Rows beside the common zone, from the nearest outwards, as far as `reach` sheet pixels. */
export function rowsBeside(
  { height }: TickContrast,
  { from, to }: TickZone,
  side: Side,
  reach: number,
): number[] {
  const rows: number[] = [];
  // The first row beyond the zone still has half the ink of the short lines.
  for (let step = 2; step <= reach; step++) {
    const y = side > 0 ? to + step : from - step;
    if (y > 0 && y < height - 1) rows.push(y);
  }
  return rows;
}

/**
 * Lengths of the lines folded by `subdivisions`. `floor` is the least contrast one line may give
 * to its class, in log-grey: a digit between lines must not outweigh the lines.
 */
export function longLine(
  contrast: TickContrast,
  zone: TickZone,
  firstTick: number,
  subdivisions: number,
  rows: readonly number[],
  floor: number,
): LongLine {
  const lengths: number[] = [];
  for (let residue = 0; residue < subdivisions; residue++) {
    const first = modulo(residue - firstTick, subdivisions);
    let length = 0;
    let missed = 0;
    for (const y of rows) {
      const mean = classMean(
        contrast,
        y,
        first,
        subdivisions,
        floor,
        MOST_CONTRAST * zone.contrast,
      );
      if (mean > CLASS_CONTRAST * zone.contrast) {
        length += 1 + missed;
        missed = 0;
      } else if (++missed > LONGEST_BREAK) break;
    }
    lengths.push(length);
  }
  return withLengths(lengths);
}

/** The same lines seen only so far beyond the common zone, in tenths: what stands there may be no line. */
export function seenUpTo({ lengths }: LongLine, most: number): LongLine {
  return withLengths(lengths.map((length) => Math.min(length, Math.max(0, most))));
}

function withLengths(lengths: readonly number[]): LongLine {
  const longest = Math.max(...lengths);
  const [first = 0, second] = [...lengths].sort((a, b) => b - a);
  const margin = second === undefined ? ONLY_CLASS_MARGIN : first - second;
  return { subdivisions: lengths.length, longAt: lengths.indexOf(longest), lengths, margin };
}

function classMean(
  { values, ticks }: TickContrast,
  y: number,
  first: number,
  step: number,
  floor: number,
  ceiling: number,
): number {
  let sum = 0;
  let count = 0;
  for (let tick = first; tick < ticks; tick += step) {
    const value = values[y * ticks + tick] as number;
    if (Number.isNaN(value)) continue;
    sum += Math.max(floor, Math.min(value, ceiling));
    count++;
  }
  return count ? sum / count : 0;
}

/**
 * How much of the graduations' differences beside the zone a fold by `subdivisions` explains:
 * 1 all, 0 or less nothing. It is the adjusted R² of the classes' means, weighted by row, so
 * that a fold by twice as many doesn't win by having more classes.
 */
export function foldScore(
  contrast: TickContrast,
  zone: TickZone,
  firstTick: number,
  subdivisions: number,
  rows: readonly number[],
): number {
  let explained = 0;
  let total = 0;
  for (const y of rows) {
    const row = rowVariance(contrast, y, firstTick, subdivisions, MOST_CONTRAST * zone.contrast);
    if (!row) continue;
    explained +=
      row.total - ((row.total - row.between) * (row.count - 1)) / (row.count - subdivisions);
    total += row.total;
  }
  return total > 0 ? explained / total : 0;
}

function rowVariance(
  { values, ticks }: TickContrast,
  y: number,
  firstTick: number,
  subdivisions: number,
  ceiling: number,
): { total: number; between: number; count: number } | null {
  const sums = new Float64Array(subdivisions);
  const counts = new Float64Array(subdivisions);
  let [sum, squares, count] = [0, 0, 0];
  for (let tick = 0, residue = modulo(firstTick, subdivisions); tick < ticks; tick++, residue++) {
    if (residue === subdivisions) residue = 0;
    const value = Math.max(LIGHTEST, Math.min(ceiling, values[y * ticks + tick] as number));
    if (Number.isNaN(value)) continue;
    sums[residue] = (sums[residue] as number) + value;
    counts[residue] = (counts[residue] as number) + 1;
    sum += value;
    squares += value * value;
    count++;
  }
  if (count < 2 * subdivisions) return null;
  const mean = sum / count;
  let between = 0;
  for (let residue = 0; residue < subdivisions; residue++) {
    const members = counts[residue] as number;
    if (members) between += members * ((sums[residue] as number) / members - mean) ** 2;
  }
  return { total: squares - count * mean * mean, between, count };
}

/** The remainder from 0 up, for negative graduations too. */
export function modulo(value: number, divisor: number): number {
  return ((value % divisor) + divisor) % divisor;
}
