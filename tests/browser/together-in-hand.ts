import type { Browser, Page } from 'playwright-core';
import type { Garment } from '../../src/garment/record/record.ts';
import { openApp, SMALL_PHONE } from './harness.ts';
import { keptGarments } from './kept-garments.ts';
import { madeOf, saidMade, textIn } from './kept-in-hand.ts';
import { IN_HAND, longRow } from './long-row.ts';
import { chance, lastOf } from './orders.ts';
import { store } from './stored.ts';
import { type HandDone, type HandOrder, workInHand } from './tab-in-hand.ts';

export interface InHand {
  asked: number;
  /** How many of each were kept; the rest were refused in words, or there was nothing to do them on. */
  kept: Readonly<Record<HandOrder['deed'], number>>;
  lost: readonly string[];
  complaints: readonly string[];
}

/** Which field each tab changes: one of its own, in a work of both, and one that both change. */
const FIELDS = [
  [
    { work: 'front', field: 'turn', mm: 5 },
    { work: 'back', field: 'depth', mm: 20 },
  ],
  [
    { work: 'front', field: 'depth', mm: 30 },
    { work: 'back', field: 'depth', mm: 40 },
  ],
] as const;

/**
 * Two tabs of one device have the same garment in hand: both press Made on one row and change
 * fields, each as fast as it goes; then everything that was kept is looked for on the device.
 * @param orders how many each tab gets
 */
export async function pressTogether(
  browser: Browser,
  address: string,
  { orders, seed }: { orders: number; seed: number },
): Promise<InHand> {
  const app = await openApp(browser, address, {
    ...{ at: '#/settings', size: SMALL_PHONE, serviceWorkers: 'block' },
  });
  // A tab that is started anew beside others may take long, and nothing is wrong with it.
  app.context.setDefaultTimeout(180_000);
  await app.page.locator('h1').first().waitFor();
  await store(app.page, 'garment:row', longRow());
  await store(app.page, 'in-hand', IN_HAND);
  const tabs = [app.page, await app.context.newPage()];
  for (const page of tabs) {
    await page.goto(`${address}#/garments/open?g=row`);
    await page.locator('.next-key .made').waitFor();
  }
  const next = chance(seed);
  const all = await Promise.all(
    tabs.map((page, tab) => page.evaluate(workInHand, ordersFor(tab, orders, next))),
  );
  const { garments, damaged } = await keptGarments(app.page);
  const row = garments.find(({ id }) => id === 'row');
  const lost = row ? [...rowFaults(all.flat(), row), ...(await screenFaults(tabs, row))] : [];
  if (!row || damaged > 0) lost.push('the garment can’t be read');
  const { complaints } = app;
  await app.close();
  const kept = { make: 0, back: 0, settle: 0, type: 0 };
  for (const one of all.flat()) if (one.kept) kept[one.order.deed] += 1;
  return { asked: all.flat().length, kept, lost, complaints };
}

function ordersFor(tab: number, count: number, next: () => number): HandOrder[] {
  return Array.from({ length: count }, (_, i): HandOrder => {
    const which = next();
    if (which < 0.5) return { deed: 'make' };
    if (which < 0.6) return { deed: 'back' };
    const { work, field, mm } = FIELDS[tab % 2]?.[next() < 0.5 ? 0 : 1] ?? FIELDS[0][0];
    const deed = which < 0.85 ? 'settle' : 'type';
    return { deed, work, field, text: `${mm} mm + 0.0${i} mm` };
  });
}

/** Each number that was made stands there once, and no other; each field holds what was kept last. */
function rowFaults(all: readonly HandDone[], row: Garment): string[] {
  const found: string[] = [];
  const kept = all.filter((one) => one.kept);
  const made = new Map<string, number>();
  for (const { order, number = '' } of kept) {
    const by = order.deed === 'make' ? 1 : order.deed === 'back' ? -1 : 0;
    if (by !== 0) made.set(number, (made.get(number) ?? 0) + by);
  }
  for (const [number, times] of made) {
    if (times !== 0 && times !== 1) found.push(`${number} is made ${times} times`);
  }
  const there = Object.values(row.facts).map((fact) => (fact as { shown: number }).shown);
  const shown = [...made].flatMap(([number, times]) => (times === 1 ? [unitsOf(number)] : []));
  const missing = shown.filter((one) => !there.includes(one));
  if (missing.length > 0) found.push(`made, and not there: ${missing.join(', ')}`);
  if (there.length !== shown.length) found.push(`${there.length} facts, not ${shown.length}`);
  for (const { work, field } of FIELDS.flat()) {
    const typed = kept.flatMap(({ order, ...when }) =>
      'text' in order && order.work === work && order.field === field
        ? [{ ...when, text: order.text }]
        : [],
    );
    const text = textIn(row, work, field);
    if (typed.length > 0 && !lastOf(typed).some((one) => one.text === text)) {
      found.push(`${work}, ${field}: holds ${text}, not what was kept last`);
    }
  }
  return found;
}

/** Both tabs show what is on the disk once they have heard of each other. */
async function screenFaults(tabs: readonly Page[], row: Garment): Promise<string[]> {
  const found: string[] = [];
  const made = madeOf(row);
  for (const [tab, page] of tabs.entries()) {
    await page.reload();
    await page.locator('.next-key .made').waitFor();
    const said = await saidMade(page);
    if (said !== made) found.push(`tab ${tab} says ${said} made, not ${made}`);
  }
  return found;
}

/** `12.3 cm` in 1/8000 mm. */
function unitsOf(number: string): number {
  return Math.round(Number.parseFloat(number) * 80_000);
}
