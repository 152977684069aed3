import { convexParts } from './convex-parts.ts';
import {
  type Box,
  boxOf,
  centred,
  type Outline,
  type Point,
  signedArea,
  tidied,
  turned,
} from './outline.ts';
import type { LayPiece } from './task.ts';

/** Pieces of one outline, or a flaw of the cloth. */
export interface Kind {
  id: string;
  area: number;
  /** The ways it may lie, by their place among all shapes. */
  shapes: readonly number[];
  onFold: boolean;
  isFlaw: boolean;
}

/** A piece in one of the ways it may be turned, with the middle of its box at 0. */
export interface Shape {
  kind: number;
  turn: number;
  outline: Outline;
  box: Box;
  parts: readonly Outline[];
  /** The place of it that must fall on the start of a repeat. */
  match: Point | undefined;
}

/** The outline of a piece as it lies when turned, with the middle of its box at 0. */
function asTurned(piece: Pick<LayPiece, 'outline' | 'onFold'>, turn: number): Outline {
  const outline = centred(tidied(piece.outline));
  if (!piece.onFold || turn === 0) return turned(outline, turn);
  // What lies on the fold is its own mirror image once opened: end for end its fold edge stays.
  return tidied(outline.map(([x, y]): Point => [-x, y]));
}

/** The ways a piece may lie within the width, each that looks different once. */
export function shapesOf(piece: LayPiece, kind: number, width: number): Shape[] {
  const found: Shape[] = [];
  for (const turn of piece.turns) {
    const outline = asTurned(piece, turn);
    const box = boxOf(outline);
    const fits = box.y1 - box.y0 <= width * (1 + 1e-9);
    const match = piece.match && matchTurned(piece, piece.match, turn);
    const known = !match && found.some((other) => looksLike(other.outline, outline));
    if (fits && !known) {
      found.push({ kind, turn, outline, box, parts: convexParts(outline), match });
    }
  }
  return found;
}

function matchTurned({ outline, onFold }: LayPiece, [x, y]: Point, turn: number): Point {
  const { x0, y0, x1, y1 } = boxOf(outline);
  const place: Point = [x - (x0 + x1) / 2, y - (y0 + y1) / 2];
  if (onFold && turn !== 0) return [-place[0], place[1]];
  return turned([place], turn)[0]!;
}

/** Whether two outlines have the same corners. */
function looksLike(one: Outline, other: Outline): boolean {
  if (one.length !== other.length) return false;
  const { x0, y0, x1, y1 } = boxOf(one);
  const least = 1e-9 * Math.max(x1 - x0, y1 - y0);
  return one.every(([x, y]) =>
    other.some(([u, v]) => Math.abs(x - u) < least && Math.abs(y - v) < least),
  );
}

/** The area a piece takes, in mm². */
export const areaOf = ({ outline }: LayPiece): number => Math.abs(signedArea(outline));
