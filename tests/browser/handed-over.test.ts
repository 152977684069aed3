import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { demoWords } from '#words/garment/demo-words.ts';
import { phoneWords } from '#words/phone/phone-words.ts';
import { demoGarment } from '../../src/garment/actions/demo.ts';
import { WAISTCOAT } from '../../src/garment/actions/demo-waistcoat.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { writeBackup } from '../../src/garment/backup/backup.ts';
import { sharedGarment } from '../../src/garment/share/shared.ts';
import { dice } from '../garment/trial/dice.ts';
import { hostileLink } from '../garment/trial/hostile.ts';
import { KNOWN } from '../garment/trial/known.ts';
import { launchBrowser, type Opening, SMALL_PHONE, takePhone, waitUntilKept } from './harness.ts';
import { keptGarments } from './kept-garments.ts';

/** What comes to the app, and leaves it, by the phone: a file touched, shared, sent, chosen. */

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const ADDRESS = inject('address');
const RECEIVE = '#/garments/receive';

const WISH = { bodies: false, notes: false, times: false, goOn: true, knownOnly: true };
const DEMO = begin(demoGarment(WAISTCOAT, demoWords.waistcoat, 'demo', 1, KNOWN), KNOWN);
/** The invented one, as its maker hands it on. */
const FILE = writeBackup([sharedGarment(DEMO, WISH, 'new', () => 'made')]);

const phone = (opening: Opening = {}) =>
  takePhone(browser, ADDRESS, { size: SMALL_PHONE, serviceWorkers: 'block', ...opening });

/** A system that starts the app with a touched file (Web App Launch Handler API, `launchQueue`). */
function touches(text: string): void {
  const getFile = async () => new File([text], 'coat.json', { type: 'application/json' });
  const setConsumer = (take: (launch: object) => void) => take({ files: [{ getFile }] });
  Object.defineProperty(globalThis, 'launchQueue', { value: { setConsumer } });
}

async function shownFirst(page: Page): Promise<void> {
  await page.getByRole('heading', { name: /Bandsman/ }).waitFor();
  expect((await keptGarments(page)).garments).toEqual([]);
  await page.getByRole('button', { name: 'Keep it as a new garment' }).tap();
  await page.locator('.next-key[data-kind=step]').waitFor();
  const { garments } = await keptGarments(page);
  expect(garments).toHaveLength(1);
  // What a body is measured by doesn't go along.
  expect(JSON.stringify(garments)).not.toContain('Chest girth');
}

test('a touched file opens in the app: seen first, kept by one press; a damaged one is refused', async () => {
  const whole = await phone();
  await whole.page.addInitScript(touches, FILE);
  await whole.page.goto(ADDRESS + RECEIVE);
  await shownFirst(whole.page);
  expect(whole.complaints).toEqual([]);
  await whole.close();

  const cut = await phone();
  await cut.page.addInitScript(touches, FILE.slice(0, 700));
  await cut.page.goto(ADDRESS + RECEIVE);
  await cut.page.getByText(/cut off or damaged/).waitFor();
  expect((await keptGarments(cut.page)).garments).toEqual([]);
  expect(cut.complaints).toEqual([]);
  await cut.close();
});

test('a file that another app shares is handed over by the service worker, with no connection', async () => {
  const { page, context, complaints, close } = await phone({ serviceWorkers: 'allow' });
  // On a busy machine all that is stored takes its time.
  page.setDefaultTimeout(90_000);
  await page.goto(ADDRESS);
  await waitUntilKept(page);
  // What reads a tape is fetched last; cut off in the middle of it the browser complains.
  await page.getByText(phoneWords.tape.here).waitFor();
  await context.setOffline(true);
  await page.evaluate(async (text) => {
    const form = new FormData();
    form.append('garment', new File([text], 'coat.json', { type: 'application/json' }));
    await fetch('./share', { method: 'POST', body: form });
  }, FILE);
  await page.goto(ADDRESS + RECEIVE);
  await shownFirst(page);
  // It was handed over once.
  await page.goto(ADDRESS);
  await page.goto(ADDRESS + RECEIVE);
  await page.getByText(/No garment came along/).waitFor();
  expect(complaints).toEqual([]);
  await close();
}, 300_000);

/** A phone that hands text on, and no other kind of file, and remembers what it was given. */
function handsTextOn(): void {
  const given: { name: string; type: string; text: string }[] = [];
  Object.assign(globalThis, { given });
  const canShare = ({ files = [] }: { files?: File[] } = {}) =>
    files.every(({ type }) => type === 'text/plain');
  const share = async ({ files = [] }: { files?: File[] }) => {
    for (const file of files) {
      given.push({ name: file.name, type: file.type, text: await file.text() });
    }
  };
  Object.defineProperty(navigator, 'canShare', { value: canShare });
  Object.defineProperty(navigator, 'share', { value: share });
}

test('a backup is sent by the phone’s share, and is all there again on a new phone', async () => {
  const old = await phone();
  await old.page.addInitScript(handsTextOn);
  await old.page.goto(`${ADDRESS}#/garments`);
  await old.page.getByText('Show an invented waistcoat').tap();
  await old.page.locator('.next-key[data-kind=step]').waitFor();
  await old.page.goBack();
  await old.page.getByLabel('A new garment').fill('Coat');
  await old.page.getByRole('button', { name: 'Make' }).tap();
  await old.page.locator('.next-key').waitFor();
  await old.page.goBack();
  await old.page.getByRole('button', { name: 'Send a backup' }).tap();
  await old.page.getByText(/^Last backup/).waitFor();
  const [given] = await old.page.evaluate(
    () =>
      (globalThis as unknown as { given: { name: string; type: string; text: string }[] }).given,
  );
  expect(given?.name).toMatch(/^thumbrule-\d{4}-\d\d-\d\d\.json\.txt$/);
  const before = await keptGarments(old.page);
  expect(before.garments).toHaveLength(2);
  expect(old.complaints).toEqual([]);
  await old.close();

  const { page, complaints, close } = await phone();
  await page.goto(ADDRESS);
  // The first press of all, without a scroll.
  const restore = page.getByText('Restore a backup');
  await restore.waitFor();
  const box = await restore.boundingBox();
  expect((box?.y ?? SMALL_PHONE.height) + (box?.height ?? 0)).toBeLessThan(SMALL_PHONE.height);
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), restore.tap()]);
  const { name = '', type = '', text = '' } = given ?? {};
  await chooser.setFiles({ name, mimeType: type, buffer: Buffer.from(text) });
  await page.getByRole('button', { name: 'Restore what is chosen' }).tap();
  await page.getByText('2 restored.').waitFor();
  const after = await keptGarments(page);
  const byId = ({ garments }: typeof after) => new Map(garments.map((one) => [one.id, one]));
  expect(byId(after)).toEqual(byId(before));
  expect(complaints).toEqual([]);
  await close();
});

test('damaged and hostile links are refused in words or shown first: no page error, nothing kept', async () => {
  const { page, complaints, close } = await phone();
  await page.goto(ADDRESS);
  const told = { shown: 0, refused: 0 };
  for (let seed = 1; seed <= 60; seed++) {
    const link = await hostileLink(dice(seed), seed);
    await page.evaluate((hash) => {
      location.hash = '#/garments';
      location.hash = hash;
    }, link);
    const said = page.locator('.hand-on [role=alert], .hand-on .actions .main').first();
    await said.waitFor();
    const refused = await page.locator('.hand-on [role=alert]').count();
    told[refused > 0 ? 'refused' : 'shown'] += 1;
    await page.evaluate(() => {
      location.hash = '#/garments';
    });
    await page.getByLabel('A new garment').waitFor();
  }
  // One of a newer app is no damage: it says what to do, and there is a way out.
  await page.evaluate(() => {
    location.hash = '#/garments/receive/2.zstd.what.ever';
  });
  const newer = page.locator('.hand-on [role=alert]');
  await newer.waitFor();
  expect(await newer.textContent()).toMatch(/newer version of this app\. Update the app/);
  await page.locator('.hand-on .actions button').tap();
  await page.getByLabel('A new garment').waitFor();
  console.log(told);
  expect(told.refused).toBeGreaterThan(10);
  expect(told.shown).toBeGreaterThan(10);
  expect((await keptGarments(page)).garments).toEqual([]);
  expect(complaints).toEqual([]);
  await close();
}, 120_000);
