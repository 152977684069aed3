import { parentPort, workerData } from 'node:worker_threads';
import { CELL_HEIGHT, CELL_WIDTH } from '../../../src/tape/digits/limits.ts';
import { randomFrom } from '../../tapes/random.ts';
import { drawnCell } from './cells.ts';
import { learner, takeSlopes } from './learning.ts';
import { layersOn } from './packing.ts';
import { fetchCell, putCell, type Shelf } from './shelf.ts';
import { trainedSource } from './source.ts';

/** What a hand shares with the others. */
export interface Shared {
  readonly seed: number;
  readonly shelf: Shelf;
  /** Weights as they are used, and slopes of this hand's own. */
  readonly layers: SharedArrayBuffer;
  readonly slopes: SharedArrayBuffer;
}

/** What a hand is asked: to draw some cells, or to add up the slopes at some. */
export type Task =
  | { readonly kind: 'draw'; readonly from: number; readonly to: number }
  | { readonly kind: 'learn'; readonly cells: readonly number[] };

const { seed, shelf, ...buffers } = workerData as Shared;
const [layers, slopes] = [layersOn(buffers.layers), layersOn(buffers.slopes)];
const cell = new Float32Array(CELL_WIDTH * CELL_HEIGHT);
const own = learner();
const source = trainedSource(seed);

parentPort?.on('message', (task: Task) => {
  if (task.kind === 'draw') {
    const random = randomFrom(seed + task.from);
    for (let at = task.from; at < task.to; at++) putCell(shelf, at, drawnCell(source, random));
  } else {
    own.use(layers);
    for (const at of task.cells) {
      const label = fetchCell(shelf, at, cell);
      own.add(cell, label);
    }
    takeSlopes(own.slopes, slopes);
  }
  parentPort?.postMessage('done');
});
