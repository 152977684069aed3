import type { Dimension, Dimensioned, DimensionOf } from '../drawing/dimension.ts';
import type { Point } from '../drawing/figure.ts';
import type { StandingRow } from '../drawing/row-marks.ts';
import { type ExactLength, exactLength, toMm } from '../lengths/length.ts';
import type { Bench } from './bench.ts';
import type { Draft } from './calculation.ts';
import type { Ask } from './field-spec.ts';
import { exactly } from './tape-text.ts';

/** How a calculation is drawn with its numbers where they belong, asked for only by what shows it. */
export interface Drawing {
  id: string;
  /** Fields of lengths and counts that have no place on the drawing, for what is chosen. */
  unplaced(ask: Ask): readonly string[];
  /** Rows that it draws itself as they stand, by the key of their output: others are drawn under it. */
  rows?: readonly string[];
  /**
   * Undefined where there is no answer to draw.
   * @param rows as they stand in a garment, in the place of those planned
   */
  draw(draft: Draft, bench: Bench, rows?: StandingRows): Dimensioned | undefined;
}

/** Rows as they stand, by the key of their output. */
export type StandingRows = Readonly<Record<string, StandingRow | undefined>>;

/** A length between two places of a drawing, written in the bench's unit. */
export function lengthAt(
  [from, to]: readonly [Point, Point],
  length: ExactLength,
  by: DimensionOf,
  bench: Bench,
): Dimension {
  return { from, to, text: exactly(length, bench), by };
}

/** A length up a drawing, from and to heights above its zero in 1/8000 mm; `x` in mm. */
export function lengthUp(
  x: number,
  [from, to]: readonly [number, number],
  by: DimensionOf,
  bench: Bench,
): Dimension {
  const at = (height: number): Point => ({ x, y: -toMm(exactLength(height)) });
  return lengthAt([at(from), at(to)], exactLength(to - from), by, bench);
}

/** A length down a drawing, from and to depths below its zero in 1/8000 mm; `x` in mm. */
export function lengthDown(
  x: number,
  [from, to]: readonly [number, number],
  by: DimensionOf,
  bench: Bench,
): Dimension {
  const at = (depth: number): Point => ({ x, y: toMm(exactLength(depth)) });
  return lengthAt([at(from), at(to)], exactLength(to - from), by, bench);
}

/** A length along a drawing, from and to places in 1/8000 mm; `y` in mm. */
export function lengthAlong(
  y: number,
  [from, to]: readonly [number, number],
  by: DimensionOf,
  bench: Bench,
): Dimension {
  const at = (along: number): Point => ({ x: toMm(exactLength(along)), y });
  return lengthAt([at(from), at(to)], exactLength(to - from), by, bench);
}
