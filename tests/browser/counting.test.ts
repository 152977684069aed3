import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, openApp } from './harness.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('counted with the thumb anywhere below, undone, and kept across a reload', async () => {
  const app = await openApp(browser, inject('address'), { at: '#/centre/count?count=26&pitch=' });
  const { page } = app;
  const key = page.getByRole('button', { name: /One more hole/ });
  const box = await key.boundingBox();
  const height = page.viewportSize()?.height ?? 0;
  expect(box?.height).toBeGreaterThan(height * 0.45);
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBeGreaterThan(height * 0.9);
  for (let i = 0; i < 3; i += 1) await key.tap();
  await page.getByRole('button', { name: 'One less' }).tap();
  await page.getByText('between holes 14 and 15').waitFor();
  await page.waitForURL(/count=28/);
  await page.reload();
  await page.getByText('between holes 14 and 15').waitFor();
  // From the other end as well: the two must meet.
  await page.getByRole('button', { name: 'Other end' }).tap();
  await key.tap();
  await page.getByRole('button', { name: 'One less' }).waitFor();
  await page.waitForURL(/other=1/);
  await page.reload();
  await page.getByRole('heading', { name: 'From the other end' }).waitFor();
  expect(app.complaints).toEqual([]);
  await app.close();
});
