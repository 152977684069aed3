import type { Figure, Point } from './figure.ts';

/** Whose number it is: of a field the maker gives, of an output that was found, of a step that was made. */
export type DimensionOf = { given: string } | { found: string } | { made: string };

/** A length or a count on a drawing, between two places; in millimetres of the figure, y downwards. */
export interface Dimension {
  from: Point;
  to: Point;
  /** The number as it is written there. */
  text: string;
  by: DimensionOf;
  /** What it is called, where that stands above its number, smaller, in two lines at the most. */
  name?: string;
}

/** A drawing whose numbers stand where they belong on it. */
export interface Dimensioned {
  name: string;
  /** Whether its lengths are in proportion; one that isn't says so. */
  toScale: boolean;
  /** Lines only: what is written on it are its dimensions. */
  shapes: Figure;
  dimensions: readonly Dimension[];
}

/** Whether it runs along the drawing rather than up and down. */
export function isAlong({ from, to }: Dimension): boolean {
  return Math.abs(to.x - from.x) >= Math.abs(to.y - from.y);
}
