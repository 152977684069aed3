import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { THOROUGH } from '../thorough.ts';
import { launchBrowser, SMALL_PHONE, takePhone } from './harness.ts';
import { onEmptyPhone } from './invented-garments.ts';
import { keptGarments } from './kept-garments.ts';
import { makeUntil } from './make-until.ts';

/*
 * The invented skirt and shirt made to their last step on a small phone, each press counted; that
 * their numbers are right, and that every step is there, is tried without a browser.
 */

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

test.runIf(THOROUGH).each([
  // What is made of it, and the first step that is left.
  ['an invented skirt', 8, /^Placket, left side: /],
  ['an invented shirt', 4, /^(Collar|Back|Fronts|Cuffs)/],
])(
  'from an empty phone to the last step of %s',
  async (which, before, first) => {
    const { page, complaints, close } = await takePhone(browser, inject('address'), {
      size: SMALL_PHONE,
      serviceWorkers: 'block',
    });
    await page.clock.install();
    await page.goto(inject('address'));
    const maker = await onEmptyPhone(page);
    await maker.press(`Show ${which}`);
    await page.locator('.next-key[data-kind=step]').waitFor();
    expect(maker.presses).toBeLessThanOrEqual(3);
    expect(await maker.said()).toMatch(first);
    const made = await makeUntil(maker, /All is made/);
    const { garments } = await keptGarments(page);
    await expect
      .poll(async () => Object.keys((await keptGarments(page)).garments[0]?.facts ?? {}).length)
      .toBe(before + made);
    expect(garments).toHaveLength(1);
    console.log(`${which}: ${maker.presses} presses for ${made} made`);
    expect(complaints).toEqual([]);
    await close();
  },
  180_000,
);
