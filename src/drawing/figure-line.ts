import type { FigureShape, LineStyle, Point } from './figure.ts';

/** A line through points. */
export function lineThrough(line: LineStyle, ...points: readonly Point[]): FigureShape {
  return { line, points };
}

/** A level line, at one height from one place to another. */
export function lineAcross(
  line: LineStyle,
  y: number,
  [from, to]: readonly [number, number],
): FigureShape {
  return lineThrough(line, { x: from, y }, { x: to, y });
}

/** An upright line, at one place from one height to another. */
export function lineDown(
  line: LineStyle,
  x: number,
  [from, to]: readonly [number, number],
): FigureShape {
  return lineThrough(line, { x, y: from }, { x, y: to });
}
