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
  const cell = new Float32Array(CELL_WIDTH * CELL_HEIGHT);
  for (let i = 0; i < cell.length; i++) {
    const fromX = left + (i % CELL_WIDTH) * pitch;
    const fromY = top + Math.floor(i / CELL_WIDTH) * pitch;
    let sum = 0;
    for (let part = 0; part < parts * parts; part++) {
      const x = fromX + (((part % parts) + 0.5) * pitch) / parts;
      const y = fromY + ((Math.floor(part / parts) + 0.5) * pitch) / parts;
      sum += nearest(image, x, y);
    }
    cell[i] = sum / (parts * parts);
  }
  return asInk(cell);
}

/** Grey between pixels, bilinear; beyond the picture that of its edge. */
function nearest({ width, height, pixels }: GreyImage, atX: number, atY: number): number {
  const x = Math.min(width - 1, Math.max(0, atX - 0.5));
  const y = Math.min(height - 1, Math.max(0, atY - 0.5));
  const [column, row] = [Math.floor(x), Math.floor(y)];
  const [right, below] = [Math.min(width - 1, column + 1), Math.min(height - 1, row + 1)];
  const [toRight, toBelow] = [x - column, y - row];
  const upper =
    (pixels[row * width + column] as number) * (1 - toRight) +
    (pixels[row * width + right] as number) * toRight;
  const lower =
    (pixels[below * width + column] as number) * (1 - toRight) +
    (pixels[below * width + right] as number) * toRight;
  return upper * (1 - toBelow) + lower * toBelow;
}

/** The ground is sought in all of the cell, the ink only in the middle of it, where no line runs by. */
function asInk(cell: Float32Array): Float32Array {
  const sorted = cell.slice().sort();
  const inside = cell.filter((_, i) => isInside(i % CELL_WIDTH, Math.floor(i / CELL_WIDTH))).sort();
  const ground = sorted[Math.floor(GROUND * sorted.length)] as number;
  const ink = inside[Math.floor(DARKEST * inside.length)] as number;
  if (ground - ink < LEAST_CONTRAST) return cell.fill(0);
  return cell.map((grey) =>
    Math.min(DEEPEST, Math.max(LIGHTEST, (grey - ground) / (ink - ground))),
  );
}

function isInside(x: number, y: number): boolean {
  return x >= INSIDE && y >= INSIDE && x < CELL_WIDTH - INSIDE && y < CELL_HEIGHT - INSIDE;
}
