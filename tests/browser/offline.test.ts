import { cp, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, inject, test } from 'vitest';
import { appWords } from '#words/phone/app-words.ts';
import { newerWords } from '#words/phone/newer-words.ts';
import { phoneWords } from '#words/phone/phone-words.ts';
import { inGate } from '../thorough.ts';
import { type Served, serveApp } from './built.ts';
import { launchBrowser, openApp, waitUntilKept } from './harness.ts';
import { keptPaths } from './kept-paths.ts';
import { builds, countLoads, loads, publishAnother, renameParts } from './newer-build.ts';
import { EACH, SCREENS } from './screens.ts';
import { settled } from './settled.ts';

/** As long as a busy machine may take; no test waits for it to pass. */
const SLOW = { timeout: 45_000 };

let browser: Browser;
let folder: string;
let served: Served;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'thumbrule-offline-'));
  await cp(inject('built'), folder, { recursive: true });
  served = await serveApp(folder);
});

afterEach(async () => {
  await served.close();
  await rm(folder, { recursive: true });
});

// Each screen more takes its time.
const EVERY_SCREEN_MS = 60_000 + 3_000 * SCREENS.length;

test('once kept, every screen opens with the server gone', {
  timeout: EVERY_SCREEN_MS,
}, async () => {
  const app = await openApp(browser, served.address);
  await app.page.getByText(phoneWords.ready).waitFor();
  await app.page.getByText(phoneWords.readyNow).waitFor();
  await app.page.getByText(phoneWords.tape.here).waitFor();
  const kept = new Set(await keptPaths(app.page));
  const parts = (await readdir(join(folder, 'assets'))).map((name) => `/assets/${name}`);
  expect(parts.filter((path) => !kept.has(path))).toEqual([]);
  await served.close();
  // Every part of each is kept: in the gate one calculation in three is opened.
  for (const screen of inGate(SCREENS, (one) => EACH.indexOf(one) % 3 < 1)) {
    // Or only the route changes: what a calculation fetches is asked of the worker all the same.
    if (!EACH.includes(screen)) await app.page.goto('about:blank');
    await app.page.goto(`${served.address}${screen.hash}`);
    await app.page.locator('h1').first().waitFor();
    await settled(app.page);
    expect(await app.page.getByText(appWords.notLoaded).count(), screen.name).toBe(0);
  }
  // Asking the server for a newer worker is what may fail, and nothing else.
  expect(app.complaints.filter((said) => !said.endsWith('/sw.js'))).toEqual([]);
  await app.close();
});

test('it says ready once on a phone, and knows it on later starts', async () => {
  const app = await openApp(browser, served.address);
  await app.page.getByText(phoneWords.readyNow).waitFor();
  await app.page.reload();
  await app.page.getByText(phoneWords.ready).waitFor();
  expect(await app.page.getByText(phoneWords.readyNow).count()).toBe(0);
  await app.close();
});

test('a newer build waits for the maker; what was typed in another page survives it', async () => {
  const app = await openApp(browser, served.address);
  await waitUntilKept(app.page);
  const other = await app.context.newPage();
  await other.goto(`${served.address}#/convert`);
  const field = other.locator('.tiles input').first();
  await field.fill('12 3/8 in');

  await publishAnother(folder);
  await app.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await app.page.getByText(phoneWords.update).waitFor();
  expect(await builds(app.page, other)).toEqual(['first', 'first']);

  await app.page.getByText(phoneWords.takeUpdate).tap();
  await expect.poll(() => builds(app.page, other), SLOW).toEqual(['second', 'second']);
  await field.waitFor();
  expect(await field.inputValue()).toBe('12 3/8 in');
  expect(app.complaints).toEqual([]);
  await app.close();
});

test('typing asks for nothing, so that it keeps no worker awake', async () => {
  const app = await openApp(browser, served.address, { at: '#/convert' });
  await waitUntilKept(app.page);
  await settled(app.page);
  const asked: string[] = [];
  app.page.on('request', (request) => asked.push(request.url()));
  const field = app.page.locator('.tiles input').first();
  for (const typed of ['1', '12', '12 mm']) {
    await field.fill(typed);
    await app.page.waitForURL(
      ({ hash }) => new URLSearchParams(hash.split('?')[1]).get('length') === typed,
    );
  }
  await settled(app.page);
  // The icon comes from memory; what reads a tape is being stored whether one types or not.
  expect(asked.filter((url) => !/^blob:|\/engine\//.test(url))).toEqual([]);
  await app.close();
});

test('a newer build that comes while a page is typed in neither reloads it nor loses a key', async () => {
  const app = await openApp(browser, served.address);
  await waitUntilKept(app.page);
  const typed = await app.context.newPage();
  await typed.goto(`${served.address}#/convert`);
  await countLoads(typed);
  const field = typed.locator('.tiles input').first();
  await field.focus();
  const keys = '1 1/2 in + 3 3/8 in + 12 mm + 4 cm + 5 1/16 in + 7 mm + 9 cm';
  const typing = typed.keyboard.type(keys, { delay: 60 });
  await publishAnother(folder);
  await typed.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await app.page.getByText(phoneWords.update).waitFor();
  // Even when it is taken in another page, where nobody types.
  await app.page.getByText(phoneWords.takeUpdate).tap();
  await expect.poll(() => builds(app.page), SLOW).toEqual(['second']);
  await typing;
  expect(await loads(typed)).toBe(1);
  expect(await field.inputValue()).toBe(keys);

  await expect.poll(() => builds(typed), SLOW).toEqual(['second']);
  await field.waitFor();
  expect(await field.inputValue()).toBe(keys);
  expect(app.complaints).toEqual([]);
  await app.close();
});

test('a build that waits is taken at a start, when no other page is open', async () => {
  const app = await openApp(browser, served.address);
  await waitUntilKept(app.page);
  await publishAnother(folder);
  await app.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await app.page.getByText(phoneWords.update).waitFor();

  await app.page.reload();
  await expect.poll(() => builds(app.page), SLOW).toEqual(['second']);
  await app.close();
});

test('it is not taken at a start while another page is open', async () => {
  const app = await openApp(browser, served.address);
  await waitUntilKept(app.page);
  await publishAnother(folder);
  await app.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await app.page.getByText(phoneWords.update).waitFor();

  const other = await app.context.newPage();
  await other.goto(served.address);
  await other.getByText(phoneWords.update).waitFor();
  expect(await builds(app.page, other)).toEqual(['first', 'first']);
  await app.close();
});

test('a screen that is gone from a host with a newer build is said to be, and the newer one taken', async () => {
  const app = await openApp(browser, served.address, { serviceWorkers: 'block', at: '#/convert' });
  await app.page.locator('.tiles input').first().fill('12 3/8 in');
  await app.page.waitForURL(/12\+3%2F8/);
  await renameParts(folder);
  // No key leads there with something typed; the address does.
  await app.page.evaluate(() => {
    location.hash = `${location.hash.replace('convert', 'hem')}`;
  });
  await app.page.getByText(newerWords.screen).waitFor();
  await app.page.getByRole('button', { name: appWords.again }).tap();
  await app.page.locator('.tiles input').first().waitFor();
  expect(app.page.url()).toMatch(/hem.*12\+3%2F8/);
  expect(app.complaints.every((said) => said.includes('404'))).toBe(true);
  await app.close();
});

test('a screen that can’t be fetched without a connection is said to be that', async () => {
  const app = await openApp(browser, served.address, { serviceWorkers: 'block', at: '#/convert' });
  await app.page.locator('.tiles input').first().waitFor();
  await app.context.setOffline(true);
  await app.page.evaluate(() => {
    location.hash = '#/hem';
  });
  await app.page.getByText(appWords.notLoaded).waitFor();
  expect(await app.page.getByText(newerWords.screen).count()).toBe(0);
  await app.close();
});

test('a page whose browser refuses service workers works, and says what it lacks', async () => {
  const app = await openApp(browser, served.address, { serviceWorkers: 'block' });
  await app.page.getByText(phoneWords.blocked.refused).waitFor();
  await app.page.goto(`${served.address}#/convert`);
  await app.page.locator('.pad button').first().waitFor();
  await app.close();
});
