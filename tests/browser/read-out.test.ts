import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import { listen } from './announced.ts';
import { launchBrowser, type OpenApp, openApp, SMALL_PHONE } from './harness.ts';
import { EVERY_SCREEN } from './screens.ts';

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

/** Roles of what can be operated (WAI-ARIA 1.2, section 5.3.2, and the strip of tape). */
const OPERATED =
  /^(button|link|textbox|searchbox|combobox|listbox|option|radio|checkbox|switch|slider|spinbutton|menuitem|tab|application)$/i;

/** What the browser hands to a screen reader: each control's role and name. */
async function controls(page: Page): Promise<{ role: string; name: string }[]> {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  await session.detach();
  return nodes
    .filter((node) => !node.ignored && OPERATED.test(String(node.role?.value)))
    .map(({ role, name }) => ({ role: String(role?.value), name: String(name?.value ?? '') }));
}

test('every control of every screen has a name', async () => {
  for (const { name, hash, steps } of EVERY_SCREEN) {
    const page = await open(hash);
    await steps?.(page);
    const all = await controls(page);
    expect(all.length, name).toBeGreaterThan(0);
    expect(
      all.filter((control) => control.name.trim() === ''),
      name,
    ).toEqual([]);
  }
});

test.each(['convert', ...Object.keys(CALCULATIONS)])(
  '%s: a changed answer is read out, and so is what is wrong',
  async (id) => {
    const page = await open(`#/${id}`);
    const field = page.locator('.tiles input').first();
    const heard = await listen(page);
    await field.fill('nonsense');
    await expect.poll(heard).toContainEqual(expect.stringContaining('“nonsense”'));
    await field.fill('31');
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
