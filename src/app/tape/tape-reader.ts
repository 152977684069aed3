import { createEngine } from '../../camera/engine.ts';
import { createTapeBridge, type TapeBridge } from '../../camera/tape-bridge.ts';
import { dataPath, engineFile, fetchEngine, runsSimd } from './engine-files.ts';

/** The tape reader of this phone: its worker and the engine, started when they are first wanted. */
export function createReader(): TapeBridge {
  const simd = runsSimd();
  const engine = createEngine({
    startWorker: () => new Worker(engineFile('worker.min.js')),
    fetchFiles: () => fetchEngine(),
    corePath:
      simd === undefined ? undefined : engineFile(`tesseract-core-${simd ? 'simd-' : ''}lstm.js`),
    dataPath,
  });
  const startWorker = () =>
    new Worker(new URL('../../workers/tape.ts', import.meta.url), { type: 'module', name: 'tape' });
  return createTapeBridge(startWorker, engine);
}
