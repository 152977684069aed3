import type { Browser, Page } from 'playwright-core';
import { garmentFailedWords } from '#words/garment/garment-failed-words.ts';
import { garmentKeepWords } from '#words/garment/garment-keep-words.ts';
import { garmentListWords } from '#words/garment/garment-list-words.ts';
import { garmentWords as words } from '#words/garment/garment-words.ts';
import type { Garment, Work } from '../../src/garment/record/record.ts';
import { openApp } from './harness.ts';
import { keptGarments } from './kept-garments.ts';
import { chance, lastOf } from './orders.ts';
import { type Done, type Order, workThrough } from './tab-writer.ts';

/** Garments both tabs work on, and one of each tab's own. */
const SHARED = ['Shared 1', 'Shared 2'];
const OWN = ['Own 1', 'Own 2'];
/** A calculation on the first of them that both tabs change. */
const COMMON = 'Common hem';

export interface Together {
  asked: number;
  confirmed: number;
  /** Confirmed while the other tab was at something, too. */
  overlapping: number;
  /** What was confirmed and is not there, or is there and should not be; one line each. */
  lost: readonly string[];
  complaints: readonly string[];
}

/**
 * Two tabs of one device change garments at the same time, by the app's own screens, each
 * as fast as it goes; then everything that was confirmed is looked for on the device.
 *
 * @param changes how many orders each tab gets
 * @param seed the same one gives the same orders
 */
export async function workTogether(
  browser: Browser,
  address: string,
  { changes, seed }: { changes: number; seed: number },
): Promise<Together> {
  const app = await openApp(browser, address, { at: '#/garments', serviceWorkers: 'block' });
  const before = await setUp(app.page);
  // Not before: a tab that isn't in front is drawn once a second only.
  const tabs = [app.page, await app.context.newPage()] as const;
  await tabs[1].goto(`${address}#/garments`);
  await tabs[1].locator('article h2').first().waitFor();
  const places = Object.fromEntries(
    before.flatMap((garment) =>
      worksOf(garment).map(({ id, work }) => [work.name, `${garment.id}.${id}`]),
    ),
  );
  const next = chance(seed);
  const all = await Promise.all(
    tabs.map((page, tab) => {
      const orders = ordersFor(tab, changes, before, next);
      return page.evaluate(workThrough, { orders, words: plain(), places });
    }),
  );
  const { garments, damaged } = await keptGarments(app.page);
  const lost = faults(all.flat(), garments);
  if (damaged > 0) lost.push(`${damaged} records can't be read`);
  const { complaints } = app;
  await app.close();
  const confirmed = all.map((done) => done.filter((one) => one.confirmed));
  return {
    asked: all.flat().length,
    confirmed: confirmed.flat().length,
    overlapping: confirmed.flatMap((done, tab) =>
      done.filter((one) => all[1 - tab]?.some((two) => two.from <= one.to && one.from <= two.to)),
    ).length,
    lost,
    complaints,
  };
}

/** The words that the page looks for: only those that are no functions can be handed over. */
function plain() {
  const { rename, bringBack } = words;
  const { putAway } = garmentListWords;
  const undo = garmentListWords.undo('');
  const { keepIt } = garmentKeepWords;
  const failed = { ...garmentFailedWords, gone: words.gone };
  return { keepIt, rename, putAway, undo, bringBack, failed };
}

/** Makes the garments by the screen's form, and keeps the common calculation on the first. */
async function setUp(page: Page): Promise<readonly Garment[]> {
  for (const name of [...SHARED, ...OWN]) {
    await page.getByLabel(words.newGarment).fill(name);
    await page.getByRole('button', { name: words.make, exact: true }).click();
    // It is opened at once; back to the list.
    await page.waitForURL(/garments\/open/);
    await page.goBack();
    await page.getByRole('article', { name, exact: true }).waitFor();
  }
  const first = (await keptGarments(page)).garments.find(({ name }) => name === SHARED[0]);
  const common: Order = { deed: 'keep', garment: first?.id ?? '', name: COMMON, depth: '2' };
  await page.evaluate(workThrough, { orders: [common], words: plain(), places: {} });
  return (await keptGarments(page)).garments;
}

/** What one tab does: keep, change, rename, put away and bring back, in any order. */
function ordersFor(
  tab: number,
  count: number,
  garments: readonly Garment[],
  next: () => number,
): Order[] {
  const mine = [...SHARED, OWN[tab] ?? ''];
  const idOf = (name: string) => garments.find((one) => one.name === name)?.id ?? '';
  const kept: { on: string; name: string }[] = [];
  const pick = <One>(from: readonly One[]) => from[Math.floor(next() * from.length)];
  return Array.from({ length: count }, (_, i): Order => {
    const which = next();
    const on = pick(mine) ?? '';
    const own = pick(kept);
    const depth = `${1 + i / 1000} cm + ${tab} mm`;
    if (which < 0.15) {
      return { deed: 'change', garment: idOf(SHARED[0] ?? ''), name: COMMON, depth };
    }
    if (which < 0.3) return { deed: 'rename', start: on, name: `${on} by tab ${tab}, ${i}` };
    if (which < 0.38) return { deed: 'put away and bring back', start: on };
    if (which < 0.65 && own) {
      return { deed: 'change', garment: idOf(own.on), name: own.name, depth };
    }
    const name = `tab ${tab} hem ${i}.`;
    kept.push({ on, name });
    return { deed: 'keep', garment: idOf(on), name, depth };
  });
}

/** Confirmed orders whose mark is not on the device, and what is there without an order. */
function faults(all: readonly Done[], garments: readonly Garment[]): string[] {
  const confirmed = all.filter((done) => done.confirmed);
  const found: string[] = [];
  const thereOn = new Map(
    garments.flatMap((garment) =>
      worksOf(garment).map(({ work }) => [work.name, { id: garment.id, work }]),
    ),
  );
  const kept = confirmed.flatMap(({ order, ...when }) =>
    order.deed === 'keep' || order.deed === 'change' ? [{ ...order, ...when }] : [],
  );
  for (const name of new Set(kept.map((one) => one.name))) {
    const changes = kept.filter((one) => one.name === name);
    const there = thereOn.get(name);
    thereOn.delete(name);
    const depth = there && depthOf(there.work);
    if (!there) found.push(`${name}: is gone`);
    else if (there.id !== changes[0]?.garment) found.push(`${name}: is on another garment`);
    else if (!lastOf(changes).some((change) => change.depth === depth)) {
      found.push(`${name}: holds ${depth}, not what was kept last`);
    }
  }
  for (const name of thereOn.keys()) found.push(`${name}: was never confirmed`);
  return [...found, ...nameFaults(confirmed, garments)];
}

function worksOf({ works }: Garment): { id: string; work: Work }[] {
  return Object.entries(works).map(([id, work]) => ({ id, work: work as Work }));
}

function depthOf({ fields }: Work): string | undefined {
  const [part] = fields.depth ?? [];
  return part && 'text' in part ? part.text : undefined;
}

function nameFaults(confirmed: readonly Done[], garments: readonly Garment[]): string[] {
  return [...SHARED, ...OWN].flatMap((start) => {
    const names = confirmed.flatMap(({ order, ...when }) =>
      order.deed === 'rename' && order.start === start ? [{ name: order.name, ...when }] : [],
    );
    const there = garments.filter(({ name }) => name.startsWith(start));
    if (there.length !== 1) return [`${start}: ${there.length} of it`];
    const last = names.length === 0 ? [start] : lastOf(names).map(({ name }) => name);
    return last.includes(there[0]?.name ?? '') ? [] : [`${start}: is called ${there[0]?.name}`];
  });
}
