import type { Lay, LayTask } from './task.ts';

/** What a search is asked. */
export interface ToLayWorker {
  task: LayTask;
  seed: number;
  /** The lay found before, to go on from. */
  from?: Lay;
  /** How long it looks; it is ended before by ending the worker, as each better lay was told. */
  seconds: number;
}

/** What it tells: each better lay that has passed the look at it, and how it ended. */
export type FromLayWorker =
  | { kind: 'better'; lay: Lay }
  /** `fits` is false where a piece fits nowhere on the cloth. */
  | { kind: 'done'; fits: boolean };
