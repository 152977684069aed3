// The lay's worker in a process of its own, by whose processor time it is timed: on a machine that
// has other things to do the wall clock would measure these. `slow` times as slow a processor has
// as much less of it a second. Tells each better lay's length.

import { runInThisContext } from 'node:vm';

/** How often the processor's time is asked for, in ms of the wall clock: asking takes time itself. */
const ASKED_EVERY = 2;

process.once('message', ({ code, job, slow = 1 }) => {
  const wall = performance;
  const told = [];
  let take;
  let [asked, spent] = [-ASKED_EVERY, 0];
  const now = () => {
    const at = wall.now();
    if (at - asked < ASKED_EVERY) return spent;
    asked = at;
    const { user, system } = process.cpuUsage();
    spent = (slow * (user + system)) / 1000;
    return spent;
  };
  Object.defineProperty(globalThis, 'performance', { value: { now } });
  globalThis.self = {
    addEventListener: (_, listener) => {
      take = listener;
    },
    postMessage: (data) => {
      if (data.kind === 'better') told.push({ at: now(), length: data.lay.length });
    },
  };
  runInThisContext(code);
  const began = now();
  take({ data: job });
  const found = told.map(({ at, length }) => ({ at: (at - began) / 1000, length }));
  process.send(found, () => process.exit());
});
