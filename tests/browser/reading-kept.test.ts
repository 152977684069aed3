import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, inject, test } from 'vitest';
import { loadNewer, newerWords } from '#words/phone/newer-words.ts';
import { phoneWords } from '#words/phone/phone-words.ts';
import { photoFaultWords } from '#words/tape/photo-words.ts';
import { type Served, serveApp } from './built.ts';
import { launchBrowser, openApp, waitUntilKept } from './harness.ts';
import { builds, countLoads, loads, publishAnother, renameParts } from './newer-build.ts';
import { onScreen, photoOf } from './tape-pictures.ts';

const SLOW = { timeout: 45_000 };

let browser: Browser;
let folder: string;
let served: Served;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'thumbrule-reading-'));
  await cp(inject('built'), folder, { recursive: true });
  served = await serveApp(folder);
});
afterEach(async () => {
  await served.close();
  await rm(folder, { recursive: true });
});

const { drawn, file } = photoOf('cm tape on cloth', 3);

const choose = (page: Page) => page.getByLabel('Choose a photo').setInputFiles(file);

/** Touches the photo where it is read, and gives the number to who has asked. */
async function readAndUse(page: Page) {
  const on = drawn.points.filter(({ onScale }) => onScale);
  const point = on[Math.floor(on.length / 2)];
  if (!point) throw new Error('the scene has no point on its scale');
  const at = await onScreen(page, drawn, point);
  await page.touchscreen.tap(at.x, at.y);
  await page.getByRole('button', { name: /^Use: / }).tap();
}

test('a photo being read stays when another tab takes a newer build, and so does its number', async () => {
  const app = await openApp(browser, served.address);
  await waitUntilKept(app.page);
  const page = await app.context.newPage();
  await page.clock.install();
  await page.goto(`${served.address}#/closures/tape?taped=opening`);
  await countLoads(page);
  await choose(page);
  await page.getByRole('slider').waitFor(SLOW);

  await publishAnother(folder);
  await app.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await app.page.getByText(phoneWords.update).waitFor(SLOW);
  const takenOver = page.evaluate(
    () =>
      new Promise<void>((done) => {
        navigator.serviceWorker.addEventListener('controllerchange', () => done());
      }),
  );
  await app.page.getByText(phoneWords.takeUpdate).tap();
  await takenOver;
  // Nobody touches it for a minute, and for a page without a photo that is a pause.
  await page.clock.fastForward(60_000);
  await expect.poll(() => builds(app.page), SLOW).toEqual(['second']);
  expect(await builds(page)).toEqual(['first']);
  expect(await loads(page)).toBe(1);

  await readAndUse(page);
  const field = page.locator('input[name=opening]');
  await field.waitFor();
  const read = await field.inputValue();
  expect(read).toMatch(/^[\d.]+ ± 0\.\d+ cm$/);
  await page.clock.fastForward(60_000);
  await expect.poll(() => builds(page), SLOW).toEqual(['second']);
  await field.waitFor();
  expect(await field.inputValue()).toBe(read);
  expect(app.complaints).toEqual([]);
  await app.close();
});

test('what opens photos gone from a host with a newer build is said to be that, and loaded', async () => {
  const app = await openApp(browser, served.address, { at: '#/tape', serviceWorkers: 'block' });
  const { page } = app;
  await page.getByText('Choose a photo').waitFor();
  await renameParts(folder);
  await choose(page);
  await page.getByText(newerWords.photo).waitFor(SLOW);
  expect(await page.getByText(photoFaultWords.unfetched).count()).toBe(0);
  await page.getByRole('button', { name: loadNewer }).tap();
  await page.getByText(newerWords.photo).waitFor({ state: 'detached' });
  await choose(page);
  await page.getByRole('slider').waitFor(SLOW);
  await app.close();
});
