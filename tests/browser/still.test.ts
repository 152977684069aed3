import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { phoneWords } from '#words/phone/phone-words.ts';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import { inGate } from '../thorough.ts';
import { launchBrowser, PHONE, SMALL_PHONE, takePhone } from './harness.ts';
import { settled } from './settled.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** Moved parts are counted as the Layout Instability API does: 0 is still, 0.1 is the most that is called good. */
const STILL = 0.002;

/** What each part of the app takes to arrive, so that one is painted before the next is there. */
const EACH_PART_MS = 60;

/** The phone Lighthouse looks with. */
const SIZE = { width: 412, height: 823 };

/** In the gate: the first page, one with rows of choices, with a drawing, with several runs. */
const IN_GATE = ['convert', 'hem', 'closures', 'lacing', 'pleats'];

test.each(inGate(Object.keys(CALCULATIONS), (id) => IN_GATE.includes(id)))(
  'nothing moves while %s arrives',
  async (id) => {
    const phone = await takePhone(browser, inject('address'), {
      size: SIZE,
      serviceWorkers: 'block',
    });
    const { page } = phone;
    await page.route('**/assets/*.js', async (route) => {
      await new Promise((come) => setTimeout(come, EACH_PART_MS));
      await route.continue();
    });
    await page.addInitScript(watchMoves);
    await page.goto(`${inject('address')}#/${id}`);
    await page.locator('.answer .number').waitFor();
    await page.locator('.how').first().waitFor({ state: 'attached' });
    await settled(page);
    const moved = await page.evaluate(() => moves);
    const sum = moved.reduce((all, { value }) => all + value, 0);
    expect(sum, JSON.stringify(moved)).toBeLessThan(STILL);
    await phone.close();
  },
);

test.each([
  { size: SMALL_PHONE, letters: '100%' },
  { size: PHONE, letters: '100%' },
  { size: SMALL_PHONE, letters: '200%' },
])(
  'what is pressed at home stands where it stood before the app came: $size, $letters',
  async ({ size, letters }) => {
    const phone = await takePhone(browser, inject('address'), { size, serviceWorkers: 'block' });
    const { page } = phone;
    await page.addInitScript((large) => {
      document.documentElement.style.fontSize = large;
    }, letters);
    const links = () =>
      page.locator('.home nav a').evaluateAll((all) =>
        all.map((one) => {
          const { x, y, width, height } = one.getBoundingClientRect();
          return [x, y, width, height].map(Math.round);
        }),
      );
    await page.route('**/assets/*.js', (route) => route.abort());
    await page.goto(inject('address'));
    const before = await links();
    expect(before.length).toBeGreaterThan(5);
    await page.unroute('**/assets/*.js');
    await page.reload();
    await page.getByText(phoneWords.restore).waitFor();
    expect(await links()).toEqual(before);
    await phone.close();
  },
);

declare global {
  /** What moved without having been pressed, in the page. */
  var moves: { value: number; what: string[] }[];
}

/** Runs in the page, before anything else. */
function watchMoves(): void {
  interface Move extends PerformanceEntry {
    value: number;
    sources: { node: Element | null }[];
  }
  globalThis.moves = [];
  new PerformanceObserver((list) => {
    for (const { value, sources } of list.getEntries() as Move[]) {
      moves.push({
        value,
        what: sources.map(({ node }) => `${node?.nodeName} ${node?.className}`),
      });
    }
  }).observe({ type: 'layout-shift', buffered: true });
}
