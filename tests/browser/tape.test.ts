import { deflateSync } from 'node:zlib';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { phoneWords } from '#words/phone/phone-words.ts';
import { cannotWords } from '#words/tape/cannot-words.ts';
import { liveWords } from '#words/tape/live-words.ts';
import { photoFaultWords } from '#words/tape/photo-words.ts';
import { crc32 } from '../tapes/crc32.ts';
import { axeFaults } from './axe.ts';
import { cameraOver } from './camera-file.ts';
import { launchBrowser, openApp, SMALL_PHONE, takePhone, waitUntilKept, wear } from './harness.ts';
import { photoOf, onScreen as placeOn } from './tape-pictures.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

const { drawn, file } = photoOf('cm tape on cloth', 3);
const ON_SCALE = drawn.points.filter(({ onScale }) => onScale);

const start = (at = '#/tape', serviceWorkers: 'allow' | 'block' = 'block') =>
  openApp(browser, inject('address'), { at, size: SMALL_PHONE, serviceWorkers });

type File = { name: string; mimeType: string; buffer: Buffer };

async function choose(page: Page, photo: File) {
  await page.getByLabel('Choose a photo').setInputFiles(photo);
}

const saidIn = async (page: Page) => (await page.locator('.told').textContent()) ?? '';

/** Where a place of the photo is on the screen. */
const onScreen = (page: Page, place: { x: number; y: number }) => placeOn(page, drawn, place);

test('a number comes from a photo into the field that asked in at most 4 taps', async () => {
  const { page, complaints, close } = await start('#/closures');
  let taps = 0;
  const tap = async (x: number, y: number) => {
    taps += 1;
    await page.touchscreen.tap(x, y);
  };
  const middle = async (name: string, role: 'button' | 'label') => {
    const target = role === 'label' ? page.getByText(name) : page.getByRole('button', { name });
    await target.waitFor();
    const box = await target.boundingBox();
    if (!box) throw new Error(`${name} is not to be seen`);
    await tap(box.x + box.width / 2, box.y + box.height / 2);
  };
  await middle('Photo', 'button');
  await page.getByText('Take a photo').waitFor();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    middle('Take a photo', 'label'),
  ]);
  await chooser.setFiles(file);
  await page.getByRole('slider').waitFor();
  const point = ON_SCALE[Math.floor(ON_SCALE.length / 2)];
  if (!point) throw new Error('the scene has no point on its scale');
  const at = await onScreen(page, point);
  await tap(at.x, at.y);
  await middle('Use: Opening', 'button');
  const field = page.locator('input[name=opening]');
  await field.waitFor();
  expect(await field.inputValue()).toMatch(/^[\d.]+ ± 0\.\d+ cm$/);
  // A finger can't aim better than a px of the screen, here some two thirds of a millimetre.
  const read = 10 * Number.parseFloat(await field.inputValue());
  expect(Math.abs(read - point.mm)).toBeLessThan(1.5);
  expect(await page.locator('.answer').textContent()).not.toMatch(/not understood/);
  expect(taps).toBeLessThanOrEqual(4);
  // Back: to choosing a photo, with no step of the one that was used; and from there to the field.
  await page.goBack();
  await page.getByText('Take a photo').waitFor();
  await page.waitForFunction(() => history.state === null);
  await page.goBack();
  await field.waitFor();
  expect(complaints).toEqual([]);
  await close();
});

test('the line reads a drawn tape where it is put, and can be used by everyone', async () => {
  const app = await start();
  await choose(app.page, file);
  await app.page.getByRole('slider').waitFor();
  for (const theme of ['paper', 'night'] as const) {
    await wear(app.page, theme);
    expect(await axeFaults(app.page), theme).toEqual([]);
  }
  await app.page.setViewportSize({ width: 1000, height: 1400 });
  let told = 0;
  for (const point of ON_SCALE) {
    const { x, y } = await onScreen(app.page, point);
    await app.page.mouse.click(x, y);
    const read = 10 * Number.parseFloat(await saidIn(app.page));
    // A place may be refused with its reason; a number that is told is right.
    if (Number.isNaN(read)) continue;
    told += 1;
    expect(Math.abs(read - point.mm), `${point.mm} mm`).toBeLessThan(0.5);
  }
  expect(told).toBeGreaterThan(ON_SCALE.length / 2);
  await app.close();
});

const PICTURE_FAULTS: [string, File, string][] = [
  [
    'a text',
    { name: 'a.txt', mimeType: 'text/plain', buffer: Buffer.from('hello') },
    photoFaultWords['not-a-picture'],
  ],
  [
    'half a photo',
    { ...file, buffer: file.buffer.subarray(0, file.buffer.length / 2) },
    photoFaultWords.damaged,
  ],
  [
    'a kind of picture no browser knows',
    { name: 'a.tif', mimeType: 'image/tiff', buffer: Buffer.from('II*\0nothing') },
    photoFaultWords.strange,
  ],
  [
    'a picture of 100 million pixels that must be decoded whole',
    { name: 'a.png', mimeType: 'image/png', buffer: greyPng(10_000, 10_000) },
    photoFaultWords['too-large'],
  ],
  [
    'no tape',
    { name: 'a.png', mimeType: 'image/png', buffer: greyPng(800, 600) },
    cannotWords['no-tape'],
  ],
];

test('what is no photo of a tape is said, whatever it is, and another can be chosen', async () => {
  const { page, complaints, close } = await start();
  for (const [what, photo, said] of PICTURE_FAULTS) {
    await choose(page, photo);
    await page.getByRole('alert').filter({ hasText: said }).waitFor();
    expect(await page.getByRole('alert').textContent(), what).toBe(said);
    expect(await axeFaults(page), what).toEqual([]);
    if (await page.getByText('Another photo').isVisible()) {
      await page.getByText('Another photo').tap();
    }
  }
  await choose(page, file);
  await page.getByRole('slider').waitFor();
  expect(complaints).toEqual([]);
  await close();
});

const READER_FAULTS: [string, RegExp | undefined, (() => void) | undefined, string][] = [
  ['without the engine', /\/engine\//, undefined, photoFaultWords['engine-missing']],
  ['with half an engine', /\.wasm$/, undefined, photoFaultWords['engine-missing']],
  ['without its worker', /\/assets\/worker-/, undefined, photoFaultWords['reader-failed']],
  [
    'where WebAssembly is refused',
    undefined,
    () => {
      Object.defineProperty(globalThis, 'WebAssembly', { value: undefined });
    },
    photoFaultWords['engine-refused'],
  ],
];

test.each(READER_FAULTS)(
  '%s it says so, and offers touching lines',
  async (_, missing, breakIt, said) => {
    const app = await takePhone(browser, inject('address'), {
      size: SMALL_PHONE,
      serviceWorkers: 'block',
    });
    if (breakIt) await app.page.addInitScript(breakIt);
    if (missing) await app.context.route(missing, (route) => route.abort());
    await app.page.goto(`${inject('address')}#/tape`);
    await choose(app.page, file);
    await app.page.getByRole('alert').waitFor();
    expect(await app.page.getByRole('alert').textContent()).toBe(said);
    await app.page.getByRole('button', { name: 'Touch two lines' }).tap();
    await app.page.getByText(/^Touch a long line/).waitFor();
    await app.close();
  },
);

test('lines touched by hand read the tape where its numbers can’t be read', async () => {
  const app = await takePhone(browser, inject('address'), { serviceWorkers: 'block' });
  await app.context.route(/\/engine\//, (route) => route.abort());
  await app.page.goto(`${inject('address')}#/tape`);
  await choose(app.page, file);
  await app.page.getByRole('button', { name: 'Touch two lines' }).tap();
  const whole = ON_SCALE.filter(({ mm }) => Number.isInteger(mm)).sort((a, b) => a.mm - b.mm);
  const [first, last] = [whole[0], whole.at(-1)];
  const between = ON_SCALE.find(
    ({ mm }) => first && last && mm > first.mm + 30 && mm < last.mm - 30,
  );
  if (!first || !last || !between) throw new Error('the scene has no points for this');
  for (const { x, y, mm } of [first, last]) {
    await app.page.locator('.photo svg').waitFor();
    const at = await onScreen(app.page, { x, y });
    await app.page.touchscreen.tap(at.x, at.y);
    await app.page.locator('.tile input').fill(`${mm} mm`);
    await app.page.getByRole('button', { name: 'next field' }).tap();
    // Without its keys the picture is larger, and the next place elsewhere on the screen.
    await app.page.locator('.pad').waitFor({ state: 'hidden' });
  }
  await app.page.getByRole('button', { name: 'Done' }).tap();
  await app.page.getByRole('slider', { name: 'Line', exact: true }).waitFor();
  const at = await onScreen(app.page, between);
  await app.page.touchscreen.tap(at.x, at.y);
  const read = 10 * Number.parseFloat(await saidIn(app.page));
  // Two touches know nothing of a slant, and a finger aims no better than a px of the screen.
  expect(Math.abs(read - between.mm)).toBeLessThan(4);
  await app.close();
});

/** What one or two fingers do on the screen: down at the first places, over the others, up. */
async function drag(context: BrowserContext, page: Page, ...fingers: Spot[][]) {
  const session = await context.newCDPSession(page);
  const at = (step: number) =>
    fingers.flatMap((spots, id) => (spots[step] ? [{ ...spots[step], id }] : []));
  const steps = Math.max(...fingers.map(({ length }) => length));
  for (let step = 0; step < steps; step++) {
    const type = step === 0 ? 'touchStart' : 'touchMove';
    await session.send('Input.dispatchTouchEvent', { type, touchPoints: at(step) });
    await page.evaluate(() => new Promise(requestAnimationFrame));
  }
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

interface Spot {
  x: number;
  y: number;
}

/** From one place to another in so many steps. */
const way = (from: Spot, to: Spot, steps: number): Spot[] =>
  Array.from({ length: steps + 1 }, (_, i) => ({
    x: from.x + ((to.x - from.x) * i) / steps,
    y: from.y + ((to.y - from.y) * i) / steps,
  }));

test('a finger that moves makes one line; the keys come up when it is lifted', async () => {
  const { page, context, complaints, close } = await start();
  await choose(page, file);
  await page.getByRole('slider').waitFor();
  await page.getByRole('button', { name: 'Touch two lines' }).tap();
  await page.getByText(/^Touch a long line/).waitFor();
  const photo = page.locator('.photo');
  const box = await photo.boundingBox();
  const [first, last] = [ON_SCALE[0], ON_SCALE.at(-1)];
  if (!first || !last || !box) throw new Error('the scene has no points for this');
  const from = await onScreen(page, first);
  const seen = page.evaluate(
    () =>
      new Promise<number>((done) => {
        const pad = () => document.querySelectorAll('.pad').length;
        const picture = document.querySelector('.photo svg');
        let most = 0;
        picture?.addEventListener('pointermove', () => {
          most = Math.max(most, pad());
        });
        picture?.addEventListener('pointerup', () => done(Math.max(most, pad())), true);
      }),
  );
  await drag(context, page, way(from, { x: from.x + 24, y: from.y + 12 }, 12));
  expect(await seen).toBe(0);
  await page.locator('.pad').waitFor();
  expect(await page.locator('.photo circle').count()).toBe(1);
  // A second finger, that comes down while the first is held, makes none either.
  await page.locator('.tile input').fill('4');
  const second = await onScreen(page, last);
  const beside = { x: second.x, y: second.y + 40 };
  await drag(context, page, way(second, second, 4), [second, beside, beside, beside]);
  await page.getByRole('slider', { name: 'Line 2' }).waitFor();
  expect(await page.locator('.photo circle').count()).toBe(2);
  expect(await axeFaults(page)).toEqual([]);
  await page.goBack();
  await page.getByRole('button', { name: 'Difference' }).waitFor();
  expect(complaints).toEqual([]);
  await close();
});

test('the line in the photo is reached by the Tab key, and moved by keys', async () => {
  const { page, close } = await start();
  await choose(page, file);
  await page.getByRole('slider').waitFor();
  const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
  await expect.poll(focused).toBe('Reading');
  await page.keyboard.press('Tab');
  expect(await focused()).toBe('Line');
  const before = await saidIn(page);
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => saidIn(page)).not.toBe(before);
  await close();
});

test('once everything is stored, a photo is read with no connection, shared ones too', async () => {
  const app = await start('', 'allow');
  await waitUntilKept(app.page);
  await app.page.getByText(phoneWords.tape.here).waitFor({ timeout: 30_000 });
  await app.context.setOffline(true);
  await app.page.goto(`${inject('address')}#/tape`);
  await app.page.reload();
  await choose(app.page, file);
  await app.page.getByRole('slider').waitFor();
  // What the system does when another app shares a photo to this one.
  await app.page.evaluate(async (photo) => {
    const form = new FormData();
    const bytes = Uint8Array.from(atob(photo), (letter) => letter.charCodeAt(0));
    form.append('photo', new File([bytes], 'photo.png', { type: 'image/png' }));
    await fetch('./share', { method: 'POST', body: form });
  }, file.buffer.toString('base64'));
  await app.page.goto(`${inject('address')}#/`);
  await app.page.goto(`${inject('address')}#/tape?shared=1`);
  await app.page.getByRole('slider').waitFor();
  // Back and a reload lead to where a photo is chosen: this one has arrived, and is not kept.
  await app.page.goBack();
  await app.page.getByText('Choose a photo').waitFor();
  await app.page.reload();
  await app.page.getByText('Choose a photo').waitFor();
  expect(await app.page.getByRole('alert').count()).toBe(0);
  await app.page.goto(`${inject('address')}#/`);
  await app.page.goto(`${inject('address')}#/tape?shared=1`);
  await app.page.getByRole('alert').waitFor();
  expect(await app.page.getByRole('alert').textContent()).toBe(photoFaultWords['not-shared']);
  await app.close();
});

test('the camera’s picture is read under the cross, and frozen into a photo read there', async () => {
  // Not in the middle of what can be read: there the line of any other photo stands.
  const point = ON_SCALE[2];
  if (!point) throw new Error('the scene has no point on its scale');
  const camera = await launchBrowser([
    '--use-fake-ui-for-media-stream',
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-video-capture=${cameraOver(drawn, [point, point, point], 10)}`,
  ]);
  const app = await openApp(camera, inject('address'), { at: '#/tape', serviceWorkers: 'block' });
  await app.page.getByText('Live').tap();
  await app.page.getByText(liveWords.held).waitFor({ timeout: 30_000 });
  const read = 10 * Number.parseFloat(await saidIn(app.page));
  expect(Math.abs(read - point.mm)).toBeLessThan(0.5);
  expect(await axeFaults(app.page)).toEqual([]);
  await app.page.getByText('Freeze').tap();
  await app.page.getByRole('slider').waitFor();
  expect(Math.abs(10 * Number.parseFloat(await saidIn(app.page)) - read)).toBeLessThan(0.5);
  await app.page.goBack();
  await app.page.getByText('Live').tap();
  await app.page.getByText('Freeze').waitFor();
  await app.page.goBack();
  await app.page.getByText('Choose a photo').waitFor();
  expect(app.complaints).toEqual([]);
  await camera.close();
});

test('a camera that is refused, or isn’t there, is said', async () => {
  const app = await start();
  await app.page.getByText('Live').tap();
  await app.page.getByText(/^(The camera is not allowed|There is no camera)/).waitFor();
  await app.page.getByRole('button', { name: 'Back' }).tap();
  await app.page.getByText('Choose a photo').waitFor();
  await app.close();
});

/** A plain grey picture, however large, in a few kilobytes. Source: PNG (ISO/IEC 15948), 5 and 11. */
function greyPng(width: number, height: number): Buffer {
  const chunk = (type: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(type), data]);
    const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    check.writeUInt32BE(crc32(body));
    return Buffer.concat([length, body, check]);
  };
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = 8;
  const rows = deflateSync(Buffer.alloc((width + 1) * height));
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('IDAT', rows),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
