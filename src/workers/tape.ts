import { follow, lockOn } from '../tape/live/live.ts';
import { pgmOf } from '../tape/picture/pgm.ts';
import type { ToTapeWorker } from '../tape/protocol.ts';
import { readTape } from '../tape/reader/read-tape.ts';
import { snapTo } from '../tape/touch/snap.ts';
import { scaleByTouch } from '../tape/touch/touch.ts';
import { createDesk } from './tape-desk.ts';

declare const self: DedicatedWorkerGlobalScope;

const receive = createDesk({ pgmOf, follow, lockOn, readTape, scaleByTouch, snapTo }, (message) =>
  self.postMessage(message),
);

self.addEventListener('message', ({ data }: MessageEvent<ToTapeWorker>) => void receive(data));
