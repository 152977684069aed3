// Draws the PNG icons from assets/favicon.svg: `npm run icons`. The pictures are committed.
import { readFileSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';

const folder = new URL('../assets/icons/', import.meta.url);
const svg = readFileSync(new URL('../favicon.svg', folder), 'utf8');

/**
 * `shown` is the part of the picture's width the mark takes. A maskable icon may be
 * cut to a circle of 80 % (W3C Web Application Manifest, "Icon masks and safe zone").
 */
const PICTURES = [
  { name: 'icon-192.png', size: 192, shown: 1 },
  { name: 'icon-512.png', size: 512, shown: 1 },
  { name: 'icon-maskable-512.png', size: 512, shown: 0.8 },
  { name: 'apple-touch-180.png', size: 180, shown: 1 },
];

const browser = await chromium.launch({
  executablePath: findChromium() ?? 'chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
const page = await browser.newPage();
for (const { name, size, shown } of PICTURES) {
  await page.setViewportSize({ width: size, height: size });
  // The tape runs out of the picture on both sides, so the mark is widened and cut, not padded.
  const margin = (512 / shown - 512) / 2;
  const viewBox = `${-margin} ${-margin} ${512 / shown} ${512 / shown}`;
  await page.setContent(
    `<style>body{margin:0}svg{display:block}</style>${svg.replace('0 0 512 512', viewBox)}`,
  );
  writeFileSync(new URL(name, folder), await page.screenshot({ type: 'png' }));
  console.log(name);
}
await browser.close();
