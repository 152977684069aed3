import { stat } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { openApp, SMALL_PHONE } from '../browser/harness.ts';
import { garmentWith, putGarments } from './kept-garments.ts';
import { withApp } from './with-app.ts';

/**
 * `npm run bench:backup`: a backup of 500 garments of 500 works is written by one
 * device and restored on another: how long it takes, how large it is, and how long the page is
 * held up at most. `GARMENTS=n` and `KEPT=n` for other numbers.
 */
const GARMENTS = Number(process.env.GARMENTS ?? 500);
const KEPT = Number(process.env.KEPT ?? 500);
/** What may take as long as it does, in ms. */
const LONG = 30 * 60_000;

await withApp(async (browser, address) => {
  const first = await openDevice(browser, address);
  const garment = garmentWith(KEPT, 'g', 'Coat');
  for (let from = 0; from < GARMENTS; from += 10) {
    await first.evaluate(putGarments, { garment, from, count: Math.min(10, GARMENTS - from) });
  }
  await first.reload();
  await first.getByText('Save a backup').first().waitFor();
  await first.getByRole('article', { name: 'Coat', exact: true }).waitFor({ timeout: LONG });
  const saved = first.waitForEvent('download', { timeout: LONG });
  const writing = await timed(first, async () => {
    await first.getByText('Save a backup').first().tap();
    await saved;
  });
  const path = await (await saved).path();
  const before = await digest(first);

  const second = await openDevice(browser, address);
  const reading = await timed(second, async () => {
    await second.locator('input[type=file]').setInputFiles(path);
    await second.getByRole('button', { name: 'Restore what is chosen' }).waitFor({ timeout: LONG });
  });
  const restoring = await timed(second, async () => {
    await second.getByRole('button', { name: 'Restore what is chosen' }).tap();
    await second.getByText(`${GARMENTS} restored.`).waitFor({ timeout: LONG });
  });
  const same = (await digest(second)) === before;
  const megabytes = (await stat(path)).size / 1e6;
  console.log(
    `${GARMENTS} garments of ${KEPT}: ${megabytes.toFixed(1)} MB, ${same ? 'all the same' : 'NOT THE SAME'}`,
  );
  console.table({ writing, reading, restoring });
  process.exitCode = same ? 0 : 1;
});

async function openDevice(browser: Browser, address: string): Promise<Page> {
  const opening = { at: '#/garments', size: SMALL_PHONE, serviceWorkers: 'block' } as const;
  const { page } = await openApp(browser, address, opening);
  await page.getByText('Save a backup').waitFor();
  return page;
}

/** How long something takes in a page, and the longest it can't answer a press, in seconds. */
async function timed(page: Page, work: () => Promise<void>) {
  await page.evaluate(() => {
    const times: number[] = [];
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) times.push(duration);
    }).observe({ type: 'longtask' });
    Object.assign(globalThis, { longTasks: times });
  });
  const from = performance.now();
  await work();
  const took = (performance.now() - from) / 1000;
  const held = await page.evaluate(() =>
    Math.max(0, ...(Reflect.get(globalThis, 'longTasks') as number[])),
  );
  return { seconds: took.toFixed(1), 'held up at most': `${(held / 1000).toFixed(2)} s` };
}

/** All records of a device's garments, by one number: SHA-256 of each, of all. */
function digest(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const asked = <Value>(request: IDBRequest<Value>) =>
      new Promise<Value>((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    const db = await asked(indexedDB.open('thumbrule', 1));
    const store = () => db.transaction('bench').objectStore('bench');
    const keys = await asked(store().getAllKeys(IDBKeyRange.bound('garment:', 'garment:\uffff')));
    const sum = async (text: string) => {
      const bytes = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
      return [...new Uint8Array(bytes)].join();
    };
    let all = '';
    for (const key of keys) all += await sum(JSON.stringify(await asked(store().get(key))));
    db.close();
    return sum(all);
  });
}
