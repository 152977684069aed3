import type { Camera } from './camera.ts';

/** Side of the blocks in which places are carried on by straight interpolation, px. */
const BLOCK = 8;

/** Two numbers known at the corners of the blocks of a picture. */
export interface MapGrid {
  readonly columns: number;
  readonly rows: number;
  readonly first: Float64Array;
  readonly second: Float64Array;
}

/** Where the corners of all blocks meet the bench, mm. */
export function benchGrid(camera: Camera): MapGrid {
  return gridOf(camera, (x, y) => camera.meet(x, y));
}

/** Carries each corner's two numbers over into two others. */
export function mapped(
  grid: MapGrid,
  place: (x: number, y: number) => readonly [number, number],
): MapGrid {
  const first = new Float64Array(grid.first.length);
  const second = new Float64Array(grid.first.length);
  for (let i = 0; i < first.length; i++) {
    [first[i], second[i]] = place(grid.first[i]!, grid.second[i]!) as [number, number];
  }
  return { ...grid, first, second };
}

function gridOf(
  { spec }: Camera,
  place: (x: number, y: number) => readonly [number, number],
): MapGrid {
  const columns = Math.ceil(spec.width / BLOCK) + 1;
  const rows = Math.ceil(spec.height / BLOCK) + 1;
  const first = new Float64Array(columns * rows);
  const second = new Float64Array(columns * rows);
  for (let i = 0; i < first.length; i++) {
    const place0 = place((i % columns) * BLOCK, Math.floor(i / columns) * BLOCK);
    [first[i], second[i]] = place0 as [number, number];
  }
  return { columns, rows, first, second };
}

/** One block: its numbers at the first pixel's middle, and how they change. */
export interface Block {
  left: number;
  top: number;
  right: number;
  bottom: number;
  /** At the block's corner; change by x; by y; by x·y; for both numbers. */
  a: [number, number, number, number];
  b: [number, number, number, number];
  /** The four corners' numbers. */
  corners: readonly [number, number, number, number];
}

/** Calls `each` for every block of the picture; the object handed over is used again. */
export function eachBlock(
  grid: MapGrid,
  { width, height }: { readonly width: number; readonly height: number },
  each: (block: Block) => void,
): void {
  const { columns, rows, first, second } = grid;
  for (let row = 0; row < rows - 1; row++) {
    for (let column = 0; column < columns - 1; column++) {
      const i = row * columns + column;
      each({
        left: column * BLOCK,
        top: row * BLOCK,
        right: Math.min(width, (column + 1) * BLOCK),
        bottom: Math.min(height, (row + 1) * BLOCK),
        a: bilinear(first, i, columns),
        b: bilinear(second, i, columns),
        corners: [i, i + 1, i + columns, i + columns + 1],
      });
    }
  }
}

function bilinear(list: Float64Array, i: number, columns: number): Block['a'] {
  const [p, q] = [list[i]!, list[i + 1]!];
  const [r, s] = [list[i + columns]!, list[i + columns + 1]!];
  return [p, (q - p) / BLOCK, (r - p) / BLOCK, (p - q - r + s) / (BLOCK * BLOCK)];
}
