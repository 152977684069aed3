import type { GreyImage } from '../tape/picture/grey-image.ts';
import type { Point } from '../tape/picture/place.ts';
import type {
  FromTapeWorker,
  LiveReading,
  TapeAnswers,
  TapeJob,
  ToTapeWorker,
  TouchedScale,
} from '../tape/protocol.ts';
import type { TapeReading } from '../tape/scales/tape-reading.ts';
import type { Placed } from '../tape/touch/finger.ts';
import type { Touch } from '../tape/touch/touch.ts';
import type { Engine } from './engine.ts';
import { TapeError, type TapeFault } from './tape-fault.ts';

/** The worker is let go after this long with nothing to do, to free its memory. */
const IDLE_MS = 20_000;
/** A worker that says nothing for this long is given up. On a slow phone one step may take long. */
const SILENCE_MS = 40_000;

export type TapeBridge = ReturnType<typeof createTapeBridge>;

interface Pending {
  id: number;
  settle: (answer: TapeAnswers[TapeJob['kind']]) => void;
  reject: (reason: unknown) => void;
  onProgress: ((done: number) => void) | undefined;
}

/**
 * Reads tapes off the main thread, one job at a time.
 *
 * - A new job drops the one before it: only the latest is wanted.
 * - Aborting ends the worker, since a running sum can't be interrupted; the promise rejects with
 *   the signal's reason.
 * - Every way a worker can fail settles the promise with a `TapeError`: a script that doesn't
 *   load, an unreadable reply, an error inside, silence, and an engine that can't look.
 * - The photo stays at hand here, so that graduations can be touched whatever became of the worker.
 *
 * @param startWorker makes the worker; tests hand in a stand-in
 */
export function createTapeBridge(startWorker: () => Worker, engine: Engine) {
  let worker: Worker | undefined;
  let pending: Pending | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let lastId = 0;
  let photo: GreyImage | undefined;
  let engineFault: TapeFault | undefined;

  function stop(reason: unknown) {
    clearTimeout(timer);
    worker?.terminate();
    worker = undefined;
    const dropped = pending;
    pending = undefined;
    dropped?.reject(reason);
  }

  function fail(fault: TapeFault, detail?: string) {
    stop(new TapeError(fault, detail));
  }

  /** From now on it must speak within the limit, or be of use again before it is let go. */
  function watch() {
    clearTimeout(timer);
    timer = pending
      ? setTimeout(() => fail('reader-slow'), SILENCE_MS)
      : setTimeout(() => stop(undefined), IDLE_MS);
  }

  function started(): Worker {
    if (worker) return worker;
    const fresh = startWorker();
    worker = fresh;
    fresh.addEventListener('message', ({ data }: MessageEvent<FromTapeWorker>) => {
      if (worker === fresh) hear(fresh, data);
    });
    fresh.addEventListener('error', (event) => {
      // A script that did not load gives a bare event with no message.
      if (worker === fresh) fail('reader-failed', event.message);
    });
    fresh.addEventListener('messageerror', () => {
      if (worker === fresh) fail('reader-failed', 'an unreadable reply');
    });
    if (photo) post(fresh, { kind: 'job', id: 0, job: { kind: 'hold', image: photo } });
    return fresh;
  }

  function hear(from: Worker, message: FromTapeWorker) {
    if (message.kind === 'page') {
      void look(from, message.page, message.bytes);
      return;
    }
    if (message.id !== pending?.id) return; // answers something no longer wanted
    const { settle, reject, onProgress } = pending;
    if (message.kind !== 'progress') pending = undefined;
    watch();
    switch (message.kind) {
      case 'progress':
        return onProgress?.(message.done);
      case 'done':
        return settle(message.answer);
      case 'failed':
        return reject(new TapeError(engineFault ?? 'reader-failed', message.message));
    }
  }

  /** Lets the engine look at a page. Its own time limits hold, so the worker may be silent. */
  async function look(from: Worker, page: number, bytes: Uint8Array) {
    clearTimeout(timer);
    const symbols = await engine.symbols(bytes).catch((error: unknown) => {
      // What fails late is not what a newer photo failed of.
      if (worker === from) engineFault = error instanceof TapeError ? error.fault : 'engine-failed';
      return undefined;
    });
    if (worker !== from) return;
    watch();
    post(from, { kind: 'symbols', page, symbols });
  }

  function ask<Kind extends TapeJob['kind']>(
    job: Extract<TapeJob, { kind: Kind }>,
    signal: AbortSignal,
    onProgress?: (done: number) => void,
  ): Promise<TapeAnswers[Kind]> {
    if (signal.aborted) return Promise.reject(signal.reason);
    if (pending) stop(new DOMException('something newer is wanted', 'AbortError'));
    engineFault = undefined;
    const onAbort = () => stop(signal.reason);
    const done = new Promise<TapeAnswers[Kind]>((resolve, reject) => {
      lastId += 1;
      const settle = (answer: TapeAnswers[TapeJob['kind']]) => resolve(answer as TapeAnswers[Kind]);
      pending = { id: lastId, settle, reject, onProgress };
      watch();
      post(started(), { kind: 'job', id: lastId, job });
    });
    signal.addEventListener('abort', onAbort, { once: true });
    return done.finally(() => signal.removeEventListener('abort', onAbort));
  }

  return {
    /** Reads a photo, first where the maker points, and keeps it at hand for `snap` and `touch`. `onProgress` gets 0 to 1. */
    read(
      image: GreyImage,
      signal: AbortSignal,
      onProgress?: (done: number) => void,
      at?: Point,
    ): Promise<TapeReading> {
      photo = undefined; // a worker started now gets the photo with the job
      const reading = ask({ kind: 'read', image, ...(at ? { at } : {}) }, signal, onProgress);
      photo = image;
      return reading;
    },
    /** Follows the tape from frame to frame. A frame is not kept. */
    frame: (image: GreyImage, signal: AbortSignal): Promise<LiveReading> =>
      ask({ kind: 'frame', image }, signal),
    /** The graduation under the finger; the same place when there is none. */
    snap: (at: Point, signal: AbortSignal): Promise<Placed> => ask({ kind: 'snap', at }, signal),
    /** The scale that two or more touched graduations make. */
    touch: (touches: readonly Touch[], signal: AbortSignal): Promise<TouchedScale> =>
      ask({ kind: 'touch', touches }, signal),
    /** Starts worker and engine ahead, while the maker frames the photo. */
    warm() {
      started();
      watch();
      engine.warm();
    },
    /** Forgets the photo and ends the worker; the engine stays for the next time. */
    close() {
      photo = undefined;
      stop(new DOMException('the screen was left', 'AbortError'));
    },
  };
}

function post(to: Worker, message: ToTapeWorker): void {
  to.postMessage(message);
}
