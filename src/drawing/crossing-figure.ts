import type { Meeting } from '../sewing/crossing/crossing-room.ts';
import type { Figure, FigureShape, Point } from './figure.ts';
import { circle } from './figure-ring.ts';

/** Two crossing strips as they are drawn, in mm from the crossing of their middle lines. */
export interface DrawnCrossing {
  /** Widths. */
  lower: number;
  upper: number;
  /** Between the strips, in degrees. */
  angle: number;
  hole: number;
  /** Holes of the lower strip that are there. */
  made: readonly Point[];
  /** Holes of the upper strip over it. */
  over: readonly (Point & { meets: Meeting })[];
  /** What the strips are called, at the ends nearer hole 1. */
  names: { lower: string; upper: string };
  /** Whether the upper strip is moved on from its hole 1, or back towards it. */
  moved: 'on' | 'back' | undefined;
}

/** How far the strips are drawn past each other, in times of what they cross. */
const FAR = 1.5;

/** Where a crossing is drawn: how far each strip goes from the middle, and places on the upper one. */
export function crossingPlaces({ lower, upper, angle }: DrawnCrossing) {
  const turn = (angle * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(turn), Math.sin(turn)];
  return {
    lower: ((upper + Math.abs(cosine) * lower) / 2 / sine) * FAR,
    upper: ((lower + Math.abs(cosine) * upper) / 2 / sine) * FAR,
    onUpper: (along: number, across: number): Point => ({
      x: along * cosine - across * sine,
      y: along * sine + across * cosine,
    }),
  };
}

/** The crossing to scale, the lower strip level: what is made, what is to be punched, what clashes. */
export function crossingFigure(drawn: DrawnCrossing): Figure {
  const { lower, angle, names } = drawn;
  const { lower: other, upper: half, onUpper } = crossingPlaces(drawn);
  return [
    ...crossingLines(drawn),
    // Beside its strip, where the upper one’s end doesn’t lie.
    { label: names.lower, at: { x: -other, y: (angle > 90 ? -0.7 : 0.7) * lower } },
    { label: names.upper, at: onUpper(-half, 0) },
  ];
}

/** The same without the names of the strips. */
export function crossingLines(drawn: DrawnCrossing): Figure {
  const { lower, upper, hole, made, over, moved } = drawn;
  const { lower: other, upper: half, onUpper } = crossingPlaces(drawn);
  const edge = (points: readonly Point[]): FigureShape => ({ line: 'cloth', points });
  return [
    ...[-lower / 2, lower / 2].map((y) =>
      edge([
        { x: -other, y },
        { x: other, y },
      ]),
    ),
    ...[-upper / 2, upper / 2].map((across) =>
      edge([onUpper(-half, across), onUpper(half, across)]),
    ),
    ...made.map((at) => circle(at, hole / 2, 'hole')),
    ...over.filter(({ meets }) => meets !== 'shared').map((at) => circle(at, hole / 2)),
    ...over.filter(({ meets }) => meets === 'clash').flatMap((at) => cross(at, hole)),
    ...(moved ? arrow(onUpper, half, (moved === 'on' ? lower : -lower) / 4) : []),
  ];
}

/** Along the upper strip, across the end that is farther from its hole 1: a line, and its head. */
function arrow(
  onUpper: (along: number, across: number) => Point,
  middle: number,
  long: number,
): FigureShape[] {
  const tip = onUpper(middle + long, 0);
  const line = (points: readonly Point[]): FigureShape => ({ line: 'move', points });
  return [
    line([onUpper(middle - long, 0), tip]),
    ...[-1, 1].map((way) => line([tip, onUpper(middle + long / 2, (way * long) / 3)])),
  ];
}

/** A clash is crossed out, so that it is told by shape too. */
function cross({ x, y }: Point, arm: number): FigureShape[] {
  return [-1, 1].map((way) => ({
    line: 'clash',
    points: [
      { x: x - arm, y: y - way * arm },
      { x: x + arm, y: y + way * arm },
    ],
  }));
}
