import { pieceWords as words } from '#words/calculations/piece-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { Point } from '../../drawing/figure.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { type Edge, liesAt } from '../../sewing/piece-input.ts';
import { addingNothing, pieceFields } from './fields.ts';
import { type DrawnPiece, drawnPiece, pieceShapes } from './figure.ts';
import { isSquare } from './lacks.ts';
import { type PieceFound, pieceOf } from './read.ts';

/** The piece opened, its cut edges round its finished ones. */
export const pieceDrawing: Drawing = {
  id: 'piece',
  // What was wanted is none of this piece; the cloth is another one.
  unplaced: (ask) => ['wantedWidth', 'wantedLength', 'cloth', ...addingNothing(ask)],
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

/** What each edge takes, square to the edge it lies at; what adds to nothing stands nowhere. */
function edges({ asked, input }: PieceFound, drawn: DrawnPiece, bench: Bench): Dimension[] {
  const slant = (input.angle * Math.PI) / 180;
  const { long, wide } = drawn;
  const up = long / 2;
  const lean = up / Math.tan(slant);
  const [sine, cosine] = [Math.sin(slant), input.angle === 90 ? 0 : Math.cos(slant)];
  const middle = (drawn.fold ?? wide) / 2;
  const lies = liesAt(input);
  const isAlone = input.fold || asked.sides !== 'different';
  return [
    ...outward({ x: middle, y: -long }, { x: 0, y: -1 }, lies.top),
    ...outward({ x: middle, y: 0 }, { x: 0, y: 1 }, lies.bottom),
    ...outward({ x: lean, y: -up }, { x: -sine, y: -cosine }, lies.side),
    ...(input.fold ? [] : outward({ x: wide - lean, y: -up }, { x: sine, y: -cosine }, lies.other)),
  ].filter(({ by }) => !(isAlone && 'given' in by && by.given === 'otherSide'));

  /** One after another, from the finished edge out. */
  function outward(from: Point, square: Point, all: readonly Edge[]): Dimension[] {
    let gone = 0;
    return all.map((edge) => {
      const at = (off: number): Point => ({
        x: from.x + square.x * off,
        y: from.y + square.y * off,
      });
      const start = gone;
      gone += toMm(input.edges[edge]);
      const given = edge === 'other' ? 'otherSide' : edge;
      return lengthAt([at(start), at(gone)], input.edges[edge], { given }, bench);
    });
  }
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
