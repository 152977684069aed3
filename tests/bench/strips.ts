import type { Page } from 'playwright-core';
import { checkBench } from '../../src/app/start/settings.ts';
import type { Calculation, Draft } from '../../src/calculation/calculation.ts';
import { openApp, SMALL_PHONE, slowDown } from '../browser/harness.ts';
import { median, SLOWER } from './press.ts';
import { withApp } from './with-app.ts';

/**
 * `npm run bench:strips`: how long it takes to work out a strip of 2,000 holes and crossings of
 * every angle, words and drawings included but not painted. A frame of 60 a second is 16.7 ms.
 */
const STRIP = { length: '1600', pitch: '0.8' };
const ANGLES = Array.from({ length: 15 }, (_, i) => String(20 + 10 * i));
const TIMES = 30;

await withApp(async (browser, address) => {
  const rows = [];
  for (const [id, drafts] of [
    ['edging', Array.from({ length: TIMES }, () => STRIP)],
    ['crossing', [...ANGLES, ...ANGLES].map((angle) => ({ angle }))],
  ] as const) {
    const app = await openApp(browser, address, {
      at: `#/${id}`,
      size: SMALL_PHONE,
      bench: { unit: 'cm' },
      serviceWorkers: 'block',
    });
    await app.page.locator('.answer .number').waitFor();
    await slowDown(app.page, SLOWER);
    const times = await workTimes(app.page, id, drafts);
    const [first = Number.NaN, ...warm] = times;
    rows.push({
      what: id === 'edging' ? '2,000 holes' : 'a crossing',
      first: first.toFixed(1),
      median: median(warm).toFixed(1),
      worst: Math.max(...warm).toFixed(1),
    });
    await app.close();
  }
  console.log(`Milliseconds of work, processor ${SLOWER}× slower`);
  console.table(rows);
});

/** Works drafts out with the app's own code, as it was built; a draft that gives no answer is a fault. */
async function workTimes(page: Page, id: string, drafts: readonly Draft[]): Promise<number[]> {
  const url = await page.evaluate(
    (id) =>
      performance
        .getEntriesByType('resource')
        .map(({ name }) => name)
        .find((name) => name.includes(`/${id}-`) && name.endsWith('.js')),
    id,
  );
  // As text: an import written here would be this bench's own.
  const part = await page.evaluateHandle<Record<string, Calculation>>(`import('${url}')`);
  return part.evaluate(
    (part, { id, drafts, bench }) => {
      const calculation = part[id];
      if (!calculation) throw new Error(`there is no ${id}`);
      const start = calculation.start(bench);
      return drafts.map((draft) => {
        const from = performance.now();
        const work = calculation.work({ ...start, ...draft }, bench);
        const took = performance.now() - from;
        if (!work.ok) throw new Error(JSON.stringify(work.faults));
        return took;
      });
    },
    { id, drafts, bench: checkBench({ unit: 'cm' }) },
  );
}
