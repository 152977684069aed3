import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { photoFaultWords, photoWords } from '#words/tape/photo-words.ts';
import { launchBrowser, SMALL_PHONE, takePhone } from './harness.ts';
import { photoOf } from './tape-pictures.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

const { file } = photoOf('cm tape on cloth', 3);

/** A phone whose clock the test moves on. */
async function phone() {
  const app = await takePhone(browser, inject('address'), {
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
  await app.page.clock.install();
  return app;
}

const open = (page: Page) => page.goto(`${inject('address')}#/tape`);
const choose = (page: Page, photo = file) => page.getByLabel('Choose a photo').setInputFiles(photo);

async function saidOnce(page: Page) {
  const alert = page.getByRole('alert');
  await alert.waitFor();
  return alert.textContent();
}

/** Routes the engine's largest file to nowhere as long as it `stalls`, and counts how often. */
async function stallEngine({ context }: Awaited<ReturnType<typeof phone>>) {
  const state = { stalls: true, stalled: 0 };
  await context.route(/\.wasm$/, async (route) => {
    if (state.stalls) state.stalled += 1;
    else await route.continue();
  });
  return state;
}

const LONG = { timeout: 20_000 };

test('a download that stalls is given up, said, and asked for anew with the next photo', async () => {
  const app = await phone();
  const engine = await stallEngine(app);
  await open(app.page);
  await choose(app.page);
  // It is started ahead of the photo, too: each try that stalls is given its time.
  let given = 0;
  const alert = app.page.getByRole('alert');
  const timesUp = async () => {
    if (engine.stalled > given) {
      given = engine.stalled;
      await app.page.clock.fastForward(10_000);
    }
    return alert.isVisible();
  };
  await expect.poll(timesUp, LONG).toBe(true);
  expect(await saidOnce(app.page)).toBe(photoFaultWords['engine-missing']);
  engine.stalls = false;
  await app.page.getByText(photoWords.another).tap();
  await choose(app.page);
  await app.page.getByRole('slider').waitFor();
  await app.close();
});

test('after Stop with a good connection the photo chosen again is read', async () => {
  const app = await phone();
  const engine = await stallEngine(app);
  await open(app.page);
  await choose(app.page);
  await expect.poll(() => engine.stalled, LONG).toBe(1);
  engine.stalls = false;
  await app.page.getByRole('button', { name: photoWords.stop }).tap();
  await choose(app.page);
  await app.page.clock.fastForward(10_000);
  await app.page.getByRole('slider').waitFor();
  await app.close();
});

const READERS: [string, () => void, number, string][] = [
  [
    'can’t be read',
    () => {
      Blob.prototype.arrayBuffer = () => Promise.reject(new DOMException('', 'NotReadableError'));
    },
    0,
    photoFaultWords.unreadable,
  ],
  [
    'never comes',
    () => {
      Blob.prototype.arrayBuffer = () => {
        document.documentElement.dataset.begun = '';
        return new Promise(() => undefined);
      };
    },
    30_000,
    photoFaultWords.slow,
  ],
  [
    'is never decoded',
    () => {
      globalThis.createImageBitmap = () => {
        document.documentElement.dataset.begun = '';
        return new Promise(() => undefined);
      };
    },
    30_000,
    photoFaultWords.slow,
  ],
];

test.each(READERS)('a file that %s is said', async (_, breakIt, after, said) => {
  const app = await phone();
  await app.page.addInitScript(breakIt);
  await open(app.page);
  await choose(app.page);
  if (after > 0) {
    await app.page.getByText(photoWords.opening).waitFor();
    await app.page.locator('html[data-begun]').waitFor();
    await app.page.clock.fastForward(after);
  }
  expect(await saidOnce(app.page)).toBe(said);
  expect(app.complaints).toEqual([]);
  await app.close();
});

/**
 * 10,000 × 10,000 pixels, and far too few bytes for a decoder to call them damaged first.
 * Source: WebP (RFC 9649), 2.4 and 2.7.1: both sides less one, in 24 bits each.
 */
const HUGE_WEBP = Buffer.from([
  ...Buffer.from('RIFF\x1a\0\0\0WEBPVP8X\x0a\0\0\0'),
  ...[0, 0, 0, 0, 0x0f, 0x27, 0, 0x0f, 0x27, 0],
]);

test('a WebP of 100 million pixels is refused', async () => {
  const app = await phone();
  await open(app.page);
  await choose(app.page, { name: 'a.webp', mimeType: 'image/webp', buffer: HUGE_WEBP });
  expect(await saidOnce(app.page)).toBe(photoFaultWords['too-large']);
  await app.close();
});
