import { createEngine } from '../camera/engine.ts';
import { createTapeBridge } from '../camera/tape-bridge.ts';
import type { TapeServices } from '../screens/tape/tape-screen.tsx';
import { keepAwake } from './awake.ts';
import { dataPath, engineFile, fetchEngine, runsSimd } from './engine-files.ts';
import { speak } from './voice.ts';

/** One for all readings: the engine takes its time to start. */
let services: TapeServices | undefined;

/** What reading a tape needs of this phone. Workers are started when they are first wanted. */
export function tapeServices(): TapeServices {
  services ??= { bridge: createBridge(), keepAwake, speak };
  return services;
}

function createBridge() {
  const simd = runsSimd();
  const engine = createEngine({
    startWorker: () => new Worker(engineFile('worker.min.js')),
    fetchFiles: () => fetchEngine(),
    corePath:
      simd === undefined ? undefined : engineFile(`tesseract-core-${simd ? 'simd-' : ''}lstm.js`),
    dataPath,
  });
  const startWorker = () =>
    new Worker(new URL('../workers/tape.ts', import.meta.url), { type: 'module', name: 'tape' });
  return createTapeBridge(startWorker, engine);
}
