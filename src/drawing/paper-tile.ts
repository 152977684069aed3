import { type Box, clipped, isInside } from './clip.ts';
import type { Figure, FigureShape, LineStyle, Point } from './figure.ts';
import { letteredBounds } from './lettered.ts';
import { LINE_LOOKS } from './line-looks.ts';
import { type Band, bandsOf, letterOf } from './paper-bands.ts';
import type { PaperDrawing, PaperShape, PaperWords } from './paper-job.ts';
import { keyShapes } from './paper-key.ts';
import { FINE, hairShapes, line, SMALL, text } from './paper-shapes.ts';

/** Lettering, and from one line of it to the next, in mm. */
const LETTER = { high: SMALL, wide: SMALL * 0.8 };
const LINE = 4.4;
/** Room under a tile for what it is, which part, and the key of its lines, in mm. */
const BELOW = 3 * LINE + 3;
/** Each arm of a joining cross, in mm. */
const ARM = 4;
/** Where the two crosses of a joint lie along it, in shares of the tile. */
const CROSSES = [0.25, 0.75] as const;
/** Points round a circle that the edge of a tile cuts. */
const ROUND = 96;

/** What a page has for it, in mm. */
export interface Room {
  across: number;
  down: number;
}

/** A part of a drawing that fits on a page: a column and a row of it, from its upper left corner. */
export interface Tile {
  across: Band;
  down: Band;
  /** For the caption. */
  place: { column: number; columns: number; row: number; rows: number };
  joints: readonly { letter: number; crosses: readonly Point[] }[];
}

export function tileHeight({ down }: Tile): number {
  return down.to - down.from + BELOW;
}

/** A drawing as it lies on the page, from its upper left corner. */
export interface Laid {
  figure: Figure;
  /** Turned by a quarter to the right. */
  turned: boolean;
}

/** The drawing as it is, or turned where that takes fewer tiles. @param room as for `tilesOf` */
export function laidOn(figure: Figure, room: Room): Laid {
  const upright = { figure: fromCorner(figure), turned: false };
  const quarter = moved(figure, ({ x, y }) => ({ x: -y, y: x }));
  const turned = { figure: fromCorner(quarter), turned: true };
  const tiles = ({ figure: laid }: Laid) => {
    const { columns, rows } = bandsOn(laid, room);
    return columns.length * rows.length;
  };
  return tiles(turned) < tiles(upright) ? turned : upright;
}

function fromCorner(figure: Figure): Figure {
  const { x, y } = letteredBounds(figure, LETTER);
  return moved(figure, (at) => ({ x: at.x - x, y: at.y - y }));
}

function moved(figure: Figure, move: (at: Point) => Point): Figure {
  return figure.map((shape): FigureShape => {
    if ('label' in shape) return { ...shape, at: move(shape.at) };
    const { line, points, ring } = shape;
    return {
      line,
      points: points.map(move),
      ...(ring && { ring: { ...ring, at: move(ring.at) } }),
    };
  });
}

/**
 * Cuts a drawing into tiles row by row, each overlapping its neighbours.
 *
 * @param figure as `laidOn` gives it
 * @param room of a page in mm, each side more than twice the overlap and the caption
 * @param letter the first for its joining marks
 */
export function tilesOf(figure: Figure, room: Room, letter: number): Tile[] {
  const { columns, rows } = bandsOn(figure, room);
  const beside = columns.length - 1;
  const between = rows.length * beside;
  return rows.flatMap((down, row) =>
    columns.map((across, column): Tile => {
      const side = (x: number | undefined, nth: number) =>
        joint(nth, x, down, (y, at) => ({ x: at, y }));
      const level = (y: number | undefined, nth: number) =>
        joint(nth, y, across, (x, at) => ({ x, y: at }));
      const first = letter + row * beside + column;
      const under = letter + between + row * columns.length + column;
      return {
        across,
        down,
        place: { column: column + 1, columns: columns.length, row: row + 1, rows: rows.length },
        joints: [
          ...side(across.joinedAt.start, first - 1),
          ...side(across.joinedAt.end, first),
          ...level(down.joinedAt.start, under - columns.length),
          ...level(down.joinedAt.end, under),
        ],
      };
    }),
  );
}

function bandsOn(figure: Figure, room: Room) {
  const { width, height } = letteredBounds(figure, LETTER);
  return { columns: bandsOf(width, room.across), rows: bandsOf(height, room.down - BELOW) };
}

function joint(
  letter: number,
  at: number | undefined,
  { from, to }: Band,
  place: (along: number, at: number) => Point,
): Tile['joints'][number][] {
  if (at === undefined) return [];
  return [{ letter, crosses: CROSSES.map((share) => place(from + share * (to - from), at)) }];
}

/** One tile of a drawing at true size. @param corner of the room it takes, in mm */
export function tileShapes(
  { name }: PaperDrawing,
  { figure, turned }: Laid,
  { across, down, place, joints }: Tile,
  corner: Point,
  words: PaperWords,
): PaperShape[] {
  const box = { from: { x: across.from, y: down.from }, to: { x: across.to, y: down.to } };
  const to = ({ x, y }: Point): Point => ({
    x: corner.x + x - across.from,
    y: corner.y + y - down.from,
  });
  const foot = corner.y + down.to - down.from + BELOW - 2;
  const at = (row: number) => ({ x: corner.x + 2, y: foot - row * LINE });
  return [
    ...figure.flatMap((shape) => shapesIn(shape, box, to)),
    ...joints.flatMap(({ letter, crosses }) =>
      crosses.flatMap((at) => cross(to(at), letterOf(letter))),
    ),
    text(at(2), words.tileOf(name, place, turned), SMALL),
    text(at(1), words.partOf(across, down), SMALL),
    ...keyShapes(figure, at(0), LETTER, words),
  ];
}

function shapesIn(shape: FigureShape, box: Box, to: (at: Point) => Point): PaperShape[] {
  if ('label' in shape) {
    if (!isInside(shape.at, box)) return [];
    // What would run over the edge of the tile, and perhaps of the paper, ends there.
    const last = box.to.x - shape.label.length * LETTER.wide;
    const at = { x: Math.max(box.from.x, Math.min(shape.at.x, last)), y: shape.at.y };
    return [text(to(at), shape.label, SMALL)];
  }
  const { weight, dash } = LINE_LOOKS[shape.line];
  const { ring } = shape;
  // The cross hair tells a hole to punch from one that is made.
  const hair =
    ring && shape.line === 'cut' && isInside(ring.at, box)
      ? hairShapes(to(ring.at), 2 * ring.radius)
      : [];
  if (ring && whole(ring, box)) {
    return [{ kind: 'circle', at: to(ring.at), radius: ring.radius, weight }, ...hair];
  }
  const points = ring ? round(ring) : shape.points;
  const parts = clipped(points, box).map(
    (part): PaperShape => ({ kind: 'path', points: part.map(to), weight, dash }),
  );
  return [...parts, ...hair];
}

type Ring = NonNullable<Extract<FigureShape, { line: LineStyle }>['ring']>;

function whole({ at, radius }: Ring, box: Box): boolean {
  return [-radius, radius].every((by) => isInside({ x: at.x + by, y: at.y + by }, box));
}

function round({ at, radius }: Ring): Point[] {
  return Array.from({ length: ROUND + 1 }, (_, i) => {
    const turn = (i / ROUND) * 2 * Math.PI;
    return { x: at.x + radius * Math.cos(turn), y: at.y + radius * Math.sin(turn) };
  });
}

function cross({ x, y }: Point, letter: string): PaperShape[] {
  return [
    line({ x: x - ARM, y }, { x: x + ARM, y }, FINE),
    line({ x, y: y - ARM }, { x, y: y + ARM }, FINE),
    text({ x: x + 1, y: y - 1 }, letter, SMALL),
  ];
}
