import { faultsOf } from '../lay/check-lay.ts';
import { problemOf } from '../lay/problem.ts';
import type { FromLayWorker, ToLayWorker } from '../lay/protocol.ts';
import { solve } from '../lay/solve.ts';

declare const self: DedicatedWorkerGlobalScope;

const tell = (message: FromLayWorker) => self.postMessage(message);

self.addEventListener('message', ({ data }: MessageEvent<ToLayWorker>) => {
  const { task, seed, seconds, from } = data;
  const began = performance.now();
  const lay = solve(problemOf(task), {
    seed,
    seconds,
    // One that breaks a rule of the task as it is now is not gone on from.
    ...(from && faultsOf(task, from).length === 0 ? { from } : {}),
    elapsed: () => (performance.now() - began) / 1000,
    // What breaks a rule is never told: the search goes on from it, but nobody cuts by it.
    onBetter: (better) => {
      if (faultsOf(task, better).length === 0) tell({ kind: 'better', lay: better });
    },
  });
  tell({ kind: 'done', fits: lay !== undefined });
});
