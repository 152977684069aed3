import { sample } from './field.ts';
import { bowAt, extent, type RowFrame } from './frame.ts';
import type { Field } from './reading.ts';

/** The band along a row, straightened: one column per whole u, one row per whole v. */
export interface Strip {
  /** u of the first and of the last column. */
  readonly from: number;
  readonly to: number;
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
export function sampleColumn(
  field: Field,
  frame: RowFrame,
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

/**
 * The strip of a field along a frame, as long as the frame's line lies in the picture;
 * of width 0 when it never does.
 *
 * @param field best the log field: shadows and slow shading then shift it evenly.
 * @param reach how far to either side of the row, in whole pixels.
 */
export function strip(field: Field, frame: RowFrame, reach: number): Strip {
  const [from, to] = extent(frame, field);
  const width = Math.max(0, to - from + 1);
  const height = 2 * reach + 1;
  const values = new Float32Array(width * height);
  for (let i = 0; i < width; i++) {
    const column = { u: from + i, v: -reach, step: 1, count: height, at: i, stride: width };
    sampleColumn(field, frame, column, values);
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

/** Tails of the bell beyond this many sigmas weigh nothing. */
const TAIL_SIGMAS = 3;

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
