import { median } from '../numerics/order.ts';
import type { Field } from '../picture/field.ts';
import { CELL_PX, LEAST_ENERGY, LEAST_WEIGHT } from './limits.ts';

/** A square of the picture, with how likely it lies on parallel strokes. */
export interface StrokeCell {
  /** Column and row of the square, in squares. */
  readonly x: number;
  readonly y: number;
  /** From 0 to 1. */
  readonly weight: number;
  /** Cosine and sine of twice the direction across the strokes. */
  readonly cos2: number;
  readonly sin2: number;
}

/** Sums over each square: products of the gradient, the gradient itself, its size, the grey. */
interface CellSums {
  readonly columns: number;
  readonly rows: number;
  readonly xx: Float32Array;
  readonly yy: Float32Array;
  readonly xy: Float32Array;
  readonly x: Float32Array;
  readonly y: Float32Array;
  readonly size: Float32Array;
}

/**
 * The squares of a picture that look like a piece of a row of parallel strokes: the
 * gradient keeps to one direction (structure tensor), but not to one sign, for a
 * stroke has an edge of either sign and a stripe or a tape's own edge only one.
 */
export function strokeCells(field: Field<'search'>): StrokeCell[] {
  const sums = cellSums(field);
  const energies = sums.xx.map((xx, cell) => xx + (sums.yy[cell] as number));
  const usual = 2 * median(energies) + LEAST_ENERGY;
  const cells: StrokeCell[] = [];
  for (let y = 1; y < sums.rows - 1; y++) {
    for (let x = 1; x < sums.columns - 1; x++) {
      const cell = strokeCell(sums, x, y, usual);
      if (cell.weight >= LEAST_WEIGHT) cells.push(cell);
    }
  }
  return cells;
}

/** One square judged with its eight neighbours; `usual` is the energy of a nondescript one. */
function strokeCell(sums: CellSums, x: number, y: number, usual: number): StrokeCell {
  let xx = 0;
  let yy = 0;
  let xy = 0;
  let sumX = 0;
  let sumY = 0;
  let size = 1e-3;
  for (let j = -1; j <= 1; j++) {
    for (let i = -1; i <= 1; i++) {
      const c = (y + j) * sums.columns + x + i;
      const share = i || j ? 0.5 : 1;
      xx += share * (sums.xx[c] as number);
      yy += share * (sums.yy[c] as number);
      xy += share * (sums.xy[c] as number);
      sumX += sums.x[c] as number;
      sumY += sums.y[c] as number;
      size += sums.size[c] as number;
    }
  }
  const bothSigns = 1 - Math.hypot(sumX, sumY) / size;
  const anisotropy = Math.hypot(xx - yy, 2 * xy);
  const coherence = anisotropy / (xx + yy + 1e-6);
  const energy = (xx + yy) / 5;
  const weight = coherence ** 2 * (energy / (energy + usual)) * bothSigns ** 2;
  return { x, y, weight, cos2: (xx - yy) / anisotropy, sin2: (2 * xy) / anisotropy };
}

function cellSums(field: Field<'search'>): CellSums {
  const columns = Math.floor(field.width / CELL_PX);
  const rows = Math.floor(field.height / CELL_PX);
  const empty = () => new Float32Array(columns * rows);
  const [xx, yy, xy, x, y, size] = [empty(), empty(), empty(), empty(), empty(), empty()];
  const sums = { columns, rows, xx, yy, xy, x, y, size };
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) sumCell(field, sums, column, row);
  }
  return sums;
}

/** Products are taken relative to the square's own light, so that shade counts as much. */
function sumCell({ width, values }: Field, sums: CellSums, column: number, row: number): void {
  const endX = Math.min((column + 1) * CELL_PX, sums.columns * CELL_PX - 1);
  const endY = Math.min((row + 1) * CELL_PX, sums.rows * CELL_PX - 1);
  let [xx, yy, xy, sumX, sumY, size, grey] = [0, 0, 0, 0, 0, 0, 0];
  for (let y = Math.max(1, row * CELL_PX); y < endY; y++) {
    for (let x = Math.max(1, column * CELL_PX); x < endX; x++) {
      const i = y * width + x;
      const gx = (values[i + 1] as number) - (values[i - 1] as number);
      const gy = (values[i + width] as number) - (values[i - width] as number);
      xx += gx * gx;
      yy += gy * gy;
      xy += gx * gy;
      sumX += gx;
      sumY += gy;
      size += Math.sqrt(gx * gx + gy * gy);
      grey += values[i] as number;
    }
  }
  const light = grey / (CELL_PX * CELL_PX) + 8;
  const cell = row * sums.columns + column;
  sums.xx[cell] = xx / (light * light);
  sums.yy[cell] = yy / (light * light);
  sums.xy[cell] = xy / (light * light);
  sums.x[cell] = sumX;
  sums.y[cell] = sumY;
  sums.size[cell] = size;
}
