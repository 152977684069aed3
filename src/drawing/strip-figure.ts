import type { Figure, FigureShape, Point } from './figure.ts';
import { circle } from './figure-ring.ts';

/** A strip as it is drawn, in mm. */
export interface DrawnStrip {
  length: number;
  width: number;
  pitch: number;
  hole: number;
  /** Of the middle line, where the strip is bent flat. */
  radius: number | undefined;
  /** Each row: from the outer edge, and its holes side by side, each side from its own start. */
  rows: readonly { across: number; sides: readonly (readonly number[])[] }[];
}

/** Pitches seen in a drawing: few enough for holes to be told apart on a phone. */
const SEEN = 11;
const SEEN_BESIDE_CORNER = 5;

type PlaceOn = (along: number, across: number) => Point;

/** A stretch of a strip to scale, from its cut end or round its middle, with hole numbers. */
export function stripPart(strip: DrawnStrip, part: 'start' | 'middle'): Figure {
  const { length, width, pitch, rows } = strip;
  const seen = Math.min(length, SEEN * pitch);
  const from = part === 'start' ? 0 : Math.max(0, (length - seen) / 2);
  const to = from + seen;
  const place = placeOn(strip, (from + to) / 2);
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
    ...rows.flatMap(({ across, sides }, row) =>
      holesOf(strip, sides[0] ?? [], across, row, place, [from, to]),
    ),
    ...(from <= length / 2 && length / 2 <= to ? [measure(place, length / 2, width)] : []),
  ];
}

/** The first corner of a strip to scale, with a stretch of both sides. */
export function stripCorner(strip: DrawnStrip, corner: number, angle: number): Figure {
  const { pitch, width, rows, hole } = strip;
  const seen = SEEN_BESIDE_CORNER * pitch + width;
  const turn = (angle * Math.PI) / 180;
  const first: PlaceOn = (along, across) => ({ x: along - corner, y: across });
  const second: PlaceOn = (along, across) => ({
    x: -along * Math.cos(turn) - across * Math.sin(turn),
    y: along * Math.sin(turn) - across * Math.cos(turn),
  });
  const back = width / Math.tan(turn / 2);
  const from = Math.max(0, corner - seen);
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

/** Bent round a radius, or straight; `middle` is at the top of the bend. */
function placeOn({ radius, width }: DrawnStrip, middle: number): PlaceOn {
  if (radius === undefined) return (along, across) => ({ x: along, y: across });
  const outer = radius + width / 2;
  return (along, across) => {
    const turn = (along - middle) / radius;
    const own = outer - across;
    return { x: own * Math.sin(turn), y: outer - own * Math.cos(turn) };
  };
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

function holesOf(
  { hole, radius, width, pitch }: DrawnStrip,
  places: readonly number[],
  across: number,
  row: number,
  place: PlaceOn,
  [from, to]: readonly [number, number],
): FigureShape[] {
  // A bent row's places are lengths of its own.
  const stretch = radius === undefined ? 1 : radius / (radius + width / 2 - across);
  const seen = places.flatMap((at, i) => {
    const along = at * stretch;
    return along >= from && along <= to ? [{ along, number: i + 1 }] : [];
  });
  const named = [seen[0], seen.at(-1)].filter((one) => one !== undefined);
  const beside = row === 0 ? -0.7 * pitch : width + 0.9 * pitch;
  return [
    ...seen.map(({ along }) => circle(place(along, across), hole / 2)),
    ...named.map(
      ({ along, number }): FigureShape => ({
        label: String(number),
        at: place(along - 0.5 * pitch, beside),
      }),
    ),
  ];
}
