import { bindingAnswerWords as words } from '#words/calculations/binding-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { FigureShape } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, exactLength, toMm, ZERO } from '../../lengths/length.ts';
import { BAND_TURNS } from '../../sewing/sources/binding.ts';
import { type BindingAsked, bindingFields } from './fields.ts';
import { bindingOf } from './worked.ts';

/** How long a mark across the strip is, in parts of its width. */
const MARK = 0.08;

/** The strip across, flat, with its folds: an end of it, seen from the side. */
export const bindingDrawing: Drawing = {
  id: 'binding',
  // Along the edge, or too thin to be seen.
  unplaced: () => [
    ...['straight', 'outLong', 'outRadius', 'inLong', 'inRadius'],
    ...['endTurn', 'join', 'thickness', 'edgeThick'],
  ],
  draw(draft, bench) {
    const read = bindingFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = bindingOf(read.value);
    if (!found.ok) return undefined;
    const { cut } = found.value.width;
    return {
      name: words.figure,
      toScale: true,
      shapes: shapes(read.value, cut),
      dimensions: dimensions(read.value, cut, bench),
    };
  },
};

/** Where the strip is folded, or ends its seams, in 1/8000 mm from one of its edges. */
function foldsOf({ finish, width = ZERO, seam = ZERO }: BindingAsked, cut: ExactLength): number[] {
  const turn = BAND_TURNS.value / 2;
  switch (finish) {
    case 'single':
      return [width, cut / 2, cut - width];
    case 'double':
      return [width, cut / 2, cut - width];
    case 'band':
      return [turn, cut / 2, cut - turn];
    case 'seam':
      return [];
    case 'cord':
      return [seam, cut - seam];
    case 'flat':
      return [seam, cut / 2, cut - seam];
  }
}

function shapes(asked: BindingAsked, cut: ExactLength): FigureShape[] {
  const wide = toMm(cut);
  const half = MARK * wide;
  const across = (style: 'cut' | 'fold', units: number) => {
    const x = toMm(exactLength(units));
    return lineThrough(style, { x, y: -half }, { x, y: half });
  };
  return [
    lineThrough('cloth', { x: 0, y: 0 }, { x: wide, y: 0 }),
    across('cut', 0),
    across('cut', cut),
    ...foldsOf(asked, cut).map((at) => across('fold', at)),
  ];
}

function dimensions(asked: BindingAsked, cut: ExactLength, bench: Bench): Dimension[] {
  const { finish, width, seam, cord } = asked;
  const on = (from: number, to: number, by: Dimension['by']) =>
    lengthAlong(0, [from, to], by, bench);
  // Of flat piping what shows comes after its seam, of a band after its turn.
  const from = { flat: seam ?? ZERO, band: BAND_TURNS.value / 2 }[finish as 'flat' | 'band'] ?? 0;
  return [
    ...(width === undefined ? [] : [on(from, from + width, { given: 'width' })]),
    ...(seam === undefined ? [] : [on(0, seam, { given: 'seam' })]),
    ...(cord === undefined ? [] : [on((cut - cord) / 2, (cut + cord) / 2, { given: 'cord' })]),
    on(0, cut, { found: 'strip' }),
  ];
}
