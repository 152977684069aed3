import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { layIn } from '../../src/garment/record/cloth-lay.ts';
import type { Garment } from '../../src/garment/record/record.ts';
import { mm } from '../../src/lengths/length.ts';
import { garment, work } from '../garment/materials/garments.ts';
import { axeFaults } from './axe.ts';
import { launchBrowser, openApp, PHONE, SMALL_PHONE, wear } from './harness.ts';
import { store, stored } from './stored.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const piece = (name: string, width: number, length: number, count: number) =>
  work('piece', `width=${width}&length=${length}&top=1&bottom=1&side=1&count=${count}`, { name });

/** An invented work coat of thirteen pieces, on cloth of 140 with a hole in it. */
function coat(): Garment {
  const works = {
    back: piece('Back', 56, 78, 1),
    front: piece('Front', 32, 78, 2),
    facing: piece('Facing', 10, 76, 2),
    sleeve: piece('Sleeve', 40, 58, 2),
    cuff: piece('Cuff', 26, 12, 2),
    collar: piece('Collar', 44, 9, 2),
    pocket: piece('Pocket', 18, 20, 2),
  };
  const { record } = garment(works, { cloth: { width: mm(1400), unit: mm(100) } });
  const flaws = [{ along: mm(300), across: mm(500), long: mm(60), wide: mm(40) }];
  return { ...record, lays: { cloth: { flaws } }, id: 'coat', name: 'Work coat', invented: true };
}

const found = async (page: Page) =>
  layIn((await stored(page, 'garment:coat')) as Garment, 'cloth').found;
const shot = async (page: Page, name: string) => {
  const folder = process.env.PICTURES;
  if (folder) await page.screenshot({ path: join(folder, `lay-${name}.png`) });
};

/** What stands in the largest letters of the screen, drawings aside. */
const largest = (page: Page) =>
  page.evaluate(() => {
    const all = [...document.querySelectorAll('.lay :not(svg, svg *)')]
      .filter((it) =>
        [...it.childNodes].some((node) => node.nodeType === 3 && node.nodeValue?.trim()),
      )
      .map((it) => ({
        text: it.textContent,
        size: Number.parseFloat(getComputedStyle(it).fontSize),
      }))
      .sort((one, other) => other.size - one.size);
    return all[0] && all[0].size > (all[1]?.size ?? 0) ? all[0].text : '';
  });

/** What to press, and the length to buy, where they aren't wholly on the screen. */
const leavesScreen = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('.lay button, .lay .to-buy strong')]
      .filter((it) => {
        const { left, right, top, bottom } = it.getBoundingClientRect();
        return left < 0 || right > innerWidth || top < 0 || bottom > innerHeight;
      })
      .map((it) => it.textContent),
  );

/** What lies under something else: what to press, what a length to buy takes, and where a piece lies. */
const covered = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('.lay button, .lay .to-buy + p, .lay h2')]
      .filter((it) => {
        // What is scrolled away is no more seen than what is covered, and comes back.
        if (it.closest('.list, details')) return false;
        const { left, right, top, bottom } = it.getBoundingClientRect();
        const corners = [left + 4, right - 4].flatMap((x) =>
          [top + 4, bottom - 4].map((y) => [x, y]),
        );
        return corners.some(([x = 0, y = 0]) => {
          const seen = document.elementFromPoint(x, y);
          return !seen || !(it.contains(seen) || seen.contains(it));
        });
      })
      .map((it) => it.textContent),
  );

test('two presses from the garment: found, better found, stopped, loaded anew it is there', async () => {
  const { page, complaints, close } = await openApp(browser, inject('address'), {
    at: '#/garments',
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
  const press = (name: string | RegExp) =>
    page.getByRole('button', { name, exact: typeof name === 'string' }).tap();
  await page.locator('.garments').waitFor();
  await store(page, 'garment:coat', coat());
  await page.goto(`${inject('address')}#/garments/open?g=coat`);
  await page.locator('.next-key').waitFor();
  await press('Add');
  await press('Lay the pieces on the cloth');
  await page.getByText('No lay yet').waitFor();
  await shot(page, 'none');
  await press('Find a lay');
  await page.locator('.lay-drawing .flaw').waitFor({ state: 'attached' });
  await page.locator('.lay-drawing [data-piece]').first().waitFor();
  await page.getByText(/Found: .* → /).waitFor();
  await shot(page, 'looking');
  await press('Stop');
  await page.getByRole('button', { name: 'Find a better one' }).waitFor();
  await expect.poll(async () => (await found(page))?.laid.length).toBe(13);
  const { length } = (await found(page))!;
  // The area of all pieces over the width: no lay is shorter.
  expect(length).toBeGreaterThan(
    mm((58 * 80 + 2 * (34 * 80 + 12 * 78 + 42 * 60 + 28 * 14 + 46 * 11 + 20 * 22)) / 14),
  );
  await shot(page, 'stopped');
  await page.locator('.lay-fell').waitFor();
  for (const size of [SMALL_PHONE, PHONE]) {
    for (const theme of ['phone', 'night'] as const) {
      for (const percent of [100, 200]) {
        await page.setViewportSize(size);
        await wear(page, theme);
        await page.evaluate((of) => {
          document.documentElement.style.fontSize = `${of}%`;
        }, percent);
        await shot(page, `${size.width}-${theme}-${percent}`);
        expect(await largest(page), `${size.width}, ${percent} %`).toMatch(/^\d+ cm$/);
        expect(await leavesScreen(page), `${size.width}, ${percent} %`).toEqual([]);
        expect(await covered(page), `${size.width}, ${percent} %`).toEqual([]);
      }
    }
  }
  await page.setViewportSize(SMALL_PHONE);

  await page.reload();
  await page.locator('.lay-drawing [data-piece]').first().waitFor();
  expect(await page.locator('.lay-drawing [data-piece]').count()).toBe(13);
  expect((await found(page))?.length).toBe(length);

  await press('Place by place');
  const next = page.getByRole('button', { name: 'Next piece' });
  await next.waitFor();
  const box = await next.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(96);
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(SMALL_PHONE.height);
  await next.tap();
  await page.getByText('2 of 13').waitFor();
  await shot(page, 'places');
  for (const percent of [200, 100]) {
    await page.evaluate((of) => {
      document.documentElement.style.fontSize = `${of}%`;
    }, percent);
    expect(await covered(page), `places, ${percent} %`).toEqual([]);
  }
  await press('Closer');
  await shot(page, 'closer');
  expect(await axeFaults(page)).toEqual([]);
  await press('Back');
  await press('Cloth, nap');
  await page.getByText(/^Usable width/).waitFor();
  await shot(page, 'cloth');
  await press(/^Shapes of the pieces/);
  await press(/^Sleeve/);
  await press(/^Tapered, or with curved sides/);
  await page.locator('.outline-drawing').waitFor();
  await shot(page, 'shape');
  expect(await axeFaults(page)).toEqual([]);
  await press('Lay it as the garment cuts it');
  await press('Done');
  await press('Done');
  await press('Done');
  await press('PDF, on paper');
  await page.locator('svg.page').first().waitFor();
  expect(await axeFaults(page)).toEqual([]);
  await press('Back');
  await press('Other cloth');
  await press('Look for them');
  await page.getByText(/^This cloth:/).waitFor();
  await shot(page, 'others');
  expect(complaints).toEqual([]);
  await close();
}, 180_000);
