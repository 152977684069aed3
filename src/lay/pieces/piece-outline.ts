import { boxOf, left, type Outline, type Point, signedArea } from '../outline.ts';
import { arcCorners } from './arc-side.ts';
import {
  LEAST_MM,
  MOST_MM,
  outOfRange,
  type PieceOutcome,
  type PieceProblem,
  pieceUnless,
} from './piece-problem.ts';
import { selfCrossing } from './self-crossing.ts';

/**
 * A piece as it is entered, sewn or cut; lengths in mm, `length` along the grain. `rises` says how
 * far each side bows out from its chord, below 0 in; the sides of a straight and of a tapered piece
 * are the low one (which lies on the fold), the end, the high one and the start.
 */
export type PieceShape = { rises?: readonly number[] } & (
  | { kind: 'straight'; length: number; width: number }
  | {
      kind: 'tapered';
      length: number;
      /** Widths where it starts and ends; one of them may be 0, a point. */
      start: number;
      end: number;
      /** Both long sides slant alike, or the low one runs along the grain, as on a fold. */
      slant: 'both' | 'high';
    }
  | { kind: 'points'; points: readonly Point[] }
);

/** An outline that knows which side of the piece each of its ways belongs to. */
export interface SidedOutline {
  /** Counter-clockwise, curves as corners. */
  outline: Outline;
  /** For each corner the side that the way from it to the next is of, as it was entered. */
  sides: readonly number[];
}

/** Corners an outline may have: a curve drawn by hand, point by point, and far more than a lay needs. */
export const MOST_CORNERS = 5000;
const LEAST_CORNERS = 3;
/** Less than this is no cloth, in mm². */
const LEAST_AREA = 1;

/** The outline of a piece, with its curves as corners that never lie within it. */
export function pieceOutline(shape: PieceShape): PieceOutcome<SidedOutline> {
  return pieceUnless(shapeProblems(shape), () => {
    const points = pointsOf(shape);
    return pieceUnless(roundProblems(points, shape.rises), () =>
      checked(sided(points, shape.rises)),
    );
  });
}

/** An outline as it comes from elsewhere: each of its ways is a side of its own. */
export const plainOutline = (points: Outline): PieceOutcome<SidedOutline> =>
  pieceOutline({ kind: 'points', points });

function shapeProblems(shape: PieceShape): PieceProblem[] {
  const rises = (shape.rises ?? []).flatMap((mm, at) =>
    outOfRange(mm, 'rise', { at, least: -MOST_MM }),
  );
  if (shape.kind === 'straight') {
    return [...outOfRange(shape.length, 'length'), ...outOfRange(shape.width, 'width'), ...rises];
  }
  if (shape.kind === 'tapered') {
    const { length, start, end } = shape;
    // A gore may run to a point at one of its ends.
    const beside = (other: number) => ({ least: other >= LEAST_MM ? 0 : LEAST_MM });
    return [
      ...outOfRange(length, 'length'),
      ...outOfRange(start, 'start', beside(end)),
      ...outOfRange(end, 'end', beside(start)),
      ...rises,
    ];
  }
  return [...pointProblems(shape.points), ...rises];
}

function pointProblems(points: readonly Point[]): PieceProblem[] {
  const wrong = countProblems(points.length);
  if (wrong.length) return wrong;
  return points.flatMap(([x, y], at) => {
    const range = { at, least: -MOST_MM };
    return [...outOfRange(x, 'x', range), ...outOfRange(y, 'y', range)];
  });
}

function countProblems(points: number): PieceProblem[] {
  if (points < LEAST_CORNERS) return [{ kind: 'too-few', points, least: LEAST_CORNERS }];
  if (points > MOST_CORNERS) return [{ kind: 'too-many', points, most: MOST_CORNERS }];
  return [];
}

function pointsOf(shape: PieceShape): readonly Point[] {
  if (shape.kind === 'points') return shape.points;
  const { length } = shape;
  const [start, end] =
    shape.kind === 'straight' ? [shape.width, shape.width] : [shape.start, shape.end];
  const widest = Math.max(start, end);
  const low = (width: number) =>
    shape.kind === 'tapered' && shape.slant === 'both' ? (widest - width) / 2 : 0;
  return [
    [0, low(start)],
    [length, low(end)],
    [length, low(end) + end],
    [0, low(start) + start],
  ];
}

function roundProblems(points: readonly Point[], rises: readonly number[] = []): PieceProblem[] {
  return points.flatMap(([x, y], at): PieceProblem[] => {
    const [u, v] = points[(at + 1) % points.length]!;
    const mm = rises[at] ?? 0;
    const most = Math.hypot(u - x, v - y) / 2;
    return Math.abs(mm) > most ? [{ kind: 'too-round', at, mm, most }] : [];
  });
}

function sided(points: readonly Point[], rises: readonly number[] = []): SidedOutline {
  const count = points.length;
  const clockwise = signedArea(points) < 0;
  const outline: Point[] = [];
  const sides: number[] = [];
  for (let i = 0; i < count; i++) {
    const from = points[clockwise ? count - 1 - i : i]!;
    const to = points[clockwise ? (2 * count - 2 - i) % count : (i + 1) % count]!;
    const side = clockwise ? (2 * count - 2 - i) % count : i;
    // A point named twice has no side between.
    if (from[0] === to[0] && from[1] === to[1]) continue;
    const corners = [from, ...arcCorners(from, to, rises[side] ?? 0)];
    outline.push(...corners);
    sides.push(...corners.map(() => side));
  }
  return { outline, sides };
}

function checked(piece: SidedOutline): PieceOutcome<SidedOutline> {
  return pieceUnless(outlineProblems(piece), () => ({ ok: true, value: piece }));
}

function outlineProblems({ outline, sides }: SidedOutline): PieceProblem[] {
  const wrong = countProblems(outline.length);
  if (wrong.length) return wrong;
  const mm2 = Math.abs(signedArea(outline));
  const noArea: PieceProblem[] = [{ kind: 'no-area', mm2, least: LEAST_AREA }];
  // A line there and back crosses itself as well; that it is flat is the better word for it.
  if (isFlat(outline)) return noArea;
  const { x0, y0, x1, y1 } = boxOf(outline);
  const size = [...outOfRange(x1 - x0, 'length'), ...outOfRange(y1 - y0, 'width')];
  if (size.length) return size;
  const crossing = selfCrossing(outline);
  if (!crossing) return mm2 < LEAST_AREA ? noArea : [];
  const { way, other, at } = crossing;
  const [side, next] = [sides[way]!, sides[other]!].sort((a, b) => a - b);
  return [{ kind: 'crosses', side: side!, other: next!, x: at[0], y: at[1] }];
}

/** Whether all corners lie along one line. */
function isFlat(outline: Outline): boolean {
  const [first] = outline as readonly [Point];
  const away = ([x, y]: Point) => Math.hypot(x - first[0], y - first[1]);
  const far = outline.reduce((most, point) => (away(point) > away(most) ? point : most), first);
  return outline.every((point) => Math.abs(left(first, far, point)) <= 1e-9 * away(far) ** 2);
}
