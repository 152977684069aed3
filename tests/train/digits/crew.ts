import { resolve } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Layers } from '../../../src/tape/digits/network.ts';
import type { Shared, Task } from './hand.ts';
import { freshBuffer, layersOn } from './packing.ts';
import type { Shelf } from './shelf.ts';

/** Fixed: how slopes are added up, and so the weights to the last digit, hangs on it. */
const HANDS = 4;
/** Cells drawn at a time, each lot from a seed of its own. */
const LOT = 5000;

/** Threads that draw and learn. */
export interface Crew {
  /** Weights as the hands use them. */
  readonly layers: Layers;
  /** What each hand has added up. */
  readonly slopes: readonly Layers[];
  fill(onLot: (done: number) => void): Promise<void>;
  learn(cells: readonly number[]): Promise<void>;
  dismiss(): Promise<void>;
}

export function gatheredCrew(seed: number, shelf: Shelf): Crew {
  const layers = freshBuffer();
  const hands = Array.from({ length: HANDS }, () => {
    const slopes = freshBuffer();
    const workerData: Shared = { seed, shelf, layers, slopes };
    // Run as this is: by Vite's reader of TypeScript.
    const argv = ['tests/train/digits/hand.ts'];
    return { slopes, worker: new Worker(resolve('.ci/ts.mjs'), { argv, workerData }) };
  });
  const ask = (worker: Worker, task: Task) =>
    new Promise<void>((done, fail) => {
      worker.once('error', fail);
      worker.once('message', () => {
        worker.off('error', fail);
        done();
      });
      worker.postMessage(task);
    });
  return {
    layers: layersOn(layers),
    slopes: hands.map(({ slopes }) => layersOn(slopes)),
    async fill(onLot) {
      let next = 0;
      await Promise.all(
        hands.map(async ({ worker }) => {
          while (next < shelf.count) {
            const from = next;
            next += LOT;
            await ask(worker, { kind: 'draw', from, to: Math.min(shelf.count, from + LOT) });
            onLot(from);
          }
        }),
      );
    },
    async learn(cells) {
      const each = Math.ceil(cells.length / HANDS);
      await Promise.all(
        hands.map(({ worker }, i) =>
          ask(worker, { kind: 'learn', cells: cells.slice(i * each, (i + 1) * each) }),
        ),
      );
    },
    async dismiss() {
      await Promise.all(hands.map(({ worker }) => worker.terminate()));
    },
  };
}
