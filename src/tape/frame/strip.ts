import type { Field } from '../picture/field.ts';
import { EDGE_PX } from '../picture/limits.ts';
import type { AlongRow, Space } from '../picture/space.ts';
import { bowAt, extent, type RowFrame } from './frame.ts';
import { TAIL_SIGMAS, TILE } from './limits.ts';

/** The band along a row, straightened: one column per whole u, one row per whole v. */
export interface Strip<S extends Space = Space> {
  /** u of the first and of the last column. */
  readonly from: AlongRow<S>;
  readonly to: AlongRow<S>;
  readonly width: number;
  /** 2·reach + 1: from v = −reach to v = reach. */
  readonly height: number;
  readonly reach: number;
  /** Row after row; NaN where the picture ends. */
  readonly values: Float32Array;
}

/** Places along a row, and where across it each is sampled: from the first v on, so far from one to the next. */
export interface Columns {
  readonly u: ArrayLike<number>;
  readonly v: ArrayLike<number>;
  readonly step: ArrayLike<number>;
}

/**
 * Samples so many places across each column (bilinear), row after row; NaN where the picture ends.
 * The sampling is written out, as in `sampleRow`, and goes on a few columns at a time: however they lie
 * in the picture, what is read for the next row then is still at hand.
 */
export function sampleColumns<S extends Space>(
  { width, height, values }: Field<S>,
  frame: RowFrame<NoInfer<S>>,
  columns: Columns,
  rows: number,
): Float32Array {
  const { along, across, origin } = frame;
  const [alongX, alongY] = along;
  const [acrossX, acrossY] = across;
  const [originX, originY] = origin;
  const [lastX, lastY] = [width - EDGE_PX, height - EDGE_PX];
  const u = Float64Array.from(columns.u);
  const v = Float64Array.from(columns.v);
  const step = Float64Array.from(columns.step);
  const shear = u.map((at) => frame.shear + frame.shearRate * at);
  const bow = u.map((at) => bowAt(frame, at));
  const count = u.length;
  const out = new Float32Array(rows * count);
  for (let first = 0; first < count; first += TILE) {
    const end = Math.min(count, first + TILE);
    for (let j = 0; j < rows; j++) {
      for (let i = first; i < end; i++) {
        const beside = (v[i] as number) + j * (step[i] as number);
        const x = (u[i] as number) + beside * (shear[i] as number);
        const y = beside + (bow[i] as number);
        const px = originX + x * alongX + y * acrossX;
        const py = originY + x * alongY + y * acrossY;
        if (!(px >= 0 && py >= 0 && px <= lastX && py <= lastY)) {
          out[j * count + i] = Number.NaN;
          continue;
        }
        const column = px | 0;
        const row = py | 0;
        const right = px - column;
        const down = py - row;
        const k = row * width + column;
        const above = (values[k] as number) * (1 - right) + (values[k + 1] as number) * right;
        const below =
          (values[k + width] as number) * (1 - right) + (values[k + width + 1] as number) * right;
        out[j * count + i] = above * (1 - down) + below * down;
      }
    }
  }
  return out;
}

/** Where each column of a strip begins in the picture, and how it goes on with each v. */
interface ColumnLines {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly stepX: Float64Array;
  readonly stepY: Float64Array;
}

function columnLines(frame: RowFrame, from: number, width: number): ColumnLines {
  const [x, y, stepX, stepY] = [0, 0, 0, 0].map(() => new Float64Array(width)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const { along, across, origin } = frame;
  for (let i = 0; i < width; i++) {
    const u = from + i;
    const shear = frame.shear + frame.shearRate * u;
    const bow = bowAt(frame, u);
    x[i] = origin[0] + u * along[0] + bow * across[0];
    y[i] = origin[1] + u * along[1] + bow * across[1];
    stepX[i] = shear * along[0] + across[0];
    stepY[i] = shear * along[1] + across[1];
  }
  return { x, y, stepX, stepY };
}

/**
 * A piece of one row of a strip (bilinear). The sampling is written out: it is the reader's innermost loop,
 * and along a row the samples of picture and strip lie side by side in memory.
 */
function sampleRow(
  field: Field,
  { x, y, stepX, stepY }: ColumnLines,
  v: number,
  out: Float32Array,
  at: number,
  first: number,
  end: number,
): void {
  const { width, height, values } = field;
  const lastX = width - EDGE_PX;
  const lastY = height - EDGE_PX;
  for (let i = first; i < end; i++) {
    const px = (x[i] as number) + v * (stepX[i] as number);
    const py = (y[i] as number) + v * (stepY[i] as number);
    if (!(px >= 0 && py >= 0 && px <= lastX && py <= lastY)) {
      out[at + i] = Number.NaN;
      continue;
    }
    const column = px | 0;
    const row = py | 0;
    const right = px - column;
    const k = row * width + column;
    const above = (values[k] as number) * (1 - right) + (values[k + 1] as number) * right;
    const below =
      (values[k + width] as number) * (1 - right) + (values[k + width + 1] as number) * right;
    out[at + i] = above + (below - above) * (py - row);
  }
}

/**
 * The strip of a field along a frame, as long as the frame's line lies in the picture;
 * of width 0 when it never does.
 *
 * @param field best the log field: shadows and slow shading then shift it evenly.
 * @param reach how far to either side of the row, in whole pixels.
 */
export function strip<S extends Space>(
  field: Field<S>,
  frame: RowFrame<NoInfer<S>>,
  reach: number,
): Strip<S> {
  const [from, to] = extent(frame, field);
  const width = Math.max(0, to - from + 1);
  const height = 2 * reach + 1;
  const values = new Float32Array(width * height);
  const lines = columnLines(frame, from, width);
  for (let first = 0; first < width; first += TILE) {
    const end = Math.min(width, first + TILE);
    for (let j = 0; j < height; j++) {
      sampleRow(field, lines, j - reach, values, j * width, first, end);
    }
  }
  return { from, to, width, height, reach, values };
}

/**
 * How dark the strip is along the row: minus the mean of its rows v = low to high.
 * Columns outside the picture take the value of the nearest column inside it.
 */
export function bandSignal(strip: Strip, low: number, high: number): Float32Array {
  const { width, values, reach } = strip;
  const signal = new Float32Array(width);
  for (let i = 0; i < width; i++) {
    let sum = 0;
    let count = 0;
    for (let v = low; v <= high; v++) {
      const value = values[(v + reach) * width + i] as number;
      if (Number.isNaN(value)) continue;
      sum += value;
      count++;
    }
    signal[i] = count ? -sum / count : Number.NaN;
  }
  fillFromNeighbours(signal);
  return signal;
}

function fillFromNeighbours(signal: Float32Array): void {
  for (let i = 1; i < signal.length; i++) {
    if (Number.isNaN(signal[i])) signal[i] = signal[i - 1] as number;
  }
  for (let i = signal.length - 2; i >= 0; i--) {
    if (Number.isNaN(signal[i])) signal[i] = signal[i + 1] as number;
  }
}

/** The signal smoothed by a bell (Gaussian) of `sigma` samples; its ends go on unchanged. */
export function smoothed(signal: Float32Array, sigma: number): Float32Array {
  const reach = Math.ceil(TAIL_SIGMAS * sigma);
  const bell = new Float64Array(2 * reach + 1);
  let total = 0;
  for (let j = -reach; j <= reach; j++) {
    const weight = Math.exp((-0.5 * j * j) / (sigma * sigma));
    bell[j + reach] = weight;
    total += weight;
  }
  const last = signal.length - 1;
  const out = new Float32Array(signal.length);
  for (let i = 0; i <= last; i++) {
    let sum = 0;
    for (let j = -reach; j <= reach; j++) {
      const near = Math.max(0, Math.min(last, i + j));
      sum += (bell[j + reach] as number) * (signal[near] as number);
    }
    out[i] = sum / total;
  }
  return out;
}
