import { fitWords as words } from '#words/calculations/fit-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong } from '../../calculation/drawing.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { FigureShape } from '../../drawing/figure.ts';
import { lineAcross } from '../../drawing/figure-line.ts';
import { type ExactLength, toMm } from '../../lengths/length.ts';
import { type FitAsked, fitFields } from './fields.ts';
import { type Fit, fitOf } from './worked.ts';

/** How far apart the girths are drawn, in parts of the widest. */
const APART = 0.14;

/** The girths laid straight, one below the other: the body, what is wanted, what the pieces give. */
export const fitDrawing: Drawing = {
  id: 'fit',
  // What of the pieces goes into allowances and laps lies nowhere on a girth.
  unplaced: () => ['allowances', 'taken', 'seams', 'edge', 'darts', 'dart'],
  draw(draft, bench) {
    const read = fitFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = fitOf(read.value);
    if (!found.ok) return undefined;
    const { wanted, there } = found.value;
    const widest = Math.max(read.value.body, wanted, read.value.pieces ?? 0, there?.girth ?? 0);
    const row = (i: number) => i * APART * toMm(widest as ExactLength);
    return {
      name: words.title,
      toScale: true,
      shapes: shapes(read.value, found.value, row),
      dimensions: dimensions(read.value, found.value, row, bench),
    };
  },
};

function shapes(
  { body, pieces }: FitAsked,
  { wanted, there }: Fit,
  row: (i: number) => number,
): FigureShape[] {
  const line = (i: number, long: ExactLength, style: 'cloth' | 'behind') =>
    lineAcross(style, row(i), [0, toMm(long)]);
  return [
    line(0, body, 'behind'),
    line(1, wanted, 'cloth'),
    ...(there && pieces !== undefined
      ? [line(2, there.girth, 'cloth'), line(3, pieces, 'behind')]
      : []),
  ];
}

function dimensions(
  { body, pieces, ease }: FitAsked,
  { wanted, there }: Fit,
  row: (i: number) => number,
  bench: Bench,
): Dimension[] {
  const along = (i: number, ends: readonly [number, number], by: Dimension['by']) =>
    lengthAlong(row(i), ends, by, bench);
  // Less than nothing it lies within the body.
  const between = (i: number, over: ExactLength, by: Dimension['by']): Dimension => ({
    ...along(i, [Math.min(body, body + over), Math.max(body, body + over)], by),
    text: exactly(over, bench),
  });
  return [
    { ...along(0, [0, body], { given: 'body' }), name: words.body },
    between(1, ease, { given: 'ease' }),
    along(1, [0, wanted], { found: 'wanted' }),
    ...(there && pieces !== undefined
      ? [
          along(2, [0, there.girth], { found: 'girth' }),
          between(2, there.ease, { found: 'ease' }),
          { ...along(3, [0, pieces], { given: 'pieces' }), name: words.pieces },
        ]
      : []),
  ];
}
