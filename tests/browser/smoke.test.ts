import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { CALCULATIONS } from '../../src/app/calculations.ts';
import { axeFaults } from './axe.ts';
import { launchBrowser, openApp, PHONE, SMALL_PHONE } from './harness.ts';
import { SCREENS } from './screens.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

test('every calculation is on the list of screens', () => {
  const ids = ['convert', ...Object.keys(CALCULATIONS)];
  expect(ids.filter((id) => !SCREENS.some(({ hash }) => hash === `#/${id}`))).toEqual([]);
});

test.each(SCREENS)(
  '$name opens without a complaint, and can be used by everyone',
  async (screen) => {
    for (const size of [PHONE, SMALL_PHONE]) {
      for (const theme of ['paper', 'night'] as const) {
        const app = await openApp(browser, inject('address'), {
          at: screen.hash,
          size,
          bench: { theme },
          serviceWorkers: 'block',
        });
        await app.page.locator('h1').first().waitFor();
        await screen.steps?.(app.page);
        const where = `${screen.name}, ${theme}, ${size.width} × ${size.height}`;
        expect(await axeFaults(app.page), where).toEqual([]);
        expect(app.complaints, where).toEqual([]);
        await app.close();
      }
    }
  },
);
