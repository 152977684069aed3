import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { type Served, serveApp } from '../../browser/built.ts';
import { launchBrowser, openApp, waitUntilKept } from '../../browser/harness.ts';
import { FIRST, SCREENS } from '../../browser/screens.ts';

/** Kilobytes of 1024 bytes, gzipped: what a phone waits for. */
const FIRST_PAGE_KB = 20;
const FURTHER_SCREEN_KB = 8;

/**
 * Fetched once the first page is up and answers, and not before: the client of the
 * service worker. What the service worker itself fetches is reported apart.
 */
const AFTER_PAINT = /^\/assets\/workbox-window[^/]*\.js$/;

let browser: Browser;
let served: Served;
const table: { what: string; files: number; 'KB gz': string; most: string }[] = [];

beforeAll(async () => {
  browser = await launchBrowser();
  served = await serveApp(inject('built'));
});

afterAll(async () => {
  await browser.close();
  await served.close();
  console.table(table);
});

test(`the first page is at most ${FIRST_PAGE_KB} KB`, async () => {
  const from = served.asked.length;
  const { page, close } = await openFirst();
  const asked = served.asked.slice(from);
  expect(asked).toContain('/');
  expect(asked.length).toBeGreaterThan(1);
  const weight = weigh(
    'first page',
    asked.filter((path) => !AFTER_PAINT.test(path)),
    FIRST_PAGE_KB,
  );
  weigh(
    'after first paint',
    asked.filter((path) => AFTER_PAINT.test(path)),
  );
  expect(await page.locator('.pad button').first().isVisible()).toBe(true);
  await close();
  expect(weight).toBeLessThanOrEqual(FIRST_PAGE_KB);
});

test.each(SCREENS.filter((screen) => screen !== FIRST))(
  `$name adds at most ${FURTHER_SCREEN_KB} KB`,
  async ({ name, hash, steps }) => {
    const { page, close } = await openFirst();
    const from = served.asked.length;
    await page.evaluate((to) => location.assign(to), hash);
    await settle(page);
    if (steps) {
      await steps(page);
      await settle(page);
    }
    const weight = weigh(name, served.asked.slice(from), FURTHER_SCREEN_KB);
    await close();
    expect(weight).toBeLessThanOrEqual(FURTHER_SCREEN_KB);
  },
);

test('what the service worker keeps is said', async () => {
  const from = served.asked.length;
  const app = await openApp(browser, served.address, { at: FIRST.hash });
  await waitUntilKept(app.page);
  const kept = await app.page.evaluate(async () => {
    const caches = await Promise.all(
      (await self.caches.keys()).map((name) => self.caches.open(name)),
    );
    const keys = await Promise.all(caches.map((cache) => cache.keys()));
    return keys.flat().map(({ url }) => new URL(url).pathname);
  });
  expect(served.asked.slice(from)).toContain('/sw.js');
  expect(kept).toContain('/index.html');
  weigh('kept by the service worker', ['/sw.js', ...kept]);
  await app.close();
});

/** Opens the first page without a service worker, so that only the page's own fetches are seen. */
async function openFirst() {
  const app = await openApp(browser, served.address, { at: FIRST.hash, serviceWorkers: 'block' });
  await settle(app.page);
  return app;
}

/** Until nothing has been fetched for a while, so that what is fetched late is fetched by now. */
async function settle(page: Page): Promise<void> {
  await page.waitForTimeout(200); // for what starts only after a paint
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(500); // 'networkidle' is said once and for all at the first load
}

function weigh(what: string, paths: readonly string[], most?: number): number {
  const files = [...new Set(paths)];
  const bytes = files.reduce((sum, path) => sum + gzipped(path), 0);
  const kilobytes = bytes / 1024;
  table.push({
    what,
    files: files.length,
    'KB gz': kilobytes.toFixed(2),
    most: String(most ?? ''),
  });
  return kilobytes;
}

/** A path that was asked for and isn't there weighs nothing, but no path of ours may be missing. */
function gzipped(path: string): number {
  const file = join(inject('built'), path === '/' ? 'index.html' : path);
  return gzipSync(readFileSync(file), { level: 9 }).length;
}
