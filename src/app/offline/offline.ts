import type { OfflineBlock, OfflineNews } from './news.ts';
import { watchForTouch } from './touch.ts';

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
  const giveUp = () => void touch.pause().then(() => giveUpPage(news, reload));
  reloadWhenTakenOver(workers, giveUp);
  // A worker is active only once everything on its list has been kept.
  void workers.ready.then(() => news.onReady());
  const fail = (block: OfflineBlock) => {
    news.onSettled();
    // A page that is controlled works without a connection whatever was refused just now.
    if (!workers.controller) news.onBlocked(block);
  };
  void afterFirstPaint()
    .then(() => import('./register.ts'))
    .then(
      ({ register }) => register(news, touch, giveUp).catch(() => fail('refused')),
      () => fail('incomplete'),
    );
}

function serviceWorkers(): ServiceWorkerContainer | OfflineBlock {
  if (!window.isSecureContext) return 'insecure';
  try {
    return navigator.serviceWorker ?? 'unsupported';
  } catch {
    return 'refused'; // reading it throws inside a sandboxed frame
  }
}

/**
 * The first worker ever to claim the page brings the build the page already shows;
 * any later one was let in by a maker's press here or in another page.
 */
function reloadWhenTakenOver(workers: ServiceWorkerContainer, giveUp: () => void): void {
  let controlled = workers.controller !== null;
  workers.addEventListener('controllerchange', () => {
    if (controlled) giveUp();
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
