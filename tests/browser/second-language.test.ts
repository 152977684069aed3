/**
 * A second language is a folder of words and a line of `package.json`: one that nobody speaks, in
 * which every text is longer and has accents, is made for this test, and the app is built with it.
 * Nothing of it may be left in English, and nothing may be cut off on a small phone. The gate
 * looks at a few screens; `npm run second-language` at every one.
 */
import { rm } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { inGate } from '../thorough.ts';
import { buildApp, type Served, serveApp } from './built.ts';
import { launchBrowser, type OpenApp, openApp, SMALL_PHONE } from './harness.ts';
import { EVERY_SCREEN } from './screens.ts';
import { secondLanguage } from './second-language.ts';
import { misfits } from './words-shown.ts';

let browser: Browser;
let copy: string;
let built: string;
let served: Served;
let app: OpenApp;

beforeAll(async () => {
  copy = await secondLanguage();
  built = await buildApp({ root: copy, more: ['--minify', 'oxc'] });
  served = await serveApp(built);
  browser = await launchBrowser();
  app = await openApp(browser, served.address, { size: SMALL_PHONE, serviceWorkers: 'block' });
}, 120_000);

afterAll(async () => {
  await browser?.close();
  await served?.close();
  for (const folder of [copy, built]) {
    if (folder) await rm(folder, { recursive: true, force: true });
  }
});

const IN_GATE = [
  'convert',
  'home',
  'lacing',
  'keeping',
  'settings',
  'a field of a work',
  'how it goes on',
];
const looked = inGate(EVERY_SCREEN, ({ name }) => IN_GATE.includes(name));

/** Makes each field the current one, with the keys or the choices it brings. */
async function inEachField(page: Page, look: () => Promise<void>): Promise<void> {
  const fields = page.locator('button.tile[name], .tile input[name]');
  for (let i = 0; i < (await fields.count()); i++) {
    await fields.nth(i).evaluate((field: HTMLElement) => {
      if (field instanceof HTMLInputElement) field.focus();
      else field.click();
      return new Promise((painted) => requestAnimationFrame(() => requestAnimationFrame(painted)));
    });
    await look();
  }
}

test.each(looked)('$name', async ({ hash, steps }) => {
  const { page } = app;
  await page.goto('about:blank');
  await page.goto(served.address + hash);
  await page.locator('h1').first().waitFor();
  await page.waitForLoadState('networkidle');
  await steps?.(page);
  const found = new Set<string>();
  const look = async () => {
    for (const one of await misfits(page)) found.add(one);
  };
  await look();
  await inEachField(page, look);
  expect([...found]).toEqual([]);
  expect(app.complaints).toEqual([]);
});

test('English is seen, and what is cut off', async () => {
  const { page } = app;
  await page.evaluate(() => {
    const cut = document.createElement('button');
    cut.style.cssText = 'width: 20px; overflow: hidden; white-space: nowrap';
    cut.textContent = 'Not translated';
    document.body.append(cut);
  });
  const found = (await misfits(page)).join();
  expect(found).toContain('in English: BUTTON');
  expect(found).toContain('cut off by BUTTON');
});
