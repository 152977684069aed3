import { type ExactLength, exactLength, toMm } from '../lengths/length.ts';
import type { Run } from '../sewing/run.ts';
import type { Figure, FigureShape, Point } from './figure.ts';
import { lineThrough } from './figure-line.ts';
import { circle } from './figure-ring.ts';
import { wholeUnder } from './whole-line.ts';

/** A row as it stands: marks where they are made, and where they are to come. */
export interface StandingRow {
  run: Run;
  /** By rank. */
  made: readonly boolean[];
}

/** Of a longer row every second or third is drawn, so that no drawing takes long. */
const MOST_DRAWN = 250;
/** A mark of a row of its own, in parts of its line; and the most of the space to its neighbour. */
const MARK = 0.014;
const OF_SPACE = 0.42;

/** The marks of a row as rings, each told as made or to come. @param place where a mark is, in mm */
export function rowMarks(
  { run: { marks }, made }: StandingRow,
  place: (at: ExactLength) => Point,
  radius: number,
): FigureShape[] {
  const every = Math.max(1, Math.ceil(marks.length / MOST_DRAWN));
  return marks.flatMap(({ at }, rank) => {
    if (rank % every !== 0) return [];
    const shape = circle(place(at), radius, 'hole');
    const ring = 'ring' in shape && shape.ring;
    return ring ? [{ ...shape, ring: { ...ring, made: made[rank] === true } }] : [];
  });
}

/** Rows that a drawing doesn't show by itself, each as a line of its own under what is drawn, and as wide. */
export function rowsUnder(drawn: Figure, rows: readonly StandingRow[]): Figure {
  const shapes = [...drawn];
  for (const row of rows) shapes.push(...rowUnder(shapes, row));
  return shapes;
}

function rowUnder(above: Figure, row: StandingRow): FigureShape[] {
  const places = row.run.marks.map(({ at }) => at);
  if (places.length === 0) return [];
  const low = places.reduce((a, b) => Math.min(a, b), 0);
  const high = places.reduce((a, b) => Math.max(a, b), row.run.length as number);
  const long = toMm(exactLength(Math.max(1, high - low)));
  const { at, across } = wholeUnder(above, long);
  const along = (x: number) => at(toMm(exactLength(x - low)));
  const wide = at(long).x - at(0).x;
  return [
    lineThrough('cloth', at(0), at(long)),
    across('cloth', 0),
    across('cloth', long),
    ...rowMarks(row, along, Math.min(MARK * wide, OF_SPACE * leastSpace(places, wide / long))),
  ];
}

function leastSpace(places: readonly number[], scale: number): number {
  const steps = places.slice(1).map((at, i) => at - (places[i] ?? 0));
  const positive = steps.filter((step) => step > 0);
  const least = positive.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  return toMm(exactLength(Number.isFinite(least) ? least : 1e9)) * scale;
}
