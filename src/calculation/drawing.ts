import type { Dimension, Dimensioned, DimensionOf } from '../drawing/dimension.ts';
import type { Point } from '../drawing/figure.ts';
import type { ExactLength } from '../lengths/length.ts';
import type { Bench } from './bench.ts';
import type { Draft } from './calculation.ts';
import type { Ask } from './field-spec.ts';
import { exactly } from './tape-text.ts';

/** How a calculation is drawn with its numbers where they belong, asked for only by what shows it. */
export interface Drawing {
  id: string;
  /** Fields of lengths and counts that have no place on the drawing, for what is chosen. */
  unplaced(ask: Ask): readonly string[];
  /** Undefined where there is no answer to draw. */
  draw(draft: Draft, bench: Bench): Dimensioned | undefined;
}

/** A length between two places of a drawing, written in the bench's unit. */
export function lengthAt(
  [from, to]: readonly [Point, Point],
  length: ExactLength,
  by: DimensionOf,
  bench: Bench,
): Dimension {
  return { from, to, text: exactly(length, bench), by };
}
