import type { Figure, FigureShape } from './figure.ts';
import { circle } from './figure-ring.ts';
import {
  besideCorner,
  type DrawnStrip,
  type PlaceOn,
  type Stretch,
  stretchAt,
  stretchOf,
} from './strip-places.ts';

/** A stretch of a strip to scale, from its cut end or round its middle, with hole numbers. */
export function stripPart(strip: DrawnStrip, part: 'start' | 'middle'): Figure {
  const { length, width } = strip;
  const stretch = stretchOf(strip, part);
  const { place, from, to } = stretch;
  return [
    ...stripLines(strip, stretch),
    ...strip.rows.flatMap(({ across, sides }, row) =>
      numbersOf(strip, sides[0] ?? [], across, row, stretch),
    ),
    ...(from <= length / 2 && length / 2 <= to ? [measure(place, length / 2, width)] : []),
  ];
}

/** The same without numbers and middle. */
export function stripLines(strip: DrawnStrip, stretch: Stretch): Figure {
  const { length, width, rows } = strip;
  const { place, from, to } = stretch;
  const edge = (across: number): FigureShape => line('cloth', place, from, to, across);
  const end = (along: number): FigureShape[] =>
    along === 0 || along === length
      ? [{ line: 'cut', points: [place(along, 0), place(along, width)] }]
      : [];
  return [
    edge(0),
    edge(width),
    ...end(from),
    ...end(to),
    ...rows.flatMap(({ across, sides }) =>
      holesSeen(strip, sides[0] ?? [], across, stretch).map(({ along }) =>
        circle(place(along, across), strip.hole / 2),
      ),
    ),
  ];
}

/** The first corner of a strip to scale, with a stretch of both sides. */
export function stripCorner(strip: DrawnStrip, corner: number, angle: number): Figure {
  const { width, rows, hole } = strip;
  const {
    first: { place: first, from },
    second: { place: second, to: seen },
  } = besideCorner(strip, corner, angle);
  const back = width / Math.tan((angle * Math.PI) / 360);
  return [
    { line: 'cloth', points: [first(from, 0), first(corner, 0), second(seen, 0)] },
    {
      line: 'cloth',
      points: [first(from, width), first(corner - back, width), second(seen, width)],
    },
    ...rows.flatMap(({ across, sides: [one = [], two = []] }) => [
      ...one.filter((at) => at >= from).map((at) => circle(first(at, across), hole / 2)),
      ...two
        .filter((at) => at <= seen)
        .slice(1)
        .map((at) => circle(second(at, across), hole / 2)),
    ]),
  ];
}

function line(
  style: 'cloth',
  place: PlaceOn,
  from: number,
  to: number,
  across: number,
): FigureShape {
  const steps = 24;
  const points = Array.from({ length: steps + 1 }, (_, i) =>
    place(from + ((to - from) * i) / steps, across),
  );
  return { line: style, points };
}

function measure(place: PlaceOn, along: number, width: number): FigureShape {
  return { line: 'measure', points: [place(along, -width * 0.4), place(along, width * 1.4)] };
}

/** The holes of a row on a stretch, along the middle line, with their numbers. */
export function holesSeen(
  strip: DrawnStrip,
  places: readonly number[],
  across: number,
  { from, to }: Pick<Stretch, 'from' | 'to'>,
): { along: number; number: number }[] {
  const stretch = stretchAt(strip, across);
  return places.flatMap((at, i) => {
    const along = at * stretch;
    return along >= from && along <= to ? [{ along, number: i + 1 }] : [];
  });
}

function numbersOf(
  strip: DrawnStrip,
  places: readonly number[],
  across: number,
  row: number,
  stretch: Stretch,
): FigureShape[] {
  const { width, pitch } = strip;
  const seen = holesSeen(strip, places, across, stretch);
  const named = [seen[0], seen.at(-1)].filter((one) => one !== undefined);
  const beside = row === 0 ? -0.7 * pitch : width + 0.9 * pitch;
  return named.map(
    ({ along, number }): FigureShape => ({
      label: String(number),
      at: stretch.place(along - 0.5 * pitch, beside),
    }),
  );
}
