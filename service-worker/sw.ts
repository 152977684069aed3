import type { RouteHandlerCallbackOptions } from 'workbox-core';
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
registerRoute(
  ({ sameOrigin, url }) => sameOrigin && url.pathname.includes('/engine/'),
  // The page puts these files into caches of their own, which outlive an update of the app.
  async ({ request }) => (await caches.match(request)) ?? fetch(request),
);
registerRoute(
  ({ sameOrigin, url }) => sameOrigin && url.pathname.endsWith('/share'),
  share,
  'POST',
);
// Without this the page of a first visit stays uncontrolled, and the next build
// would take it over unasked.
clientsClaim();

/** What another app has handed over, until the page asks for it. It is never stored. */
let shared: { file: File; taken: () => void } | undefined;

/** The page has to start first, on a slow phone; longer than this it is not coming. */
const SHARED_MS = 60_000;

/** Takes what another app shares and opens the page for it. */
async function share({ event, request }: RouteHandlerCallbackOptions): Promise<Response> {
  const form = await request.formData().catch(() => undefined);
  const garment = form?.get('garment');
  const file = garment instanceof File ? garment : form?.get('photo');
  shared?.taken();
  shared = undefined;
  if (file instanceof File) {
    // The worker must not be put to sleep while it holds the only copy.
    const held = new Promise<void>((taken) => {
      shared = { file, taken };
      setTimeout(taken, SHARED_MS);
    });
    event.waitUntil(held);
  }
  const place = garment instanceof File ? './#/garments/receive' : './#/tape?shared=1';
  return Response.redirect(place, 303);
}

self.addEventListener('message', ({ data, ports: [asker] }) => {
  if ((data as { type?: unknown } | null)?.type !== 'SHARED_FILE') return;
  asker?.postMessage(shared?.file);
  shared?.taken();
  shared = undefined;
});

// Answered by a worker that runs: whoever asks wants to know that.
self.addEventListener('message', ({ data, ports: [asker] }) => {
  if ((data as { type?: unknown } | null)?.type === 'AWAKE') asker?.postMessage(true);
});

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
