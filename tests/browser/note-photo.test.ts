import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { MOST_PHOTO } from '../../src/garment/record/photos.ts';
import type { Garment, Note } from '../../src/garment/record/record.ts';
import { garmentOf, typed } from '../garment/trial/garments.ts';
import { axeFaults } from './axe.ts';
import { launchBrowser, openApp, SMALL_PHONE } from './harness.ts';
import { store, stored } from './stored.ts';
import { photoOf } from './tape-pictures.ts';

/** A note and a photo at a step: made small, kept beside the garment, seen on home, taken off and back. */
let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const { file } = photoOf('cm tape on cloth', 3);
const STEP = 'hem||first-press';

/** Invented: a hem. */
const skirt = garmentOf({
  works: {
    hem: {
      ...{ name: 'Back hem', calculation: 'hem', rank: 1 },
      fields: {
        ...{ depth: typed('2'), style: typed('unequal'), turn: typed('0.7') },
        edgeStitch: typed('0.2'),
      },
    },
  },
});

test('a note with a photo is added at the next step, seen, and taken off and back', async () => {
  const { page, complaints, close } = await openApp(browser, inject('address'), {
    at: '#/settings',
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
  await page.locator('h1').first().waitFor();
  await store(page, 'garment:g', skirt);
  await page.goto(`${inject('address')}#/garments/open?g=g`);
  await page.locator('.next-key .says').tap();
  await page.getByRole('button', { name: 'Note or photo' }).tap();
  await page.getByLabel('What to remember').fill('mind the nap');
  await page.getByLabel('Choose a photo').setInputFiles(file);
  await page.locator('.note-screen img').waitFor();
  expect(await axeFaults(page)).toEqual([]);
  const note = async () =>
    ((await stored(page, 'garment:g')) as Garment).notes?.[STEP] as Note | undefined;
  await expect.poll(async () => (await note())?.photo).toBeTruthy();
  const id = (await note())?.photo;
  const { jpeg } = (await stored(page, `photo:${id}`)) as { jpeg: string };
  expect(jpeg.startsWith('data:image/jpeg;base64,')).toBe(true);
  expect((jpeg.length * 3) / 4).toBeLessThanOrEqual(MOST_PHOTO + 60);
  await page.getByRole('button', { name: 'Take the photo off' }).tap();
  await page.locator('.note-screen img').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Take the last change back' }).tap();
  await page.locator('.note-screen img').waitFor();
  await page.getByRole('button', { name: 'Back', exact: true }).tap();
  await page.locator('.noted img').waitFor();
  expect(await page.locator('.noted').textContent()).toContain('mind the nap');
  expect(complaints).toEqual([]);
  await close();
});
