import type { Browser, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, SMALL_PHONE } from './harness.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

/** Writes the record the app would, then opens a run on the glass. */
async function onGlass(ratio: number, pxPerMm: number, hash: string): Promise<Page> {
  const context = await browser.newContext({
    viewport: SMALL_PHONE,
    deviceScaleFactor: ratio,
    hasTouch: true,
    isMobile: true,
    serviceWorkers: 'block',
    colorScheme: 'light',
  });
  const page = await context.newPage();
  await page.goto(`${inject('address')}#/settings`);
  await page.locator('fieldset').first().waitFor();
  await page.evaluate(
    (scale) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('thumbrule');
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const change = opening.result.transaction('bench', 'readwrite');
          change.objectStore('bench').put(scale, 'glass');
          change.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    { pxPerMm, ratio },
  );
  await page.goto(`${inject('address')}${hash}`);
  await page.locator('.glass .mark').first().waitFor({ state: 'attached' });
  return page;
}

/** Middles of the lines that go right across, in device pixels, from a picture of the screen. */
async function linesSeen(page: Page, ratio: number, foot: number): Promise<number[]> {
  const picture = sharp(await page.screenshot()).greyscale();
  const { data, info } = await picture.raw().toBuffer({ resolveWithObject: true });
  const high = Math.floor(foot * ratio);
  // Clear of the graduations at the left and of the names at the right.
  const columns = [0.3, 0.4, 0.5].map((share) => Math.round(info.width * share));
  const ground = data[Math.round(4 * ratio) * info.width + (columns[0] ?? 0)] ?? 255;
  const darkness = (y: number) =>
    Math.min(...columns.map((x) => ground - (data[y * info.width + x] ?? ground)));
  const middles: number[] = [];
  let [ink, moment] = [0, 0];
  for (let y = 0; y <= high; y++) {
    const dark = y < high ? darkness(y) : 0;
    if (dark > 40) {
      ink += dark;
      moment += dark * (y + 0.5);
    } else if (ink > 0) {
      middles.push(moment / ink);
      [ink, moment] = [0, 0];
    }
  }
  return middles;
}

const nearest = (seen: readonly number[], wanted: number) =>
  seen.reduce((best, one) => (Math.abs(one - wanted) < Math.abs(best - wanted) ? one : best), -1e9);

const SCREENS = [
  [1, 6.2992],
  [2, 6.0417],
  [2.625, 6.2233],
  [3, 6.4873],
] as const;

test.each(SCREENS)(
  'at %d device pixels to one, marks lie where they belong within half of one',
  async (ratio, pxPerMm) => {
    // Holes at 4, 12, 20 … mm: those on the first stretch.
    const page = await onGlass(ratio, pxPerMm, '#/edging/glass?length=40&pitch=0.8&u=cm');
    const foot = (await page.locator('.glass footer').boundingBox())?.y ?? 0;
    const room = (foot - 12 - 2) / pxPerMm;
    const marks = Array.from({ length: 50 }, (_, i) => 4 + 8 * i).filter((mm) => mm <= room);
    const seen = await linesSeen(page, ratio, foot);
    // The line of a place covers whole device pixels from there on.
    const zero = Math.round(12 * ratio) + Math.round(ratio) / 2;
    expect(marks.length).toBeGreaterThanOrEqual(9);
    for (const mm of marks) {
      const truth = zero + mm * pxPerMm * ratio;
      const drawn = nearest(seen, truth);
      expect(Math.abs(drawn - truth), `${mm} mm`).toBeLessThanOrEqual(0.5 + 1e-6);
    }
    await page.context().close();
  },
);
