import type { Canvas } from './canvas.ts';
import type { Ground } from './ground.ts';
import { type Block, eachBlock, type MapGrid } from './map-grid.ts';

/** Covers the whole picture with the ground. */
export function drawGround(canvas: Canvas, bench: MapGrid, ground: Ground): void {
  const [c, s] = ground.turn;
  eachBlock(bench, canvas, (block) => drawBlock(canvas, block, ground, c, s));
}

function drawBlock({ width, values }: Canvas, block: Block, ground: Ground, c: number, s: number) {
  const { a, b, left, top, right, bottom } = block;
  const { greys, size, perMm } = ground;
  const light = foldsAt(ground, a[0], b[0]);
  const lightRight = (foldsAt(ground, a[0] + 8 * a[1], b[0] + 8 * b[1]) - light) / 8;
  const lightDown = (foldsAt(ground, a[0] + 8 * a[2], b[0] + 8 * b[2]) - light) / 8;
  for (let y = top; y < bottom; y++) {
    const dy = y + 0.5 - top;
    for (let x = left; x < right; x++) {
      const dx = x + 0.5 - left;
      const mx = a[0] + a[1] * dx + a[2] * dy + a[3] * dx * dy;
      const my = b[0] + b[1] * dx + b[2] * dy + b[3] * dx * dy;
      const grey = tiled(greys, size, (mx * c + my * s) * perMm, (my * c - mx * s) * perMm);
      values[y * width + x] = grey * (light + lightRight * dx + lightDown * dy);
    }
  }
}

function foldsAt({ folds, foldsSize, foldsPerMm }: Ground, x: number, y: number): number {
  return tiled(folds, foldsSize, x * foldsPerMm, y * foldsPerMm);
}

/** Bilinear look-up in a square that repeats; its size is a power of two. */
export function tiled(tile: Float32Array, size: number, x: number, y: number): number {
  const mask = size - 1;
  const x0 = Math.floor(x);
  const y0 = Math.floor(y);
  const fx = x - x0;
  const fy = y - y0;
  const left = x0 & mask;
  const right = (x0 + 1) & mask;
  const upper = (y0 & mask) * size;
  const lower = ((y0 + 1) & mask) * size;
  const above = tile[upper + left]! * (1 - fx) + tile[upper + right]! * fx;
  const below = tile[lower + left]! * (1 - fx) + tile[lower + right]! * fx;
  return above * (1 - fy) + below * fy;
}
