import type { Page, Route } from 'playwright-core';

/** What a file is given to be run in, once it is there, before the next one is handed out. */
const RUN_MS = 1000;

/**
 * Opens the page over a connection that hands out one file at a time, until it is of use:
 * a press of the pad gives an answer, unless something else is waited for.
 *
 * @returns the path of every file asked for by the time the one that made it answer was
 *   handed out: what is asked for after that does not keep the maker waiting
 */
export async function untilFirstAnswer(
  page: Page,
  url: string,
  isOfUse: (page: Page) => Promise<boolean> = pressAnswers,
): Promise<string[]> {
  const asked: string[] = [];
  const held: Route[] = [];
  await page.route('**/*', (route) => {
    asked.push(new URL(route.request().url()).pathname);
    held.push(route);
  });
  const opening = page.goto(url, { waitUntil: 'commit' });
  for (;;) {
    await waitFor(() => held.length > 0);
    const askedSoFar = [...asked];
    await held.shift()?.continue();
    await opening;
    if (
      await answers(
        () => isOfUse(page),
        () => held.length > 0,
      )
    )
      return askedSoFar;
  }
}

/** Whether it is of use; no, when it doesn't in time and there is more to hand out. */
async function answers(isOfUse: () => Promise<boolean>, isMore: () => boolean): Promise<boolean> {
  const late = Date.now() + RUN_MS;
  let answered = false;
  await waitFor(async () => {
    answered = await isOfUse();
    return answered || (Date.now() > late && isMore());
  });
  return answered;
}

async function pressAnswers(page: Page): Promise<boolean> {
  const key = page.locator('.pad button', { hasText: /^7$/ });
  const answer = page.locator('.answer');
  if (!(await key.isVisible()) || !(await answer.isVisible())) return false;
  const before = await answer.textContent();
  await key.tap({ timeout: RUN_MS }).catch(() => undefined); // it may lie under something yet
  return (await answer.textContent()) !== before;
}

async function waitFor(what: () => boolean | Promise<boolean>): Promise<void> {
  for (let waited = 0; !(await what()); waited += 20) {
    if (waited > 10_000) throw new Error('waited in vain for the page to answer');
    await new Promise((done) => setTimeout(done, 20));
  }
}
