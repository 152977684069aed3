import type { Browser, Page } from 'playwright-core';
import { garmentKeepWords } from '#words/garment/garment-keep-words.ts';
import { garmentWords as words } from '#words/garment/garment-words.ts';
import { openApp, SMALL_PHONE, slowDown } from '../browser/harness.ts';
import { garmentWith, putGarments } from './kept-garments.ts';
import { median, SLOWER } from './press.ts';

/** Garments on the phone, and calculations kept on each. */
const GARMENTS = 500;
const KEPT = 60;
const TIMES = Number(process.env.OPENINGS ?? 15);

/**
 * With many garments on the phone: from the press to the painted list, and from the press on
 * Keep to the painted calculation, once its record is on the disk.
 */
export async function timeMany(browser: Browser, address: string) {
  const app = await openApp(browser, address, {
    at: '#/garments',
    size: SMALL_PHONE,
    bench: {},
    serviceWorkers: 'block',
  });
  const { page } = app;
  await page.getByText(words.newGarment).waitFor();
  await page.evaluate(putGarments, { garment: garmentWith(KEPT, 'g', 'Garment'), count: GARMENTS });
  // The first list of records that have no entries yet, and the comparing of them all.
  await page.goto(`${address}#/`);
  await page.reload();
  const first = await firstList(page);
  while (!(await page.evaluate(allListed, GARMENTS))) await page.waitForTimeout(500);
  await slowDown(page, SLOWER);
  const lists: Seen[] = [];
  const forms: Seen[] = [];
  const keeps: Seen[] = [];
  for (let i = 0; i < TIMES; i++) {
    await goTo(page, '#/all', '.home');
    lists.push(await timeTo(page, '#/garments', 'article h2', GARMENTS));
    await goTo(page, '#/all', '.home');
    await goTo(page, `#/hem?u=cm&depth=${2 + i / 10}`, '.answer');
    forms.push(
      await timeTo(page, `#/hem/keep?u=cm&depth=${2 + i / 10}`, 'form.lower option', GARMENTS),
    );
    keeps.push(await timePressed(page, garmentKeepWords.keepIt, '.answer'));
  }
  await app.close();
  return [
    { what: `list of ${GARMENTS}`, ...summary(lists) },
    { what: 'form to keep on one', ...summary(forms) },
    { what: 'keeping on one of them', ...summary(keeps) },
    {
      what: 'first list, without entries, this machine’s speed',
      'first seen, median': first.toFixed(0),
    },
  ];
}

/** Whether so many garments have their entries in the list's index. Runs in the page. */
function allListed(garments: number): Promise<boolean> {
  return new Promise((done) => {
    const opening = indexedDB.open('thumbrule', 1);
    opening.onsuccess = () => {
      const entries = opening.result.transaction('bench').objectStore('bench');
      const count = entries.count(IDBKeyRange.bound('listed:', 'listed:\uffff'));
      count.onsuccess = () => {
        opening.result.close();
        done(count.result >= garments);
      };
    };
  });
}

/** Milliseconds by the page's own clock: to the first frame with any, and with all of them. */
interface Seen {
  seen: number;
  whole: number;
}

async function firstList(page: Page): Promise<number> {
  await goTo(page, '#/all', '.home');
  return (await timeTo(page, '#/garments', 'article h2', GARMENTS)).seen;
}

async function goTo(page: Page, hash: string, shown: string): Promise<void> {
  await page.evaluate((to) => location.assign(to), hash);
  await page.locator(shown).first().waitFor();
}

async function timeTo(page: Page, hash: string, shown: string, count: number): Promise<Seen> {
  return page.evaluate(timeUntil, { hash, shown, count, press: undefined });
}

async function timePressed(page: Page, press: string, shown: string): Promise<Seen> {
  return page.evaluate(timeUntil, { hash: undefined, shown, count: 1, press });
}

interface Until {
  hash: string | undefined;
  /** The face of the button that is pressed, where no address is gone to. */
  press: string | undefined;
  shown: string;
  count: number;
}

/** Runs in the page. */
function timeUntil({ hash, press, shown, count }: Until): Promise<Seen> {
  return new Promise((done) => {
    let seen = 0;
    let waiting = false;
    const from = performance.now();
    const look = () => {
      const there = document.querySelectorAll(shown).length;
      if (there === 0 || waiting) return;
      waiting = true;
      // A frame callback runs before the paint, and the message it posts after it.
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => {
          waiting = false;
          const took = performance.now() - from;
          seen ||= took;
          if (there < count) return look();
          changes.disconnect();
          done({ seen, whole: took });
        };
        channel.port2.postMessage('painted');
      });
    };
    const changes = new MutationObserver(look);
    changes.observe(document.body, { childList: true, subtree: true });
    if (hash !== undefined) location.assign(hash);
    else {
      const faces = [...document.querySelectorAll('button')];
      faces.find(({ textContent }) => textContent === press)?.click();
    }
  });
}

function summary(times: readonly Seen[]) {
  const seen = times.map((one) => one.seen);
  const whole = times.map((one) => one.whole);
  return {
    'first seen, median': median(seen).toFixed(1),
    'first seen, worst': Math.max(...seen).toFixed(1),
    'all of it, median': median(whole).toFixed(1),
    'all of it, worst': Math.max(...whole).toFixed(1),
  };
}
