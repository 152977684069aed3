import type { Page, Route } from 'playwright-core';

/** A phone's wait for one file to be run, once it is there. */
const RUN_MS = 600;

/**
 * Opens the page over a connection that hands out one file at a time, until a press
 * of the pad gives an answer.
 *
 * @returns the path of every file asked for before the one that made it answer was handed
 *   out, and that one: what comes after it does not keep the maker waiting
 */
export async function untilFirstAnswer(page: Page, url: string): Promise<string[]> {
  const asked: string[] = [];
  const held: Route[] = [];
  await page.route('**/*', (route) => {
    asked.push(new URL(route.request().url()).pathname);
    held.push(route);
  });
  const opening = page.goto(url, { waitUntil: 'commit' });
  let askedSoFar: string[] = [];
  do {
    await waitFor(() => held.length > 0);
    askedSoFar = [...asked];
    await held.shift()?.continue();
    await opening;
  } while (!(await answersSoon(page)));
  return askedSoFar;
}

async function answersSoon(page: Page): Promise<boolean> {
  const key = page.locator('.pad button', { hasText: /^7$/ });
  const answer = page.locator('.answer');
  try {
    await key.waitFor({ timeout: RUN_MS });
    const before = await answer.textContent({ timeout: RUN_MS });
    await key.tap({ timeout: RUN_MS });
    await waitFor(async () => (await answer.textContent()) !== before);
    return true;
  } catch {
    return false;
  }
}

async function waitFor(what: () => boolean | Promise<boolean>): Promise<void> {
  for (let waited = 0; !(await what()); waited += 20) {
    if (waited > 10_000) throw new Error(`waited in vain for ${what}`);
    await new Promise((done) => setTimeout(done, 20));
  }
}
