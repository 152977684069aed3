import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { lengthAt } from '../../calculation/drawing.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { Figure, LineStyle } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import type { WholeLine } from '../../drawing/whole-line.ts';
import { type ExactLength, toMm } from '../../lengths/length.ts';
import type { StripHoles } from '../../sewing/edging/strip.ts';
import type { EdgingAsked } from './fields.ts';
import { MOST_SIDES } from './punched.ts';

/** Of a long list so many are drawn, from the cut end on; all of them are in its field. */
const MOST_DRAWN = 4;

/** Its ends, its corners, what crosses it, and where it is joined. */
export function wholeLines(
  { length, corners, crossings }: EdgingAsked,
  joins: readonly ExactLength[],
  { at, across: mark }: WholeLine,
): Figure {
  const across = (style: LineStyle, long: number) => (place: ExactLength) =>
    mark(style, toMm(place), long);
  return [
    lineThrough('cloth', at(0), at(toMm(length))),
    ...[0 as ExactLength, length, ...joins].map(across('cut', 1)),
    ...corners.map(across('fold', 2)),
    ...crossings.map(across('behind', 2)),
  ];
}

/** What is measured along all of it, and its holes. */
export function wholeOf(
  asked: EdgingAsked,
  { rows, count }: StripHoles,
  { at }: WholeLine,
  bench: Bench,
): Dimension[] {
  const { length, corners, crossings, stock, end } = asked;
  const to = (place: ExactLength, key: string): Dimension =>
    lengthAt([at(0), at(toMm(place))], place, { given: key }, bench);
  const counted = (holes: number, by: DimensionOf): Dimension => ({
    from: at(0),
    to: at(toMm(length)),
    text: words.holes(holes),
    by,
  });
  // A piece longer than the strip is as long as it.
  const piece = (whole: ExactLength): Dimension => ({
    ...to(length < whole ? length : whole, 'stock'),
    text: exactly(whole, bench),
  });
  const [first, second] = rows;
  const each =
    first && second && first.count !== second.count
      ? [counted(first.count, { found: 'count' }), counted(second.count, { found: 'count-2' })]
      : [];
  const known = rows.every(({ runs }) => runs.length <= MOST_SIDES);
  return [
    to(length, 'length'),
    ...(known ? [...each, counted(count, { found: second ? 'count-all' : 'count' })] : []),
    ...corners.slice(0, MOST_DRAWN).map((place) => to(place, 'corners')),
    ...crossings.slice(0, MOST_DRAWN).map((place) => to(place, 'crossings')),
    ...(stock === undefined ? [] : [piece(stock)]),
    ...(end === undefined || corners.length === 0 ? [] : [to(end, 'end')]),
  ];
}
