import { readFile } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { textPlaces } from '../workers/rendered.ts';
import { launchBrowser, openApp, SMALL_PHONE } from './harness.ts';
import { onEmptyPhone } from './invented-garments.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('the invented waistcoat from its measures to the sheet’s PDF, each press counted', async () => {
  const { page, complaints, close } = await openApp(browser, inject('address'), {
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
  const maker = await onEmptyPhone(page);
  await maker.press('Show an invented waistcoat');
  await page.locator('.next-key[data-kind=step]').waitFor();
  const shown = maker.presses;

  // The chest is 2 cm wider than it was; ease stays: 100 + 8 = 108.
  await maker.press('Measures');
  await maker.tap(page.locator('.numbers .number').filter({ hasText: 'Chest girth' }));
  await maker.press('Type it anew');
  await maker.type('100');
  await maker.press('Done');
  await maker.press('Done');
  await maker.press('Done');
  const measured = maker.presses - shown;

  await maker.press('Sheet: the garment on paper');
  const pages = page.locator('.sheet .page');
  await pages.first().waitFor();
  expect(await pages.count()).toBe(2);
  // A page can be read before it is touched: it is as wide as the screen, but for its edges.
  const box = await pages.first().boundingBox();
  expect(box?.width).toBeGreaterThan(0.9 * SMALL_PHONE.width);
  await maker.press('Make the PDF');
  const [saved] = await Promise.all([page.waitForEvent('download'), maker.press('Save the PDF')]);
  const onPaper = maker.presses - shown - measured;
  console.log(`presses: ${shown} to the garment, ${measured} to measure, ${onPaper} to its PDF`);
  expect(shown).toBeLessThanOrEqual(3);
  expect(measured).toBeLessThanOrEqual(9);
  expect(onPaper).toBeLessThanOrEqual(3);

  const sheet = await textPlaces(new Uint8Array(await readFile(await saved.path())));
  expect(sheet).toHaveLength(2);
  // A bench of centimetres is on A4, 210 × 297 mm (ISO 216).
  expect(sheet[0]?.width).toBeCloseTo(210, 0);
  expect(sheet[0]?.height).toBeCloseTo(297, 0);
  const texts = sheet.flatMap((one) => one.texts.map(({ text }) => text));
  for (const said of ['100 cm', '108 cm', '3 of 7 made', '0 of 78 made', '62.6 cm']) {
    expect(texts).toContain(said);
  }
  const least = Math.min(...sheet.flatMap((one) => one.texts.map(({ type }) => type)));
  expect(least).toBeGreaterThanOrEqual(9 - 1e-3);
  expect(complaints).toEqual([]);
  await close();
}, 120_000);
