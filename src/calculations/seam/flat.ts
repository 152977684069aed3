import type { Bench } from '../../calculation/bench.ts';
import { lengthAlong } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { FigureShape, LineStyle } from '../../drawing/figure.ts';
import { lineAcross, lineDown } from '../../drawing/figure-line.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import type { SeamAsked } from './fields.ts';

/** A line across the flat edge, so far from the stitch line in 1/8000 mm. */
export type Across = readonly [LineStyle, number];

/** How long such a line is either way, in parts of the allowance. */
const MARK = 0.06;

/** One edge flat, the garment to the left of its stitch line at 0, what lies across it at its places. */
export function flatEdge(y: number, raw: number, lines: readonly Across[]): FigureShape[] {
  const wide = toMm(exactLength(raw));
  const mark = MARK * wide;
  const left = Math.min(-wide, ...lines.map(([, at]) => toMm(exactLength(at)) - mark));
  return [
    lineAcross('cloth', y, [left, wide]),
    ...lines.map(([style, at]) => {
      const x = toMm(exactLength(at));
      return lineDown(style, x, [y - mark, y + mark]);
    }),
  ];
}

/**
 * The rows that were given of a finish, on the flat edge.
 *
 * @param line where its stitch line is
 * @param raw where the cloth ends
 */
export function rowsOnFlat(
  { finish, first, trim, second, under, turn, top, topSecond }: SeamAsked,
  [y, line, raw]: readonly [number, number, number],
  bench: Bench,
): Dimension[] {
  const on = (from: number, to: number, given: string) =>
    lengthAlong(y, [from, to], { given }, bench);
  if (finish === 'french') {
    const [row, other, left] = [first ?? 0, second ?? 0, trim ?? 0];
    const sewn = line + other;
    return [on(line, sewn, 'second'), on(sewn, sewn + left, 'trim'), on(sewn, sewn + row, 'first')];
  }
  if (finish === 'plain') {
    return [
      ...(top === undefined ? [] : [on(line, line + top, 'top')]),
      ...(topSecond === undefined ? [] : [on(line, line + topSecond, 'topSecond')]),
    ];
  }
  if (finish !== 'felled') return [];
  return [on(line, line + (under ?? 0), 'under'), on(raw - (turn ?? 0), raw, 'turn')];
}
