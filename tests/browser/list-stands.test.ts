import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { phoneWords } from '#words/phone/phone-words.ts';
import { launchBrowser, openApp, PHONE, SMALL_PHONE, waitUntilKept } from './harness.ts';

/** The list of all calculations: what the app says of this phone comes and goes beside it. */
let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const tops = (page: Page) =>
  page
    .locator('.home[data-hand] nav a')
    .evaluateAll((all) => all.map((a) => a.getBoundingClientRect().top));

test.each([SMALL_PHONE, PHONE])(
  'nothing of it moves under the thumb while the app stores itself and says so (%o)',
  async (size) => {
    const { page, close } = await openApp(browser, inject('address'), { at: '#/', size });
    await page.locator('.home[data-hand] nav a').first().waitFor();
    const before = await tops(page);
    await page.locator('.home .news').first().waitFor();
    expect(await tops(page)).toEqual(before);
    await waitUntilKept(page);
    await page.getByText(phoneWords.ready).waitFor();
    expect(await tops(page)).toEqual(before);
    await close();
  },
);
