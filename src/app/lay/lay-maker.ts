import type { FromLayWorker, ToLayWorker } from '../../lay/protocol.ts';
import type { Lay, LayTask } from '../../lay/task.ts';

/** What is looked for, from what on, and for how many seconds at most. */
export interface LayWish {
  task: LayTask;
  from?: Lay | undefined;
  seconds: number;
}

interface LookOptions {
  /** Calls it off: the best that was told is the best there is. */
  signal: AbortSignal;
  /** Told each lay that is shorter than all before. */
  onBetter: (lay: Lay) => void;
}

/** What the phone gives to look with. */
export interface Phone {
  startWorker: () => Worker;
  /** How many workers look at once, each its own way. */
  workers: number;
  page: EventTarget & { readonly hidden: boolean };
  /** In ms. */
  now: () => number;
}

/** The worker beside the one that shows what is found makes a small phone no quicker. */
const MOST_WORKERS = 2;

function thisPhone(): Phone {
  return {
    startWorker: () =>
      new Worker(new URL('../../workers/lay.ts', import.meta.url), { type: 'module', name: 'lay' }),
    workers: Math.min(MOST_WORKERS, navigator.hardwareConcurrency || 1),
    page: document,
    now: () => performance.now(),
  };
}

/** What comes of looking. */
interface Heard {
  better: (lay: Lay) => void;
  done: (fits: boolean) => void;
  failed: (why: unknown) => void;
}

/** Workers that look at once. What one says after it was let go is not heard. */
function crewOf({ startWorker, workers }: Phone, heard: Heard) {
  const running = new Set<Worker>();
  const end = (worker: Worker) => {
    worker.terminate();
    return running.delete(worker);
  };
  const letGo = () => {
    for (const worker of running) end(worker);
  };
  /** One that fails leaves the others looking. */
  const lose = (worker: Worker, why: Error) => {
    if (end(worker) && running.size === 0) heard.failed(why);
  };
  const hear = (worker: Worker, told: FromLayWorker) => {
    if (!running.has(worker)) return;
    if (told.kind === 'better') return heard.better(told.lay);
    end(worker);
    // What fits nowhere for one fits nowhere for the other.
    if (!told.fits || running.size === 0) heard.done(told.fits);
  };
  const start = (job: (place: number) => ToLayWorker) => {
    for (let place = 0; place < workers; place++) {
      const worker = startWorker();
      running.add(worker);
      worker.addEventListener('message', ({ data }: MessageEvent<FromLayWorker>) =>
        hear(worker, data),
      );
      worker.addEventListener('error', (event) =>
        lose(worker, new Error(event.message || 'no worker')),
      );
      worker.addEventListener('messageerror', () =>
        lose(worker, new Error('an answer was unreadable')),
      );
      worker.postMessage(job(place));
    }
  };
  return { start, letGo, isAtWork: () => running.size > 0 };
}

/**
 * Looks for ever shorter lays in workers of its own, which are let go afterwards. While the page is
 * hidden none runs, and what was found is gone on from when it is back.
 * @returns whether all pieces fit on the cloth at all
 * @throws the reason it was called off for; or an error where no worker can be started or goes on
 */
export function lookForLay(
  { task, from, seconds }: LayWish,
  { signal, onBetter }: LookOptions,
  phone: Phone = thisPhone(),
): Promise<boolean> {
  return new Promise((done, failed) => {
    signal.throwIfAborted();
    const { page, workers, now } = phone;
    let [best, left, began, seed] = [from, seconds, 0, 1];
    const settle = (end: () => void) => {
      crew.letGo();
      signal.removeEventListener('abort', stop);
      page.removeEventListener('visibilitychange', turn);
      end();
    };
    const stop = () => settle(() => failed(signal.reason));
    const crew = crewOf(phone, {
      better: (lay) => {
        if (best && lay.length >= best.length) return;
        best = lay;
        onBetter(lay);
      },
      done: (fits) => settle(() => done(fits)),
      failed: (why) => settle(() => failed(why)),
    });
    const goOn = () => {
      began = now();
      const way = { task, seconds: left, ...(best && { from: best }) };
      // Never the same way twice, also after a pause.
      crew.start((place) => ({ ...way, seed: seed + place }));
      seed += workers;
    };
    const turn = () => {
      if (page.hidden && crew.isAtWork()) {
        left = Math.max(1, left - (now() - began) / 1000);
        crew.letGo();
      } else if (!page.hidden && !crew.isAtWork()) {
        try {
          goOn();
        } catch (error) {
          settle(() => failed(error));
        }
      }
    };
    signal.addEventListener('abort', stop);
    page.addEventListener('visibilitychange', turn);
    turn();
  });
}
