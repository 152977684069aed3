import { boxDown } from '../picture/field.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';
import { rowsAmong } from '../rows/candidate-rows.ts';
import { CELL_PX } from '../rows/limits.ts';
import { type StrokeCell, strokeCells } from '../rows/stroke-cells.ts';
import {
  POINTED_PX,
  POINTED_SHARES,
  SEARCH_PX,
  WINDOW_AGAIN,
  WINDOW_PX,
  WINDOW_WEAK,
} from './limits.ts';

/** A part of a picture, in its pixels. */
export interface Window {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

interface LikelyWindow extends Window {
  /** How strong its strongest row of strokes is; comparable between all windows of a picture. */
  readonly score: number;
}

/**
 * Overlapping parts of a picture worth a closer look, the likeliest first, at most `most`: in the
 * whole of it a tape far off is too fine to be found, a bent one no straight row, and one among
 * other strokes a weak row. Each scale is looked through once, and all its windows share that.
 */
export function windowsOf(image: GreyImage, most: number): Window[] {
  let left = scalesOf(image).flatMap((shrunk) => windowsAt(image, shrunk));
  const strongest = left.reduce((best, { score }) => Math.max(best, score), 0);
  const chosen: Window[] = [];
  while (chosen.length < most) {
    const [first, ...rest] = left.sort((one, other) => other.score - one.score);
    if (!first || first.score < WINDOW_WEAK * strongest) break;
    chosen.push(first);
    // What was looked at in part is less worth another look.
    left = rest.map((one) => ({
      ...one,
      score: one.score * (1 - WINDOW_AGAIN * sharedWith(one, first)),
    }));
  }
  return chosen;
}

/** Parts of a picture about a place in it, the smaller first; none where the whole is no larger. */
export function windowsAbout({ width, height }: GreyImage, { x, y }: Point): Window[] {
  const long = Math.max(width, height);
  return POINTED_SHARES.flatMap((share) => {
    const side = Math.round(Math.max(POINTED_PX, share * long));
    if (side >= long) return [];
    const [wide, high] = [Math.min(side, width), Math.min(side, height)];
    const start = (middle: number, size: number, room: number) =>
      Math.round(Math.max(0, Math.min(room - size, middle - size / 2)));
    return [
      { left: start(x, wide, width), top: start(y, high, height), width: wide, height: high },
    ];
  });
}

/** A part of a picture as a picture. */
export function cutOut({ width, pixels }: GreyImage, part: Window): GreyImage {
  const cut = new Uint8Array(part.width * part.height);
  for (let y = 0; y < part.height; y++) {
    const from = (part.top + y) * width + part.left;
    cut.set(pixels.subarray(from, from + part.width), y * part.width);
  }
  return { width: part.width, height: part.height, pixels: cut };
}

/** By how much the picture is shrunk at each scale of windows: half of the time before, down to 1. */
function scalesOf({ width, height }: GreyImage): number[] {
  const scales: number[] = [];
  let shrunk = Math.round(Math.max(width, height) / SEARCH_PX);
  while (shrunk > 1) {
    shrunk = Math.ceil(shrunk / 2);
    scales.push(shrunk);
  }
  return scales;
}

function windowsAt(image: GreyImage, shrunk: number): LikelyWindow[] {
  const side = WINDOW_PX * shrunk;
  if (side >= Math.max(image.width, image.height)) return [];
  const cells = strokeCells(boxDown(image, shrunk));
  const square = CELL_PX * shrunk;
  const found: LikelyWindow[] = [];
  for (const top of startsOf(image.height, side)) {
    for (const left of startsOf(image.width, side)) {
      const width = Math.min(side, image.width);
      const height = Math.min(side, image.height);
      const inside = cellsIn(cells, left / square, top / square, width / square, height / square);
      const [row] = rowsAmong(inside, Math.floor(width / square), Math.floor(height / square), 1);
      if (row) found.push({ left, top, width, height, score: row.score });
    }
  }
  return found;
}

/** Where windows begin along one side of the picture: they overlap by half or more, the last ends with it. */
function startsOf(length: number, side: number): number[] {
  const room = Math.max(0, length - side);
  const count = Math.ceil(room / (side / 2));
  return Array.from({ length: count + 1 }, (_, i) => Math.round((room * i) / Math.max(1, count)));
}

function cellsIn(
  cells: readonly StrokeCell[],
  left: number,
  top: number,
  width: number,
  height: number,
): StrokeCell[] {
  return cells
    .filter(({ x, y }) => x >= left && y >= top && x < left + width && y < top + height)
    .map((cell) => ({ ...cell, x: cell.x - left, y: cell.y - top }));
}

/** The share of a window that lies in another. */
function sharedWith(one: Window, other: Window): number {
  const overlap = (from: number, size: number, otherFrom: number, otherSize: number) =>
    Math.max(0, Math.min(from + size, otherFrom + otherSize) - Math.max(from, otherFrom));
  const wide = overlap(one.left, one.width, other.left, other.width);
  const high = overlap(one.top, one.height, other.top, other.height);
  return (wide * high) / (one.width * one.height);
}
