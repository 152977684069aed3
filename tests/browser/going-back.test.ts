import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { phoneWords } from '#words/phone/phone-words.ts';
import { launchBrowser, openApp, waitUntilKept } from './harness.ts';
import { photoOf } from './tape-pictures.ts';

/*
 * A page that is left and gone back to comes from the browser's memory, as it was left, unless
 * something on it keeps the browser from that (HTML standard, "not restored reasons").
 */

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser(
    ['--use-fake-ui-for-media-stream', '--use-fake-device-for-media-stream'],
    ['--disable-back-forward-cache'],
  );
});

afterAll(() => browser.close());

/** Where and how a page is left. */
interface Left {
  name: string;
  hash: string;
  steps: (page: Page) => Promise<unknown>;
}

const opened = (page: Page) => page.locator('h1').first().waitFor();
const LEFT: readonly Left[] = [
  ...['#/', '#/closures', '#/edging/glass', '#/settings'].map((hash) => ({
    name: hash,
    hash,
    steps: opened,
  })),
  {
    name: 'an open garment',
    hash: '#/garments',
    steps: async (page) => {
      await page.locator('.garments article:has(form) > .keys > button.plain').first().click();
      await page.locator('.next-key .number').waitFor();
    },
  },
  {
    name: 'a tape that has been read',
    hash: '#/tape',
    steps: async (page) => {
      const { file } = photoOf('cm tape on cloth', 3);
      await page.getByLabel('Choose a photo').setInputFiles(file);
      await page.getByRole('slider').waitFor();
    },
  },
  {
    name: 'a PDF that has been made',
    hash: '#/edging/paper',
    steps: async (page) => {
      await page.getByRole('button', { name: 'Make the PDF' }).tap();
      await page.getByRole('button', { name: 'Save the PDF' }).waitFor();
    },
  },
];

/** How often a page is left that the browser gave up for a reason that passes. */
const TIMES = 3;

/**
 * Reasons that pass: one of the browser's own, which it doesn't tell and no page can help, want of
 * room, say; a part that was still being fetched ahead when the page was left; and the lock under
 * which a page that was loaded anew looks whether the tape reader is stored (`engine-lock.ts`).
 */
const PASSING: readonly string[] = ['masked', 'outstanding-network-request', 'weblocks-contention'];

function passes(found: unknown): boolean {
  return Array.isArray(found) && found.length > 0 && found.every((one) => PASSING.includes(one));
}

/** Leaves the page and goes back; says why it did not come from memory, as the browser names it. */
async function backTo(page: Page): Promise<'from memory' | string[]> {
  await page.evaluate(() => {
    document.documentElement.dataset.left = 'here';
  });
  await page.goto(new URL('robots.txt', page.url()).href);
  await Promise.all([
    page.waitForEvent('framenavigated'),
    page.evaluate(() => void setTimeout(() => history.back())),
  ]);
  await page.waitForFunction(() => document.querySelector('#app')?.childElementCount);
  return page.evaluate(() => {
    if (document.documentElement.dataset.left === 'here') return 'from memory';
    const [entry] = performance.getEntriesByType('navigation') as (PerformanceNavigationTiming & {
      notRestoredReasons?: { reasons: { reason: string }[] | null };
    })[];
    return entry?.notRestoredReasons?.reasons?.map(({ reason }) => reason) ?? [];
  });
}

test('a page gone back to comes from memory, whatever screen it was left on', async () => {
  const found: Record<string, unknown> = {};
  const app = await openApp(browser, inject('address'));
  await waitUntilKept(app.page);
  // While what reads a tape is being stored, the page holds a lock for it, which the browser keeps in no memory.
  await app.page.getByText(phoneWords.tape.here).waitFor();
  for (const { name, hash, steps } of LEFT) {
    for (let time = 1; time <= TIMES; time++) {
      // Playwright does not see a page that came from memory go to another part of itself.
      await app.page.evaluate((to) => location.assign(to), hash);
      await steps(app.page);
      found[name] = await backTo(app.page);
      if (!passes(found[name])) break;
    }
  }
  expect(app.complaints).toEqual([]);
  await app.close();
  expect(found).toEqual(Object.fromEntries(LEFT.map(({ name }) => [name, 'from memory'])));
}, 120_000);

test('one left with the camera on does not: browsers keep no page that holds a camera', async () => {
  const app = await openApp(browser, inject('address'), { at: '#/tape' });
  await waitUntilKept(app.page);
  await app.page.getByText('Live').tap();
  await app.page.waitForFunction(() => document.querySelector('video')?.srcObject);
  expect(await backTo(app.page)).toEqual(['mediastream']);
  // The same screen, with the camera off until it is asked for again.
  await app.page.getByText('Live').waitFor();
  expect(app.complaints).toEqual([]);
  await app.close();
});
