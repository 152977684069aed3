import { follow, lockOn } from '../tape/live.ts';
import { pgmOf } from '../tape/pgm.ts';
import type { ToTapeWorker } from '../tape/protocol.ts';
import { readTape } from '../tape/read-tape.ts';
import { snapTo } from '../tape/snap.ts';
import { scaleByTouch } from '../tape/touch.ts';
import { createDesk } from './tape-desk.ts';

declare const self: DedicatedWorkerGlobalScope;

const receive = createDesk({ pgmOf, follow, lockOn, readTape, scaleByTouch, snapTo }, (message) =>
  self.postMessage(message),
);

self.addEventListener('message', ({ data }: MessageEvent<ToTapeWorker>) => void receive(data));
