import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { IN_HAND, longRow } from '../browser/long-row.ts';
import { store } from '../browser/stored.ts';
import { KeptBook } from './kept-book.ts';
import { DEEDS, type Deed, doUntilKilled, type Told } from './kill-deeds.ts';
import { startOn } from './killed-browser.ts';
import { withApp } from './with-app.ts';

/**
 * `npm run kills`: the browser is killed at a random moment while garments are made, Made is
 * pressed on a long row, a field of it is changed and settled, or is being typed, again and again
 * on one device; whatever the app said is kept must be there, and on its screens.
 */
const KILLS = Number(process.env.KILLS ?? 100);

/** Where on the app each deed is done. */
const PLACES: Readonly<Record<Deed, string>> = {
  'new garments': '#/garments',
  Made: '#/garments/open?g=row',
  settled: '#/garments/open?g=row&w=front',
  pending: '#/garments/open?g=row&w=front',
};

await withApp(async (_, address) => {
  const device = await mkdtemp(join(tmpdir(), 'thumbrule-kills-'));
  const book = new KeptBook();
  const open = async <Value>(work: (page: Page) => Promise<Value>): Promise<Value> => {
    const { page, end } = await startOn(device);
    try {
      return await work(page);
    } finally {
      await end();
    }
  };
  await open(async (page) => {
    await page.goto(`${address}#/settings`);
    await page.locator('h1').first().waitFor();
    await store(page, 'garment:row', longRow());
    await store(page, 'in-hand', IN_HAND);
  });
  for (let kill = 0; kill <= KILLS; kill++) {
    const deed = DEEDS[kill % DEEDS.length] ?? 'Made';
    await open(async (page) => {
      await book.compare(page, address);
      if (kill === KILLS) return;
      await page.goto(address + PLACES[deed]);
      const told = hear(page, (said) => book.note(deed, said), 1 + Math.floor(Math.random() * 6));
      const doing = page.evaluate(doUntilKilled, { deed, round: kill });
      await Promise.race([told, doing]);
      // It ends with the browser.
      doing.catch(() => undefined);
      await new Promise((wake) => setTimeout(wake, Math.random() * 150));
    });
  }
  console.log(`${KILLS} kills; ${book.summary()}`);
  for (const fault of book.faults) console.log(`  ${fault}`);
  await rm(device, { recursive: true, force: true });
  process.exitCode = book.isGood() ? 0 : 1;
});

/** Notes what a page tells; resolves when it has begun something for so many times. */
function hear(page: Page, note: (told: Told) => void, begins: number): Promise<void> {
  let begun = 0;
  return new Promise((enough) => {
    page.on('console', (said) => {
      if (!said.text().startsWith('[')) return;
      const told = JSON.parse(said.text()) as Told;
      note(told);
      if (told[0] === 'begins') begun += 1;
      if (begun >= begins) enough();
    });
  });
}
