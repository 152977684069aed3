import { Workbox, type WorkboxLifecycleWaitingEvent } from 'workbox-window';
import { quietly } from '../tape/engine-lock.ts';
import type { OfflineNews } from './news.ts';
import { isAlone, rest, type Taken, takeOver } from './take.ts';
import type { Touch } from './touch.ts';

/** How often this tab has been loaded anew, unasked, for a worker that was held up. */
const HELD_UP_KEY = 'held-up';
const MOST_LOADS = 3;

/**
 * Registers the worker that keeps the app on the device, and takes over or offers the newer
 * builds it finds. Rejects when the browser refuses.
 *
 * @param giveUp loads the page anew, once nothing is lost by it
 */
export async function register(news: OfflineNews, touch: Touch, giveUp: () => void): Promise<void> {
  const book = new Workbox('./sw.js', { updateViaCache: 'none' });
  let registration: ServiceWorkerRegistration | undefined;
  const offer = () => news.onUpdate(() => void press());
  const press = async () => {
    touch.agree();
    news.onTaking('asked');
    // By the time of the press a yet newer build may be the one that waits.
    const { waiting } = registration ?? {};
    if ((await quietly(() => takePressed(waiting, news, giveUp))) !== 'yes') offer();
  };
  const arrive = async ({ sw, wasWaitingBeforeRegister }: WorkboxLifecycleWaitingEvent) => {
    if (sw && wasWaitingBeforeRegister && !touch.ever()) {
      const taken = await quietly(() => takeOver(sw, true));
      if (taken === 'yes') return;
      if (taken === 'held up') {
        if (mayLoad()) return giveUp();
        void quietly(() => rest(sw));
      }
    }
    offer();
    news.onSettled();
  };

  book.addEventListener('waiting', (event) => void arrive(event));
  book.addEventListener('redundant', () => {
    if (!registration?.active) news.onBlocked('incomplete');
  });
  registration = await book.register({ immediate: true });
  if (registration) lookForUpdates(book);
  if (registration?.waiting) return;
  forgetLoads();
  news.onSettled();
}

/** Takes over a build that the maker has asked for; a page that is loaded anew counts as that. */
async function takePressed(
  waiting: ServiceWorker | null | undefined,
  news: OfflineNews,
  giveUp: () => void,
): Promise<Taken> {
  const taken = await takeOver(waiting, false);
  if (taken !== 'held up' || !waiting) return taken;
  if (await isAlone(waiting)) {
    giveUp();
    return 'yes';
  }
  news.onTaking('held up');
  return rest(waiting);
}

/** Loading a page anew unasked is done a few times in a tab, whatever comes of it. */
function mayLoad(): boolean {
  try {
    const loads = Number(sessionStorage.getItem(HELD_UP_KEY));
    sessionStorage.setItem(HELD_UP_KEY, String(loads + 1));
    return loads < MOST_LOADS;
  } catch {
    return false; // storage refused: it can't be known
  }
}

function forgetLoads(): void {
  try {
    sessionStorage.removeItem(HELD_UP_KEY);
  } catch {
    // storage refused: nothing was counted
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
