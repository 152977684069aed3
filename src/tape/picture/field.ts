import type { GreyImage } from './grey-image.ts';
import { BLACK_LEVEL, EDGE_PX, GREY_LEVELS } from './limits.ts';
import type { In, Space } from './space.ts';

/** A picture worked on: grey or log-grey samples, row after row; NaN where the picture ends. */
export interface Field<S extends Space = Space> extends In<S> {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

/** The very samples of a field as those of another space, where the two are the same. */
export function takenAs<S extends Space>(field: Field): Field<S> {
  return field as Field<S>;
}

/** A grey picture as samples from 0 to 255 to calculate with. */
export function fieldOf(grey: GreyImage): Field<'picture'> {
  return { width: grey.width, height: grey.height, values: new Float32Array(grey.pixels) };
}

/**
 * A picture or field shrunk to means of `factor` by `factor` samples; a rest at the right and
 * the lower edge that doesn't fill a box is left out. A picture is not turned into a field first:
 * that would take four times its memory.
 *
 * @param factor whole; 1 or less gives all samples as they are.
 */
export function boxDown<To extends Space>(from: GreyImage | Field, factor: number): Field<To> {
  if (factor <= 1) return takenAs('pixels' in from ? fieldOf(from) : from);
  const samples = 'pixels' in from ? from.pixels : from.values;
  const width = Math.floor(from.width / factor);
  const height = Math.floor(from.height / factor);
  const values = new Float32Array(width * height);
  const sums = new Float64Array(width);
  const share = 1 / (factor * factor);
  for (let y = 0; y < height; y++) {
    sums.fill(0);
    for (let down = 0; down < factor; down++) {
      addBoxes(samples, (y * factor + down) * from.width, factor, sums);
    }
    const start = y * width;
    for (let x = 0; x < width; x++) values[start + x] = (sums[x] as number) * share;
  }
  return { width, height, values };
}

/** Adds to each sum the next `side` samples of a row. */
function addBoxes(
  samples: Float32Array | Uint8Array,
  start: number,
  side: number,
  sums: Float64Array,
): void {
  let at = start;
  for (let x = 0; x < sums.length; x++) {
    let sum = 0;
    for (const end = at + side; at < end; at++) sum += samples[at] as number;
    sums[x] = (sums[x] as number) + sum;
  }
}

/** The field at twice its size, so that in a small picture rows and strokes get room. */
export function doubled(field: Field<'picture'>): Field<'enlarged'> {
  const width = field.width * 2;
  const height = field.height * 2;
  const values = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const fromY = Math.max(0, Math.min(field.height - EDGE_PX, (y - 0.5) / 2));
    for (let x = 0; x < width; x++) {
      const fromX = Math.max(0, Math.min(field.width - EDGE_PX, (x - 0.5) / 2));
      values[y * width + x] = blend(field, fromX, fromY);
    }
  }
  return { width, height, values };
}

/** The field at a place between its samples (bilinear); NaN where the picture ends. */
export function sample(field: Field, x: number, y: number): number {
  // Written so that a place that is not a number is outside, too.
  const inside = x >= 0 && y >= 0 && x <= field.width - EDGE_PX && y <= field.height - EDGE_PX;
  return inside ? blend(field, x, y) : Number.NaN;
}

function blend({ width, values }: Field, x: number, y: number): number {
  const column = x | 0;
  const row = y | 0;
  const right = x - column;
  const down = y - row;
  const i = row * width + column;
  const above = (values[i] as number) * (1 - right) + (values[i + 1] as number) * right;
  const below =
    (values[i + width] as number) * (1 - right) + (values[i + width + 1] as number) * right;
  return above * (1 - down) + below * down;
}

/**
 * Logarithms that were worked out before, by the grey they are of, found by its level: means of a few
 * bytes are few, so that millions of samples share some thousands of logarithms.
 */
const GREYS = new Float32Array(256 * GREY_LEVELS).fill(Number.NaN);
const LOGS = new Float32Array(GREYS.length);

function logAt(grey: number): number {
  const level = (grey * GREY_LEVELS + 0.5) | 0;
  if (GREYS[level] === grey) return LOGS[level] as number;
  const log = Math.log(grey + BLACK_LEVEL);
  GREYS[level] = grey;
  LOGS[level] = log;
  return log;
}

/** Kept with the field they belong to: every row of one picture asks for the same. */
const logs = new WeakMap<Field, Field>();

/** The logarithm of a field: light and shade then add to what is printed, so they cancel. */
export function logOf<S extends Space>(field: Field<S>): Field<S> {
  const known = logs.get(field);
  if (known) return takenAs(known);
  const values = new Float32Array(field.values.length);
  for (let i = 0; i < values.length; i++) values[i] = logAt(field.values[i] as number);
  const log = { width: field.width, height: field.height, values };
  logs.set(field, log);
  return log;
}
