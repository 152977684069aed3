import type { Field } from '../picture/field.ts';
import { sample } from '../picture/field.ts';
import { EDGE_PX } from '../picture/limits.ts';
import type { AlongRow, Space } from '../picture/space.ts';
import { bowAt, extent, type RowFrame } from './frame.ts';
import { TAIL_SIGMAS } from './limits.ts';

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

/** Samples across a row at one u, and where they go. */
export interface Column {
  readonly u: number;
  /** The first v, the step to the next one, and how many. */
  readonly v: number;
  readonly step: number;
  readonly count: number;
  /** Index of the first sample in the output, and the distance to the next. */
  readonly at: number;
  readonly stride: number;
}

/** Samples one column of a frame into `out`; NaN where the picture ends. */
export function sampleColumn<S extends Space>(
  field: Field<S>,
  frame: RowFrame<NoInfer<S>>,
  column: Column,
  out: Float32Array,
): void {
  const { u, step, stride } = column;
  const [alongX, alongY] = frame.along;
  const [acrossX, acrossY] = frame.across;
  const [originX, originY] = frame.origin;
  const shear = frame.shear + frame.shearRate * u;
  const bow = bowAt(frame, u);
  for (let j = 0; j < column.count; j++) {
    const v = column.v + j * step;
    const x = u + v * shear;
    const y = v + bow;
    out[column.at + j * stride] = sample(
      field,
      originX + x * alongX + y * acrossX,
      originY + x * alongY + y * acrossY,
    );
  }
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
 * One row of a strip (bilinear). The sampling is written out: it is the reader's innermost loop,
 * and along a row the samples of picture and strip lie side by side in memory.
 */
function sampleRow(
  field: Field,
  { x, y, stepX, stepY }: ColumnLines,
  v: number,
  out: Float32Array,
  at: number,
): void {
  const { width, height, values } = field;
  const lastX = width - EDGE_PX;
  const lastY = height - EDGE_PX;
  for (let i = 0; i < x.length; i++) {
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
  for (let j = 0; j < height; j++) sampleRow(field, lines, j - reach, values, j * width);
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
