import type { Browser } from 'playwright-core';
import { openApp, SMALL_PHONE, slowDown } from '../browser/harness.ts';
import { median, SLOWER, timePress } from './press.ts';
import { withApp } from './with-app.ts';

/** `npm run bench:marks`: how the time to an answer grows with the number of marks on a run. */
const COUNTS = [250, 500, 1000, 2000];
const PRESSES = 15;

await withApp(async (browser, address) => {
  const rows = [];
  let before = 0;
  for (const count of COUNTS) {
    const took = await timeMarks(browser, address, count);
    const growth = before === 0 ? '' : `× ${(took / before).toFixed(2)}`;
    rows.push({ marks: count, median: took.toFixed(1), 'against half as many': growth });
    before = took;
  }
  console.log(`Milliseconds from press to painted list and drawing, processor ${SLOWER}× slower`);
  console.table(rows);
});

/** Nudges the length of a run with this many marks, a centimetre apart. */
async function timeMarks(browser: Browser, address: string, count: number): Promise<number> {
  const app = await openApp(browser, address, {
    at: `#/closures?u=cm&opening=${count + 10}&count=${count}&top=2&bottom=3`,
    size: SMALL_PHONE,
    bench: { unit: 'cm' },
    serviceWorkers: 'block',
  });
  const { page } = app;
  await page.locator('.marks li').first().waitFor();
  const field = page.locator('.tiles input[name=opening]');
  await field.focus();
  await slowDown(page, SLOWER);
  const longer = page.locator('.pad button.word').nth(2);
  const times: number[] = [];
  for (let i = 0; i < PRESSES; i++) times.push((await timePress(page, longer)).took);
  await app.close();
  return median(times);
}
