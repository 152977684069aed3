import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, type OpenApp, openApp, SMALL_PHONE } from './harness.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

const start = (at = '') =>
  openApp(browser, inject('address'), { at, size: SMALL_PHONE, serviceWorkers: 'block' });

/** A thumb that counts, and that only reaches what is in sight in the lower 60 % of the screen. */
function thumb(page: Page) {
  let taps = 0;
  return {
    async tap(target: Locator) {
      await target.waitFor();
      let box = await target.boundingBox();
      // The keys of another field may just be taking the place of these.
      while (!box) box = await target.boundingBox();
      const y = box.y + box.height / 2;
      expect(y).toBeGreaterThan(SMALL_PHONE.height * 0.4);
      expect(y).toBeLessThan(SMALL_PHONE.height);
      taps += 1;
      await page.touchscreen.tap(box.x + box.width / 2, y);
    },
    get taps() {
      return taps;
    },
  };
}

const key = (page: Page, name: string) =>
  page.locator('.pad').getByRole('button', { name, exact: true });

async function inSight(page: Page, text: string | RegExp): Promise<boolean> {
  const box = await page.locator('.scroll').getByText(text).first().boundingBox();
  const pane = await page.locator('.scroll').boundingBox();
  return box !== null && pane !== null && box.y + box.height <= pane.y + pane.height + 1;
}

test('from a cold start, an inch fraction in centimetres takes at most 5 taps', async () => {
  const { page, complaints, close } = await start();
  const hand = thumb(page);
  await hand.tap(page.getByRole('link', { name: /^Inches and centimetres/ }));
  const inInches = key(page, 'to in: type in inches');
  await inInches.or(key(page, 'and 5/8')).first().waitFor();
  if (await inInches.isVisible()) await hand.tap(inInches);
  await hand.tap(key(page, 'and 5/8'));
  await expect.poll(() => page.locator('.answer .number').textContent()).toMatch(/^1\.6\s*cm/);
  expect(hand.taps).toBeLessThanOrEqual(5);
  expect(complaints).toEqual([]);
  await close();
});

test('seven hooks along 46.3 cm show their first place within 14 taps', async () => {
  const { page, close } = await start();
  const hand = thumb(page);
  await hand.tap(page.getByRole('link', { name: /^Closures/ }));
  for (const name of ['4', '6', 'decimal mark', '3', 'next field', '7']) {
    await hand.tap(key(page, name));
  }
  await expect
    .poll(() => page.locator('.answer').textContent())
    .toMatch(/7 hooks, the first 1\.2 cm from the top edge/);
  expect(await inSight(page, /the first 1\.2 cm/)).toBe(true);
  expect(hand.taps).toBeLessThanOrEqual(14);
  await close();
});

test('the next mark is one tap, anywhere in the lower half', async () => {
  const { page, close } = await start('#/closures/follow');
  await page.getByText('Hook 1 of 7').waitFor();
  const { width, height } = SMALL_PHONE;
  const places = [
    [0.1, 0.55],
    [0.9, 0.97],
    [0.5, 0.75],
  ] as const;
  for (const [i, [x, y]] of places.entries()) {
    await page.touchscreen.tap(width * x, height * y);
    await page.getByText(`Hook ${i + 2} of 7`).waitFor();
  }
  await close();
});

test('the place followed to is there after a reload, after home, and on the way back', async () => {
  const { page, close } = await start('#/closures');
  await page.getByRole('button', { name: 'Follow' }).tap();
  for (let i = 0; i < 3; i++) await page.getByRole('button', { name: /Marked/ }).tap();
  await page.waitForURL(/at=3/);
  await page.reload();
  await page.getByText('Hook 4 of 7').waitFor();
  await page.getByRole('button', { name: 'Close' }).tap();
  await page.getByRole('button', { name: 'Back' }).tap();
  await page.getByRole('link', { name: /^Closures/ }).tap();
  await page.getByRole('button', { name: 'Follow' }).tap();
  await page.getByText('Hook 4 of 7').waitFor();
  await close();
});

test('reload, back and a link bring back what was typed', async () => {
  const first = await start('#/closures');
  await first.page.locator('input[name=opening]').fill('18 1/4 in + 2 mm');
  await first.page.locator('input[name=count]').fill('9');
  await first.page.waitForURL(/count=9/);
  await first.page.reload();
  await expectTyped(first);
  await first.page.getByRole('button', { name: 'Back' }).tap();
  await first.page.getByRole('link', { name: /^Settings/ }).tap();
  await first.page.goBack();
  await first.page.goBack();
  await expectTyped(first);
  const link = first.page.url();
  await first.close();
  const other = await start(new URL(link).hash);
  await expectTyped(other);
  await other.close();
});

async function expectTyped({ page }: OpenApp) {
  await expect
    .poll(() => page.locator('input[name=opening]').inputValue())
    .toBe('18 1/4 in + 2 mm');
  expect(await page.locator('input[name=count]').inputValue()).toBe('9');
}

test('a number typed on a bench of inches means the same on one of centimetres', async () => {
  const { page, close } = await start('#/closures?opening=18+1/4&u=in&count=7&top=1/2&bottom=1');
  await expect.poll(() => page.locator('input[name=opening]').inputValue()).toBe('18 1/4 in');
  await close();
});

test('by keyboard alone: fields are reached, Enter goes on, typing answers', async () => {
  const { page, close } = await start('#/closures');
  await page.locator('input[name=opening]:focus').waitFor();
  await page.keyboard.type('50');
  await page.keyboard.press('Enter');
  await page.keyboard.type('8');
  await expect.poll(() => page.locator('.answer').textContent()).toMatch(/^about 6\.6\s*cm apart/);
  expect(await page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe('count');
  await close();
});
