import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { buildApp, serveApp } from './built.ts';
import { launchBrowser, type Opening, openApp, PHONE, SMALL_PHONE } from './harness.ts';
import { EVERY_SCREEN, type Screen } from './screens.ts';

/** `npm run shots`: a picture of every screen, in every way a bench can be set up. */
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

const built = await buildApp();
const served = await serveApp(built);
const browser = await launchBrowser();
const folder = await mkdtemp(join(tmpdir(), 'thumbrule-shots-'));
for (const way of WAYS) {
  await mkdir(join(folder, way.name));
  for (const screen of EVERY_SCREEN) await shoot(browser, way, screen);
}
await browser.close();
await served.close();
await rm(built, { recursive: true });
console.log(`${WAYS.length * EVERY_SCREEN.length} pictures in ${folder}`);

async function shoot(from: Browser, way: Way, { name, hash, steps }: Screen): Promise<void> {
  const { size = PHONE, bench = {}, largeText = false } = way;
  const app = await openApp(from, served.address, {
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
