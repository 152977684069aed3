import type { Page } from 'playwright-core';

/** The paths of all that a page's service worker has stored. */
export function keptPaths(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const all = await Promise.all((await caches.keys()).map((name) => caches.open(name)));
    const keys = await Promise.all(all.map((cache) => cache.keys()));
    return keys.flat().map(({ url }) => new URL(url).pathname);
  });
}
