import type { FigureShape, LineStyle, Point } from './figure.ts';

/** A line through points. */
export function lineThrough(line: LineStyle, ...points: readonly Point[]): FigureShape {
  return { line, points };
}
