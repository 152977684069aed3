import { type Dimension, type Dimensioned, isAlong } from './dimension.ts';
import { boundsOf, type Point } from './figure.ts';

/** Where a dimensioned drawing is put, in px. */
export interface Sheet {
  width: number;
  /** What the drawing itself may take at most; its dimensions come below and beside it. */
  drawing: number;
  /** One letter. */
  letter: { wide: number; high: number };
  /** The least a label may be high and wide, so that a thumb finds it. */
  row: number;
  /** The most of the width that a label under the drawing takes, where it is another than beside it. */
  under?: number;
}

export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** A dimension in its place. */
export interface PlacedDimension {
  dimension: Dimension;
  /** The line with its ends, beside the drawing. */
  line: readonly [Point, Point];
  /** From the places measured to the ends of the line, and from the line to its label. */
  leaders: readonly (readonly [Point, Point])[];
  label: Box;
}

/** A drawing laid out in px. */
export interface DrawingLayout {
  width: number;
  height: number;
  /** From millimetres of the figure to px. */
  place(point: Point): Point;
  dimensions: readonly PlacedDimension[];
}

/** Room round the drawing, between lines, and inside a label on either side, in px. */
const ROOM = 8;
const CHANNEL = 10;
const INSIDE = 4;
/** A label takes at most this part of the width; the drawing keeps the rest. */
const WIDEST_LABEL = 0.6;
/** The lettering of a name beside that of its number. */
const SMALL = 0.75;

/**
 * Lays a drawing out with its dimensions: those along it in rows below, shorter ones nearer; those up
 * and down in lines beside it, their labels in one column in the order of their heights. No two labels
 * lie on each other and none leaves the sheet, whatever the figure: each has its own part of a row or
 * of the column, and the sheet grows downwards.
 */
export function layOut(drawn: Dimensioned, sheet: Sheet): DrawingLayout {
  const along = drawn.dimensions.filter(isAlong);
  const up = drawn.dimensions.filter((one) => !isAlong(one));
  const channels = channelsOf(up);
  const column = Math.max(0, ...up.map((one) => labelWidth(one, sheet)));
  const beside = up.length === 0 ? 0 : column + CHANNEL * (channels.used + 1);
  const fit = fitOf(drawn, sheet, sheet.width - 2 * ROOM - beside);
  const stacked = stack(up, fit.place, sheet);
  const below = Math.max(fit.bottom + ROOM, stacked.bottom);
  const start = sheet.width - column;
  const lines = fit.right + CHANNEL;
  const upright = up.map((dimension, i): PlacedDimension => {
    const x = lines + CHANNEL * (channels.of[i] ?? 0);
    const [from, to] = [fit.place(dimension.from), fit.place(dimension.to)];
    const line = [
      { x, y: from.y },
      { x, y: to.y },
    ] as const;
    const label = {
      x: start,
      y: stacked.tops[i] ?? 0,
      width: labelWidth(dimension, sheet),
      height: rowOf(sheet),
    };
    const middle = { x, y: (from.y + to.y) / 2 };
    return {
      dimension,
      line,
      leaders: [
        [from, line[0]],
        [to, line[1]],
        [middle, { x: start, y: label.y + label.height / 2 }],
      ],
      label,
    };
  });
  const level = inRows(along, fit.place, sheet, below);
  return {
    width: sheet.width,
    height: level.bottom,
    place: fit.place,
    dimensions: [...upright, ...level.placed],
  };
}

function rowOf({ row, letter }: Sheet): number {
  return Math.max(row, letter.high);
}

function labelWidth(dimension: Dimension, { letter, width, row, under }: Sheet): number {
  const { text, name = '' } = dimension;
  const most = isAlong(dimension) ? (under ?? WIDEST_LABEL) : WIDEST_LABEL;
  const letters = Math.max(text.length, SMALL * inTwo(name));
  const wide = Math.max(letters * letter.wide + 2 * INSIDE, row);
  return Math.min(wide, width * most);
}

/** How many letters the longer line has when a name is broken at its best place. */
function inTwo(name: string): number {
  const breaks = [...name.matchAll(/ /g)].map(({ index }) =>
    Math.max(index, name.length - index - 1),
  );
  return Math.min(name.length, ...breaks);
}

/** Which line beside the drawing each takes, so that none runs over another. */
function channelsOf(up: readonly Dimension[]): { of: readonly number[]; used: number } {
  const of = new Map<Dimension, number>();
  const sorted = [...up].sort((one, other) => spanOf(one) - spanOf(other) || top(one) - top(other));
  const taken: Dimension[][] = [];
  for (const one of sorted) {
    let channel = taken.findIndex((all) => all.every((other) => apart(one, other)));
    if (channel < 0) channel = taken.push([]) - 1;
    taken[channel]?.push(one);
    of.set(one, channel);
  }
  return { of: up.map((one) => of.get(one) ?? 0), used: taken.length };
}

const top = ({ from, to }: Dimension) => Math.min(from.y, to.y);
const foot = ({ from, to }: Dimension) => Math.max(from.y, to.y);
const spanOf = (one: Dimension) => foot(one) - top(one);
const apart = (one: Dimension, other: Dimension) =>
  foot(one) <= top(other) || foot(other) <= top(one);

/** The drawing in the room there is for it, at one scale both ways. */
function fitOf({ shapes, dimensions }: Dimensioned, sheet: Sheet, wide: number) {
  const ends = dimensions.map(({ from, to }) => ({ line: 'measure' as const, points: [from, to] }));
  const bounds = boundsOf([...shapes, ...ends]);
  const scale = Math.min(
    Math.max(1, wide) / (bounds.width || 1),
    (sheet.drawing - 2 * ROOM) / (bounds.height || 1),
  );
  const place = ({ x, y }: Point): Point => ({
    x: ROOM + (x - bounds.x) * scale,
    y: ROOM + (y - bounds.y) * scale,
  });
  return {
    place,
    right: ROOM + bounds.width * scale,
    bottom: ROOM + bounds.height * scale,
  };
}

/** Labels under each other, each as near to the middle of its dimension as the others let it. */
function stack(up: readonly Dimension[], place: (point: Point) => Point, sheet: Sheet) {
  const high = rowOf(sheet);
  const wanted = up.map(({ from, to }) => (place(from).y + place(to).y) / 2 - high / 2);
  const order = up.map((_, i) => i).sort((i, j) => (wanted[i] ?? 0) - (wanted[j] ?? 0) || i - j);
  const most = Math.max(sheet.drawing, order.length * high);
  const tops: number[] = [];
  let free = 0;
  for (const i of order) {
    tops[i] = Math.max(free, wanted[i] ?? 0);
    free = (tops[i] ?? 0) + high;
  }
  let under = most;
  for (const i of [...order].reverse()) {
    tops[i] = Math.min(tops[i] ?? 0, under - high);
    under = tops[i] ?? 0;
  }
  return { tops, bottom: Math.max(0, ...tops.map((one) => one + high)) };
}

/** Dimensions along the drawing, in rows under it: in each as many as have room beside each other. */
function inRows(
  along: readonly Dimension[],
  place: (point: Point) => Point,
  sheet: Sheet,
  below: number,
): { placed: PlacedDimension[]; bottom: number } {
  const high = rowOf(sheet) + CHANNEL;
  const rows: [number, number][][] = [];
  const sorted = [...along].sort((one, other) => lengthOf(one) - lengthOf(other));
  const placed = sorted.map((dimension): PlacedDimension => {
    const [from, to] = [place(dimension.from), place(dimension.to)];
    const width = labelWidth(dimension, sheet);
    const middle = (from.x + to.x) / 2 - width / 2;
    const x = Math.min(Math.max(0, middle), sheet.width - width);
    const room: [number, number] = [
      Math.min(x, from.x, to.x) - INSIDE,
      Math.max(x + width, from.x, to.x) + INSIDE,
    ];
    let row = rows.findIndex((all) => all.every(([a, b]) => b <= room[0] || room[1] <= a));
    if (row < 0) row = rows.push([]) - 1;
    rows[row]?.push(room);
    const y = below + row * high + CHANNEL / 2;
    const line = [
      { x: from.x, y },
      { x: to.x, y },
    ] as const;
    return {
      dimension,
      line,
      leaders: [
        [from, line[0]],
        [to, line[1]],
      ],
      label: { x, y: y + CHANNEL / 2, width, height: rowOf(sheet) },
    };
  });
  return { placed, bottom: below + rows.length * high };
}

const lengthOf = ({ from, to }: Dimension) => Math.abs(to.x - from.x);
