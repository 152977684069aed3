import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { garmentFailedWords } from '#words/garment/garment-failed-words.ts';
import { garmentHomeWords } from '#words/garment/garment-home-words.ts';
import { garmentWords } from '#words/garment/garment-words.ts';
import type { Garment } from '../../src/garment/record/record.ts';
import { axeFaults } from './axe.ts';
import { launchBrowser, openApp, SMALL_PHONE } from './harness.ts';
import { IN_HAND, longRow } from './long-row.ts';
import { makerAt } from './maker.ts';
import { store, stored } from './stored.ts';

/** A phone with no room left: what is made meanwhile is held, said, and kept once there is room. */
let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

/** The machine may be busy with other tests. */
const BUSY = { timeout: 20_000 };

declare global {
  /** Whether the phone has no room left. */
  var noRoom: boolean;
}

/** Each writing step ends as it does without room: taken back whole, for want of quota. Runs in the page. */
function withoutRoom(): void {
  globalThis.noRoom = false;
  const { commit } = IDBTransaction.prototype;
  IDBTransaction.prototype.commit = function (this: IDBTransaction) {
    if (!noRoom) return commit.call(this);
    Object.defineProperty(this, 'error', { value: new DOMException('', 'QuotaExceededError') });
    this.abort();
  };
}

const factsKept = async (page: Page) =>
  Object.values(((await stored(page, 'garment:row')) as Garment).facts).length;

test('Made without room on the phone: said with a way out, held, and kept once there is room', async () => {
  const { page, complaints, close } = await openApp(browser, inject('address'), {
    at: '#/settings',
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
  await page.clock.install();
  await page.addInitScript(withoutRoom);
  await page.locator('h1').first().waitFor();
  await store(page, 'garment:row', longRow());
  await store(page, 'in-hand', IN_HAND);
  await page.goto(`${inject('address')}#/garments/open?g=row`);
  await page.reload();
  const key = page.locator('.next-key');
  const said = page.locator('.in-hand .last');
  const maker = makerAt(page);
  await key.locator('.number').waitFor();
  while ((await maker.face()) !== garmentHomeWords.make) await maker.key();
  await maker.key();
  await expect.poll(() => factsKept(page), BUSY).toBe(1);

  await page.evaluate(() => {
    noRoom = true;
  });
  await maker.key();
  await said.getByText(garmentFailedWords.full).waitFor();
  await said.getByText(garmentWords.waiting(1)).waitFor();
  expect(await axeFaults(page), 'with no room').toEqual([]);
  await maker.key();
  await said.getByText(garmentWords.waiting(2)).waitFor();
  // Nothing half: what was made before is on the phone, and these are not.
  expect(await factsKept(page)).toBe(1);
  const again = said.getByRole('button', { name: garmentWords.tryNow });
  await again.tap();
  await said.getByText(garmentWords.waiting(2)).waitFor();

  // At once: the page tries again by itself, too.
  await again.evaluate((one: HTMLButtonElement) => {
    noRoom = false;
    one.click();
  });
  await expect.poll(() => factsKept(page), BUSY).toBe(3);
  await said.getByText(garmentFailedWords.full).waitFor({ state: 'detached' });
  const next = await key.locator('.says').textContent();
  await page.reload();
  await key.locator('.number').waitFor();
  await expect.poll(() => key.locator('.says').textContent(), BUSY).toBe(next);
  expect(complaints).toEqual([]);
  await close();
});
