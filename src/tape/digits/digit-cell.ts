import { nth } from '../numerics/order.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import {
  CELL_HEIGHT,
  CELL_WIDTH,
  DARKEST,
  DEEPEST,
  GROUND,
  INK_HEIGHT,
  INK_WIDTH,
  INSIDE,
  LEAST_CONTRAST,
  LIGHTEST,
} from './limits.ts';

/** The edges of what may be one upright digit, in pixels of its picture. */
export interface DigitBox {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/**
 * A digit, darker than its ground, as the network takes it: `CELL_WIDTH` × `CELL_HEIGHT` samples,
 * about 0 for ground and 1 for ink. The box keeps its shape and stands in the middle.
 */
export function digitCell(image: GreyImage, { x0, x1, y0, y1 }: DigitBox): Float32Array {
  const pitch = Math.max((y1 - y0) / INK_HEIGHT, (x1 - x0) / INK_WIDTH);
  const left = (x0 + x1 - pitch * CELL_WIDTH) / 2;
  const top = (y0 + y1 - pitch * CELL_HEIGHT) / 2;
  const parts = Math.max(1, Math.ceil(pitch));
  const across = placesAlong(left, pitch, CELL_WIDTH, parts, image.width);
  const down = placesAlong(top, pitch, CELL_HEIGHT, parts, image.height);
  const cell = new Float32Array(CELL_WIDTH * CELL_HEIGHT);
  for (let i = 0; i < cell.length; i++) {
    const [firstX, firstY] = [(i % CELL_WIDTH) * parts, Math.floor(i / CELL_WIDTH) * parts];
    let sum = 0;
    for (let y = firstY; y < firstY + parts; y++) {
      for (let x = firstX; x < firstX + parts; x++) sum += greyAt(image, across, x, down, y);
    }
    cell[i] = sum / (parts * parts);
  }
  return asInk(cell);
}

/** Places along one side of a picture: the pixel before each, the one after it, and how far it is past the first. */
interface Places {
  readonly before: Int32Array;
  readonly after: Int32Array;
  readonly past: Float64Array;
}

/** The middles of so many parts of each sample of a cell; beyond the picture that of its last pixel. */
function placesAlong(
  start: number,
  pitch: number,
  samples: number,
  parts: number,
  size: number,
): Places {
  const count = samples * parts;
  const places = {
    before: new Int32Array(count),
    after: new Int32Array(count),
    past: new Float64Array(count),
  };
  for (let i = 0; i < count; i++) {
    const from = start + Math.floor(i / parts) * pitch;
    const at = from + (((i % parts) + 0.5) * pitch) / parts;
    const place = Math.min(size - 1, Math.max(0, at - 0.5));
    const before = Math.floor(place);
    places.before[i] = before;
    places.after[i] = Math.min(size - 1, before + 1);
    places.past[i] = place - before;
  }
  return places;
}

/** Grey between pixels, bilinear. */
function greyAt(
  { width, pixels }: GreyImage,
  across: Places,
  x: number,
  down: Places,
  y: number,
): number {
  const [column, right] = [across.before[x] as number, across.after[x] as number];
  const [row, below] = [(down.before[y] as number) * width, (down.after[y] as number) * width];
  const [toRight, toBelow] = [across.past[x] as number, down.past[y] as number];
  const upper =
    (pixels[row + column] as number) * (1 - toRight) + (pixels[row + right] as number) * toRight;
  const lower =
    (pixels[below + column] as number) * (1 - toRight) +
    (pixels[below + right] as number) * toRight;
  return upper * (1 - toBelow) + lower * toBelow;
}

/** The ground is sought in all of the cell, the ink only in the middle of it, where no line runs by. */
function asInk(cell: Float32Array): Float32Array {
  const inside = cell.filter((_, i) => isInside(i % CELL_WIDTH, Math.floor(i / CELL_WIDTH)));
  const ground = nth(cell.slice(), Math.floor(GROUND * cell.length));
  const ink = nth(inside, Math.floor(DARKEST * inside.length));
  if (ground - ink < LEAST_CONTRAST) return cell.fill(0);
  return cell.map((grey) =>
    Math.min(DEEPEST, Math.max(LIGHTEST, (grey - ground) / (ink - ground))),
  );
}

function isInside(x: number, y: number): boolean {
  return x >= INSIDE && y >= INSIDE && x < CELL_WIDTH - INSIDE && y < CELL_HEIGHT - INSIDE;
}
