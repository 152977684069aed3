import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import type { Garment, Quantity } from '../../src/garment/record/record.ts';
import { garmentOf, quantity, typed } from '../garment/trial/garments.ts';
import { launchBrowser, openApp, SMALL_PHONE } from './harness.ts';
import { store, stored } from './stored.ts';
import { onScreen, photoOf } from './tape-pictures.ts';

/** A number the garment lacks is asked for on the key, and read off a tape there. */
let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const { drawn, file } = photoOf('cm tape on cloth', 3);

/** Invented: hooks along an edge that is still to be measured. */
const coat = garmentOf({
  quantities: { edge: { name: 'Front edge', kind: 'length', rank: 1, parts: typed('') } },
  works: {
    hooks: {
      ...{ name: 'Hooks', calculation: 'closures', rank: 1 },
      fields: {
        ...{ opening: [quantity('edge')], count: typed('3') },
        ...{ top: typed('1'), bottom: typed('1'), by: typed('count'), ends: typed('given') },
      },
    },
  },
});

test('what the next step lacks is read off a photo, with how sure it is, and the key goes on', async () => {
  const { page, complaints, close } = await openApp(browser, inject('address'), {
    at: '#/settings',
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
  await page.locator('h1').first().waitFor();
  await store(page, 'garment:g', coat);
  await page.goto(`${inject('address')}#/garments/open?g=g`);
  const reads = page.getByRole('button', { name: 'Read it' });
  await reads.waitFor();
  // A thumb rests on each of the two.
  for (const key of await page.locator('.next-key .made').all()) {
    const box = await key.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(96);
  }
  const keyBox = await page.locator('.next-key').boundingBox();
  expect(keyBox?.height).toBeLessThanOrEqual(0.4 * SMALL_PHONE.height + 0.5);
  const photo = page.getByLabel('Choose a photo');
  // The key answers once its words have stood for a moment; then it is gone.
  while (!(await photo.count())) await reads.tap({ timeout: 1000 }).catch(() => undefined);
  await photo.setInputFiles(file);
  await page.getByRole('slider').waitFor();
  const on = drawn.points.filter(({ onScale }) => onScale);
  const point = on[Math.floor(on.length / 2)];
  if (!point) throw new Error('the scene has no point on its scale');
  const at = await onScreen(page, drawn, point);
  await page.touchscreen.tap(at.x, at.y);
  await page.getByRole('button', { name: 'Use: Front edge' }).tap();
  await page.locator('.next-key .number').waitFor();
  const edge = async () =>
    ((await stored(page, 'garment:g')) as Garment).quantities.edge as Quantity;
  await expect.poll(async () => (await edge()).plusMinus ?? 0).toBeGreaterThan(0);
  const { parts } = await edge();
  const [part] = parts;
  const text = part && 'text' in part ? part.text : '';
  expect(text).toMatch(/^[\d.]+ ± 0\.\d+ cm$/);
  expect(Math.abs(10 * Number.parseFloat(text) - point.mm)).toBeLessThan(1.5);
  expect(complaints).toEqual([]);
  await close();
});
