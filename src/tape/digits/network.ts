import { byInput, connect, convolve, cutOff, edgedSize, type Planes, pool } from './layers.ts';
import { CELL_HEIGHT, CELL_WIDTH, HIDDEN, PLANES_1, PLANES_2, PLANES_3 } from './limits.ts';

/** Ten digits, and last what is no digit. */
export const CLASSES = 11;

/** The last of the eleven: a line, a letter, parts of two digits, cloth. */
export const NO_DIGIT = CLASSES - 1;

/** Weights by the output they lead to, and a bias for each output. */
export interface Layer {
  readonly weights: Float32Array;
  readonly biases: Float32Array;
}

/** Three convolutions, each pooled to half the size, and two full layers. */
export type Layers = readonly [Layer, Layer, Layer, Layer, Layer];

/** What each convolution takes. */
export const TAKEN: readonly [Planes, Planes, Planes] = [
  { count: 1, width: CELL_WIDTH, height: CELL_HEIGHT },
  { count: PLANES_1, width: CELL_WIDTH / 2, height: CELL_HEIGHT / 2 },
  { count: PLANES_2, width: CELL_WIDTH / 4, height: CELL_HEIGHT / 4 },
];

/** How wide an edge of zeros is around what each convolution gives, once pooled. */
export const EDGES: readonly [number, number, number] = [1, 1, 0];

/** How many inputs lead to an output, and how many outputs there are, layer by layer. */
const SHAPES: ReadonlyArray<readonly [inputs: number, outputs: number]> = [
  [9, PLANES_1],
  [PLANES_1 * 9, PLANES_2],
  [PLANES_2 * 9, PLANES_3],
  [(PLANES_3 * CELL_WIDTH * CELL_HEIGHT) / 64, HIDDEN],
  [HIDDEN, CLASSES],
];

/** All layers, each made for its number of inputs and outputs. */
export function layersBy(make: (inputs: number, outputs: number) => Layer): Layers {
  return SHAPES.map(([inputs, outputs]) => make(inputs, outputs)) as unknown as Layers;
}

/** What a convolution gave: its planes, what was picked of them, and from where. */
export interface Convolved {
  readonly planes: Float32Array;
  readonly pooled: Float32Array;
  readonly where: Int32Array;
}

/** What each layer gave for one cell. */
export interface Activity {
  /** The cell with its edge of zeros. */
  readonly cell: Float32Array;
  readonly convolved: readonly [Convolved, Convolved, Convolved];
  readonly hidden: Float32Array;
  readonly scores: Float32Array;
}

/** @param room gives an array of zeros. */
export function freshActivity(
  room: (count: number) => Float32Array = (count) => new Float32Array(count),
): Activity {
  const convolved = TAKEN.map(({ width, height }, i): Convolved => {
    const count = [PLANES_1, PLANES_2, PLANES_3][i] as number;
    const half = { count, width: width / 2, height: height / 2 };
    return {
      planes: room(count * width * height),
      pooled: room(edgedSize(half, EDGES[i] as number)),
      where: new Int32Array(edgedSize(half, 0)),
    };
  });
  return {
    cell: room(edgedSize(TAKEN[0], 1)),
    convolved: convolved as unknown as Activity['convolved'],
    hidden: room(HIDDEN),
    scores: room(CLASSES),
  };
}

/** Lays a cell into its edge of zeros. */
export function layIn(cell: Float32Array, into: Activity): void {
  for (let y = 0; y < CELL_HEIGHT; y++) {
    const row = cell.subarray(y * CELL_WIDTH, (y + 1) * CELL_WIDTH);
    into.cell.set(row, (y + 1) * (CELL_WIDTH + 2) + 1);
  }
}

/** Runs cells through layers: each time `scores` are what the last one gives. */
export function networkOf(layers: Layers, into: Activity): (cell: Float32Array) => void {
  const weightsOf = TAKEN.map((_, i) => {
    const { weights, biases } = layers[i] as Layer;
    return byInput(weights, biases.length);
  });
  return (cell) => {
    layIn(cell, into);
    let from = into.cell;
    TAKEN.forEach((taken, i) => {
      const { biases } = layers[i] as Layer;
      const { planes, pooled, where } = into.convolved[i] as Convolved;
      convolve(from, taken, weightsOf[i] as Float32Array, biases, planes);
      pool(planes, { ...taken, count: biases.length }, pooled, where, EDGES[i] as number);
      from = pooled;
    });
    connectAll(layers, into);
  };
}

/** The full layers, from what the last convolution gave. */
export function connectAll(layers: Layers, { convolved, hidden, scores }: Activity): void {
  connect(convolved[2].pooled, layers[3].weights, layers[3].biases, hidden);
  cutOff(hidden);
  connect(hidden, layers[4].weights, layers[4].biases, scores);
}
