import { median } from '../numerics/order.ts';
import { SEARCHED_ROWS, TICK_CONTRAST_LEAST_CONTRAST } from './limits.ts';
import type { Sheet } from './sheet.ts';

/** How much darker each graduation is than the ground at its sides, row by row of a sheet. */
export interface TickContrast {
  /** Rows of the sheet, and graduations across it. */
  readonly height: number;
  readonly ticks: number;
  /** Row after row, in log-grey; NaN where the picture ends. */
  readonly values: Float32Array;
  /** The median graduation of each row. */
  readonly typical: readonly number[];
}

/** The rows that every graduation crosses, the short ones too. */
export interface TickZone {
  /** The row where graduations are darkest, and the outermost rows still half as dark. */
  readonly middle: number;
  readonly from: number;
  readonly to: number;
  /** Contrast of the median graduation there, in log-grey. */
  readonly contrast: number;
}

/** Contrast of each of the graduations of a sheet whose first stands half a pitch from the edge. */
export function tickContrast(sheet: Sheet): TickContrast {
  const { width, height, values: grey, perTick } = sheet;
  const ticks = Math.round(width / perTick);
  const values = new Float32Array(height * ticks);
  const typical: number[] = [];
  for (let y = 0; y < height; y++) {
    for (let tick = 0; tick < ticks; tick++) {
      values[y * ticks + tick] = contrastAt(grey, y * width + tick * perTick + perTick / 2);
    }
    const row = values.subarray(y * ticks, (y + 1) * ticks);
    typical.push(median(Array.from(row).filter((value) => !Number.isNaN(value))) || 0);
  }
  return { height, ticks, values, typical };
}

/** The ground three and four pixels to both sides, less the three pixels in the middle. */
function contrastAt(grey: Float32Array, at: number): number {
  const [left, middle, right] = [grey[at - 1], grey[at], grey[at + 1]] as [number, number, number];
  const before = (grey[at - 4] as number) + (grey[at - 3] as number);
  const after = (grey[at + 3] as number) + (grey[at + 4] as number);
  return (before + after) / 4 - (left + 2 * middle + right) / 4;
}

/** Finds the common zone near the given row; null if there are no lines. */
export function commonZone({ typical, height }: TickContrast, near: number): TickZone | null {
  const at = (y: number) => typical[y] ?? 0;
  let middle = near;
  let best = -1;
  for (let y = near - SEARCHED_ROWS; y <= near + SEARCHED_ROWS; y++) {
    const sum = at(y - 1) + at(y) + at(y + 1);
    if (sum > best) [best, middle] = [sum, y];
  }
  const contrast = best / 3;
  if (!(contrast > TICK_CONTRAST_LEAST_CONTRAST)) return null;
  let from = middle;
  let to = middle;
  while (from > 1 && at(from - 1) > 0.5 * contrast) from--;
  while (to < height - 2 && at(to + 1) > 0.5 * contrast) to++;
  return { middle, from, to, contrast };
}
