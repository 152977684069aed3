import type { FigureShape, Point } from './figure.ts';

/** A hole as a ring of points. */
export function circle(
  { x, y }: Point,
  radius: number,
  style: 'cut' | 'hole' = 'cut',
): Extract<FigureShape, { line: string }> {
  const points = Array.from({ length: 13 }, (_, i) => {
    const turn = (i / 12) * 2 * Math.PI;
    return { x: x + radius * Math.cos(turn), y: y + radius * Math.sin(turn) };
  });
  return { line: style, points, ring: { at: { x, y }, radius } };
}
