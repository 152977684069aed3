import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { licenceWords } from '#words/phone/licence-words.ts';
import { axeFaults } from './axe.ts';
import { launchBrowser, openApp, SMALL_PHONE, waitUntilKept } from './harness.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

test('the licences of what is shipped can be read without a connection', async () => {
  const app = await openApp(browser, inject('address'), { at: '#/settings', size: SMALL_PHONE });
  const { page } = app;
  await waitUntilKept(page);
  await app.context.setOffline(true);
  await page.getByRole('button', { name: licenceWords.title }).click();
  await page.getByText(/^preact \d.* · MIT$/).click();
  await page.locator('details[open] pre', { hasText: 'Permission is hereby granted' }).waitFor();
  expect(await axeFaults(page)).toEqual([]);
  await app.context.setOffline(false);
  await app.close();
});
