import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { garmentListWords } from '#words/garment/garment-list-words.ts';
import { garmentWords } from '#words/garment/garment-words.ts';
import { launchBrowser, openApp, SMALL_PHONE } from './harness.ts';
import { IN_HAND } from './in-hand.ts';
import { settled } from './settled.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

const start = async (at: string) => {
  const app = await openApp(browser, inject('address'), {
    at,
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
  await app.page.locator('h1').first().waitFor();
  await app.page.waitForFunction(
    () => !document.querySelector('.home, .waiting, .tile:empty, .choices:empty'),
  );
  return app;
};

/** What a garment in hand can look like, reached as everyone does. */
async function startIn(name: string) {
  const screen = IN_HAND.find((one) => one.name === name);
  const app = await start(screen?.hash ?? '');
  await screen?.steps?.(app.page);
  return app;
}

/** Everything that can be operated as the page is now, by what is to be seen of it. */
const NOT_REACHED = `:is(a[href], button:enabled, input:enabled, select:enabled, [tabindex="0"]):not([tabindex="-1"], [data-reached])`;

/** Notes where the focus is; what hides there, or isn't marked, is given back. */
const reach = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => {
    const at = document.activeElement as HTMLElement;
    // Of radios that belong together Tab reaches the chosen one; arrows go on from there.
    const group = at instanceof HTMLInputElement && at.type === 'radio' ? at.name : undefined;
    const reached = group ? document.getElementsByName(group) : [at];
    for (const one of reached) one.dataset.reached = 'yes';
    const box = at.getBoundingClientRect();
    const inView = box.bottom > 0 && box.top < innerHeight && box.right > 0;
    // The mark may be round the tile or label that the control is in.
    const marked = [at, at.closest('label, .choose')].some((one) => {
      if (!one) return false;
      const { outlineStyle, outlineWidth } = getComputedStyle(one);
      return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
    });
    return inView && marked && at.matches(':focus-visible') ? undefined : at.outerHTML;
  });

const SCREENS = [
  '#/hem',
  '#/seam',
  '#/centre',
  '#/centre/count',
  '#/closures/follow',
  '#/garments',
  'a garment in hand',
  'more about a step',
  'a work in place',
  'one measure',
];

test.each(SCREENS)('%s: Tab reaches everything, and shows where it is', async (at) => {
  const { page, close } = await (at.startsWith('#') ? start(at) : startIn(at));
  // Parts that come late, such as the way to a photo, must be there before the round begins.
  await settled(page);
  // From the first one on to the last: a field that is reached brings its own keys.
  await page.locator(NOT_REACHED).first().focus();
  const unseen: (string | undefined)[] = [];
  for (let i = 0; i < 150; i++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(() => document.activeElement === document.body)) break;
    unseen.push(await reach(page));
  }
  expect(unseen.filter((one) => one !== undefined)).toEqual([]);
  expect(unseen.length).toBeGreaterThan(4);
  // What the last field brought stands further up, anew: the next round comes to it.
  const left = page.locator(NOT_REACHED).filter({ visible: true });
  for (let i = 0; i < 4 && (await left.count()) > 0; i++) {
    await tabTo(page, left.first());
    await reach(page);
  }
  expect(await left.evaluateAll((all) => all.map((one) => one.outerHTML))).toEqual([]);
  await close();
});

/** Presses Tab, or a key given, until a control has the focus. */
async function tabTo(page: Page, wanted: Locator, key = 'Tab'): Promise<void> {
  const there = page.locator(':focus').and(wanted);
  for (let i = 0; i < 80; i++) {
    if ((await there.count()) > 0) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${wanted} is not reached by ${key}`);
}

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

test.each(['#/hem', '#/seam'])(
  '%s: a way is chosen and a number typed with the keys alone',
  async (at) => {
    const { page, complaints, close } = await start(at);
    const tile = page.locator('button.tile[name]').first();
    const before = await tile.textContent();
    await tabTo(page, tile);
    await page.keyboard.press('Enter');
    await page.locator('.choices :focus').waitFor();
    const other = page.locator('.choices button[aria-pressed=false]').first();
    const face = (await other.textContent()) ?? '';
    const after = await other.evaluate((one) => one.matches('[aria-pressed=true] ~ *'));
    await tabTo(page, button(page, face), after ? 'Tab' : 'Shift+Tab');
    await page.keyboard.press(' ');
    await expect.poll(() => tile.textContent()).not.toBe(before);
    expect(await tile.textContent()).toContain(face);

    const field = page.locator('.tiles input').first();
    await tabTo(page, field, 'Shift+Tab');
    await page.keyboard.type('3.5');
    expect(await field.inputValue()).toBe('3.5');
    await page.locator('.answer .number:not(.none)').waitFor();
    await page.keyboard.press('Enter');
    expect(await field.evaluate((one) => one.matches(':focus'))).toBe(false);
    expect(complaints).toEqual([]);
    await close();
  },
);

test('holes are counted, taken back and left with the keys alone', async () => {
  const { page, close } = await start('#/centre?count=5');
  await tabTo(page, button(page, 'Count'));
  await page.keyboard.press('Enter');
  const count = page.locator('.big b');
  await page.locator('button.next:focus').waitFor();
  await page.keyboard.press(' ');
  await page.keyboard.press('Enter');
  await expect.poll(() => count.textContent()).toBe('7');
  await tabTo(page, button(page, 'One less'));
  await page.keyboard.press('Enter');
  await expect.poll(() => count.textContent()).toBe('6');
  await tabTo(page, button(page, 'Close'));
  await page.keyboard.press(' ');
  await expect.poll(() => page.locator('input[name=count]').inputValue()).toBe('6');
  await close();
});

test('marks are followed by arrows, Space and Enter', async () => {
  const { page, close } = await start('#/closures/follow');
  const place = (n: number) => page.getByText(`Hook ${n} of 7`).waitFor();
  await place(1);
  await page.keyboard.press('Enter');
  await place(2);
  await page.keyboard.press(' ');
  await place(3);
  await page.keyboard.press('ArrowRight');
  await place(4);
  await page.keyboard.press('ArrowLeft');
  await place(3);
  await close();
});

test('a garment is made, given another name, put away and had back with the keys alone', async () => {
  const { page, close } = await start('#/garments');
  await tabTo(page, page.locator('input[type=text]').first());
  await page.keyboard.type('Coat');
  await page.keyboard.press('Enter');
  // It is opened at once; back to the list.
  await page.waitForURL(/garments\/open/);
  await page.goBack();
  await page.getByRole('article', { name: 'Coat', exact: true }).waitFor();
  await tabTo(page, button(page, garmentListWords.more('Coat')));
  await page.keyboard.press('Enter');
  await tabTo(page, button(page, garmentWords.rename));
  await page.keyboard.press('Enter');
  const name = page.getByRole('article', { name: 'Coat' }).locator('input[type=text]');
  await name.waitFor();
  await tabTo(page, name);
  // Tab marks all that is in a field; what is typed comes after it.
  await page.keyboard.press('End');
  await page.keyboard.type(' and cape');
  await page.keyboard.press('Enter');
  const renamed = page.getByRole('article', { name: /cape$/ });
  await renamed.waitFor();
  await tabTo(page, button(page, garmentListWords.more('Coat and cape')));
  await page.keyboard.press('Enter');
  await tabTo(page, button(page, garmentListWords.putAway));
  await page.keyboard.press(' ');
  await renamed.waitFor({ state: 'detached' });
  await tabTo(page, button(page, garmentWords.bringBack));
  await page.keyboard.press('Enter');
  await renamed.waitFor();
  await close();
});

test('the next step is checked and made with the keys alone, and taken back', async () => {
  const { page, complaints, close } = await startIn('a garment in hand');
  const key = page.locator('.next-key .made');
  const number = page.locator('.next-key .number');
  const first = await number.textContent();
  await page.locator('h1:focus').waitFor();
  // Neither says anything before the focus is on the key.
  await page.keyboard.press('Enter');
  await page.keyboard.press(' ');
  await tabTo(page, key);
  expect(await page.locator('.checks').count()).toBe(0);
  // A key whose words just changed isn't pressed by what was meant for those before.
  const press = async (then: Locator) => {
    while ((await then.count()) === 0) {
      await page.keyboard.press('Enter');
      await page.evaluate(() => new Promise((painted) => requestAnimationFrame(painted)));
    }
  };
  await press(page.locator('.checks'));
  await press(page.locator('.in-hand .last'));
  await page.locator('.next-key .made:focus').waitFor();
  await expect.poll(() => number.textContent()).not.toBe(first);
  await tabTo(page, page.locator('.last button'), 'Shift+Tab');
  await page.keyboard.press('Enter');
  await expect.poll(() => number.textContent()).toBe(first);
  await page.locator('h1:focus').waitFor();
  expect(complaints).toEqual([]);
  await close();
});
