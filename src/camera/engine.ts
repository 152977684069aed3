import type { PageSymbol } from '../tape/characters/read-page.ts';
import { type EngineReply, symbolsOf } from './engine-reply.ts';
import { TapeError } from './tape-fault.ts';

/** From the start of the engine's script to its being able to read, on a slow phone. */
const START_MS = 25_000;
/** For one page of numbers, on a slow phone. */
const PAGE_MS = 25_000;
/** The engine holds some 50 MB; it is let go when nothing has been read for this long. */
const IDLE_MS = 120_000;

/** The character reader. It lives across readings. */
export interface Engine {
  /** Starts it ahead. Says nothing when that fails: `symbols` will. */
  warm(): void;
  /**
   * What is seen on a page of numbers. Rejects with a `TapeError` (`engine-missing`,
   * `engine-refused`, `engine-failed`), within the time limits whatever happens.
   * @param page a picture file, such as PGM
   */
  symbols(page: Uint8Array): Promise<readonly PageSymbol[]>;
  close(): void;
}

/** How the engine is had. */
export interface EngineParts {
  /** Starts the engine's own worker script. */
  startWorker(): Worker;
  /** Sees to it that the engine's files are on the phone; rejects when one can't be had. */
  fetchFiles(): Promise<void>;
  /** Where its core is, an absolute address that ends in `.js`; undefined without WebAssembly. */
  corePath: string | undefined;
  /** The folder with its language data, an absolute address. */
  dataPath: string;
}

/**
 * Talks to tesseract.js's worker script by its own messages (version 7). The package's page half
 * is left out: its promise never settles when WebAssembly is refused, rejects with nothing when a
 * script is missing, and it weighs more than a screen may.
 */
export function createEngine(parts: EngineParts): Engine {
  let running: Promise<Asking> | undefined;
  let stopRunning: () => void = () => undefined;
  let idle: ReturnType<typeof setTimeout> | undefined;

  function close() {
    clearTimeout(idle);
    stopRunning();
    running = undefined;
  }

  function start(): Promise<Asking> {
    if (running) return running;
    const fresh = begin(parts, (stop) => {
      stopRunning = stop;
    });
    running = fresh;
    // What failed once may be possible later: the connection is back, memory is free again.
    fresh.catch(() => {
      if (running === fresh) close();
    });
    return fresh;
  }

  function rest() {
    clearTimeout(idle);
    idle = setTimeout(close, IDLE_MS);
  }

  return {
    warm() {
      start().then(rest, () => undefined);
    },
    async symbols(page) {
      const ask = await start();
      clearTimeout(idle);
      try {
        const payload = { image: page, options: {}, output: { text: false, blocks: true } };
        return symbolsOf(await ask('recognize', payload, PAGE_MS));
      } catch (error) {
        close();
        throw error;
      } finally {
        if (running) rest();
      }
    },
    close,
  };
}

type Asking = (action: string, payload: object, limitMs: number) => Promise<unknown>;

async function begin(
  { startWorker, fetchFiles, corePath, dataPath }: EngineParts,
  onStop: (stop: () => void) => void,
): Promise<Asking> {
  if (!corePath) throw new TapeError('engine-refused');
  await fetchFiles().catch((error: unknown) => {
    throw new TapeError('engine-missing', String(error));
  });
  const worker = startWorker();
  onStop(() => worker.terminate());
  const ask = asking(worker);
  const language = {
    langPath: dataPath,
    dataPath: null,
    cachePath: null,
    cacheMethod: 'none',
    gzip: false, // in its name only: the file itself is, and is known by its first bytes
    lstmOnly: true,
  };
  await ask('load', { options: { lstmOnly: true, corePath, logging: false } }, START_MS);
  await ask('loadLanguage', { langs: 'eng', options: language }, START_MS);
  await ask('initialize', { langs: 'eng', oem: 1, config: {} }, START_MS);
  // 6: one block of text. Without the space close numbers are glued together.
  const params = {
    tessedit_pageseg_mode: '6',
    tessedit_char_whitelist: '0123456789 ',
    user_defined_dpi: '150',
  };
  await ask('setParameters', { params }, START_MS);
  return ask;
}

/** Asks a worker one thing at a time; every way it can fail to answer rejects. */
function asking(worker: Worker): Asking {
  let jobs = 0;
  let last: Promise<unknown> = Promise.resolve();
  const one: Asking = (action, payload, limitMs) =>
    new Promise((resolve, reject) => {
      jobs += 1;
      const jobId = `job-${jobs}`;
      const over = new AbortController();
      const fail = (detail: string) => {
        over.abort();
        clearTimeout(limit);
        reject(new TapeError('engine-failed', `${action}: ${detail}`));
      };
      const limit = setTimeout(() => fail('no answer in time'), limitMs);
      worker.addEventListener(
        'message',
        ({ data }: MessageEvent<EngineReply>) => {
          if (data.jobId !== jobId || data.status === 'progress') return;
          if (data.status === 'reject') return fail(String(data.data));
          over.abort();
          clearTimeout(limit);
          resolve(data.data);
        },
        over,
      );
      worker.addEventListener('error', (event) => fail(event.message ?? 'no script'), over);
      worker.postMessage({ workerId: 'engine', jobId, action, payload });
    });
  return (...asked) => {
    const next = last.catch(() => undefined).then(() => one(...asked));
    last = next;
    return next;
  };
}
