import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import type { Bench } from '../../src/calculation/bench.ts';
import { axeFaults } from './axe.ts';
import { launchBrowser, openApp, PHONE, SMALL_PHONE } from './harness.ts';
import { SCREENS } from './screens.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

test.each(SCREENS)(
  '$name opens without a complaint, and can be used by everyone',
  async (screen) => {
    const app = await openApp(browser, inject('address'), {
      at: screen.hash,
      serviceWorkers: 'block',
    });
    const { page } = app;
    await page.locator('h1').first().waitFor();
    await screen.steps?.(page);
    for (const [theme, size] of [
      ['paper', PHONE],
      ['night', SMALL_PHONE],
    ] as const) {
      await page.evaluate(wear, theme);
      await page.setViewportSize(size);
      const where = `${screen.name}, ${theme}, ${size.width} × ${size.height}`;
      expect(await axeFaults(page), where).toEqual([]);
    }
    expect(app.complaints, screen.name).toEqual([]);
    await app.close();
  },
);

/** As src/app/start/theme.ts does; that the setting leads there is tried with the settings. Runs in the page. */
function wear(theme: Bench['theme']): void {
  document.documentElement.dataset.theme = theme;
}
