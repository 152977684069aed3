import { biasAnswerWords as words } from '#words/calculations/bias-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { FigureShape, LineStyle, Point } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { toMm } from '../../lengths/length.ts';
import { type BiasAsked, biasFields, hasPiece } from './fields.ts';
import { biasOf, type Worked } from './worked.ts';

/** The piece of cloth with its lines across the bias, the selvedge upright. */
export const biasDrawing: Drawing = {
  id: 'bias',
  // Joined it is longer than the cloth; a seam and a shortest strip are too small beside it.
  unplaced: () => ['need', 'seam', 'shortest'],
  rows: ['lines'],
  draw(draft, bench) {
    const read = biasFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = biasOf(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure[read.value.from],
      toScale: true,
      shapes: shapes(read.value, found.value),
      dimensions: dimensions(read.value, found.value, bench),
    };
  },
};

/** The line so far from the corner, from one edge to the other, in mm. */
function across(at: number, wide: number, high: number): readonly [Point, Point] {
  return [
    at <= wide ? { x: at, y: 0 } : { x: wide, y: at - wide },
    at <= high ? { x: 0, y: at } : { x: at - high, y: high },
  ];
}

/** Lines that are drawn: those of the strips; else those of one strip, in the middle. */
function linesOf({ width }: BiasAsked, { strips, piece, wide }: Worked): number[] {
  if (strips) return strips.lines.map(toMm);
  const [middle, half] = [(toMm(piece) + toMm(wide)) / 2, toMm(width) / Math.SQRT2];
  return [middle - half, middle + half];
}

function shapes(asked: BiasAsked, worked: Worked): FigureShape[] {
  const [wide, high] = [toMm(worked.wide), toMm(worked.piece)];
  const style: LineStyle = 'cut';
  return [
    lineThrough(
      'cloth',
      { x: 0, y: 0 },
      { x: wide, y: 0 },
      { x: wide, y: high },
      { x: 0, y: high },
      { x: 0, y: 0 },
    ),
    ...linesOf(asked, worked).map((at) => lineThrough(style, ...across(at, wide, high))),
  ];
}

function dimensions(asked: BiasAsked, worked: Worked, bench: Bench): Dimension[] {
  const { piece, wide } = worked;
  const [broad, high] = [toMm(wide), toMm(piece)];
  const upright = (by: Dimension['by']) =>
    lengthAt(
      [
        { x: 0, y: 0 },
        { x: 0, y: high },
      ],
      piece,
      by,
      bench,
    );
  const level = (by: Dimension['by']) => lengthAlong(high, [0, wide], by, bench);
  return [
    ...widthOf(asked, worked, [broad, high], bench),
    upright(hasPiece(asked) ? { given: 'long' } : { found: 'cloth' }),
    ...(asked.from === 'round' && hasPiece(asked) ? [level({ given: 'sideShort' })] : []),
    ...(asked.from === 'strips' ? [level({ given: 'cloth' })] : []),
  ];
}

/** Across the first strip that is drawn, from the middle of its one line. */
function widthOf(
  asked: BiasAsked,
  worked: Worked,
  [wide, high]: readonly [number, number],
  bench: Bench,
): Dimension[] {
  const [first] = linesOf(asked, worked);
  if (first === undefined) return [];
  const [one, other] = across(first, wide, high);
  const from = { x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 };
  const off = toMm(asked.width) / Math.SQRT2;
  const to = { x: from.x + off, y: from.y + off };
  return [lengthAt([from, to], asked.width, { given: 'width' }, bench)];
}
