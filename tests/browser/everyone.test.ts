import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { phoneWords } from '#words/phone/phone-words.ts';
import { inGate, THOROUGH } from '../thorough.ts';
import { nameless } from './announced.ts';
import { axeFaults } from './axe.ts';
import {
  launchBrowser,
  type OpenApp,
  openAnew,
  openApp,
  PHONE,
  SMALL_PHONE,
  takePhone,
  wear,
} from './harness.ts';
import { IN_HAND } from './in-hand.ts';
import { LATER } from './in-hand-later.ts';
import { EACH, EVERY_SCREEN, type Screen } from './screens.ts';
import { stored } from './stored.ts';

let browser: Browser;
/** The phone on which one screen after another is looked at. */
let phone: OpenApp;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await takePhone(browser, inject('address'), {
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
});

afterAll(() => browser.close());

const NARROW = { width: 320, height: 568 };
const SIDEWAYS = { width: 640, height: 360 };

/** States of a screen that have no place in the list of screens. */
const STATES: [string, string, (page: Page) => Promise<void>][] = [
  ['a mistake', '#/closures?count=abc', async () => {}],
  ['choices', '#/closures', (page) => page.locator('button[name=by]').tap()],
  ['no keys', '#/closures?level=20', (page) => page.getByText('No keys').tap()],
  ['made elsewhere', '#/closures/follow', (page) => page.getByText('Made elsewhere').tap()],
  ['nowhere', '#/nowhere', async () => {}],
];

const large = (page: Page) =>
  page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });

/** What can be pressed and is smaller than a thumb needs, with its size. */
const smallTargets = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('button, a, label')]
      // What only keys and screen readers come to is no larger than they need.
      .filter((target) => target.checkVisibility() && !target.closest('.unseen'))
      .map((target) => ({ target, box: target.getBoundingClientRect() }))
      .filter(({ box }) => box.width < 47.9 || box.height < 47.9)
      .map(({ target, box }) => `${target.textContent} ${box.width} × ${box.height}`),
  );

/** What stands between answer and fields and is out of sight, or too small for its words. */
const cutOff = (page: Page) =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll(
        '.bench .actions button, .choices button, .next-key .made, .bar button',
      ),
    ]
      .filter((one) => {
        const { left, right, top, bottom } = one.getBoundingClientRect();
        const inSight =
          one.closest('.choices') || // these scroll
          (left >= 0 && top >= 0 && right <= innerWidth && bottom <= innerHeight);
        return !inSight || one.scrollWidth > one.clientWidth || one.scrollHeight > one.clientHeight;
      })
      .map((one) => one.textContent),
  );

/** What reaches past the side of the screen and isn't moved sideways by a thumb, and places of marks that are cut short. */
const overflow = (page: Page) =>
  page.evaluate(() => {
    // The window of a phone grows with what is too wide for it, the page's own width doesn't.
    const wide = document.documentElement.clientWidth;
    const beyond = [...document.querySelectorAll('#app *:not(svg *)')].filter((one) => {
      const { left, right, width } = one.getBoundingClientRect();
      if (width === 0 || (right <= wide + 0.5 && left >= -0.5)) return false;
      return one.checkVisibility() && !one.closest('.unseen, .choices, .chips, .marks li');
    });
    const short = [...document.querySelectorAll('.marks li span:nth-child(2)')].filter((place) => {
      const end = place.querySelector('small')?.getBoundingClientRect().left;
      const { left, right } = place.getBoundingClientRect();
      return (end ?? left + place.scrollWidth) > right + 0.5;
    });
    return [...beyond, ...short].map((one) => `${one.tagName} ${one.textContent}`).slice(0, 3);
  });

/** A drawing is measured anew a frame after the screen has turned. */
const fits = (page: Page, how: string) =>
  expect.poll(() => overflow(page), { message: how }).toEqual([]);

/** Names that have less room than their longest word beside their number. */
const squeezed = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('.before-after dt, .before-after dd')]
      .filter((one) => {
        const { width } = one.getBoundingClientRect();
        return width < 4 * Number.parseFloat(getComputedStyle(one).fontSize);
      })
      .map((one) => one.textContent),
  );

/** What is to be pressed and lies above the lower 60 %, where no thumb reaches. */
const outOfReach = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('button, a, label')]
      .filter((target) => target.checkVisibility())
      .filter((target) => target.getBoundingClientRect().top < innerHeight * 0.4 - 1)
      .map((target) => target.textContent),
  );

/** Fields of the first row whose value lies below what is seen of it. */
const halfSeen = (page: Page) =>
  page.evaluate(() => {
    const seen = document.querySelector('.bench .tiles')?.getBoundingClientRect();
    const boxes = [...document.querySelectorAll('.bench .tiles .tile')].map((tile) => ({
      tile,
      top: tile.getBoundingClientRect().top,
      value: tile.lastElementChild?.getBoundingClientRect().bottom ?? 0,
    }));
    const row = boxes.filter(({ top }) => top === boxes[0]?.top);
    return row
      .filter(({ value }) => value > (seen?.bottom ?? 0) + 3)
      .map(({ tile }) => tile.textContent);
  });

const LIGHTS = ['paper', 'night'] as const;
type Light = (typeof LIGHTS)[number];

interface Visit {
  screen: Screen;
  hand: 'left' | 'right';
  /** In which light it is looked through for faults in the gate, if it is. */
  by: Light | undefined;
  sizes: readonly { width: number; height: number }[];
}

const SIZES = [SMALL_PHONE, NARROW, SIDEWAYS];

/** The same page by day and by night, large and small, with small letters and large ones. */
async function lookAt({ screen: { steps }, by, sizes }: Visit, page: Page): Promise<void> {
  // As it opens: what is scrolled to, or turned with the phone, may lie anywhere.
  if (!steps) {
    expect(await outOfReach(page), 'out of reach').toEqual([]);
    expect(await halfSeen(page), 'half seen').toEqual([]);
  }
  await page.setViewportSize(PHONE);
  await wear(page, 'paper');
  if (THOROUGH || by === 'paper') expect(await axeFaults(page), 'paper').toEqual([]);
  for (const size of sizes) {
    await page.setViewportSize(size);
    expect(await smallTargets(page), `${size.width} wide`).toEqual([]);
    await fits(page, `${size.width} wide`);
  }
  await page.setViewportSize(SMALL_PHONE);
  expect(await nameless(page)).toEqual([]);
  await wear(page, 'night');
  if (THOROUGH) expect(await axeFaults(page), 'night').toEqual([]);
  await large(page);
  if (THOROUGH || by === 'night') {
    expect(await axeFaults(page), 'night, large text').toEqual([]);
  }
  // Letters are measured with the screen, once it has been seen.
  await page.setViewportSize(PHONE);
  await page.evaluate(() => new Promise((seen) => requestAnimationFrame(() => setTimeout(seen))));
  for (const size of sizes) {
    await page.setViewportSize(size);
    await fits(page, `large text, ${size.width} wide`);
    expect(await cutOff(page), `large text, ${size.width} wide`).toEqual([]);
    expect(await squeezed(page), `large text, ${size.width} wide`).toEqual([]);
  }
}

/**
 * Each screen is for both hands and in both lights; in the gate the one or the other in turns, as
 * to look through a page for faults takes its time. Pages of calculations are alike but for their
 * words and fields: in the gate they are tried where there is least room, one in three is looked
 * through, and of the others every other one is left to `npm run thorough`.
 */
const VISITS = inGate(
  [...EVERY_SCREEN, ...(THOROUGH ? LATER : [])].flatMap((screen, i) => {
    const page = EACH.indexOf(screen);
    const visit = {
      ...{ name: screen.name, screen },
      by: page % 3 > 0 ? undefined : LIGHTS[(i >> 1) % 2],
      sizes: page >= 0 && !THOROUGH ? [NARROW] : SIZES,
    };
    return (['left', 'right'] as const).map((hand): Visit & { name: string } => ({
      ...visit,
      hand,
    }));
  }),
  ({ screen, by }, i) =>
    (i % 4 === 0 || i % 4 === 3) && (by !== undefined || EACH.indexOf(screen) % 2 < 1),
);

test.each(VISITS)(
  '$name suits everyone: the $hand hand, by day and night, large text, a narrow phone',
  async (visit) => {
    const { screen, hand } = visit;
    const { complaints } = phone;
    const page = await openAnew(phone, inject('address'), {
      ...{ at: screen.hash, size: SMALL_PHONE, bench: { hand } },
    });
    await page.locator('h1').first().waitFor();
    await screen.steps?.(page);
    await lookAt(visit, page);
    expect(complaints).toEqual([]);
  },
);

test('the first screen of a new phone is no wider than it and breaks no word, also in large lettering', async () => {
  await openAnew(phone, inject('address'), { at: '#/', size: SMALL_PHONE });
  await phone.page.getByText(phoneWords.restore).waitFor();
  await large(phone.page);
  // The window of a phone grows with what doesn't fit: it isn't asked.
  const wide = await phone.page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBe(SMALL_PHONE.width);
  expect(await brokenWords(phone.page), 'large text').toEqual([]);
  await openAnew(phone, inject('address'), { at: '#/', size: NARROW });
  await phone.page.getByText(phoneWords.restore).waitFor();
  expect(await brokenWords(phone.page), 'narrow').toEqual([]);
});

test.each(STATES)('%s can be used by everyone', async (_, at, reach) => {
  const { complaints } = phone;
  const page = await openAnew(phone, inject('address'), {
    ...{ at, size: SMALL_PHONE, bench: { theme: 'night' } },
  });
  await page.locator('h1').first().waitFor();
  await reach(page);
  expect(await axeFaults(page), 'night').toEqual([]);
  // By day, with the letters large: neither the light nor their size hides what the other shows.
  await wear(page, 'paper');
  await large(page);
  expect(await axeFaults(page), 'paper, large text').toEqual([]);
  expect(complaints).toEqual([]);
});

test('the field in hand is seen whole on a small phone, also in large lettering', async () => {
  const { page } = phone;
  await openAnew(phone, inject('address'), { at: '#/closures', size: SMALL_PHONE });
  await page.locator('.tile.now').waitFor();
  const beyond = () =>
    page.evaluate(() => {
      const [row, field] = ['.tiles', '.tile.now'].map((one) =>
        document.querySelector(one)?.getBoundingClientRect(),
      );
      return row && field && Math.max(field.bottom - row.bottom, row.top - field.top);
    });
  // But for the line that ends its row.
  expect(await beyond()).toBeLessThanOrEqual(1);
  await large(page);
  expect(await beyond(), 'large text').toBeLessThanOrEqual(1);
});

/** Words of headings, of works' names and of what home leads to that go on in the next line. */
const brokenWords = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('h1, .works b, .home nav a')].flatMap((one) => {
      const walk = document.createTreeWalker(one, NodeFilter.SHOW_TEXT);
      const broken: string[] = [];
      for (let text = walk.nextNode(); text; text = walk.nextNode()) {
        for (const { 0: word, index } of (text.textContent ?? '').matchAll(/\S+/g)) {
          const range = document.createRange();
          range.setStart(text, index);
          range.setEnd(text, index + word.length);
          if (range.getClientRects().length > 1) broken.push(word);
        }
      }
      return broken;
    }),
  );

test.each(
  IN_HAND.filter(({ name }) => /^(measures|materials) of a garment|^made otherwise/.test(name)),
)('$name breaks no word in two, also in large lettering', async ({ hash, steps }) => {
  const page = await openAnew(phone, inject('address'), { at: hash, size: SMALL_PHONE });
  await steps?.(page);
  await page.locator('h1').first().waitFor();
  expect(await brokenWords(page)).toEqual([]);
  await large(page);
  expect(await brokenWords(page), 'large text').toEqual([]);
});

test('settings are kept over a reload: hand, light, unit, decimal comma', async () => {
  const app = await openApp(browser, inject('address'), {
    at: '#/settings',
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
  const { page } = app;
  for (const name of ['left hand', 'night bench', 'inches', 'comma, 1,5']) {
    await page.getByText(name, { exact: true }).tap();
  }
  const set = { hand: 'left', theme: 'night', unit: 'in', decimalMark: ',' };
  await expect.poll(() => stored(page, 'settings'), { timeout: 20_000 }).toMatchObject(set);
  await page.goto(`${inject('address')}#/closures`);
  await page.reload();
  await page.locator('.pad[data-hand=left]').waitFor();
  expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('night');
  expect(await page.locator('input[name=opening]').inputValue()).toBe('18 1/4');
  expect(await page.getByRole('button', { name: 'decimal mark' }).textContent()).toBe(',');
  const left = await page.getByRole('button', { name: 'next field' }).boundingBox();
  expect(left?.x).toBeLessThan(SMALL_PHONE.width / 2);
  await app.close();
});

const BROKEN: [string, () => void, string][] = [
  [
    'refuses storage',
    () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('no', 'SecurityError');
      };
    },
    phoneWords.store.refused,
  ],
  [
    'never answers about storage',
    () => {
      IDBFactory.prototype.open = () => ({}) as IDBOpenDBRequest;
    },
    phoneWords.store.slow,
  ],
  [
    'has no service workers',
    () => Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined }),
    phoneWords.blocked.unsupported,
  ],
];

test.each(BROKEN)('a browser that %s is said so, and the app works', async (_, breakIt, said) => {
  const app = await takePhone(browser, inject('address'), { size: SMALL_PHONE });
  await app.page.addInitScript(breakIt);
  await app.page.goto(inject('address'));
  await app.page.getByText(said).waitFor();
  await app.page.getByRole('link', { name: /^Closures/ }).tap();
  await app.page.locator('.answer .number').waitFor();
  await app.close();
});

test('a store that is slow to wake is said, and what it held is taken up without a press', async () => {
  const app = await takePhone(browser, inject('address'), {
    size: SMALL_PHONE,
    serviceWorkers: 'block',
    bench: { unit: 'in' },
  });
  await app.page.addInitScript(() => {
    const { set } = Object.getOwnPropertyDescriptor(IDBRequest.prototype, 'onsuccess') ?? {};
    const awake = new Promise((wake) => addEventListener('wake', wake));
    Object.defineProperty(IDBOpenDBRequest.prototype, 'onsuccess', {
      set(hear) {
        set?.call(this, () => awake.then(hear));
      },
    });
  });
  await app.page.goto(inject('address'));
  await app.page.getByText(phoneWords.store.slow).waitFor();
  await app.page.getByRole('link', { name: 'Hem' }).tap();
  await app.page.locator('.tiles input[name=depth]').fill('4 cm');
  await app.page.evaluate(() => dispatchEvent(new Event('wake')));
  // A bare number is in the unit of the bench: now of the kept one, and what was typed stays.
  await app.page.getByText('in inches unless another unit is written').first().waitFor();
  expect(await app.page.locator('.tiles input[name=depth]').inputValue()).toBe('4 cm');
  await app.page.evaluate(() => history.back());
  await app.page.getByRole('link', { name: 'Hem' }).waitFor();
  expect(await app.page.getByText(phoneWords.store.slow).count()).toBe(0);
  await app.close();
});
