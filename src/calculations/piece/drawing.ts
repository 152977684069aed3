import { pieceWords as words } from '#words/calculations/piece-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { Point } from '../../drawing/figure.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import type { Edge } from '../../sewing/pieces/piece-edges.ts';
import { liesAt } from '../../sewing/pieces/piece-input.ts';
import { leanOf } from '../../sewing/pieces/piece-outline.ts';
import { slopeOf } from '../../sewing/pieces/piece-slants.ts';
import { addingNothing, hasBoth, pieceFields } from './fields.ts';
import { type DrawnPiece, drawnPiece, pieceShapes } from './figure.ts';
import { isSquare } from './lacks.ts';
import { type PieceFound, pieceOf } from './read.ts';
import { SLANTS } from './sides.ts';
import { slantsOn } from './slants-on.ts';

/** The piece opened, its cut edges round its finished ones. */
export const pieceDrawing: Drawing = {
  id: 'piece',
  // What was wanted is none of this piece; the cloth is another one; without both sizes no slant is drawn.
  unplaced: (ask) => [
    ...['wantedWidth', 'wantedLength', 'cloth'],
    ...(hasBoth(ask) ? [] : SLANTS),
    ...addingNothing(ask),
  ],
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
        ...slantsOn(drawn, bench),
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
  const [low, top] = drawn.middle.cut;
  // The width is measured where the finished bottom is, in its middle.
  const level = (corner: Point, other: Point): Point => {
    const share = corner.y === other.y ? 0 : corner.y / (corner.y - other.y);
    return { x: corner.x + share * (other.x - corner.x), y: 0 };
  };
  const far = drawn.fold === undefined ? level(right, high) : { x: drawn.fold, y: 0 };
  const near = level(left, drawn.cut[3] as Point);
  const inner = (end: number): Point => ({ x: drawn.wide / 2, y: end });
  const at = (ends: readonly [Point, Point], size: ExactLength, by: DimensionOf) =>
    lengthAt(ends, size, by, bench);
  const { across, along } = plan;
  const asFinished = [
    { x: 0, y: 0 },
    { x: drawn.wide, y: 0 },
  ] as const;
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
            [inner(low), inner(top)],
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
  const square = (edge: Edge) => squareTo(drawn, edge);
  const lies = liesAt(input);
  const isAlone = input.fold || asked.sides !== 'different';
  return [
    ...outward(square('top'), lies.top),
    ...outward(square('bottom'), lies.bottom),
    ...outward(square('side'), lies.side),
    ...(input.fold ? [] : outward(square('other'), lies.other)),
  ].filter(({ by }) => !(isAlone && 'given' in by && by.given === 'otherSide'));

  /** One after another, from the finished edge out. */
  function outward([from, square]: readonly [Point, Point], all: readonly Edge[]): Dimension[] {
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

/** A place on a finished edge, and one unit out, square to it. */
function squareTo(
  { input, wide, long, fold }: DrawnPiece,
  edge: Edge,
): readonly [from: Point, out: Point] {
  if (edge === 'side' || edge === 'other') {
    const [lean, turned] = [leanOf(input, edge), edge === 'side' ? -1 : 1];
    const at = (lean * long) / 2;
    const x = edge === 'side' ? at : wide - at;
    return [{ x, y: -long / 2 }, unit({ x: turned, y: -lean })];
  }
  const middle = (fold ?? wide) / 2;
  const [isTop, away] = [edge === 'top', fold === undefined ? 0 : fold - middle];
  // Rises for each of the way to the right.
  const rise = slopeOf(input.slants?.[edge]) * (isTop === (fold === undefined) ? -1 : 1);
  const y = (isTop ? -long : 0) + rise * away;
  return [{ x: middle, y }, unit({ x: isTop ? -rise : rise, y: isTop ? -1 : 1 })];
}

function unit({ x, y }: Point): Point {
  const long = Math.hypot(x, y);
  return { x: x / long, y: y / long };
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
