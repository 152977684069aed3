import { connect, convolve, cutOff, type Planes, pool } from './layers.ts';
import { CELL_HEIGHT, CELL_WIDTH, HIDDEN, PLANES_1, PLANES_2 } from './limits.ts';

/** Ten digits, and last what is no digit. */
export const CLASSES = 11;

/** The last of the eleven: a line, a letter, parts of two digits, cloth. */
export const NO_DIGIT = CLASSES - 1;

/** Weights by the output they lead to, and a bias for each output. */
export interface Layer {
  readonly weights: Float32Array;
  readonly biases: Float32Array;
}

/** How many inputs lead to an output, and how many outputs there are, layer by layer. */
export const SHAPES: ReadonlyArray<readonly [inputs: number, outputs: number]> = [
  [9, PLANES_1],
  [PLANES_1 * 9, PLANES_2],
  [(PLANES_2 * CELL_WIDTH * CELL_HEIGHT) / 16, HIDDEN],
  [HIDDEN, CLASSES],
];

export const WHOLE: Planes = { count: 1, width: CELL_WIDTH, height: CELL_HEIGHT };
export const HALF: Planes = { count: PLANES_1, width: CELL_WIDTH / 2, height: CELL_HEIGHT / 2 };

/** What each layer gave for one cell. */
export interface Activity {
  readonly planes1: Float32Array;
  readonly pooled1: Float32Array;
  readonly where1: Int32Array;
  readonly planes2: Float32Array;
  readonly pooled2: Float32Array;
  readonly where2: Int32Array;
  readonly hidden: Float32Array;
  readonly scores: Float32Array;
}

export function freshActivity(): Activity {
  const size = CELL_WIDTH * CELL_HEIGHT;
  return {
    planes1: new Float32Array(PLANES_1 * size),
    pooled1: new Float32Array((PLANES_1 * size) / 4),
    where1: new Int32Array((PLANES_1 * size) / 4),
    planes2: new Float32Array((PLANES_2 * size) / 4),
    pooled2: new Float32Array((PLANES_2 * size) / 16),
    where2: new Int32Array((PLANES_2 * size) / 16),
    hidden: new Float32Array(HIDDEN),
    scores: new Float32Array(CLASSES),
  };
}

/** Runs a cell through the four layers; `scores` are what the last one gives. */
export function runNetwork(layers: readonly Layer[], cell: Float32Array, into: Activity): void {
  const [first, second, third, last] = layers as [Layer, Layer, Layer, Layer];
  convolve(cell, WHOLE, first.weights, first.biases, into.planes1);
  pool(into.planes1, { ...WHOLE, count: PLANES_1 }, into.pooled1, into.where1);
  convolve(into.pooled1, HALF, second.weights, second.biases, into.planes2);
  pool(into.planes2, { ...HALF, count: PLANES_2 }, into.pooled2, into.where2);
  connect(into.pooled2, third.weights, third.biases, into.hidden);
  cutOff(into.hidden);
  connect(into.hidden, last.weights, last.biases, into.scores);
}
