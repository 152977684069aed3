import { boxOf, centred, type Outline } from './outline.ts';
import { type PairTable, pairTable } from './pair-table.ts';
import { areaOf, type Kind, type Shape, shapesOf } from './shapes.ts';
import type { LayTask, Repeat } from './task.ts';

/** What stays where it is. */
export interface Fixed {
  shape: number;
  x: number;
  y: number;
}

/** A task made ready for the search: shapes, pieces, and for each two shapes their region. */
export interface Problem {
  width: number;
  gap: number;
  repeat: Repeat;
  kinds: readonly Kind[];
  shapes: readonly Shape[];
  /** The kind of each piece: those that move first, then those that stay. */
  pieces: readonly number[];
  moving: number;
  fixed: readonly Fixed[];
  /** Area of all pieces, in mm². */
  area: number;
  table: PairTable;
}

/**
 * The search's cloth is wider by this share: pieces that fill it just so need room to be told apart.
 * It is a ten-thousandth of what a maker could see, and less than the look at a lay lets pass.
 */
const SLACK = 5e-7;

const NO_REPEAT: Repeat = { along: 0, across: 0 };

/** @throws {RangeError} when a piece that stays is none of the task's, or turned as it may not be */
export function problemOf(task: LayTask): Problem {
  const { gap = 0, flaws = [], repeat = NO_REPEAT } = task;
  const width = task.width * (1 + SLACK);
  const shapes: Shape[] = [];
  const kinds: Kind[] = task.pieces.map((piece, kind) => {
    const own = shapesOf(piece, kind, width);
    const onFold = piece.onFold === true;
    return { id: piece.id, area: areaOf(piece), shapes: added(shapes, own), onFold, isFlaw: false };
  });
  const { moving, stays, fixed } = whatStays(task, kinds, shapes);
  for (const flaw of flaws) {
    const { x0, y0, x1, y1 } = boxOf(flaw);
    stays.push(kinds.length);
    fixed.push({ shape: shapes.length, x: (x0 + x1) / 2, y: (y0 + y1) / 2 });
    kinds.push(flawKind(flaw, kinds.length, shapes, width));
  }
  const pieces = [...moving, ...stays];
  const area = pieces.reduce((sum, kind) => sum + (kinds[kind]!.isFlaw ? 0 : kinds[kind]!.area), 0);
  const table = pairTable(shapes, kinds, gap);
  return { width, gap, repeat, kinds, shapes, pieces, moving: moving.length, fixed, area, table };
}

function added(shapes: Shape[], own: readonly Shape[]): number[] {
  const from = shapes.length;
  shapes.push(...own);
  return own.map((_, i) => from + i);
}

/** Which pieces are still to be laid, by their kind, and where the others lie. */
function whatStays(task: LayTask, kinds: readonly Kind[], shapes: readonly Shape[]) {
  const left = task.pieces.map(({ count }) => count);
  const stays: number[] = [];
  const fixed = (task.laid ?? []).map(({ id, turn, x, y }) => {
    const kind = task.pieces.findIndex((piece) => piece.id === id);
    const shape = kinds[kind]?.shapes.find((one) => shapes[one]!.turn === turn);
    if (shape === undefined || !left[kind]) throw new RangeError(`no piece ${id} lies at ${turn}°`);
    left[kind]!--;
    stays.push(kind);
    return { shape, x, y };
  });
  const moving = left.flatMap((count, kind) => Array<number>(count).fill(kind));
  return { moving, stays, fixed };
}

/** A flaw counts in the search as a small piece would, however long it is. */
const FLAW_SHARE = 0.01;

function flawKind(flaw: Outline, kind: number, shapes: Shape[], width: number): Kind {
  const piece = { id: '', outline: centred(flaw), count: 1, turns: [0] };
  const own = shapesOf(piece, kind, Infinity);
  const area = FLAW_SHARE * width * width;
  return { id: '', area, shapes: added(shapes, own), onFold: false, isFlaw: true };
}
