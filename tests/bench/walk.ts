// npm run walk     PRESSES=100000 SEED=1 PHONES=10
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { openApp, SMALL_PHONE } from '../browser/harness.ts';
import { IN_HAND } from '../browser/in-hand.ts';
import { BookOfFacts, onDevice } from './walk-facts.ts';
import { pressAtRandom } from './walk-presses.ts';
import { withApp } from './with-app.ts';

/**
 * Random presses over the whole app, from an invented garment on: whatever is pressed, the app goes
 * on, no fact changes or goes unless the log of its garment says which press did it, and no garment
 * goes that can't be had back. The key says after a start what it said before.
 */
const { PRESSES = '100000', SEED = '1', PHONES = '10' } = process.env;
const EACH = Math.ceil(Number(PRESSES) / Number(PHONES));
/** The screen of the last fault. */
const SEEN = join(tmpdir(), 'walk.png');
/** So many presses between two looks at what is kept: fewer than a log remembers. */
const AT_ONCE = 10;
/** So many between two starts. */
const COME_BACK = 200;

await withApp(async (browser, address) => {
  let pressed = 0;
  const names = new Map<string, number>();
  const faults: string[] = [];
  for (let phone = 0; phone < Number(PHONES); phone++) {
    const app = await openApp(browser, address, {
      at: '#/garments',
      size: SMALL_PHONE,
      serviceWorkers: 'block',
    });
    await app.page.addInitScript(() => {
      window.print = () => undefined;
    });
    await IN_HAND[0]?.steps?.(app.page);
    const book = new BookOfFacts(await onDevice(app.page));
    for (let done = 0; done < EACH && faults.length === 0; done += AT_ONCE) {
      const seed = Number(SEED) * 1_000_003 + phone * 100_003 + done;
      const walked = await app.page.evaluate(pressAtRandom, { seed, count: AT_ONCE });
      pressed += walked.pressed.length;
      for (const name of walked.pressed) names.set(name, (names.get(name) ?? 0) + 1);
      const found = [...book.compare(await onDevice(app.page)), ...app.complaints];
      if (walked.stuck) found.push(walked.stuck);
      if (found.length > 0) await app.page.screenshot({ path: SEEN });
      for (const fault of found)
        faults.push(`seed ${seed}: ${fault}\n    ${walked.pressed.join(' › ')}`);
      if (done % COME_BACK > 0) continue;
      const lost = await homeAgain(app.page, address);
      if (lost.length > 0) await app.page.screenshot({ path: SEEN });
      faults.push(...lost.map((fault) => `seed ${seed}, then a start: ${fault}`));
    }
    await app.close();
    console.log(`phone ${phone + 1}: ${pressed} presses so far, ${faults.length} faults`);
  }
  console.log(`${pressed} presses on ${PHONES} phones, ${names.size} different things pressed`);
  for (const fault of faults) console.log(`  ${fault}`);
  console.log(`${faults.length} faults${faults.length > 0 ? `, the last as in ${SEEN}` : ''}`);
  process.exitCode = faults.length > 0 ? 1 : 0;
});

/**
 * Back to the garments as a maker comes back, and the app is started anew there.
 * @returns what the key of the garment in hand says no more, where it says something else then
 */
async function homeAgain(page: Page, address: string): Promise<string[]> {
  await page.goto(`${address}#/garments`);
  const shown = await page
    .locator('button:visible')
    .first()
    .waitFor({ timeout: 30_000 })
    .then(() => true)
    .catch(() => false);
  if (!shown) return ['nothing to press at the list of garments'];
  const key = page.locator('.in-hand .next-key .says').first();
  if (!(await key.isVisible())) return [];
  const before = await key.textContent();
  await page.reload();
  const same = page.waitForFunction(
    (said) => document.querySelector<HTMLElement>('.in-hand .next-key .says')?.textContent === said,
    before,
    { timeout: 30_000 },
  );
  return same.then(
    () => [],
    async () => [`the key said “${before}”, and after a start “${await key.textContent()}”`],
  );
}
