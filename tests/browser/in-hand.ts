import type { Page } from 'playwright-core';
import type { Screen } from './screens.ts';

/** The list, where a garment begins. */
const AT = '#/garments';

/** Presses the first of these. They are found by what they are: their words are of any language. */
async function press(page: Page, what: string): Promise<void> {
  await page.locator(what).first().click();
}

/** The invented garment, in hand. */
async function invented(page: Page): Promise<void> {
  await press(page, '.garments article:has(form) > .keys > button.plain');
  await page.locator('.in-hand .works svg').waitFor();
}

/** What the thumb has to have stood on for a while is pressed until it has answered. */
async function pressKey(page: Page, then: string): Promise<void> {
  const answered = page.locator(then).first();
  while (!(await answered.isVisible())) {
    await press(page, '.next-key .made');
    await page.evaluate(() => new Promise((painted) => requestAnimationFrame(painted)));
  }
}

async function more(page: Page): Promise<void> {
  await invented(page);
  await press(page, '.next-key .says');
  await page.locator('.more').waitFor();
}

async function order(page: Page): Promise<void> {
  await invented(page);
  await press(page, '.in-hand .to-order');
  await press(page, '.order .step');
  await page.locator('.order .deeds').waitFor();
}

/** Where a step was made is said: the keys are up. */
async function elsewhere(page: Page): Promise<void> {
  await more(page);
  await press(page, '.more .ways button');
  await page.locator('.measured input:focus').waitFor();
}

/** It was made otherwise than asked. */
async function otherwise(page: Page): Promise<void> {
  await elsewhere(page);
  await page.keyboard.type('9');
  await page.keyboard.press('Enter');
  await page.locator('.in-hand .last').waitFor();
}

async function openWork(page: Page): Promise<void> {
  await invented(page);
  await press(page, '.works .now > button');
  await page.locator('.garment-work .dimension').first().waitFor();
}

async function openField(page: Page): Promise<void> {
  await openWork(page);
  await press(page, '.dimension.linked, .dimension.given');
  await page.locator('.of-field').waitFor();
}

/** In the garment's own numbers. */
async function measures(page: Page): Promise<void> {
  await invented(page);
  await press(page, '.bar button:nth-child(2)');
  await page.locator('.numbers .number').first().waitFor();
}

/** All measures of the body there are to choose from. */
async function chooseMeasure(page: Page): Promise<void> {
  await measures(page);
  await press(page, '.measures .actions button:nth-child(2)');
  await page.locator('.choosing .find').waitFor();
}

/** What is to be at hand for it, by way of what can be added. */
async function materials(page: Page): Promise<void> {
  await invented(page);
  await press(page, '.bar button');
  await press(page, '.adding .beside button:nth-child(2)');
  await page.locator('.materials .tick').first().waitFor();
}

const state = (name: string, steps: (page: Page) => Promise<void>): Screen => ({
  name,
  hash: AT,
  steps,
});

/** What a garment in hand can look like; each is reached by pressing, from nothing on the phone. */
export const IN_HAND: readonly Screen[] = [
  state('a garment in hand', invented),
  state('nothing on a garment', async (page) => {
    await page.locator('.garments article:has(form) input').first().fill('7');
    await page.keyboard.press('Enter');
    await page.locator('.next-key').waitFor();
  }),
  state('checked before a cut', async (page) => {
    await invented(page);
    await pressKey(page, '.checks');
  }),
  state('more about a step', more),
  state('steps and their order', order),
  state('a note at a work', async (page) => {
    await order(page);
    await press(page, '.order .whole');
    await page.locator('.note-screen').waitFor();
  }),
  state('made elsewhere', elsewhere),
  state('made otherwise', otherwise),
  state('how it goes on', async (page) => {
    await otherwise(page);
    await press(page, '.works button:has(em)');
    await press(page, '.garment-work .last button');
    await page.locator('.decision .ways').waitFor();
  }),
  state('what can be added', async (page) => {
    await invented(page);
    await press(page, '.bar button');
    await page.locator('.adding').waitFor();
  }),
  state('a work in place', openWork),
  state('a field of a work', openField),
  state('a number from the garment', async (page) => {
    await openField(page);
    await press(page, '.of-field .chips button:nth-child(2)');
    await page.locator('.offered').waitFor();
  }),
  state('measures of a garment', measures),
  state('one measure', async (page) => {
    await measures(page);
    await press(page, '.numbers .number');
    await page.locator('.deeds').first().waitFor();
  }),
  state('the garment on paper', async (page) => {
    await invented(page);
    await press(page, '.bar button:last-child');
    await page.locator('.sheet .page').first().waitFor();
  }),
  state('a measure to choose', chooseMeasure),
  state('how a measure is taken', async (page) => {
    await chooseMeasure(page);
    await press(page, '.choosing section:nth-of-type(1) button:nth-of-type(14)');
    await page.locator('.guide svg').waitFor();
  }),
  state('materials of a garment', materials),
  state('one material', async (page) => {
    await materials(page);
    await press(page, '.numbers .number');
    await page.locator('.deeds').first().waitFor();
  }),
  state('a number of a material', async (page) => {
    await materials(page);
    await press(page, '.numbers .number');
    await press(page, '.deeds .deed');
    await page.locator('.tiles input:focus').waitFor();
  }),
  state('garments with one on it', async (page) => {
    await invented(page);
    await page.goBack();
    await page.locator('article').first().waitFor();
  }),
];
