import type { Workbox, WorkboxLifecycleWaitingEvent } from 'workbox-window';
import { type Touch, watchForTouch } from './offline-touch.ts';

/**
 * Why the app can't be had without a connection.
 * - `insecure`: the address isn't https, so the browser offers no service worker;
 * - `unsupported`: the browser has none, or hides it (some private windows);
 * - `refused`: it has them and refused ours (blocked by a setting, or storage is full);
 * - `incomplete`: a part didn't arrive; it is tried again at the next start or connection.
 */
export type OfflineBlock = 'insecure' | 'unsupported' | 'refused' | 'incomplete';

/** What the app wants to know, and what it must do before the page is given up. */
export interface OfflineNews {
  /** Every part of the app is on the device. Said once at each start. */
  onReady(): void;
  /**
   * A newer build waits. `apply` takes it over, and reloads every open page of the app:
   * this one at once, another one that is being typed in at the next pause.
   */
  onUpdate(apply: () => void): void;
  onBlocked(reason: OfflineBlock): void;
  /** Puts away what was typed. The page reloads only after this has settled without an error. */
  flush(): void | Promise<void>;
}

/** A worker that doesn't answer within this is asked again by the maker's own press. */
const ANSWER_MS = 2000;

/**
 * Keeps the app on the device and offers newer builds. Call it once, at the start,
 * before anything can be typed: it remembers whether the page was controlled then.
 * It never throws and never rejects.
 *
 * A build that was already waiting at the start is taken over at once, if nothing has
 * been touched and no other page of the app is open. Any other waits for `apply`.
 *
 * @param reload how the page is loaded again; tests hand in a stand-in
 */
export function watchOffline(news: OfflineNews, reload = () => location.reload()): void {
  const workers = serviceWorkers();
  if (typeof workers === 'string') {
    news.onBlocked(workers);
    return;
  }
  const touch = watchForTouch();
  reloadWhenTakenOver(workers, touch, () => giveUpPage(news, reload));
  // A worker is active only once everything on its list has been kept.
  void workers.ready.then(() => news.onReady());
  afterFirstPaint()
    .then(() => register(news, touch))
    .catch(() => {
      // A page that is controlled works without a connection whatever was refused just now.
      if (!workers.controller) news.onBlocked('refused');
    });
}

function serviceWorkers(): ServiceWorkerContainer | OfflineBlock {
  if (!window.isSecureContext) return 'insecure';
  try {
    return navigator.serviceWorker ?? 'unsupported';
  } catch {
    return 'refused'; // reading it throws inside a sandboxed frame
  }
}

async function register(news: OfflineNews, touch: Touch): Promise<void> {
  const { Workbox, messageSW } = await import('workbox-window');
  const book = new Workbox('./sw.js', { updateViaCache: 'none' });
  let registration: ServiceWorkerRegistration | undefined;

  const takeOver = async (waiting: ServiceWorker | null | undefined, onlyIfAlone: boolean) => {
    if (!waiting) return false;
    const asked = messageSW(waiting, { type: 'SKIP_WAITING', onlyIfAlone });
    return (await Promise.race([asked, after(ANSWER_MS)])) === true;
  };
  const offer = async ({ sw, wasWaitingBeforeRegister }: WorkboxLifecycleWaitingEvent) => {
    if (wasWaitingBeforeRegister && !touch.ever() && (await takeOver(sw, true))) return;
    // By the time of the press a yet newer build may be the one that waits.
    news.onUpdate(() => {
      touch.agree();
      void takeOver(registration?.waiting, false);
    });
  };

  book.addEventListener('waiting', (event) => void offer(event));
  book.addEventListener('redundant', () => {
    if (!registration?.active) news.onBlocked('incomplete');
  });
  registration = await book.register({ immediate: true });
  if (registration) lookForUpdates(book);
}

/** A phone keeps a page open for days, so a start is not the only time to look. */
function lookForUpdates(book: Workbox): void {
  const look = () => {
    if (document.visibilityState === 'visible') book.update().catch(() => undefined);
  };
  document.addEventListener('visibilitychange', look);
  window.addEventListener('online', look);
}

/**
 * The first worker ever to claim the page brings the build the page already shows;
 * any later one was let in by a maker's press here or in another page.
 */
function reloadWhenTakenOver(
  workers: ServiceWorkerContainer,
  touch: Touch,
  giveUp: () => void,
): void {
  let controlled = workers.controller !== null;
  workers.addEventListener('controllerchange', () => {
    if (controlled) void touch.pause().then(giveUp);
    controlled = true;
  });
}

async function giveUpPage(news: OfflineNews, reload: () => void): Promise<void> {
  try {
    await news.flush();
    if (await pageComesBack()) {
      reload();
      return;
    }
  } catch {
    // What was typed could not be put away: the page stays as it is.
  }
  news.onUpdate(() => void giveUpPage(news, reload));
}

/** Whether a reload would find the page: on the device, or else over a connection. */
async function pageComesBack(): Promise<boolean> {
  const kept = await caches.match('./index.html', { ignoreSearch: true });
  return kept !== undefined || navigator.onLine;
}

function afterFirstPaint(): Promise<void> {
  return new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
}

function after(milliseconds: number): Promise<void> {
  return new Promise((done) => setTimeout(done, milliseconds));
}
