import type { Browser } from 'playwright-core';
import { openApp, SMALL_PHONE } from '../browser/harness.ts';
import { median } from './press.ts';
import { withApp } from './with-app.ts';

/** `npm run bench:paper`: key press → PDF there, in the browser's worker, library and all. */
const ROUNDS = 5;
const LENGTHS = [
  { what: '2 m, two rows of 250 holes', cm: 200, mostMs: 1000 },
  { what: '10 m, two rows of 1,250 holes', cm: 1000, mostMs: undefined },
];

await withApp(async (browser, address) => {
  const rows = [];
  for (const { what, cm, mostMs } of LENGTHS) {
    const times: number[] = [];
    for (let i = 0; i < ROUNDS; i++) times.push(await timePdf(browser, address, cm));
    rows.push({
      what,
      median: Math.round(median(times)),
      worst: Math.round(Math.max(...times)),
      most: mostMs ?? '',
    });
  }
  console.log('Milliseconds from press to the finished PDF, on a page just loaded');
  console.table(rows);
});

async function timePdf(browser: Browser, address: string, cm: number): Promise<number> {
  const app = await openApp(browser, address, {
    at: `#/edging/paper?u=cm&length=${cm}&pitch=0.8&rows=staggered&paper=a4`,
    size: SMALL_PHONE,
    bench: { unit: 'cm' },
    serviceWorkers: 'block',
  });
  const { page } = app;
  await page.getByRole('button', { name: 'Make the PDF' }).waitFor();
  const took = await page.evaluate(async () => {
    const key = (words: string) =>
      [...document.querySelectorAll('button')].find(({ textContent }) => textContent === words);
    const start = performance.now();
    key('Make the PDF')?.click();
    while (!key('Save the PDF')) await new Promise((next) => setTimeout(next, 2));
    return performance.now() - start;
  });
  await app.close();
  return took;
}
