import type { BodyMeasureId } from '../sewing/sources/body-measures.ts';
import { bentThrough, pointsOf } from './bent-line.ts';
import { type BodyView, bodyLines } from './body-outline.ts';
import { clipped } from './clip.ts';
import type { Figure, FigureShape, Point } from './figure.ts';
import { lineThrough } from './figure-line.ts';
import { MEASURE_LINES, type TapeRing } from './measure-lines.ts';

/** A figure of a body with the line of the tape on it, in cm of someone 170 cm tall; not to anyone's measure. */
export interface BodyFigure {
  view: BodyView;
  body: Figure;
  /** What is found first: a level, the ends of a distance. */
  level: Figure;
  /** The tape in front of the body, and behind it. */
  tape: Figure;
}

/** Wide enough for both arms stretched out, and for the knees of someone sitting. */
const SIDEWAYS = 90;

/** The drawing of a measure: the stretch of the body it is on, and where the tape lies. */
export function bodyFigure(id: BodyMeasureId): BodyFigure {
  const { view, from, to, left = -SIDEWAYS, ring, path, level } = MEASURE_LINES[id];
  const box = { from: { x: left, y: from }, to: { x: SIDEWAYS, y: to } };
  return {
    view,
    body: bodyLines(view).flatMap((line) =>
      clipped(bentThrough(line), box).map((points) => lineThrough('cloth', ...points)),
    ),
    level: level ? [lineThrough('measure', ...pointsOf(level))] : [],
    tape: [
      ...(path ? [lineThrough('move', ...bentThrough(pointsOf(path)))] : []),
      ...(ring ? ringed(ring) : []),
    ],
  };
}

/** Round the body: half of it in front, half behind. */
function ringed({ at: [x, y], half, high = half / 5, turn = 0 }: TapeRing): FigureShape[] {
  const slope = (turn * Math.PI) / 180;
  const place = (angle: number): Point => {
    const [across, down] = [half * Math.cos(angle), high * Math.sin(angle)];
    return {
      x: x + across * Math.cos(slope) - down * Math.sin(slope),
      y: y + across * Math.sin(slope) + down * Math.cos(slope),
    };
  };
  const arc = (from: number) =>
    Array.from({ length: 13 }, (_, i) => place(from + (i / 12) * Math.PI));
  return [lineThrough('move', ...arc(0)), lineThrough('behind', ...arc(Math.PI))];
}
