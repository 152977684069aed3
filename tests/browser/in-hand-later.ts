import type { Page } from 'playwright-core';
import { garmentHomeWords } from '#words/garment/garment-home-words.ts';
import { garmentListWords } from '#words/garment/garment-list-words.ts';
import { withKeys } from '../../src/garment/actions/with-keys.ts';
import type { Garment } from '../../src/garment/record/record.ts';
import { garmentOf, typed } from '../garment/trial/garments.ts';
import { KNOWN } from '../garment/trial/known.ts';
import { IN_HAND } from './in-hand.ts';
import { IN_HAND as LEFT_AT, longRow } from './long-row.ts';
import type { Screen } from './screens.ts';
import { store, stored } from './stored.ts';

/** Steps of a screen that there is already, to go on from. */
const reach = (name: string) => async (page: Page) => {
  const steps = IN_HAND.find((one) => one.name === name)?.steps;
  if (!steps) throw new Error(`no screen is called ${name}`);
  await steps(page);
};

/** A garment put on the phone, in hand. */
async function take(page: Page, garment: Garment): Promise<void> {
  await store(page, `garment:${garment.id}`, garment);
  await page.evaluate((id) => location.assign(`#/garments/open?g=${id}`), garment.id);
  await page.locator('.next-key .says').waitFor();
}

/** Presses Made until it has counted: the thumb may be too early after its words changed. */
async function make(page: Page): Promise<void> {
  const says = page.locator('.next-key .says');
  const before = await says.textContent();
  while ((await says.textContent()) === before) {
    await page.locator('.next-key .made').click();
    await page.evaluate(() => new Promise((painted) => requestAnimationFrame(painted)));
  }
}

/** The long row in hand, past what is checked before its first hole. */
async function takeRow(page: Page): Promise<void> {
  await store(page, 'in-hand', LEFT_AT);
  await take(page, longRow());
  await make(page);
}

/** Another tab has changed what the key says: done on the disk alone, so that this one has not heard of it. */
async function madeStale(page: Page): Promise<void> {
  await store(page, 'in-hand', LEFT_AT);
  await take(page, longRow());
  const made = page.locator('.next-key .made');
  while (!(await page.locator('.checks').isVisible())) await made.click();
  const row = (await stored(page, 'garment:row')) as Garment;
  const strip = Object(row.works.strip);
  const works = {
    ...row.works,
    strip: { ...strip, fields: { ...strip.fields, end: typed('0.9') } },
  };
  await store(page, 'garment:row', { ...row, works, edits: row.edits + 1, changed: Date.now() });
  const said = page.locator('.in-hand .last .warning');
  while (!(await said.isVisible())) await made.click();
}

/** The phone takes nothing more. */
async function madeWithoutRoom(page: Page): Promise<void> {
  await takeRow(page);
  await page.evaluate(() => {
    IDBTransaction.prototype.commit = function (this: IDBTransaction) {
      Object.defineProperty(this, 'error', { value: new DOMException('', 'QuotaExceededError') });
      this.abort();
    };
  });
  await make(page);
  await page.locator('.in-hand .last .warning').waitFor();
}

/** A short work, made to its end. */
async function allMade(page: Page): Promise<void> {
  const fields = { depth: typed('2'), turn: typed('0.7') };
  const hem = { name: 'Hem', calculation: 'hem', older: 2, rank: 1, fields };
  const garment = { ...garmentOf({ works: { hem } }), id: 'short', name: 'Napkin (invented)' };
  await take(page, withKeys(garment, KNOWN));
  const end = page.getByText(garmentHomeWords.allMade).first();
  const made = page.locator('.next-key .made');
  while (!(await end.isVisible())) {
    await made.click();
    await page.evaluate(() => new Promise((painted) => requestAnimationFrame(painted)));
  }
}

/** A found number on a drawing is to have a name. */
async function naming(page: Page): Promise<void> {
  await reach('a work in place')(page);
  await page.locator('.garment-work .dimension.found').first().click();
  await page.locator('.garment-work form input').waitFor();
}

/** Typed into a field that others hang on, and rested. */
async function pending(page: Page): Promise<void> {
  await reach('a garment in hand')(page);
  await page.evaluate(() => location.assign(`${location.hash}&w=strip`));
  await page.locator('.dimension.linked').first().waitFor();
  await page.locator('.tiles input[name=pitch]').focus();
  await page.locator('.pad button', { hasText: /^9$/ }).click();
  await page.locator('.before-after').waitFor();
}

async function search(page: Page): Promise<void> {
  const names = ['Coat', 'Waistcoat, grey', 'Skirt', 'Shirt', 'Trousers', 'Waistcoat, lined'];
  for (const [i, name] of names.entries()) {
    await store(page, `garment:g${i}`, { ...garmentOf({}), id: `g${i}`, name, changed: i });
  }
  await page.evaluate(() => location.assign('#/'));
  await page.locator('.home').waitFor();
  await page.evaluate(() => location.assign('#/garments'));
  await page.locator('input[type=search]').fill('waist');
}

async function putAway(page: Page): Promise<void> {
  await reach('garments with one on it')(page);
  await page.locator('article .more').first().click();
  await page.getByRole('button', { name: garmentListWords.putAway }).click();
  await page.locator('.garments li').first().waitFor();
}

const state = (name: string, steps: (page: Page) => Promise<void>): Screen => ({
  name,
  hash: '#/garments',
  steps,
});

/** What else a garment can look like, or its list: only for looking at. */
export const LATER: readonly Screen[] = [
  state('what is being typed', pending),
  state('what was typed is settled', async (page) => {
    await pending(page);
    await page.locator('.of-field .done').click();
    await page.locator('.garment-work .last').waitFor();
  }),
  state('a step passed over', async (page) => {
    await reach('more about a step')(page);
    await page.getByRole('button', { name: garmentHomeWords.passOver }).click();
    await page.locator('.in-hand .works').waitFor();
  }),
  state('made on a page that is stale', madeStale),
  state('made without room on the phone', madeWithoutRoom),
  state('garments searched', search),
  state('a garment put away', putAway),
  state('what can be done with a garment', async (page) => {
    await reach('garments with one on it')(page);
    await page.locator('article .more').first().click();
  }),
  state('a work as a list', async (page) => {
    await reach('a work in place')(page);
    await page.locator('.garment-work .actions button[aria-expanded]').click();
    await page.locator('.tiles .seen').first().waitFor();
  }),
  state('a garment all made', allMade),
  state('a found number to name', naming),
];
