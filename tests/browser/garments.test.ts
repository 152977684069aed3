import { readFile } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { axeFaults } from './axe.ts';
import { launchBrowser, openApp, SMALL_PHONE } from './harness.ts';
import { keptGarments } from './kept-garments.ts';
import { stored } from './stored.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

/** The machine may be busy with other tests. */
const BUSY = { timeout: 20_000 };

const start = (at: string) =>
  openApp(browser, inject('address'), { at, size: SMALL_PHONE, serviceWorkers: 'block' });

test('a calculation is kept on a new garment, reopened, changed and kept again', async () => {
  const { page, complaints, close } = await start('#/closures');
  await page.getByRole('button', { name: 'Keep' }).tap();
  await page.getByLabel('Name').fill('Centre front');
  await page.locator('input[type=text]').nth(1).fill('Grey waistcoat');
  await page.getByRole('button', { name: 'Keep it' }).tap();
  await page.locator('input[name=opening]').waitFor();
  await page.goto(`${inject('address')}#/garments`);
  const card = page.getByRole('article', { name: 'Grey waistcoat' });
  await card.getByText('Centre front').waitFor();
  await card.getByRole('button', { name: 'Open' }).tap();
  await page.locator('input[name=count]').fill('9');
  await page.getByRole('button', { name: 'Keep' }).tap();
  await page.getByRole('button', { name: 'Keep it' }).tap();
  await page.locator('input[name=count]').waitFor();
  await page.goto(`${inject('address')}#/garments`);
  await page.reload();
  await card.getByText('1 kept').waitFor();
  await card.getByRole('button', { name: 'Follow', exact: true }).tap();
  await page.getByText('Hook 1 of 9').waitFor();
  expect(complaints).toEqual([]);
  await close();
});

test('all marks of a garment are followed, over a reload, and what was measured stands beside the plan', async () => {
  const { page, complaints, close } = await start('#/garments');
  await page.getByText('Show the invented one').tap();
  await page.getByRole('button', { name: 'Follow all marks, in order' }).tap();
  await page.getByText(/New run: Straight front hems. Measure from the raw edge/).waitFor();
  const next = page.locator('.next');
  const at = () => page.getByRole('heading', { level: 1 }).textContent();
  const marksOf = async () => Number(/of (\d+)/.exec((await at()) ?? '')?.[1]);
  let reloaded = false;
  for (let runs = 0; !(await page.getByText('Hook 1 of 7').isVisible()); runs++) {
    expect(runs).toBeLessThan(3);
    for (let i = await marksOf(); i > 0; i--) {
      const before = await page.locator('.follow main').textContent();
      await next.tap();
      await expect.poll(() => page.locator('.follow main').textContent(), BUSY).not.toBe(before);
      if (reloaded) continue;
      reloaded = true;
      const there = await at();
      await page.waitForURL(/at=1/);
      await page.reload();
      await expect.poll(at, BUSY).toBe(there);
    }
  }
  await page.getByText(/New run: Centre front, seven hooks/).waitFor();
  await next.tap();
  await page.getByText('Hook 2 of 7').waitFor();
  await page.getByText('Made elsewhere').tap();
  await page.getByLabel(/where it really is/).fill('8.5');
  await page.getByText('Keep this measure').tap();
  await page.getByText('Made at 8.5 cm: 0.2 cm off the plan').waitFor();
  await page.getByRole('button', { name: 'Close' }).tap();
  await page.reload();
  await page.getByRole('button', { name: '1 as made' }).tap();
  await page.getByText('planned 8.3 cm').waitFor();
  await page.getByText('as made 8.5 cm').waitFor();
  await page.getByText('0.2 cm further on').waitFor();
  await page.getByText('2 of 7 made').waitFor();
  expect(complaints).toEqual([]);
  await close();
});

test('with large text the number stays in sight, and nothing is out of reach', async () => {
  const { page, complaints, close } = await start('#/garments');
  await page.getByText('Show the invented one').tap();
  await page.getByRole('button', { name: 'Follow all marks, in order' }).waitFor();
  expect(await axeFaults(page), 'the open garment').toEqual([]);
  const { garments } = await keptGarments(page);
  await page.goto(`${inject('address')}#/garments/follow?g=${garments[0]?.id}&only=hooks`);
  await page.getByText('Hook 1 of 7').waitFor();
  expect(await axeFaults(page), 'a run that begins').toEqual([]);
  await page.getByText('Made elsewhere').tap();
  await page.getByLabel(/where it really is/).fill('1.5');
  await page.getByText('Keep this measure').tap();
  await page.getByText('Space the rest anew').waitFor();
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  expect(await axeFaults(page), 'large text').toEqual([]);
  const seen = await page.locator('.big b').boundingBox();
  const pane = await page.locator('.follow main').boundingBox();
  expect((seen?.y ?? 0) + (seen?.height ?? 0)).toBeLessThanOrEqual(
    (pane?.y ?? 0) + (pane?.height ?? 0),
  );
  const next = await page.locator('.next').boundingBox();
  expect(next?.height).toBeGreaterThanOrEqual(96);
  expect((next?.y ?? 0) + (next?.height ?? 0)).toBeLessThanOrEqual(SMALL_PHONE.height);
  await page.getByText('Space the rest anew').tap();
  await page.getByText('Undo the new spacing').tap();
  for (let i = 0; i < 7; i++) await page.locator('.next').tap();
  await page.getByText(/All 7 marks made/).waitFor();
  expect(await axeFaults(page), 'the end').toEqual([]);
  expect(await page.evaluate(() => [scrollX, scrollY])).toEqual([0, 0]);
  expect(complaints).toEqual([]);
  await close();
});

test('the garment that is open is open again after a reload', async () => {
  const { page, close } = await start('#/garments');
  for (const name of ['Coat', 'Hat']) {
    await page.getByLabel('A new garment').fill(name);
    await page.getByRole('button', { name: 'Make' }).tap();
    await page.getByRole('article', { name }).waitFor();
  }
  const opener = (name: string) =>
    page.getByRole('article', { name }).getByRole('heading').getByRole('button');
  expect(await opener('Hat').getAttribute('aria-expanded')).toBe('true');
  await opener('Coat').tap();
  const { garments } = await keptGarments(page);
  const coat = garments.find(({ name }) => name === 'Coat');
  await expect.poll(() => stored(page, 'open-garment'), BUSY).toBe(coat?.id);
  await page.reload();
  await opener('Coat').waitFor();
  await expect.poll(() => opener('Coat').getAttribute('aria-expanded')).toBe('true');
  expect(await opener('Hat').getAttribute('aria-expanded')).toBe('false');
  await close();
});

/** Storage is full for garments as long as it is said so. Runs in the page. */
function canBeFull(): void {
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function (...given) {
    const full = document.documentElement.dataset.full !== undefined;
    if (full && String(given[1]).startsWith('garment:')) {
      throw new DOMException('no room', 'QuotaExceededError');
    }
    return put.apply(this, given);
  };
}

test('with storage full marks are held, leaving warns, and they are kept once there is room', async () => {
  const { page, complaints, close } = await start('#/garments');
  await page.addInitScript(canBeFull);
  await page.reload();
  await page.getByText('Show the invented one').tap();
  const hooks = page.getByRole('listitem').filter({ hasText: 'seven hooks' });
  await hooks.getByRole('button', { name: 'Follow' }).tap();
  await page.getByText('Hook 1 of 7').waitFor();
  const full = (now: boolean) =>
    page.evaluate((yes) => {
      if (yes) document.documentElement.dataset.full = '';
      else delete document.documentElement.dataset.full;
    }, now);
  await full(true);
  for (const mark of ['Hook 2 of 7', 'Hook 3 of 7']) {
    await page.locator('.next').tap();
    await page.getByText(mark).waitFor();
  }
  await page.getByText(/storage is full.*2 changes are held in this page only/).waitFor();
  expect(await axeFaults(page), 'held').toEqual([]);
  // Closing the page asks first, and the marks are still there when the maker stays.
  const asked = page.waitForEvent('dialog');
  void page.close({ runBeforeUnload: true });
  const dialog = await asked;
  expect(dialog.type()).toBe('beforeunload');
  await dialog.dismiss();
  await page.getByText('Hook 3 of 7').waitFor();
  await page.getByRole('button', { name: 'Close' }).tap();
  await page.getByText('Leave before it is kept?').waitFor();
  expect(await axeFaults(page), 'leaving').toEqual([]);
  await page.getByRole('button', { name: 'Leave, and keep the page open' }).tap();
  await page.getByText(/2 changes are held in this page only/).waitFor();
  // Nobody presses anything: it is tried again by itself.
  await full(false);
  await page.getByText(/held in this page only/).waitFor({ state: 'detached' });
  await hooks.getByText('2 of 7 made').waitFor();
  const { garments } = await keptGarments(page);
  const kept = garments[0]?.kept.find(({ id }) => id === 'hooks');
  expect(kept?.runs[0]?.made).toEqual({ '1': '', '2': '' });
  await page.reload();
  await hooks.getByText('2 of 7 made').waitFor();
  expect(complaints).toEqual([]);
  await close();
});

test('deleting is undone by one press, also after a reload', async () => {
  const { page, close } = await start('#/garments');
  await page.getByText('Show the invented one').tap();
  const card = page.getByRole('article', { name: /Bandsman/ });
  await card.getByRole('button', { name: 'Delete' }).tap();
  await page.getByRole('button', { name: /^Undo/ }).tap();
  await card.waitFor();
  await card.getByRole('button', { name: 'Delete' }).tap();
  await page.getByRole('button', { name: 'Bring back', exact: true }).waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'Bring back', exact: true }).tap();
  await card.waitFor();
  await close();
});

test('a backup restores with a preview and a choice; nothing changes before it', async () => {
  const first = await start('#/garments');
  await first.page.getByText('Show the invented one').tap();
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
  await page.getByText('Long side seams', { exact: true }).waitFor();
  expect(await axeFaults(page), 'a damaged garment').toEqual([]);
  await page.getByText('Keep both').tap();
  await page.getByRole('button', { name: 'Restore what is chosen' }).tap();
  await page.getByRole('article', { name: /copy/ }).waitFor();
  await close();
});

test('a record that can’t be read is set aside and said, the others are there', async () => {
  const { page, close } = await start('#/garments');
  await page.getByText('Show the invented one').tap();
  await page.getByRole('article', { name: /Bandsman/ }).waitFor();
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
