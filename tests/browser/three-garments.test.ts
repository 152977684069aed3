import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, SMALL_PHONE, takePhone } from './harness.ts';
import { enterShirt, enterSkirt, onEmptyPhone } from './invented-garments.ts';
import { keptGarments } from './kept-garments.ts';
import { makeUntil } from './make-until.ts';
import type { Maker } from './maker.ts';

/*
 * Three garments made to their last mark on a small phone, each press counted: the invented one
 * that is shown at the first visit, and two that are entered from nothing. The numbers that are
 * expected here are worked out by hand beside them.
 */

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

/** The machine may be busy with other tests. */
const LONG = 180_000;

/** A phone whose clock the maker moves on: a key wants its words to have stood for a moment. */
async function start() {
  const phone = await takePhone(browser, inject('address'), {
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
  await phone.page.clock.install();
  await phone.page.goto(inject('address'));
  return phone;
}

/** How many things made the one garment on the phone holds. */
async function facts(page: Page): Promise<number> {
  const { garments, damaged } = await keptGarments(page);
  expect(damaged).toBe(0);
  return Object.keys(garments[0]?.facts ?? {}).length;
}

/** Loads the app anew once all is kept, from its first page: the next number stands there without a press. */
async function comesBack(page: Page, maker: Maker, made: number): Promise<void> {
  const before = await maker.said();
  await expect.poll(() => facts(page)).toBe(made);
  await page.goto('about:blank');
  await page.goto(inject('address'));
  await page.locator('.next-key').waitFor();
  // As it was seen last, until it is worked out anew: then it can be pressed.
  await page.locator('.next-key:not([data-kind=last])').waitFor();
  expect(await maker.said()).toBe(before);
  expect(await facts(page)).toBe(made);
}

/** Takes one of the ways a decision offers; gives what it said of itself. */
async function decide(page: Page, maker: Maker, way: string): Promise<string> {
  await maker.press('See the ways');
  const key = page.locator('.ways button').filter({ hasText: way });
  const said = (await key.textContent()) ?? '';
  await maker.tap(key);
  await page.locator('.next-key').waitFor();
  return said;
}

/** Numbers that the key shows one after another, each made. */
async function numbers(maker: Maker, count: number): Promise<string[]> {
  const all: string[] = [];
  for (let i = 0; i < count; i++) {
    all.push(/ ([\d.]+ cm)/.exec(await maker.said())?.[1] ?? '');
    await maker.key();
  }
  return all;
}

test(
  'the invented waistcoat: at most three presses from an empty phone to its next number',
  async () => {
    const { page, complaints, close } = await start();
    const maker = await onEmptyPhone(page);
    await maker.press('Show an invented waistcoat');
    await page.locator('.next-key[data-kind=step]').waitFor();
    expect(maker.presses).toBeLessThanOrEqual(3);
    expect(await maker.made()).toBe('6 of 14 made');
    const first = await facts(page);

    // A cut is checked first: what it hangs on is said, and nothing is made by that press.
    expect(await maker.said()).toMatch(/^Armhole strip: cut the strip to length.* 62\.4 cm/);
    expect(await maker.face()).toBe('Check');
    await maker.key();
    expect(await page.locator('.checks').textContent()).toMatch(/can’t be undone.*Armhole, round/s);
    expect(await facts(page)).toBe(first);

    let made = await makeUntil(maker, /punch, from the cut end · 4 of 78/);
    await comesBack(page, maker, first + made);
    await maker.tap(page.locator('.next-key .says'));
    await maker.press('Made up to here');
    await maker.press(/^70 · /);
    made += 67;
    await expect.poll(() => maker.said()).toMatch(/71 of 78/);
    made += await makeUntil(maker, /All is made/);
    await expect.poll(() => facts(page)).toBe(first + made);
    // Two cuts of the strip, the hem's three, four hooks, 78 holes, one lace.
    expect(made).toBe(2 + 3 + 4 + 78 + 1);
    expect(await maker.made()).toBe('14 of 14 made');
    console.log(`the invented waistcoat: ${maker.presses} presses for ${made} made`);
    expect(complaints).toEqual([]);
    await close();
  },
  LONG,
);

test(
  'a pleated skirt, entered from nothing and made to its last mark',
  async () => {
    const { page, complaints, close } = await start();
    const maker = await enterSkirt(page);
    const entered = maker.presses;
    // 72 cm in 8 knife pleats of 4 cm, each two deep, and a seam of 1 cm at each end.
    expect(await maker.said()).toMatch(/^Pleats: cut the strip.* 138 cm/);
    expect(await maker.face()).toBe('Check');

    let made = await makeUntil(maker, /mark the line across the strip.* 7 of 16/);
    await comesBack(page, maker, made);
    made += await makeUntil(maker, /^Placket: .* 2 of 5 5\.3 cm/);
    await maker.madeAt('5.9');
    made += 1;
    await page.locator('.next-key[data-kind=decide]').waitFor();
    // From 5.9 to the last, 20 − 2.5, are three spaces of 3.867; (20 − 2.5 − 1.2) ÷ 4 = 4.075 before.
    expect(await decide(page, maker, 'Spread over the 3 to come')).toMatch(/3\.867.*4\.075/);
    expect(await numbers(maker, 3)).toEqual(['9.8 cm', '13.6 cm', '17.5 cm']);
    made += 3;
    made += await makeUntil(maker, /All is made/);
    // The strip, 16 lines, the folds measured; quarters of the waistband; the hem's three; hooks.
    expect(made).toBe(1 + 16 + 1 + 4 + 3 + 5);
    await expect.poll(() => facts(page)).toBe(made);
    console.log(`a pleated skirt: ${entered} presses to enter, ${maker.presses} in all`);
    expect(complaints).toEqual([]);
    await close();
  },
  LONG,
);

test(
  'a shirt with sleeves done left and right, entered from nothing and made to its last mark',
  async () => {
    const { page, complaints, close } = await start();
    const maker = await enterShirt(page);
    const entered = maker.presses;
    let made = await makeUntil(maker, /^Sleeve hem, left: press the hem line.* 2\.7 cm/);
    await comesBack(page, maker, made);
    made += await makeUntil(maker, /^Sleeve hem, right: press the hem line.* 3\.2 cm/);
    made += await makeUntil(maker, /^Front buttons: .* 3 of 6 24\.5 cm/);
    await maker.madeAt('24.9');
    made += 1;
    await page.locator('.next-key[data-kind=decide]').waitFor();
    // (62 − 1.2 − 2.5) ÷ 5 = 11.66 from each to the next; 62 − (24.9 + 3 × 11.66) = 2.12 are left.
    expect(await decide(page, maker, 'Go on as begun')).toMatch(/11\.66 cm.*2\.12 cm/);
    expect(await numbers(maker, 3)).toEqual(['36.6 cm', '48.2 cm', '59.9 cm']);
    made += 3;
    made += await makeUntil(maker, /^Buttonholes, 1: cut the buttonhole open/);
    // Across 24 L, which are 24/40 in (0.6 in = 1.524 cm), and 0.3 thick: 1.824. The button has to
    // pass, so on this tape it is 1.9.
    expect(await maker.said()).toMatch(/ 1\.9 cm/);
    made += await makeUntil(maker, /All is made/);
    // Quarters of both cuffs, both hems, six buttons, and of each buttonhole two ends and the cut.
    expect(made).toBe(2 * 4 + 2 * 3 + 6 + 6 * 3);
    await expect.poll(() => facts(page)).toBe(made);
    console.log(`a shirt: ${entered} presses to enter, ${maker.presses} in all`);
    expect(complaints).toEqual([]);
    await close();
  },
  LONG,
);
