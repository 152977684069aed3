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

/** Of more marks no ring would be told from the next: what is made, and what is to come, are bands. */
const MOST_RINGS = 40;
/** A mark of a row of its own, in parts of its line; and the most of the space to its neighbour. */
const MARK = 0.014;
const OF_SPACE = 0.42;

/**
 * The marks of a row along a level line, each told as made or to come: as rings, or where they are many as
 * bands from the first to the last that follow each other.
 * @param place where a mark is, in mm
 */
export function rowMarks(
  row: StandingRow,
  place: (at: ExactLength) => Point,
  radius: number,
): FigureShape[] {
  const { marks } = row.run;
  if (marks.length > MOST_RINGS) return bands(row, place, radius);
  return marks.map(({ at }, rank) => {
    return { ...circle(place(at), radius, 'hole'), made: row.made[rank] === true };
  });
}

function bands(
  { run: { marks }, made }: StandingRow,
  place: (at: ExactLength) => Point,
  radius: number,
): FigureShape[] {
  const places = marks.map(({ at }) => place(at));
  const isMade = (rank: number) => made[rank] === true;
  const starts = places.flatMap((_, i) => (i === 0 || isMade(i) !== isMade(i - 1) ? [i] : []));
  return starts.map((from, i) => {
    const to = (starts[i + 1] ?? places.length) - 1;
    const [left, right] = [places[from], places[to]] as [Point, Point];
    const [start, end] = [left.x - radius / 2, right.x + radius / 2];
    const [top, foot] = [left.y - radius, left.y + radius];
    const points = [
      { x: start, y: top },
      { x: end, y: top },
      { x: end, y: foot },
      { x: start, y: foot },
      { x: start, y: top },
    ];
    return { line: 'hole', points, made: isMade(from) };
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
    ...rowMarks(row, along, radiusFor(places, wide, long)),
  ];
}

/** Rings that don't touch; a band is as high as a ring of a short row. */
function radiusFor(places: readonly number[], wide: number, long: number): number {
  if (places.length > MOST_RINGS) return MARK * wide;
  return Math.min(MARK * wide, OF_SPACE * leastSpace(places, wide / long));
}

function leastSpace(places: readonly number[], scale: number): number {
  const steps = places.slice(1).map((at, i) => at - (places[i] ?? 0));
  const positive = steps.filter((step) => step > 0);
  const least = positive.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  return toMm(exactLength(Number.isFinite(least) ? least : 1e9)) * scale;
}
