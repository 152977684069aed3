import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { garmentListWords } from '#words/garment/garment-list-words.ts';
import { type Served, serveApp } from '../../browser/built.ts';
import { untilFirstAnswer } from '../../browser/first-answer.ts';
import {
  launchBrowser,
  type OpenApp,
  openAnew,
  openApp,
  takePhone,
  waitUntilKept,
} from '../../browser/harness.ts';
import { keptPaths } from '../../browser/kept-paths.ts';
import { FIRST, SCREENS } from '../../browser/screens.ts';
import { settled } from '../../browser/settled.ts';

/** Kilobytes of 1000 bytes, gzipped: what a phone waits for. */
const FIRST_PAGE_KB = 20;
const FURTHER_SCREEN_KB = 8;
const NEXT_NUMBER_KB = 32;
/** What reads a tape, once on a phone. */
const READER_KB = 4500;

/** The reader, its worker and the engine it asks: fetched ahead of a photo, not for the screen. */
const READER = /^\/(engine\/|assets\/(worker-tape|tape-reader)-)/;

let browser: Browser;
let served: Served;
/** The phone on which one screen after another is weighed: it keeps nothing that it has fetched. */
let phone: OpenApp;
const table: { what: string; files: number; 'KB gz': string; most: string }[] = [];

beforeAll(async () => {
  browser = await launchBrowser();
  served = await serveApp(inject('built'));
  phone = await takePhone(browser, served.address, { serviceWorkers: 'block' });
  const session = await phone.context.newCDPSession(phone.page);
  await session.send('Network.enable');
  await session.send('Network.setCacheDisabled', { cacheDisabled: true });
});

afterAll(async () => {
  await browser.close();
  await served.close();
  console.table(table);
});

test(`the first answer waits for at most ${FIRST_PAGE_KB} KB`, async () => {
  const phone = await takePhone(browser, served.address, { serviceWorkers: 'block' });
  const needed = await untilFirstAnswer(phone.page, served.address + FIRST.hash);
  const weight = weigh('until the first answer', needed, FIRST_PAGE_KB);
  expect(phone.complaints).toEqual([]);
  await phone.close();
  const from = served.asked.length;
  const whole = await openFirst();
  weigh('the same page, all of it', served.asked.slice(from));
  await whole.close();
  expect(needed).toContain('/');
  expect(needed.length).toBeGreaterThan(1);
  expect(weight, listed(needed)).toBeLessThanOrEqual(FIRST_PAGE_KB);
});

test(`with a garment open its next number waits for at most ${NEXT_NUMBER_KB} KB`, async () => {
  const app = await openApp(browser, served.address, { at: '#/garments', serviceWorkers: 'block' });
  await app.page.getByText(garmentListWords.demo.waistcoat).tap();
  await app.page.locator('.next-key[data-kind=step]').waitFor();
  await settled(app.page);
  const start = await app.context.newPage();
  const shows = (page: Page) => page.locator('.next-key .number').isVisible();
  const needed = await untilFirstAnswer(start, `${served.address}#/`, shows);
  const weight = weigh('until the next number of a garment', needed, NEXT_NUMBER_KB);
  await start.unrouteAll();
  await app.close();
  expect(app.complaints).toEqual([]);
  expect(weight, listed(needed)).toBeLessThanOrEqual(NEXT_NUMBER_KB);
});

/** What keeps is fetched while the form of it is filled in: no one waits for it. */
const KEEPING = 'keeping';

test(`'${KEEPING}' adds at most ${FURTHER_SCREEN_KB} KB until its form is shown`, async () => {
  const { hash, from = '' } = SCREENS.find(({ name }) => name === KEEPING)!;
  const start = served.asked.length;
  const first = await openFirst();
  await goTo(first.page, from);
  const had = new Set(served.asked.slice(start));
  await first.close();
  const phone = await takePhone(browser, served.address, { serviceWorkers: 'block' });
  const shows = (page: Page) => page.locator('.garments nav.actions button.main').isVisible();
  const needed = await untilFirstAnswer(phone.page, served.address + hash, shows);
  await phone.page.unrouteAll();
  await phone.close();
  expect(phone.complaints).toEqual([]);
  const added = needed.filter((path) => !had.has(path));
  expect(added.length).toBeGreaterThan(0);
  expect(weigh(KEEPING, added, FURTHER_SCREEN_KB), listed(added)).toBeLessThanOrEqual(
    FURTHER_SCREEN_KB,
  );
});

test.each(SCREENS.filter((screen) => screen !== FIRST && screen.name !== KEEPING))(
  `$name adds at most ${FURTHER_SCREEN_KB} KB`,
  async ({ name, hash, from, steps }) => {
    const start = served.asked.length;
    const { complaints } = phone;
    const page = await openAnew(phone, served.address, { at: FIRST.hash });
    // What comes after the first answer is there.
    await page.locator('.how').first().waitFor({ state: 'attached' });
    await settled(page);
    if (from) await goTo(page, from);
    const before = served.asked.length;
    await goTo(page, hash);
    if (steps) {
      await steps(page);
      await settled(page);
    }
    const had = new Set(served.asked.slice(start, before));
    const added = served.asked.slice(before).filter((path) => !had.has(path));
    const screen = added.filter((path) => !READER.test(path));
    const weight = weigh(name, screen, FURTHER_SCREEN_KB);
    expect(complaints).toEqual([]);
    expect(weight, listed(added)).toBeLessThanOrEqual(FURTHER_SCREEN_KB);
  },
);

test(`what reads a tape is at most ${READER_KB} KB, its data still packed when it arrives`, async () => {
  const start = served.asked.length;
  const { page, close } = await openFirst();
  await goTo(page, '#/tape');
  await expect
    .poll(() => served.asked.slice(start).some((path) => path.endsWith('.wasm')), {
      timeout: 20_000,
    })
    .toBe(true);
  await settled(page);
  const data = served.asked.find((path) => path.endsWith('.traineddata')) ?? '';
  const begins = await page.evaluate(async (path) => {
    const bytes = new Uint8Array(await (await fetch(path)).arrayBuffer());
    return [...bytes.subarray(0, 2)];
  }, data);
  await close();
  const reader = [...new Set(served.asked.slice(start).filter((path) => READER.test(path)))];
  const unpacked = reader.reduce(
    (sum, path) => sum + statSync(join(inject('built'), path)).size / 1000,
    0,
  );
  const weight = weigh(`what reads a tape (${unpacked.toFixed(0)} KB unpacked)`, reader, READER_KB);
  expect(reader).toHaveLength(6);
  expect(weight, listed(reader)).toBeLessThanOrEqual(READER_KB);
  // RFC 1952, 2.3.1: a gzip file begins so. A server that unpacks it on the way would show here.
  expect(begins).toEqual([0x1f, 0x8b]);
});

/** A general library of polygons: fetched where an outline says what is cut outside it, and for no screen. */
const ALLOWANCE_KB = 14.5;

test(`what adds allowances to an outline is at most ${ALLOWANCE_KB} KB, and one file`, () => {
  const assets = join(inject('built'), 'assets');
  const own = readdirSync(assets).filter((name) => /^allowance-.*\.js$/.test(name));
  expect(own).toHaveLength(1);
  const paths = own.map((name) => `/assets/${name}`);
  expect(weigh('what adds allowances', paths, ALLOWANCE_KB)).toBeLessThanOrEqual(ALLOWANCE_KB);
});

test('what the service worker keeps is said', async () => {
  const from = served.asked.length;
  const app = await openApp(browser, served.address, { at: FIRST.hash });
  await waitUntilKept(app.page);
  const kept = await keptPaths(app.page);
  expect(served.asked.slice(from)).toContain('/sw.js');
  expect(kept).toContain('/index.html');
  weigh('kept by the service worker', ['/sw.js', ...kept]);
  await app.close();
});

/** Opens the first page without a service worker, so that only the page's own fetches are seen. */
async function openFirst() {
  const app = await openApp(browser, served.address, { at: FIRST.hash, serviceWorkers: 'block' });
  await settled(app.page);
  return app;
}

async function goTo(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => location.assign(to), hash);
  await settled(page);
}

function weigh(what: string, paths: readonly string[], most?: number): number {
  const files = [...new Set(paths)];
  const bytes = files.reduce((sum, path) => sum + gzipped(path), 0);
  const kilobytes = bytes / 1000;
  table.push({
    what,
    files: files.length,
    'KB gz': kilobytes.toFixed(2),
    most: String(most ?? ''),
  });
  return kilobytes;
}

/** What each file weighs, for whoever has to make one lighter. */
function listed(paths: readonly string[]): string {
  return paths.map((path) => `${path} ${gzipped(path)} bytes`).join(', ');
}

/** Throws for a path that isn't there: nothing the page asks for may be missing. */
function gzipped(path: string): number {
  const file = join(inject('built'), path === '/' ? 'index.html' : path);
  return gzipSync(readFileSync(file), { level: 9 }).length;
}
