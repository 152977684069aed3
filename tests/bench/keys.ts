import type { Browser, Locator, Page } from 'playwright-core';
import type { Bench } from '../../src/calculation/bench.ts';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import { openApp, SMALL_PHONE, slowDown } from '../browser/harness.ts';
import { FIELDS, type KeyPress, OPEN_WORKS, timeOpenWork } from './open-work.ts';
import { median, SLOWER, timePress } from './press.ts';
import { withApp } from './with-app.ts';

/**
 * `npm run bench:keys`: how long the answer takes after each key of the pad, in every field of
 * every calculation, after the large key for the next mark or hole, and in an open work of a garment
 * of 60, typed alone and in a sum with what is taken of the garment; beside an empty page. `ONLY=hem` for one of them, `ONLY=garment` for the open works.
 */
const ONLY = process.env.ONLY ?? '';
const SCREENS = Object.keys(CALCULATIONS)
  .filter((id) => id.includes(ONLY))
  .map((id) => `#/${id}`);
/** Where the lower half is one key. */
const ONE_KEY = ['#/closures/follow', '#/centre/count?count=40'].filter((at) => at.includes(ONLY));
const UNITS: readonly Bench['unit'][] = ['cm', 'in'];
const NEXT_PRESSES = 30;

await withApp(async (browser, address) => {
  const rows = [await timeEmptyPage(browser)];
  for (const work of 'garment'.includes(ONLY) ? OPEN_WORKS : []) {
    for (const kind of FIELDS) {
      const { fields, presses } = await timeOpenWork(browser, address, { work, kind });
      rows.push(row(`garment of 60, ${work}, ${kind}`, 'cm', fields, presses));
    }
  }
  for (const unit of UNITS) {
    for (const at of SCREENS) rows.push(await timeScreen(browser, address, at, unit));
    for (const at of ONE_KEY) rows.push(await timeNext(browser, address, at, unit));
  }
  console.log(`Milliseconds from press to painted answer, processor ${SLOWER}× slower`);
  console.table(overEmpty(rows));
});

async function timeScreen(browser: Browser, address: string, at: string, unit: Bench['unit']) {
  const app = await start(browser, address, at, unit);
  await app.page.locator('.tiles input').first().waitFor();
  await slowDown(app.page, SLOWER);
  // By their names: what is typed in one may take another away.
  const names = await app.page
    .locator('.tiles input')
    .evaluateAll((fields) => fields.map((field) => field.getAttribute('name') ?? ''));
  const presses: KeyPress[] = [];
  for (const name of names) presses.push(...(await timeField(app.page, name)));
  await app.close();
  return row(at, unit, names.length, presses);
}

/** What no page can be quicker than here: one number, one key, nothing else. */
async function timeEmptyPage(browser: Browser) {
  const page = await browser.newPage({ viewport: SMALL_PHONE, hasTouch: true, isMobile: true });
  await page.setContent(
    '<meta name="viewport" content="width=device-width"><p class="answer">0</p><button>1</button>',
  );
  await page.evaluate(() => {
    let presses = 0;
    const shown = document.querySelector('.answer');
    addEventListener('pointerdown', () => {
      if (shown) shown.textContent = String(++presses);
    });
  });
  await slowDown(page, SLOWER);
  const presses = await pressAgain(page, page.locator('button'));
  await page.close();
  return row('an empty page', '-', 0, presses);
}

/** The large key, pressed again and again. */
async function timeNext(browser: Browser, address: string, at: string, unit: Bench['unit']) {
  const app = await start(browser, address, at, unit);
  const next = app.page.locator('button.next');
  await next.waitFor();
  await slowDown(app.page, SLOWER);
  const presses = await pressAgain(app.page, next);
  await app.close();
  return row(at, unit, 0, presses);
}

async function pressAgain(page: Page, key: Locator): Promise<KeyPress[]> {
  const presses: KeyPress[] = [];
  for (let i = 1; i <= NEXT_PRESSES; i++) {
    presses.push({ key: `press ${i}`, ...(await timePress(page, key)) });
  }
  return presses;
}

function start(browser: Browser, address: string, at: string, unit: Bench['unit']) {
  return openApp(browser, address, {
    at,
    size: SMALL_PHONE,
    bench: { unit },
    serviceWorkers: 'block',
  });
}

function row(
  screen: string,
  unit: Bench['unit'] | '-',
  fields: number,
  presses: readonly KeyPress[],
) {
  const worst = presses.reduce((a, b) => (b.took > a.took ? b : a));
  const warm = presses.slice(1);
  return {
    screen,
    unit,
    fields,
    presses: presses.length,
    'median of the work': median(presses.map(({ work }) => work)).toFixed(1),
    median: median(presses.map(({ took }) => took)).toFixed(1),
    worst: worst.took.toFixed(1),
    'worst key': worst.key,
    'main thread, median': median(presses.map(({ thread }) => thread)).toFixed(1),
    'main thread, worst': Math.max(...presses.map(({ thread }) => thread)).toFixed(1),
    'worst after the first': Math.max(...warm.map(({ took }) => took)).toFixed(1),
  };
}

/** Each with how much longer its presses take than those of the empty page, which is the first. */
function overEmpty(rows: readonly ReturnType<typeof row>[]) {
  const emptyWork = Number(rows[0]?.['median of the work']);
  return rows.map((one) => {
    const work = Number(one['median of the work']);
    return {
      ...one,
      'work over the empty page': (work - emptyWork).toFixed(1),
      'times the empty page': (work / emptyWork).toFixed(2),
    };
  });
}

/** Every key is pressed on the field as it opened, so that most presses give an answer. */
async function timeField(page: Page, name: string): Promise<KeyPress[]> {
  const field = page.locator(`.tiles input[name="${name}"]`);
  await field.focus();
  const first = await field.inputValue();
  const keys = page.locator('.pad button:not(.go)');
  const presses: KeyPress[] = [];
  for (let i = 0; i < (await keys.count()); i++) {
    const key = keys.nth(i);
    const label = (await key.getAttribute('aria-label')) ?? (await key.textContent()) ?? '';
    presses.push({ key: label, ...(await timePress(page, key)) });
    await field.fill(first);
  }
  return presses;
}
