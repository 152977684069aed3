import { readFile } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, openApp, SMALL_PHONE, waitUntilKept } from './harness.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

test('a strip goes on paper with the network gone, and its drawing into a file', async () => {
  const app = await openApp(browser, inject('address'), { at: '#/edging', size: SMALL_PHONE });
  const { page } = app;
  await page.locator('.tiles input').first().waitFor();
  await waitUntilKept(page);
  await app.context.setOffline(true);
  await page.getByRole('button', { name: 'On paper, or a file' }).tap();
  await page.getByRole('button', { name: 'Make the PDF' }).tap();
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the PDF' }).tap();
  const file = await saved;
  expect(file.suggestedFilename()).toBe('Edging- holes along a strip.pdf');
  const bytes = await readFile(await file.path());
  expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
  expect(bytes.length).toBeGreaterThan(5000);
  const drawn = page.waitForEvent('download');
  await page.getByRole('button', { name: 'SVG: Holes' }).tap();
  const svg = await readFile(await (await drawn).path(), 'utf8');
  expect(svg).toContain('width="410mm"');
  await page.getByRole('button', { name: 'Back' }).tap();
  await page.locator('.tiles input').first().waitFor();
  // The reader's files are fetched when the phone is idle, and there is no network now.
  expect(app.complaints.filter((one) => !one.includes('/engine/'))).toEqual([]);
  await app.close();
});

test('a long one can be called off while it is written, and its worker is let go', async () => {
  // 20 m in two rows of 1,900: it takes long enough to be called off.
  const at = '#/edging/paper?u=cm&length=2000&pitch=1.05&rows=staggered';
  const app = await openApp(browser, inject('address'), { at, bench: { unit: 'cm' } });
  const { page } = app;
  const papers = () => page.workers().filter((worker) => worker.url().includes('paper')).length;
  await page.getByRole('button', { name: 'Make the PDF' }).tap();
  await page.getByRole('button', { name: 'Call it off' }).tap();
  await page.getByRole('button', { name: 'Make the PDF' }).waitFor();
  // It is let go at once, and gone when it comes to hear of it: 1.2 s on a busy machine.
  await expect.poll(papers, { timeout: 10_000 }).toBe(0);
  expect(await page.getByRole('button', { name: 'Save the PDF' }).count()).toBe(0);
  expect(app.complaints).toEqual([]);
  await app.close();
});
