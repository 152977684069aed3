import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { garmentOf, typed } from '../garment/trial/garments.ts';
import { inGate, THOROUGH } from '../thorough.ts';
import { launchBrowser, type OpenApp, openAnew, PHONE, SMALL_PHONE, takePhone } from './harness.ts';
import { store } from './stored.ts';

let browser: Browser;
/** The phone on which one screen after another is looked at. */
let phone: OpenApp;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await takePhone(browser, inject('address'), { serviceWorkers: 'block' });
});
afterAll(() => browser.close());

const SIDEWAYS = [
  { width: 844, height: 390 },
  { width: 640, height: 360 },
  { width: 568, height: 320 },
];
/** The last upright one is the narrow phone less a browser's own bars. */
const SIZES = inGate(
  [PHONE, SMALL_PHONE, { width: 320, height: 568 }, { width: 320, height: 470 }, ...SIDEWAYS],
  ({ height }) => [640, 470, 320].includes(height),
);

/** Counting, following, and following one of several runs, which has one thing more to press. */
const SCREENS = ['#/centre/count?count=27', '#/closures/follow?at=0', '#/corner/follow?at=0'];

const BACK = /Back one|One less/;

test.each(SCREENS)('the lower half of every screen is one key: %s', async (at) => {
  const look = async (page: Page, size: typeof PHONE, where: string) => {
    const key = await boxOf(page, 'button.next');
    expect(key, where).toMatchObject({ left: 0, right: size.width });
    expect(key.top, where).toBeLessThanOrEqual(size.height / 2);
    expect(key.bottom, where).toBeGreaterThanOrEqual(size.height - 0.5);
    // The number stays in sight, and what was pressed by mistake can be taken back.
    const number = await boxOf(page, '.big .figure');
    expect(number.top, where).toBeGreaterThanOrEqual(0);
    expect(number.bottom, where).toBeLessThanOrEqual(size.height / 2);
    const actions = await boxesOf(page, '.actions button');
    for (const { words, top, bottom, left, right } of actions) {
      expect(top, `${where}: ${words}`).toBeGreaterThanOrEqual(0);
      expect(bottom, `${where}: ${words}`).toBeLessThanOrEqual(key.top);
      expect(bottom - top, `${where}: ${words}`).toBeGreaterThanOrEqual(48);
      expect(right - left, `${where}: ${words}`).toBeGreaterThanOrEqual(48);
    }
    expect(actions.map(({ words }) => BACK.test(words)).filter(Boolean)).toEqual([true]);
    expect(await wordsCutOff(page), where).toEqual([]);
  };
  await onEverySize(at, look, { resized: true });
});

test.each(SCREENS)('at 200 % text the large key can still be used: %s', async (at) => {
  await onEverySize(at, async (page, size, where) => {
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    const key = await boxOf(page, 'button.next');
    expect(key.right - key.left, where).toBe(size.width);
    expect(key.bottom - key.top, where).toBeGreaterThanOrEqual(96);
    expect(key.bottom, where).toBeGreaterThanOrEqual(size.height - 0.5);
    expect(await wordsCutOff(page), where).toEqual([]);
    const big = page.locator('.big');
    const before = await big.textContent();
    await page.touchscreen.tap(size.width - 4, size.height - 4);
    await expect.poll(() => big.textContent(), { message: where }).not.toBe(before);
    await page.getByRole('button', { name: BACK }).tap();
    await expect.poll(() => big.textContent(), { message: where }).toBe(before);
  });
});

test('each press in the lower half counts once, and one comes off again', async () => {
  await onEverySize('#/centre/count?count=26', async (page, size, where) => {
    const said = () => page.locator('.big .figure').textContent();
    await expect.poll(said).toBe('26 holes');
    for (const [i, { x, y }] of placesIn(size).entries()) {
      await page.touchscreen.tap(x, y);
      await expect.poll(said, { message: `${where}: ${x}, ${y}` }).toBe(`${27 + i} holes`);
    }
    await page.getByRole('button', { name: BACK }).tap();
    await expect.poll(said, { message: where }).toBe('31 holes');
  });
});

test('each press in the lower half is the next mark, and one leads back', async () => {
  await onEverySize('#/closures/follow?count=12&opening=60 cm', async (page, size, where) => {
    const said = () => page.getByRole('heading').textContent();
    await expect.poll(said).toBe('Hook 1 of 12');
    for (const [i, { x, y }] of placesIn(size).entries()) {
      await page.touchscreen.tap(x, y);
      await expect.poll(said, { message: `${where}: ${x}, ${y}` }).toBe(`Hook ${2 + i} of 12`);
    }
    await page.getByRole('button', { name: BACK }).tap();
    await expect.poll(said, { message: where }).toBe('Hook 6 of 12');
  });
});

test.each(['left', 'right'] as const)(
  'what takes one back is nearer to the %s hand',
  async (hand) => {
    const check = async (page: Page, size: typeof PHONE, where: string) => {
      const actions = await boxesOf(page, '.actions button');
      const back = actions.find(({ words }) => BACK.test(words))!;
      const close = actions.find(({ words }) => words === 'Close')!;
      expect(back.left < close.left, where).toBe(hand === 'left');
      if (size.width < size.height) return;
      expect(back.right <= size.width / 2, where).toBe(hand === 'left');
      expect(back.left >= size.width / 2, where).toBe(hand === 'right');
    };
    const sizes = [SMALL_PHONE, ...(THOROUGH ? SIDEWAYS : SIDEWAYS.slice(-1))];
    for (const at of SCREENS) {
      await onEverySize(at, check, { sizes, hand, resized: true });
    }
  },
);

/** A measure of the body, which is shown where and how it is taken, and asked about. */
const measured = garmentOf({
  quantities: {
    waist: {
      ...{ name: 'Natural waist girth', kind: 'length', rank: 1, parts: typed('31') },
      ...{ body: true, measure: 'natural-waist-girth' },
    },
  },
});

test('what is done with a measure is under the thumb, however much is said of it', async () => {
  const { complaints } = phone;
  const page = await openAnew(phone, inject('address'), { at: '#/settings', size: SMALL_PHONE });
  await page.locator('h1').first().waitFor();
  await store(page, `garment:${measured.id}`, measured);
  await page.goto(`${inject('address')}#/garments/open?g=${measured.id}`);
  await page.locator('.bar button:nth-child(2)').tap();
  await page.locator('.numbers .number').tap();
  await page.locator('.guide').waitFor();
  for (const letters of ['100%', '200%']) {
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, letters);
    for (const size of SIZES) {
      await page.setViewportSize(size);
      const where = `${letters}, ${size.width} × ${size.height}`;
      const always = await boxesOf(page, '.beneath .actions button');
      expect(always.map(({ words }) => words)).toEqual(['Done', 'Type it anew']);
      for (const { bottom, top } of always) {
        expect(bottom, where).toBeGreaterThanOrEqual(size.height - 0.5);
        expect(bottom, where).toBeLessThanOrEqual(size.height + 0.5);
        expect(bottom - top, where).toBeGreaterThanOrEqual(48);
      }
      expect(await wordsCutOff(page), where).toEqual([]);
      const all = await boxOf(page, '.beneath');
      const wide = size.width > size.height;
      // Beside each other, or the one below the other: what is said keeps half of the screen.
      expect(all.right - all.left, where).toBe(wide ? size.width / 2 : size.width);
      if (!wide) expect(all.top, where).toBeGreaterThanOrEqual(size.height / 2 - 0.5);
      const [first] = await boxesOf(page, '.beneath .deed');
      expect(first?.bottom, where).toBeLessThanOrEqual(always[0]!.top);
    }
  }
  expect(complaints).toEqual([]);
});

test('what is wrong with a number leaves the keys and its field where they are, clear of the edge', async () => {
  const { complaints } = phone;
  const page = await openAnew(phone, inject('address'), {
    at: '#/closures/follow?at=0',
    size: SMALL_PHONE,
  });
  await page.getByText('Made elsewhere').tap();
  await page.locator('.pad').waitFor();
  for (const letters of ['100%', '200%']) {
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, letters);
    for (const size of [SMALL_PHONE, { width: 640, height: 360 }]) {
      await page.setViewportSize(size);
      const where = `${letters}, ${size.width} × ${size.height}`;
      const places = () =>
        page.locator('.tiles, .pad, .actions').evaluateAll((all) =>
          all.map((one) => {
            const { top, bottom } = one.getBoundingClientRect();
            return { what: one.className, top, bottom };
          }),
        );
      await page.locator('.tiles input').fill('1');
      const before = await places();
      await page.locator('.tiles input').fill('1 2 3 x');
      await page.locator('#entry-fault').waitFor();
      for (const [i, { what, top, bottom }] of (await places()).entries()) {
        // The unit beside the number makes room for it.
        expect(Math.abs(top - before[i]!.top), `${where}: ${what}`).toBeLessThanOrEqual(8);
        expect(Math.abs(bottom - before[i]!.bottom), `${where}: ${what}`).toBeLessThanOrEqual(8);
        expect(bottom - top, `${where}: ${what}`).toBeGreaterThanOrEqual(48);
      }
      const fault = page.locator('#entry-fault');
      const style = await fault.evaluate((one) => getComputedStyle(one).paddingInlineStart);
      expect(style, where).toBe('16px');
      const { top, bottom } = await boxOf(page, '#entry-fault');
      expect(bottom - top, where).toBeGreaterThanOrEqual(24);
      expect(top, where).toBeGreaterThanOrEqual(0);
    }
  }
  expect(complaints).toEqual([]);
});

interface Trying {
  sizes?: readonly (typeof PHONE)[];
  hand?: 'left' | 'right';
  /** Nothing is pressed: the same page may be turned and resized. */
  resized?: boolean;
}

/** Opens a screen on phones of every size, one after the other. */
async function onEverySize(
  at: string,
  look: (page: Page, size: typeof PHONE, where: string) => Promise<void>,
  { sizes = SIZES, hand = 'right', resized = false }: Trying = {},
): Promise<void> {
  const { complaints } = phone;
  const page = await openAnew(phone, inject('address'), { at, bench: { hand } });
  for (const size of sizes) {
    await page.setViewportSize(size);
    if (!resized) {
      await page.goto('about:blank'); // or only the route would change
      await page.goto(inject('address') + at);
    }
    await page.locator('button.next').waitFor();
    await look(page, size, `${size.width} × ${size.height}`);
  }
  expect(complaints).toEqual([]);
}

/** The corners of the lower half, its middle, and just below the middle of the screen. */
function placesIn({ width, height }: typeof PHONE): { x: number; y: number }[] {
  const upper = Math.ceil(height / 2) + 3;
  return [
    { x: 3, y: upper },
    { x: width / 2, y: upper },
    { x: width - 3, y: upper },
    { x: width / 2, y: height * 0.75 },
    { x: 3, y: height - 3 },
    { x: width - 3, y: height - 3 },
  ];
}

const boxesOf = (page: Page, selector: string) =>
  page.locator(selector).evaluateAll((found) =>
    found.map((element) => {
      const { left, top, right, bottom } = element.getBoundingClientRect();
      return { words: element.textContent, left, top, right, bottom };
    }),
  );

async function boxOf(page: Page, selector: string) {
  const [box] = await boxesOf(page, selector);
  if (!box) throw new Error(`there is no ${selector}`);
  return box;
}

/** What is pressed above the large key and is too small for its words. */
const wordsCutOff = (page: Page) =>
  page
    .locator('.actions button')
    .evaluateAll((buttons) =>
      buttons
        .filter((one) => one.scrollWidth > one.clientWidth || one.scrollHeight > one.clientHeight)
        .map((one) => one.textContent),
    );
