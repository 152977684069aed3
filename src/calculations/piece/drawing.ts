import { pieceWords as words } from '#words/calculations/piece-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { Point } from '../../drawing/figure.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { pieceFields } from './fields.ts';
import { type DrawnPiece, drawnPiece, pieceShapes } from './figure.ts';
import { isSquare } from './lacks.ts';
import { type PieceFound, pieceOf } from './read.ts';

/** The piece opened, its cut edges round its finished ones. */
export const pieceDrawing: Drawing = {
  id: 'piece',
  // What was wanted is none of this piece; the cloth is another one.
  unplaced: () => ['wantedWidth', 'wantedLength', 'cloth'],
  draw(draft, bench) {
    const read = pieceFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = pieceOf(read.value);
    if (!found.ok) return undefined;
    const { plan, input } = found.value;
    const drawn = drawnPiece(found.value);
    const { across, along } = input.shrinks;
    return {
      name: words.figure,
      // What shrinks is cut larger than it is drawn.
      toScale: plan.across !== undefined && plan.along !== undefined && across + along === 0,
      shapes: pieceShapes(drawn),
      dimensions: [
        ...sizes(found.value, drawn, bench),
        ...edges(found.value, drawn, bench),
        ...corners(found.value, drawn, bench),
        {
          from: drawn.finished[0] as Point,
          to: drawn.finished[1] as Point,
          text: words.counted(read.value.count, read.value.pairs === 'pairs'),
          by: { given: 'count' },
        },
      ],
    };
  },
};

/** What is cut and what it gives, each way. */
function sizes({ input, plan }: PieceFound, drawn: DrawnPiece, bench: Bench): Dimension[] {
  const cut = input.given === 'cut';
  const [left, right, high] = [drawn.cut[0], drawn.cut[1], drawn.cut[2]] as [Point, Point, Point];
  // The width is measured where the finished bottom is.
  const level = (corner: Point, other: Point): Point => {
    const share = left.y === high.y ? 0 : left.y / (left.y - high.y);
    return { x: corner.x + share * (other.x - corner.x), y: 0 };
  };
  const far = drawn.fold === undefined ? level(right, high) : { x: drawn.fold, y: 0 };
  const near = level(left, drawn.cut[3] as Point);
  const inner = (end: number): Point => ({ x: drawn.wide / 2, y: end });
  const at = (ends: readonly [Point, Point], size: ExactLength, by: DimensionOf) =>
    lengthAt(ends, size, by, bench);
  const { across, along } = plan;
  const asFinished = [drawn.finished[0] as Point, drawn.finished[1] as Point] as const;
  return [
    ...(across
      ? [
          at([near, far], across.cut, cut ? { given: 'width' } : { found: 'cut-width' }),
          at(asFinished, across.gives, cut ? { found: 'gives-width' } : { given: 'width' }),
        ]
      : []),
    ...(along
      ? [
          at(
            [inner(left.y), inner(high.y)],
            along.cut,
            cut ? { given: 'length' } : { found: 'cut-length' },
          ),
          at(
            [inner(0), inner(-drawn.long)],
            along.gives,
            cut ? { found: 'gives-length' } : { given: 'length' },
          ),
        ]
      : []),
  ];
}

/** What each edge takes, square to it; what is not given stands nowhere. */
function edges({ asked, input }: PieceFound, drawn: DrawnPiece, bench: Bench): Dimension[] {
  const slant = (input.angle * Math.PI) / 180;
  const { long, wide } = drawn;
  const up = long / 2;
  const lean = up / Math.tan(slant);
  const out = (
    from: Point,
    square: readonly [number, number],
    edge: ExactLength,
  ): [Point, Point] => [
    from,
    { x: from.x + square[0] * toMm(edge), y: from.y + square[1] * toMm(edge) },
  ];
  const { top, bottom, side, other } = input.edges;
  const [sine, cosine] = [Math.sin(slant), input.angle === 90 ? 0 : Math.cos(slant)];
  const middle = (drawn.fold ?? wide) / 2;
  const of = (ends: readonly [Point, Point], edge: ExactLength, given: string) =>
    lengthAt(ends, edge, { given }, bench);
  return [
    of(out({ x: middle, y: -long }, [0, -1], top), top, 'top'),
    of(out({ x: middle, y: 0 }, [0, 1], bottom), bottom, 'bottom'),
    of(out({ x: lean, y: -up }, [-sine, -cosine], side), side, 'side'),
    ...(!input.fold && asked.sides === 'different'
      ? [of(out({ x: wide - lean, y: -up }, [sine, -cosine], other), other, 'otherSide')]
      : []),
  ];
}

/** How far the raw corner lies beyond the finished one: where the corner is square, as far as the edges take. */
function corners(found: PieceFound, drawn: DrawnPiece, bench: Bench): Dimension[] {
  if (isSquare(found)) return [];
  const slant = (found.input.angle * Math.PI) / 180;
  const from = drawn.finished[0] as Point;
  const { alongBottom, alongSide } = found.plan.corner;
  const side = toMm(alongSide);
  const ends = {
    bottom: { x: from.x - toMm(alongBottom), y: from.y },
    side: { x: from.x - side * Math.cos(slant), y: from.y + side * Math.sin(slant) },
  };
  return [
    lengthAt([from, ends.bottom], exactLength(alongBottom), { found: 'corner-bottom' }, bench),
    lengthAt([from, ends.side], exactLength(alongSide), { found: 'corner-side' }, bench),
  ];
}
