import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import { inGate } from '../thorough.ts';
import { listen } from './announced.ts';
import { launchBrowser, type OpenApp, openApp, SMALL_PHONE } from './harness.ts';

let browser: Browser;
let app: OpenApp;

beforeAll(async () => {
  browser = await launchBrowser();
  app = await openApp(browser, inject('address'), { size: SMALL_PHONE, serviceWorkers: 'block' });
});

afterAll(() => browser.close());

/** Opens a screen in the one page of these tests, and waits for the parts that come later. */
async function open(hash: string): Promise<Page> {
  const { page } = app;
  await page.goto(`${inject('address')}#/nowhere`);
  await page.locator('.home .warning').waitFor();
  await page.goto(inject('address') + hash);
  await page.locator('h1').first().waitFor();
  await page.waitForFunction(
    () => !document.querySelector('.home .warning, .waiting, .tile:empty, .choices:empty'),
  );
  return page;
}

// They have one answer and one list of faults: the gate hears every other one.
test.each(inGate(Object.keys(CALCULATIONS), (_, i) => i % 2 < 1))(
  '%s: a changed answer is read out, and so is what is wrong',
  async (id) => {
    const page = await open(`#/${id}`);
    const field = page.locator('.tiles input').first();
    const heard = await listen(page);
    const list = await field.inputValue();
    await field.fill('nonsense');
    await expect.poll(heard).toContainEqual(expect.stringContaining('“nonsense”'));
    // One more than it was, so that it still fits the other fields; of a list the first alone.
    await field.fill(list.replace(/^\d+/, (first) => String(Number(first) + 1)));
    const answer = page.locator('.answer .number:not(.none)');
    await answer.waitFor();
    const number = (await answer.textContent()) ?? '';
    expect(number).toMatch(/\d/);
    await expect.poll(heard).toContainEqual(expect.stringContaining(number));
  },
);

test('each hole counted is read out', async () => {
  const page = await open('#/centre/count?count=26');
  const heard = await listen(page);
  const next = page.locator('button.next');
  await next.press('Enter');
  await next.press(' ');
  await expect.poll(heard).toEqual(['27 holes', '28 holes']);
});

test('each mark followed is read out', async () => {
  const page = await open('#/closures/follow');
  const heard = await listen(page);
  await page.locator('button.next').press('Enter');
  const place = await page.locator('.big .figure').textContent();
  await expect.poll(heard).toContainEqual(expect.stringContaining(place ?? 'a place'));
});
