import type { Point } from '../../outline.ts';
import { bezier } from './curves.ts';
import { MOST_FILE_CORNERS, Unreadable } from './file-problem.ts';
import { svgArc } from './svg-arc.ts';
import { sticky } from './xml.ts';

/** A part of a path that is drawn without lifting the pen. */
export interface Subpath {
  points: Point[];
  closed: boolean;
}

const NUMBER = /[\s,]*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)/y;
const FLAG = /[\s,]*([01])/y;
const COMMAND = /[\s,]*([MmLlHhVvCcSsQqTtAaZz])/y;
const REST = /[\s,]*$/y;

/** How many numbers each command takes. */
const TAKES: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
};

/** Where the pen is, and what has been drawn. */
interface Pen {
  here: Point;
  start: Point;
  /** The last control point, and of which kind of curve: the next may mirror it. */
  control: Point;
  of: 'cubic' | 'quadratic' | undefined;
  drawn: Subpath[];
}

/**
 * A path's data as corners (W3C, SVG 1.1, chapter 8): all commands, absolute and relative.
 * @param perMm how many of its units a millimetre has, for how fine curves become
 * @returns undefined where it isn't written as a path is
 * @throws {Unreadable} where it comes to more corners than are read
 */
export function pathOf(data: string, perMm: number): Subpath[] | undefined {
  const pen: Pen = { here: [0, 0], start: [0, 0], control: [0, 0], of: undefined, drawn: [] };
  let end = 0;
  let corners = 0;
  for (let found = sticky(COMMAND, data, 0); found; found = sticky(COMMAND, data, end)) {
    end = COMMAND.lastIndex;
    let command = found[1]!;
    if (!pen.drawn.length && command.toUpperCase() !== 'M') return undefined;
    for (let first = true; ; first = false) {
      const read = numbersFor(command, data, end);
      if (!read && first) return undefined;
      if (!read) break;
      end = read.end;
      corners += step(pen, command, read.numbers, perMm);
      if (corners > MOST_FILE_CORNERS) {
        throw new Unreadable({ kind: 'too-many', what: 'corners', most: MOST_FILE_CORNERS });
      }
      if (command === 'Z' || command === 'z') break;
      // More places after the first of a move are lines to them.
      if (command === 'M') command = 'L';
      if (command === 'm') command = 'l';
    }
  }
  return sticky(REST, data, end) ? pen.drawn : undefined;
}

function numbersFor(command: string, data: string, from: number) {
  const kind = command.toUpperCase();
  const numbers: number[] = [];
  let end = from;
  while (numbers.length < TAKES[kind]!) {
    // The two flags of an arc may stand without a space before what follows.
    const flag = kind === 'A' && (numbers.length === 3 || numbers.length === 4);
    const pattern = flag ? FLAG : NUMBER;
    const found = sticky(pattern, data, end);
    if (!found) return undefined;
    numbers.push(Number(found[1]));
    end = pattern.lastIndex;
  }
  return { numbers, end };
}

/** Draws one command; gives how many corners it came to. */
function step(pen: Pen, command: string, given: readonly number[], perMm: number): number {
  const kind = command.toUpperCase();
  const [x, y] = command === kind ? [0, 0] : pen.here;
  const place = (i: number): Point => [x + given[i]!, y + given[i + 1]!];
  if (kind === 'M') return moveTo(pen, place(0));
  if (kind === 'Z') return close(pen);
  if (kind === 'H') return draw(pen, [[x + given[0]!, pen.here[1]]]);
  if (kind === 'V') return draw(pen, [[pen.here[0], y + given[0]!]]);
  if (kind === 'L') return draw(pen, [place(0)]);
  if (kind === 'A') return draw(pen, svgArc(pen.here, given, place(5), perMm));
  return curve(pen, kind, place, perMm);
}

function curve(pen: Pen, kind: string, place: (i: number) => Point, perMm: number): number {
  const { here, control } = pen;
  const of = kind === 'C' || kind === 'S' ? 'cubic' : 'quadratic';
  const mirrored: Point =
    pen.of === of ? [2 * here[0] - control[0], 2 * here[1] - control[1]] : here;
  const controls: Point[] =
    kind === 'C'
      ? [place(0), place(2)]
      : kind === 'S'
        ? [mirrored, place(0)]
        : kind === 'Q'
          ? [place(0)]
          : [mirrored];
  const last = place({ C: 4, S: 2, Q: 2, T: 0 }[kind] ?? 0);
  const count = draw(pen, bezier([here, ...controls, last], perMm));
  pen.control = controls.at(-1)!;
  pen.of = of;
  return count;
}

function moveTo(pen: Pen, to: Point): number {
  pen.here = to;
  pen.start = to;
  pen.of = undefined;
  pen.drawn.push({ points: [to], closed: false });
  return 1;
}

function close(pen: Pen): number {
  pen.drawn.at(-1)!.closed = true;
  pen.here = pen.start;
  pen.of = undefined;
  return 0;
}

function draw(pen: Pen, corners: readonly Point[]): number {
  // After a closed part the pen goes on from where that began.
  if (pen.drawn.at(-1)!.closed) pen.drawn.push({ points: [pen.start], closed: false });
  const { points } = pen.drawn.at(-1)!;
  for (const corner of corners) points.push(corner);
  pen.here = corners.at(-1) ?? pen.here;
  pen.of = undefined;
  return corners.length;
}
