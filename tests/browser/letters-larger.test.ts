import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { waistcoat } from '../garment/trial/waistcoat.ts';
import { launchBrowser, openApp, SMALL_PHONE } from './harness.ts';
import { store } from './stored.ts';

/** A phone's letters are made larger while a drawing is open. */
let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** The labels of the drawing: how high they are, and the most that is cut off of one. Runs in the page. */
function labels() {
  const all = [...document.querySelectorAll('.dimension')];
  return {
    high: Math.max(...all.map((one) => one.clientHeight)),
    cut: Math.max(...all.map((one) => one.scrollHeight - one.clientHeight)),
  };
}

test('a drawing that is open is laid out anew when the letters of the phone are made larger, and again', async () => {
  const { page, complaints, close } = await openApp(browser, inject('address'), {
    at: '#/settings',
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
  await page.locator('h1').first().waitFor();
  await store(page, `garment:${waistcoat.id}`, waistcoat);
  await page.goto(`${inject('address')}#/garments/open?g=${waistcoat.id}&w=hooks`);
  await page.locator('.dimension').first().waitFor();
  const { high } = await page.evaluate(labels);
  for (const size of ['200%', '130%', '100%']) {
    await page.evaluate((letters) => {
      document.documentElement.style.fontSize = letters;
    }, size);
    const most = high * (size === '200%' ? 3 : 2);
    await expect
      .poll(() => page.evaluate(labels), { message: size })
      .toSatisfy(
        (now: ReturnType<typeof labels>) =>
          now.cut <= 1 &&
          now.high < most &&
          (size === '100%' ? now.high === high : now.high > high),
      );
  }
  expect(complaints).toEqual([]);
  await close();
});
