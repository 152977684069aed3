import { messageSW } from 'workbox-window';

/**
 * What came of asking a worker to take over.
 * - `no`: it doesn't answer, another page is open, or a yet newer build has come;
 * - `held up`: it is willing, and the browser doesn't let it yet.
 */
export type Taken = 'yes' | 'no' | 'held up';

/** A worker that doesn't answer within this is asked again by the maker's own press. */
const ANSWER_MS = 2000;

/** A worker of a build that doesn't answer this is running by then. */
const AWAKE_MS = 5000;

/** A worker that is willing has taken over long before this, or is held up. */
const HELD_UP_MS = 2000;

/** A browser lets a worker that is held up take over when the older one was idle for 30 s. */
const REST_MS = 60_000;

/**
 * Asks a worker that waits to take over.
 *
 * It may be willing and yet be held up, by requests that keep the older worker awake: then it
 * waits until that has been idle for long. Where one page is open, loading it makes the browser
 * try again; asking the worker again doesn't.
 */
export async function takeOver(
  waiting: ServiceWorker | null | undefined,
  onlyIfAlone: boolean,
): Promise<Taken> {
  if (!waiting) return 'no';
  await wakeOlder();
  if (!(await answers(waiting, onlyIfAlone))) return 'no';
  return changed(waiting, HELD_UP_MS);
}

/**
 * Until the worker in charge runs. A browser ends one that runs for the newer one as soon as it is
 * idle; one that is just being started, by whatever request, is left until it was idle for 30 s.
 */
async function wakeOlder(): Promise<void> {
  const older = navigator.serviceWorker.controller;
  if (older) await Promise.race([messageSW(older, { type: 'AWAKE' }), after(AWAKE_MS)]);
}

/** Whether the page that asks is the only one open of the app. */
export function isAlone(waiting: ServiceWorker): Promise<boolean> {
  return answers(waiting, true);
}

/** Until a worker that is held up takes over, or it is given up. */
export function rest(waiting: ServiceWorker): Promise<Taken> {
  return changed(waiting, REST_MS);
}

async function answers(waiting: ServiceWorker, onlyIfAlone: boolean): Promise<boolean> {
  const asked = messageSW(waiting, { type: 'SKIP_WAITING', onlyIfAlone });
  return (await Promise.race([asked, after(ANSWER_MS)])) === true;
}

async function changed(worker: ServiceWorker, most: number): Promise<Taken> {
  const change = new Promise<void>((done) => {
    worker.addEventListener('statechange', () => done(), { once: true });
  });
  if (worker.state === 'installed') await Promise.race([change, after(most)]);
  if (worker.state === 'installed') return 'held up';
  return worker.state === 'redundant' ? 'no' : 'yes';
}

function after(milliseconds: number): Promise<void> {
  return new Promise((done) => setTimeout(done, milliseconds));
}
