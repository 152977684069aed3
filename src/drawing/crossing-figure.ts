import type { Meeting } from '../sewing/crossing-room.ts';
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

/** The crossing to scale, the lower strip level: what is made, what is to be punched, what clashes. */
export function crossingFigure(drawn: DrawnCrossing): Figure {
  const { lower, upper, angle, hole, made, over, names, moved } = drawn;
  const turn = (angle * Math.PI) / 180;
  const half = (lower + Math.abs(Math.cos(turn)) * upper) / 2 / Math.sin(turn);
  const other = (upper + Math.abs(Math.cos(turn)) * lower) / 2 / Math.sin(turn);
  const onUpper = (along: number, across: number): Point => ({
    x: along * Math.cos(turn) - across * Math.sin(turn),
    y: along * Math.sin(turn) + across * Math.cos(turn),
  });
  const edge = (points: readonly Point[]): FigureShape => ({ line: 'cloth', points });
  return [
    ...[-lower / 2, lower / 2].map((y) =>
      edge([
        { x: -other * FAR, y },
        { x: other * FAR, y },
      ]),
    ),
    ...[-upper / 2, upper / 2].map((across) =>
      edge([onUpper(-half * FAR, across), onUpper(half * FAR, across)]),
    ),
    ...made.map((at) => circle(at, hole / 2, 'hole')),
    ...over.filter(({ meets }) => meets !== 'shared').map((at) => circle(at, hole / 2)),
    ...over.filter(({ meets }) => meets === 'clash').flatMap((at) => cross(at, hole)),
    // Beside its strip, where the upper one’s end doesn’t lie.
    { label: names.lower, at: { x: -other * FAR, y: (turn > Math.PI / 2 ? -0.7 : 0.7) * lower } },
    { label: names.upper, at: onUpper(-half * FAR, 0) },
    ...(moved ? arrow(onUpper, half * FAR, (moved === 'on' ? lower : -lower) / 4) : []),
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
