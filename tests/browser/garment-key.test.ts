import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import type { Bench } from '../../src/calculation/bench.ts';
import { garmentOf, typed } from '../garment/trial/garments.ts';
import { launchBrowser, openApp, PHONE, SMALL_PHONE } from './harness.ts';
import { store } from './stored.ts';

/** The key of a garment in hand: its number as large as it fits, Made under the thumb of the hand that is set. */
let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

/** The last is the small phone under a browser's own bars. */
const UPRIGHT = [PHONE, SMALL_PHONE, { width: 360, height: 560 }];
/** How large the letters are, and how much of the height the key may take with them. */
const LETTERS = [
  ['100%', 0.4],
  ['200%', 0.6],
] as const;
const SIDEWAYS = { width: 640, height: 360 };

const NAME = 'Armhole strip, left and right';
/** As long as a name may be: 80 letters. */
const LONG_NAME =
  'Armhole strip of the invented waistcoat with lacing, of cotton sateen, both side';

/** An invented strip as long as is said: its cut is what the key shows. */
const strip = (long: string, unit: 'cm' | 'in', name: string) =>
  garmentOf({
    works: {
      strip: {
        name,
        calculation: 'edging',
        rank: 1,
        fields: { length: typed(long, unit), pitch: typed('8', 'mm') },
      },
    },
  });

async function openKey(bench: Partial<Bench>, long: string, name = NAME) {
  const app = await openApp(browser, inject('address'), {
    at: '#/settings',
    size: SMALL_PHONE,
    bench,
    serviceWorkers: 'block',
  });
  await app.page.locator('h1').first().waitFor();
  await store(app.page, 'garment:g', strip(long, bench.unit === 'in' ? 'in' : 'cm', name));
  await app.page.goto(`${inject('address')}#/garments/open?g=g`);
  await app.page.locator('.next-key .number').waitFor();
  return app;
}

/** Where the parts of the key lie, and whether any of its number is out of sight. Runs in the page. */
function seen() {
  const box = (what: string) => document.querySelector(what)!.getBoundingClientRect();
  const number = document.querySelector('.next-key .number')!;
  // What is said in the place of a fraction is not seen.
  const seenIn = (one: Node): Text[] =>
    one instanceof Text ? [one] : [...one.childNodes].flatMap(hides(one) ? () => [] : seenIn);
  const hides = (one: Node) => one instanceof Element && one.matches('.unseen');
  const letters = seenIn(number).map((text) => {
    const range = document.createRange();
    range.selectNode(text);
    return range.getBoundingClientRect();
  });
  const most = (side: 'right' | 'bottom') => Math.max(...letters.map((one) => one[side]));
  const least = (side: 'left' | 'top') =>
    Math.min(...letters.filter(({ width }) => width > 0).map((one) => one[side]));
  return {
    key: box('.next-key'),
    says: box('.next-key .says'),
    made: box('.next-key .made'),
    bar: box('.in-hand .bar'),
    words: { left: least('left'), right: most('right'), top: least('top'), bottom: most('bottom') },
  };
}

async function expectInSight(page: Page, most: number, hand: string, where: string) {
  const { key, says, made, bar, words } = await page.evaluate(seen);
  const [wide, high] = await page.evaluate(() => [innerWidth, innerHeight] as const);
  expect(key.height, where).toBeLessThanOrEqual(most * high + 0.5);
  expect(bar.bottom, where).toBeLessThanOrEqual(high + 0.5);
  expect(words.left, where).toBeGreaterThanOrEqual(says.left);
  expect(words.right, where).toBeLessThanOrEqual(says.right);
  expect(words.top, where).toBeGreaterThanOrEqual(says.top - 0.5);
  expect(words.bottom, where).toBeLessThanOrEqual(says.bottom + 0.5);
  expect(Math.min(made.width, made.height), where).toBeGreaterThanOrEqual(96);
  const middle = (made.left + made.right) / 2;
  expect(middle > wide / 2, where).toBe(hand === 'right');
  expect(says.right <= made.left || made.right <= says.left, where).toBe(true);
}

test.each([
  [{ unit: 'in', inch: '1/16in', hand: 'right' }, '24 13/16', '24 13/16 in'],
  [{ unit: 'in', inch: '1/16in', hand: 'left' }, '24 13/16', '24 13/16 in'],
  [{ unit: 'cm', metric: '0.5mm', hand: 'right' }, '102.35', '102.35 cm'],
  [{ unit: 'cm', metric: '0.5mm', hand: 'left' }, '102.35', '102.35 cm'],
] as const)(
  '%o: %s is in sight beside Made, at every size of letters',
  async (bench, long, said) => {
    const { page, complaints, close } = await openKey(bench, long);
    // A fraction stands there twice: to be read out, and to be seen.
    const shown = await page.locator('.next-key .number').evaluate((number) => {
      const once = number.cloneNode(true) as Element;
      for (const seen of once.querySelectorAll('[aria-hidden]')) seen.remove();
      return once.textContent;
    });
    expect(shown).toBe(said);
    for (const [letters, most] of LETTERS) {
      await page.evaluate((size) => {
        document.documentElement.style.fontSize = size;
      }, letters);
      for (const size of UPRIGHT) {
        await page.setViewportSize(size);
        await expectInSight(page, most, bench.hand, `${letters}, ${size.width} × ${size.height}`);
      }
      await page.setViewportSize(SIDEWAYS);
      await expectInSight(page, 1, bench.hand, `${letters}, sideways`);
      // What is done and from where is whole there; only what follows may give way.
      const cut = await page.locator('.next-key .above').evaluate((above) => ({
        high: above.scrollHeight - above.clientHeight,
        wide: above.scrollWidth - above.clientWidth,
      }));
      expect(Math.max(cut.high, cut.wide), `${letters}, sideways`).toBeLessThanOrEqual(1);
    }
    expect(complaints).toEqual([]);
    await close();
  },
);

test('a name of 80 letters gives way: two lines of it, all of what is done and from where, the number', async () => {
  const { page, complaints, close } = await openKey(
    { unit: 'cm', hand: 'right' },
    '62.4',
    LONG_NAME,
  );
  for (const [letters, most] of LETTERS) {
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, letters);
    for (const size of UPRIGHT) {
      await page.setViewportSize(size);
      const where = `${letters}, ${size.width} × ${size.height}`;
      await expectInSight(page, most, 'right', where);
      const { lines, cut } = await page.locator('.next-key .above').evaluate((above) => {
        const name = above.querySelector('.long-name')!;
        const line = Number.parseFloat(getComputedStyle(name).lineHeight);
        return {
          lines: Math.round(name.clientHeight / line),
          cut: above.scrollHeight - above.clientHeight,
        };
      });
      expect(lines, where).toBe(2);
      expect(cut, where).toBeLessThanOrEqual(1);
    }
  }
  expect(complaints).toEqual([]);
  await close();
});
