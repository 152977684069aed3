import { messageSW, Workbox, type WorkboxLifecycleWaitingEvent } from 'workbox-window';
import type { OfflineNews } from './offline-news.ts';
import type { Touch } from './offline-touch.ts';

/** A worker that doesn't answer within this is asked again by the maker's own press. */
const ANSWER_MS = 2000;

/** A worker that is willing has taken over long before this, or is held up. */
const HELD_UP_MS = 2000;

/** Says that this tab has been loaded anew once already for a worker that was held up. */
const HELD_UP_KEY = 'held-up';

/**
 * Registers the worker that keeps the app on the device, and takes over or offers the newer
 * builds it finds. Rejects when the browser refuses.
 *
 * @param giveUp loads the page anew, once nothing is lost by it
 */
export async function register(news: OfflineNews, touch: Touch, giveUp: () => void): Promise<void> {
  const book = new Workbox('./sw.js', { updateViaCache: 'none' });
  let registration: ServiceWorkerRegistration | undefined;
  const press = async () => {
    touch.agree();
    // By the time of the press a yet newer build may be the one that waits.
    if ((await takeOver(registration?.waiting, false)) === 'held up') giveUp();
  };
  const arrive = async ({ sw, wasWaitingBeforeRegister }: WorkboxLifecycleWaitingEvent) => {
    if (wasWaitingBeforeRegister && !touch.ever()) {
      const taken = await takeOver(sw, true);
      if (taken === 'yes') return;
      if (taken === 'held up' && firstTime()) return giveUp();
    }
    news.onUpdate(() => void press());
    news.onSettled();
  };

  book.addEventListener('waiting', (event) => void arrive(event));
  book.addEventListener('redundant', () => {
    if (!registration?.active) news.onBlocked('incomplete');
  });
  registration = await book.register({ immediate: true });
  if (!registration?.waiting) news.onSettled();
  if (registration) lookForUpdates(book);
}

/**
 * Asks a worker that waits to take over.
 *
 * It may be willing and yet be held up: browsers end the old worker first, and a request that
 * comes while it ends starts it again, after which the new one waits until the old has been
 * idle for long. Only loading a page makes them try again; asking the worker again doesn't.
 */
async function takeOver(
  waiting: ServiceWorker | null | undefined,
  onlyIfAlone: boolean,
): Promise<'yes' | 'no' | 'held up'> {
  if (!waiting) return 'no';
  const asked = messageSW(waiting, { type: 'SKIP_WAITING', onlyIfAlone });
  if ((await Promise.race([asked, after(ANSWER_MS)])) !== true) return 'no';
  await Promise.race([changeOf(waiting), after(HELD_UP_MS)]);
  return waiting.state === 'installed' ? 'held up' : 'yes';
}

function changeOf(worker: ServiceWorker): Promise<void> {
  if (worker.state !== 'installed') return Promise.resolve();
  return new Promise((done) => {
    worker.addEventListener('statechange', () => done(), { once: true });
  });
}

/** Loading a page anew unasked is done once in a tab, whatever comes of it. */
function firstTime(): boolean {
  try {
    const first = sessionStorage.getItem(HELD_UP_KEY) === null;
    sessionStorage.setItem(HELD_UP_KEY, 'once');
    return first;
  } catch {
    return false; // storage refused: it can't be known
  }
}

/** A phone keeps a page open for days, so a start is not the only time to look. */
function lookForUpdates(book: Workbox): void {
  const look = () => {
    if (document.visibilityState === 'visible') book.update().catch(() => undefined);
  };
  document.addEventListener('visibilitychange', look);
  window.addEventListener('online', look);
}

function after(milliseconds: number): Promise<void> {
  return new Promise((done) => setTimeout(done, milliseconds));
}
