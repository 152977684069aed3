import { mkdir, mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { withApp } from '../bench/with-app.ts';
import { type Opening, openApp, PHONE, SMALL_PHONE } from './harness.ts';
import { LATER } from './in-hand-later.ts';
import { EVERY_SCREEN, type Screen } from './screens.ts';

/**
 * `npm run shots`: a picture of every screen, in every way a bench can be set up; `ONLY=made` for those
 * whose name has that in it, `WAY=small` for the ways.
 */
const { ONLY = '', WAY = '' } = process.env;

interface Way extends Pick<Opening, 'size' | 'bench'> {
  name: string;
  /** The text twice as large, as a phone's own setting makes it. */
  largeText?: boolean;
}

const WAYS: readonly Way[] = [
  { name: 'phone', size: PHONE },
  { name: 'phone-night', size: PHONE, bench: { theme: 'night' } },
  { name: 'phone-left', size: PHONE, bench: { hand: 'left' } },
  { name: 'phone-inches', size: PHONE, bench: { unit: 'in' } },
  { name: 'phone-large-text', size: PHONE, largeText: true },
  { name: 'small', size: SMALL_PHONE },
  { name: 'small-night', size: SMALL_PHONE, bench: { theme: 'night' } },
  { name: 'small-left', size: SMALL_PHONE, bench: { hand: 'left' } },
  { name: 'small-inches', size: SMALL_PHONE, bench: { unit: 'in' } },
  { name: 'small-large-text', size: SMALL_PHONE, largeText: true },
  { name: 'narrowest', size: { width: 320, height: 568 } },
  { name: 'landscape', size: { width: 844, height: 390 } },
];
const ways = WAYS.filter(({ name }) => name.includes(WAY));
const screens = [...EVERY_SCREEN, ...LATER].filter(({ name }) => name.includes(ONLY));

const folder = await mkdtemp(join(tmpdir(), 'thumbrule-shots-'));
await withApp(async (browser, address) => {
  for (const way of ways) {
    await mkdir(join(folder, way.name));
    for (const screen of screens) await shoot({ browser, address, way, screen });
  }
});
console.log(`${ways.length * screens.length} pictures in ${folder}`);

interface Shot {
  browser: Browser;
  address: string;
  way: Way;
  screen: Screen;
}

async function shoot({ browser, address, way, screen }: Shot): Promise<void> {
  const { name, hash, steps } = screen;
  const { size = PHONE, bench = {}, largeText = false } = way;
  const app = await openApp(browser, address, {
    at: hash,
    size,
    bench,
    serviceWorkers: 'block',
  });
  if (largeText) await enlargeText(app.page);
  await app.page.waitForLoadState('networkidle');
  await steps?.(app.page);
  await app.page.screenshot({ path: join(folder, way.name, `${name.replaceAll(' ', '-')}.png`) });
  for (const complaint of app.complaints) console.warn(`${way.name}, ${name}: ${complaint}`);
  await app.close();
}

/** Sizes given in rem or em follow it; those given in px don't, which is then to be seen. */
async function enlargeText(page: Page): Promise<void> {
  await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
}
