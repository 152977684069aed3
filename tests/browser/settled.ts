import type { Page, Request } from 'playwright-core';

interface Requests {
  pending: Set<Request>;
  begun: number;
}

const seen = new WeakMap<Page, Requests>();

/** So often the page has been idle with nothing new asked for: what fetches late does so by then. */
const IDLE_TIMES = 5;

/** Follows what a page asks for, from now on. Every page of the harness is. */
export function watchRequests(page: Page): void {
  const requests: Requests = { pending: new Set(), begun: 0 };
  seen.set(page, requests);
  page.on('request', (request) => {
    // What the page before had asked for may never be told of again.
    if (request.isNavigationRequest() && request.frame() === page.mainFrame()) {
      requests.pending.clear();
    }
    requests.begun += 1;
    requests.pending.add(request);
  });
  const end = (request: Request) => requests.pending.delete(request);
  page.on('requestfinished', end);
  page.on('requestfailed', end);
}

/** Until all that the page has asked for has come and has run, and it asks for nothing more. */
export async function settled(page: Page): Promise<void> {
  const requests = seen.get(page);
  if (!requests) throw new Error('this page’s requests are not watched');
  for (let idle = 0; idle < IDLE_TIMES; idle++) {
    const { begun } = requests;
    while (requests.pending.size > 0) await anEnd(page);
    await page.evaluate(paintedAndIdle);
    if (requests.begun !== begun || requests.pending.size > 0) idle = -1;
  }
}

function anEnd(page: Page): Promise<void> {
  return new Promise((ended) => {
    const end = () => {
      page.off('requestfinished', end);
      page.off('requestfailed', end);
      page.off('request', end);
      ended();
    };
    page.on('requestfinished', end);
    page.on('requestfailed', end);
    page.on('request', end);
  });
}

/** Runs in the page. A browser whose processor others use may never call itself idle. */
function paintedAndIdle(): Promise<void> {
  return new Promise((idle) => {
    requestAnimationFrame(() =>
      setTimeout(() => requestIdleCallback(() => idle(), { timeout: 1000 })),
    );
  });
}
