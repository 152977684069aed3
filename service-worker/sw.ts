import { clientsClaim } from 'workbox-core';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  type PrecacheEntry,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

declare const self: ServiceWorkerGlobalScope & {
  /** Filled in by the build from the allow-list in vite.config.ts. */
  readonly __WB_MANIFEST: PrecacheEntry[];
};

/**
 * What a page may say to a worker that waits. It is answered with whether the worker takes over.
 *
 * `onlyIfAlone`: take over only when one page is open, since every open page reloads.
 */
interface TakeOver {
  type: 'SKIP_WAITING';
  onlyIfAlone: boolean;
}

precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));
// Without this the page of a first visit stays uncontrolled, and the next build
// would take it over unasked.
clientsClaim();

self.addEventListener('message', (event) => {
  if (isTakeOver(event.data)) event.waitUntil(answer(event.data, event.ports[0]));
});

async function answer({ onlyIfAlone }: TakeOver, asker: MessagePort | undefined) {
  const willing = !onlyIfAlone || (await openPages()) <= 1;
  asker?.postMessage(willing);
  if (willing) await self.skipWaiting();
}

async function openPages() {
  const pages = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  return pages.length;
}

function isTakeOver(data: unknown): data is TakeOver {
  return (
    typeof data === 'object' &&
    data !== null &&
    'type' in data &&
    data.type === 'SKIP_WAITING' &&
    'onlyIfAlone' in data
  );
}
