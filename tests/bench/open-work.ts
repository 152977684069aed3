import type { Browser, Locator, Page } from 'playwright-core';
import { openApp, SMALL_PHONE, slowDown } from '../browser/harness.ts';
import { garmentWith, putGarments } from './kept-garments.ts';
import { type Press, SLOWER, timePress } from './press.ts';

/** Works on the garment whose work is typed into. */
const WORKS = 60;
const ID = 'coat';

/** One that another reads, and one that reads a quantity: their fields as they stand on the drawing. */
export const OPEN_WORKS = ['strip', 'hooks'] as const;

export interface KeyPress extends Press {
  key: string;
}

/** A field that is only typed, or one whose sum takes a number of the garment. */
export const FIELDS = ['given', 'linked'] as const;
export type FieldKind = (typeof FIELDS)[number];

/** What is typed on behind a number that is taken, so that each key changes a sum. */
const SUM = ' + 1';

/** Every key of the pad, pressed in every field of that kind that stands on the drawing of an open work. */
export async function timeOpenWork(
  browser: Browser,
  address: string,
  { work, kind }: { work: string; kind: FieldKind },
) {
  const app = await openApp(browser, address, {
    ...{ at: '#/garments', size: SMALL_PHONE, bench: { unit: 'cm' }, serviceWorkers: 'block' },
  });
  const { page } = app;
  await page.locator('.garments').waitFor();
  await page.evaluate(putGarments, { garment: garmentWith(WORKS, ID, 'Coat'), count: 1 });
  await page.goto(`${address}#/garments/open?g=${ID}&w=${work}`);
  await page.reload();
  const fields = page.locator(`.dimension.${kind}`);
  await fields.first().waitFor();
  await slowDown(page, SLOWER);
  const presses: KeyPress[] = [];
  const count = await fields.count();
  for (let i = 0; i < count; i++) {
    presses.push(...(await timeField(page, fields.nth(i), kind)));
  }
  await app.close();
  return { fields: count, presses };
}

/** Each key upon the field as it was, so that most presses give an answer. */
async function timeField(page: Page, field: Locator, kind: FieldKind): Promise<KeyPress[]> {
  await field.evaluate((button) => (button as HTMLElement).click());
  const input = page.locator('.tiles .seen input').first();
  // Beside what is taken its text field is only for keyboards and screen readers.
  await input.waitFor({ state: 'attached' });
  const first = (await input.inputValue()) + (kind === 'linked' ? SUM : '');
  await input.fill(first, { force: true });
  const keys = page.locator('.pad button:not(.go)');
  const presses: KeyPress[] = [];
  for (let i = 0; i < (await keys.count()); i++) {
    const key = keys.nth(i);
    const name = (await key.getAttribute('aria-label')) ?? (await key.textContent()) ?? '';
    presses.push({ key: name, ...(await timePress(page, key)) });
    await input.fill(first, { force: true });
  }
  return presses;
}
