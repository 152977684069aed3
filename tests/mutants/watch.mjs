// Ends the process when one test has used more than its share of the processor: a mutant that
// never ends holds up everything else, and only another thread still sees it. It goes by the time
// the process was given, not by the clock: a busy machine makes no mutant endless. What is to be
// said of the mutant is written down first, and found there by the process that follows.
import { parentPort, workerData } from 'node:worker_threads';
import { addLine } from '../line-file.mjs';
import { cpuMs } from './cpu.mjs';

const LOOK_EVERY_MS = 250;

let watched;
parentPort.on('message', (next) => {
  watched = next;
});
setInterval(() => {
  if (!watched || cpuMs() < watched.until) return;
  addLine(workerData, watched.found);
  process.kill(process.pid, 'SIGKILL');
}, LOOK_EVERY_MS);
