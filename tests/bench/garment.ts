import type { Browser, Page } from 'playwright-core';
import { openApp, SMALL_PHONE, slowDown } from '../browser/harness.ts';
import { garmentWith, putGarments } from './kept-garments.ts';
import { timeMany } from './many-garments.ts';
import { median, SLOWER } from './press.ts';
import { withApp } from './with-app.ts';

/**
 * `npm run bench:garment`: how long a garment with many works takes until its next number is painted,
 * from a press on the list and from a cold start with it open, and what hundreds of garments cost
 * the list and keeping; `OPENINGS=n` for another number of times.
 */
const COUNTS = [15, 60];
const OPENINGS = Number(process.env.OPENINGS ?? 25);
const NAME = 'Coat with everything';
const NUMBER = '.next-key .number';

await withApp(async (browser, address) => {
  const rows = [];
  for (const count of COUNTS) rows.push(...(await timeOpening(browser, address, count)));
  console.log(`Milliseconds until the next number is painted, processor ${SLOWER}× slower`);
  console.table(rows);
  const many = await timeMany(browser, address);
  console.log(`Milliseconds with many garments on the phone, processor ${SLOWER}× slower`);
  console.table(many);
});

async function timeOpening(browser: Browser, address: string, count: number) {
  const app = await openApp(browser, address, {
    ...{ at: '#/garments', size: SMALL_PHONE, bench: {}, serviceWorkers: 'block' },
  });
  const { page } = app;
  await page.addInitScript(timeOfNumber, NUMBER);
  await page.getByText('A new garment').waitFor();
  await page.evaluate(putGarments, { garment: garmentWith(count, 'coat', NAME), count: 1 });
  await slowDown(page, SLOWER);
  const cold: number[] = [];
  const pressed: number[] = [];
  for (let i = 0; i < OPENINGS; i++) {
    await page.goto('about:blank');
    await page.goto(`${address}#/garments`);
    await page.getByRole('article', { name: NAME }).waitFor();
    pressed.push(await open(page));
    // It is open now: a start shows it.
    await page.goto('about:blank');
    await page.goto(address);
    cold.push(await page.evaluate(paintedAt));
  }
  await app.close();
  return [
    { works: count, from: 'a cold start', ...summary(cold) },
    { works: count, from: 'a press on the list', ...summary(pressed) },
  ];
}

function summary(times: readonly number[]) {
  return { median: median(times).toFixed(1), worst: Math.max(...times).toFixed(1) };
}

/** From the press on the list to the painted number. */
async function open(page: Page): Promise<number> {
  const opener = page.getByRole('article', { name: NAME }).locator('h2 button').first();
  await opener.evaluate((button) => {
    button.addEventListener('pointerdown', ({ timeStamp }) => {
      document.documentElement.dataset.pressed = String(timeStamp);
    });
  });
  await opener.tap();
  const painted = await page.evaluate(paintedAt);
  return painted - (await page.evaluate(() => Number(document.documentElement.dataset.pressed)));
}

declare global {
  /** When a number was first painted on the key, by the page's clock. */
  var numberPainted: Promise<number>;
}

/** It is waited for in the page alone: looking for an element from outside takes the page's own time. */
function paintedAt(): Promise<number> {
  return numberPainted;
}

/** Runs in the page, before anything else. */
function timeOfNumber(number: string): void {
  globalThis.numberPainted = new Promise((painted) => {
    const look = () => {
      if (!document.querySelector(number)) return;
      changes.disconnect();
      // A frame callback runs before the paint, and the message it posts after it.
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => painted(performance.now());
        channel.port2.postMessage('painted');
      });
    };
    const changes = new MutationObserver(look);
    changes.observe(document, { childList: true, subtree: true });
  });
}
