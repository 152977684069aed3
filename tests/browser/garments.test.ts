import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { garmentOf } from '../garment/trial/garments.ts';
import { axeFaults } from './axe.ts';
import { launchBrowser, openApp, SMALL_PHONE } from './harness.ts';
import { keptGarments } from './kept-garments.ts';
import { store, stored } from './stored.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

/** The machine may be busy with other tests. */
const BUSY = { timeout: 20_000 };

const start = (at: string) =>
  openApp(browser, inject('address'), { at, size: SMALL_PHONE, serviceWorkers: 'block' });

test('a calculation is kept on a new garment, changed and kept again', async () => {
  const { page, complaints, close } = await start('#/closures');
  await page.getByRole('button', { name: 'Keep' }).tap();
  await page.getByLabel('Name').fill('Centre front');
  await page.locator('input[type=text]').nth(1).fill('Grey waistcoat');
  await page.getByRole('button', { name: 'Keep it' }).tap();
  await page.locator('input[name=opening]').waitFor();
  await page.locator('input[name=count]').fill('9');
  await page.getByRole('button', { name: 'Keep' }).tap();
  await page.getByRole('button', { name: 'Keep it' }).tap();
  await page.locator('input[name=count]').waitFor();
  await page.goto(`${inject('address')}#/garments`);
  await page.reload();
  await page.getByRole('article', { name: 'Grey waistcoat' }).getByText('1 work').waitFor();
  expect(await axeFaults(page), 'the list').toEqual([]);
  const { garments } = await keptGarments(page);
  expect(Object.values(garments[0]?.works ?? {})).toMatchObject([
    { name: 'Centre front', fields: { count: [{ text: '9', unit: 'cm' }] } },
  ]);
  expect(complaints).toEqual([]);
  await close();
});

/** What there is to press, or to read, beyond the edge of the screen. */
const beyond = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('button, h1, h2, .last > *, .next-key .above')]
      .filter((one) => one.checkVisibility() && !one.closest('.unseen'))
      .filter((one) => {
        const { left, right } = one.getBoundingClientRect();
        return left < -1 || right > innerWidth + 1 || one.scrollWidth > one.clientWidth + 3;
      })
      .map((one) => one.textContent),
  );

test('a name of one long word goes on below itself, and moves nothing off the screen', async () => {
  const { page, close } = await start('#/hem');
  const long = 'Innentaschenverschlussleistenunterseitensaum';
  await page.getByRole('button', { name: 'Keep' }).tap();
  await page.getByLabel('Name').fill(long);
  await page.locator('input[type=text]').nth(1).fill(`${long}mantel`);
  await page.getByRole('button', { name: 'Keep it' }).tap();
  await page.locator('input[name=depth]').waitFor();
  await page.goto(`${inject('address')}#/garments`);
  await page.getByRole('article').getByRole('button', { name: long }).first().tap();
  await page.locator('.next-key[data-kind=step]').waitFor();
  expect(await beyond(page), 'home').toEqual([]);
  await page.locator('.works .now > button').tap();
  await page.locator('.garment-work .dimension').first().waitFor();
  await page
    .getByRole('button', { name: /^Depth, finished/ })
    .first()
    .tap();
  await page.locator('.pad').getByRole('button', { name: '4', exact: true }).tap();
  await page.getByRole('button', { name: 'Done' }).tap();
  await page.getByRole('button', { name: 'Undo' }).waitFor();
  expect(await beyond(page), 'the work').toEqual([]);
  await page.getByRole('button', { name: 'Done' }).tap();
  await page.getByRole('button', { name: 'Steps and their order' }).tap();
  await page.locator('.order .step').first().tap();
  await page.locator('.order .deeds').waitFor();
  expect(await beyond(page), 'the order').toEqual([]);
  await close();
});

/** The invented one, made by a press on the list; then the list again. */
async function showDemo(page: Page): Promise<void> {
  await page.getByText('Show an invented waistcoat').tap();
  await page.waitForURL(/garments\/open/);
  await page.goBack();
  await page.getByRole('article', { name: /Bandsman/ }).waitFor();
}

test('the garment that was opened last is first on the list', async () => {
  const { page, close } = await start('#/garments');
  for (const name of ['Coat', 'Hat']) {
    await page.getByLabel('A new garment').fill(name);
    await page.getByRole('button', { name: 'Make' }).tap();
    await page.waitForURL(/garments\/open/);
    await page.goBack();
    await page.getByRole('article', { name }).waitFor();
  }
  const names = () =>
    page.getByRole('article').evaluateAll((all) => all.flatMap(({ ariaLabel }) => ariaLabel ?? []));
  expect(await names()).toEqual(['Hat', 'Coat']);
  await page.getByRole('button', { name: /^Coat/ }).tap();
  await page.waitForURL(/garments\/open/);
  await page.goBack();
  await expect.poll(names, BUSY).toEqual(['Coat', 'Hat']);
  const { garments } = await keptGarments(page);
  const coat = garments.find(({ name }) => name === 'Coat');
  await expect.poll(() => stored(page, 'open-garment'), BUSY).toBe(coat?.id);
  await close();
});

test.each(['100%', '200%'])(
  'what is out of view of a long list costs no layout, and is as high as it is once seen: letters of %s',
  async (letters) => {
    const { page, close } = await start('#/settings');
    await page.locator('h1').first().waitFor();
    await page.addInitScript((large) => {
      document.documentElement.style.fontSize = large;
    }, letters);
    const names = Array.from({ length: 40 }, (_, i) => `Coat ${i}`);
    for (const [i, name] of names.entries()) {
      const record = { ...garmentOf({ works: {} }), id: `g${i}`, name, changed: 100 - i };
      await store(page, `garment:g${i}`, record);
    }
    await page.goto(`${inject('address')}#/garments`);
    await page.reload();
    const last = page.getByRole('article', { name: names.at(-1) as string });
    await last.waitFor({ state: 'attached' });
    const look = () =>
      last.evaluate((one) => ({
        laidOut: one.querySelector('button')?.checkVisibility({ contentVisibilityAuto: true }),
        high: one.getBoundingClientRect().height,
      }));
    await expect.poll(async () => (await look()).laidOut, BUSY).toBe(false);
    const { high } = await look();
    await last.scrollIntoViewIfNeeded();
    await expect.poll(async () => (await look()).laidOut, BUSY).toBe(true);
    expect((await look()).high).toBeCloseTo(high, 0);
    await close();
  },
);

test('what brings one back stays in view, far down a long list and with large letters', async () => {
  const { page, close } = await start('#/settings');
  await page.locator('h1').first().waitFor();
  await page.addInitScript(() => {
    document.documentElement.style.fontSize = '200%';
  });
  for (let i = 0; i < 8; i++) {
    const record = {
      ...garmentOf({ works: {} }),
      id: `g${i}`,
      name: `Coat ${i}`,
      changed: 100 - i,
    };
    await store(page, `garment:g${i}`, record);
  }
  await page.goto(`${inject('address')}#/garments`);
  await page.reload();
  const card = page.getByRole('article', { name: 'Coat 7' });
  await card.getByRole('button', { name: /^More with/ }).tap();
  await card.getByRole('button', { name: 'Put away' }).tap();
  const undo = page.getByRole('button', { name: /^Undo/ });
  const isSeen = () =>
    undo.evaluate((one) => {
      const { left, top, bottom, height } = one.getBoundingClientRect();
      const [first, last] = [top + height / 4, bottom - height / 4];
      return [first, last].every((y) => one.contains(document.elementFromPoint(left + 8, y)));
    });
  await expect.poll(isSeen, BUSY).toBe(true);
  await close();
});

test('putting away is undone by one press, also after a reload', async () => {
  const { page, close } = await start('#/garments');
  await showDemo(page);
  const card = page.getByRole('article', { name: /Bandsman/ });
  const putAway = async () => {
    await card.getByRole('button', { name: /^More with/ }).tap();
    await card.getByRole('button', { name: 'Put away' }).tap();
  };
  await putAway();
  await page.getByRole('button', { name: /^Undo/ }).tap();
  await card.waitFor();
  await putAway();
  await page.getByRole('button', { name: 'Bring back', exact: true }).waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'Bring back', exact: true }).tap();
  await card.waitFor();
  await close();
});

test('a backup restores with a preview and a choice; nothing changes before it', async () => {
  const first = await start('#/garments');
  await showDemo(first.page);
  const [saved] = await Promise.all([
    first.page.waitForEvent('download'),
    first.page.getByText('Save a backup').tap(),
  ]);
  const text = await readFile(await saved.path(), 'utf8');
  await first.page.getByText(/^Last backup/).waitFor();
  await first.close();

  const { page, close } = await start('#/garments');
  const choose = (name: string, body: string) =>
    page
      .locator('input[type=file]')
      .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(body) });
  await choose('cut.json', text.slice(0, 300));
  await page.getByText(/cut off or damaged/).waitFor();
  await choose('other.json', '{"format":"another"}');
  await page.getByText(/not a backup of this app/).waitFor();
  await choose('backup.json', text);
  await page.getByText('Not here yet', { exact: false }).waitFor();
  expect(await page.getByRole('article', { name: /Bandsman/ }).count()).toBe(0);
  await page.getByRole('button', { name: 'Restore what is chosen' }).tap();
  await page.getByText('1 restored.').waitFor();
  await page.getByRole('article', { name: /Bandsman/ }).waitFor();
  await choose('backup.json', text.replace('Side seams', 'Long side seams'));
  await page.getByText(/would change: Long side seams/).waitFor();
  await page.getByText(/^Damaged: something in it was changed/).waitFor();
  await page.getByText('Look at it', { exact: true }).tap();
  await page
    .getByText(/^Long side seams/)
    .first()
    .waitFor();
  expect(await axeFaults(page), 'a damaged garment').toEqual([]);
  await page.getByText('Keep both').tap();
  await page.getByRole('button', { name: 'Restore what is chosen' }).tap();
  await page.getByRole('article', { name: /copy/ }).waitFor();
  await close();
});

test('a record that can’t be read is set aside and said, the others are there', async () => {
  const { page, close } = await start('#/garments');
  await showDemo(page);
  await page.evaluate(
    () =>
      new Promise<void>((done) => {
        const opening = indexedDB.open('thumbrule', 1);
        opening.onsuccess = () => {
          const change = opening.result.transaction('bench', 'readwrite');
          change.objectStore('bench').put({ version: 1, name: 7 }, 'garment:harmed');
          change.oncomplete = () => done();
        };
      }),
  );
  await page.reload();
  await page.getByText(/One record could not be read/).waitFor();
  await page.getByRole('article', { name: /Bandsman/ }).waitFor();
  await close();
});
