import type { Browser, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { inGate } from '../thorough.ts';
import { axeFaults } from './axe.ts';
import { launchBrowser, openApp, PHONE, SMALL_PHONE } from './harness.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

/** A small phone with so many pixels. */
const takePhone = async (deviceScaleFactor: number, size = SMALL_PHONE): Promise<Page> => {
  const context = await browser.newContext({
    viewport: size,
    deviceScaleFactor,
    hasTouch: true,
    isMobile: true,
    serviceWorkers: 'block',
    colorScheme: 'light',
  });
  return context.newPage();
};

/** Writes the record the app would: the screen is measured as it is now. */
const keepScale = (page: Page, pxPerMm: number) =>
  page.evaluate(
    (scale) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('thumbrule');
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const change = opening.result.transaction('bench', 'readwrite');
          const record = {
            ...scale,
            devicePixelRatio,
            longer: Math.max(screen.width, screen.height),
            shorter: Math.min(screen.width, screen.height),
          };
          change.objectStore('bench').put(record, 'glass');
          change.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    { pxPerMm, checked: '2026-01-02T03:04:05.000Z' },
  );

/** Keeps a scale, then opens a run on the glass. */
async function onGlass(ratio: number, pxPerMm: number, hash: string): Promise<Page> {
  const page = await takePhone(ratio);
  await page.goto(`${inject('address')}#/settings`);
  await page.locator('fieldset').first().waitFor();
  await keepScale(page, pxPerMm);
  await page.goto(`${inject('address')}${hash}`);
  await page.locator('.ruled line').first().waitFor({ state: 'attached' });
  await settled(page);
  return page;
}

/** Until what was pressed is painted. */
const settled = (page: Page) =>
  page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
  );

/**
 * Middles of the lines that go right across, in device pixels, from a picture of the screen: all
 * ink between the graduations at the left and the arrow beside them.
 */
async function linesSeen(page: Page, ratio: number, within: string): Promise<number[]> {
  const foot = await page.locator(within).evaluate((one) => one.getBoundingClientRect().bottom);
  const picture = sharp(await page.screenshot()).greyscale();
  const { data, info } = await picture.raw().toBuffer({ resolveWithObject: true });
  const [left, right] = [Math.ceil(35 * ratio), Math.floor(54 * ratio)];
  const ground = data[Math.round(4 * ratio) * info.width + left] ?? 255;
  const ink = (y: number) => {
    let most = 0;
    for (let x = left; x < right; x++) {
      most = Math.max(most, ground - (data[y * info.width + x] ?? ground));
    }
    return most;
  };
  const middles: number[] = [];
  let [dark, moment] = [0, 0];
  for (let y = 0; y <= foot * ratio - 1; y++) {
    const here = ink(y);
    if (here > 30) {
      dark += here;
      moment += here * (y + 0.5);
    } else if (dark > 0) {
      middles.push(moment / dark);
      [dark, moment] = [0, 0];
    }
  }
  return middles;
}

/** Whether lines lie as far from the first one as said, in mm, each within half a device pixel. */
function expectApart(seen: readonly number[], mm: readonly number[], devicePerMm: number) {
  const [first = Number.NaN, ...others] = seen;
  expect(others).toHaveLength(mm.length);
  for (const [i, distance] of mm.entries()) {
    const off = Math.abs((others[i] ?? Number.NaN) - first - distance * devicePerMm);
    expect(off, `${distance} mm`).toBeLessThanOrEqual(0.5 + 1e-6);
  }
}

const SCREENS = inGate(
  [
    [1, 6.2992],
    [2, 6.0417],
    [2.625, 6.2233],
    [3, 6.4873],
  ] as const,
  ([ratio]) => ratio === 1 || ratio === 2.625,
);

test.each(SCREENS)(
  'at %d device pixels to one, marks lie where they belong within half of one, on every stretch',
  async (ratio, pxPerMm) => {
    // Holes at 4, 12, 20 … mm from the cut end; the strip ends at 200.
    const page = await onGlass(ratio, pxPerMm, '#/edging/glass?length=20&pitch=0.8&u=cm');
    const holes = Array.from({ length: 25 }, (_, i) => 4 + 8 * i);
    const reached = new Set<number>();
    const next = page.getByRole('button', { name: 'Next stretch' });
    for (let from = 0; ; ) {
      const seen = await linesSeen(page, ratio, '.ruled');
      const there = [...holes, 200].filter((mm) => mm > from).slice(0, seen.length - 1);
      expect(there.length).toBeGreaterThanOrEqual(2);
      expectApart(
        seen,
        there.map((mm) => mm - from),
        pxPerMm * ratio,
      );
      for (const mm of there) reached.add(mm);
      if (await next.isDisabled()) break;
      // The words say which mark the top line is to lie on.
      await next.tap();
      await settled(page);
      const words = await page.locator('.lay').textContent();
      from = holes[Number(/mark (\d+)/.exec(words ?? '')?.[1]) - 1] ?? Number.NaN;
      expect(reached).toContain(from);
    }
    expect(reached.size).toBe(holes.length + 1);
    await page.context().close();
  },
);

test.each(SCREENS)(
  'at %d device pixels to one, an overlap mark lies where it is said to, on both stretches',
  async (ratio, pxPerMm) => {
    // Two hooks half a metre apart: nothing to go on from but what is drawn for it.
    const at = '#/closures/glass?opening=50&count=2&top=0&bottom=0&u=cm';
    const page = await onGlass(ratio, pxPerMm, at);
    const said = await page.locator('.of-overlap').textContent();
    const overlap = 10 * Number(/([\d.]+) cm, overlap/.exec(said ?? '')?.[1]);
    const first = await linesSeen(page, ratio, '.ruled');
    expectApart(first, [overlap], pxPerMm * ratio);
    await page.getByRole('button', { name: 'Next stretch' }).tap();
    await settled(page);
    const second = await linesSeen(page, ratio, '.ruled');
    // The top line is where it always is, and lies on that mark now.
    expect(second[0]).toBe(first[0]);
    expect(await page.locator('.lay').textContent()).toContain(
      `overlap mark at ${overlap / 10} cm`,
    );
    await page.context().close();
  },
);

/** Steps the line until the lines on the screen are so many device pixels apart, from edge to edge. */
async function measure(page: Page, ratio: number, wanted: number): Promise<void> {
  const apart = async () => {
    await settled(page);
    const [upper = 0, lower = 0] = await linesSeen(page, ratio, '.sheet');
    return lower - upper - Math.round(ratio); // the card lies between the lines
  };
  for (let i = 0; i < 60; i++) {
    const off = Math.round(wanted - (await apart()));
    if (off === 0) return;
    const step = Math.abs(off) >= 20 ? 20 : 1;
    const name = off < 0 ? `Line nearer by ${step}` : `Line farther off by ${step}`;
    const times = Math.trunc(Math.abs(off) / step);
    for (let n = 0; n < times; n++) {
      await page.getByRole('button', { name, exact: true }).tap();
    }
  }
  throw new Error(`the line can't be brought to ${wanted}`);
}

const matches = (page: Page) => page.getByRole('button', { name: 'It matches' }).tap();

const MEASURED = inGate(
  [
    [2.625, PHONE, [85.6, 53.98]],
    [3, SMALL_PHONE, [53.98, 53.98]],
  ] as const,
  ([ratio]) => ratio === 3,
);

test.each(MEASURED)(
  'at %d the screen is measured twice with a card, and what it then draws is that true, after a reload too',
  async (ratio, size, sides) => {
    const pxPerMm = 6.37;
    const page = await takePhone(ratio, size);
    await page.goto(`${inject('address')}#/edging/glass?length=20&pitch=0.8&u=cm`);
    await page.getByText('Nothing is shown at true size').waitFor();
    expect(await page.locator('.ruled').count()).toBe(0);
    for (const [i, side] of sides.entries()) {
      await hideWords(page);
      await measure(page, ratio, Math.round(side * pxPerMm * ratio) + i);
      await matches(page);
    }
    for (let i = 0; i < 2; i++) {
      await page.locator('.ruled line').first().waitFor({ state: 'attached' });
      await settled(page);
      const [first = 0, , , , fourth = 0] = await linesSeen(page, ratio, '.ruled');
      // A pixel or two in the card's width is all that can be off: here in 28 mm.
      expect(Math.abs(fourth - first - 28 * pxPerMm * ratio)).toBeLessThanOrEqual(1.5);
      await page.reload();
    }
    await page.context().close();
  },
  60_000,
);

/** Letters are ink too, and stand where lines are looked for. */
const hideWords = (page: Page) =>
  page.locator('.sheet main').evaluate((words) => {
    words.style.visibility = 'hidden';
  });

test('a page zoomed elsewhere can be pinched back to its own size on the glass', async () => {
  const at = '#/edging/glass?length=20&pitch=0.8&u=cm';
  const page = await onGlass(2, 6.3, at);
  const session = await page.context().newCDPSession(page);
  /** Two fingers so far to each side, then as far as said. */
  const pinch = async (from: number, to: number) => {
    const fingers = (apart: number) =>
      [-apart, apart].map((by, id) => ({ x: 180 + by, y: 300, id }));
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', apart?: number) =>
      session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: apart === undefined ? [] : fingers(apart),
      });
    await touch('touchStart', from);
    for (let i = 1; i <= 10; i++) await touch('touchMove', from + ((to - from) * i) / 10);
    await touch('touchEnd');
  };
  await page.goto(`${inject('address')}#/settings`);
  await page.locator('fieldset').first().waitFor();
  await pinch(40, 140);
  await page.evaluate((hash) => {
    location.hash = hash;
  }, at);
  await page.getByText('The page is zoomed').waitFor();
  await pinch(160, 20);
  await page.locator('.ruled line').first().waitFor({ state: 'attached' });
  await page.context().close();
});

test('two measurements that differ are refused; the line can be dragged by its grip', async () => {
  const { page, complaints, close } = await openApp(browser, inject('address'), {
    at: '#/edging/glass',
    size: PHONE,
    serviceWorkers: 'block',
  });
  const grip = page.locator('.grip');
  const drag = async (by: number) => {
    const box = (await grip.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y + by / 2);
    await page.mouse.move(x, y + by);
    await page.mouse.up();
    await settled(page);
    return (await grip.boundingBox())!.y - box.y;
  };
  expect(await drag(60)).toBeCloseTo(60, 0);
  // Fingers that hold the card move nothing.
  const before = await grip.boundingBox();
  await page.touchscreen.tap(100, 300);
  await page.touchscreen.tap(20, 500);
  expect(await grip.boundingBox()).toEqual(before);
  await matches(page);
  await page.getByText('turn the card').waitFor();
  await drag(40);
  await matches(page);
  await page.getByText(/The two measurements differ by/).waitFor();
  expect(await page.locator('.ruled').count()).toBe(0);
  expect(complaints).toEqual([]);
  await close();
});

test('what is pressed on the glass is in reach, and axe finds nothing amiss', async () => {
  const page = await onGlass(2, 6.3, '#/edging/glass?length=40&pitch=0.3&rows=level&u=cm');
  const sizes = [SMALL_PHONE, PHONE, { width: 320, height: 568 }, { width: 640, height: 360 }];
  for (const size of inGate(sizes, ({ height }) => height === 568 || height === 360)) {
    await page.setViewportSize(size);
    await keepScale(page, 6.3);
    await page.reload();
    await page.locator('.lay').waitFor();
    await settled(page);
    const where = `${size.width} × ${size.height}`;
    for (const button of await page.locator('.actions button').all()) {
      const box = (await button.boundingBox())!;
      expect(box.height, where).toBeGreaterThanOrEqual(48);
      expect(box.y + box.height, where).toBeLessThanOrEqual(size.height + 0.5);
      if (size.height > size.width) expect(box.y, where).toBeGreaterThanOrEqual(size.height * 0.4);
    }
    expect(await axeFaults(page), where).toEqual([]);
  }
  await page.context().close();
});
