import type { Browser, Page } from 'playwright-core';
import { openApp, SMALL_PHONE, slowDown } from '../browser/harness.ts';
import { garmentWith, putGarments } from './kept-garments.ts';
import { timeMany } from './many-garments.ts';
import { median, SLOWER } from './press.ts';
import { withApp } from './with-app.ts';

/**
 * `npm run bench:garment`: how long a garment with many kept calculations takes to open,
 * from the press to the painted screen, and what hundreds of garments cost the list and keeping;
 * `OPENINGS=n` for another number of presses.
 */
const COUNTS = [15, 60];
const OPENINGS = Number(process.env.OPENINGS ?? 25);
const NAME = 'Coat with everything';

await withApp(async (browser, address) => {
  const rows = [];
  for (const count of COUNTS) rows.push(...(await timeOpening(browser, address, count)));
  console.log(`Milliseconds from press to painted garment, processor ${SLOWER}× slower`);
  console.table(rows);
  const many = await timeMany(browser, address);
  console.log(`Milliseconds with many garments on the phone, processor ${SLOWER}× slower`);
  console.table(many);
});

/** Milliseconds by the page's own clock. */
interface Opening {
  /** From the press to the frame that first showed kept calculations. */
  seen: number;
  /** To the frame that showed the last of them. */
  whole: number;
}

async function timeOpening(browser: Browser, address: string, count: number) {
  const app = await openApp(browser, address, {
    at: '#/garments',
    size: SMALL_PHONE,
    bench: {},
    serviceWorkers: 'block',
  });
  const { page } = app;
  await page.getByText('A new garment').waitFor();
  const work = await workOfOpening(page, count);
  await slowDown(page, SLOWER);
  const cold: Opening[] = [];
  for (let i = 0; i < OPENINGS; i++) {
    await loadClosed(page, count);
    cold.push(await open(page, count));
  }
  const warm: Opening[] = [];
  for (let i = 0; i < OPENINGS; i++) warm.push(await open(page, count));
  await app.close();
  return [
    { kept: count, page: 'just loaded', 'work alone': work.toFixed(1), ...summary(cold) },
    { kept: count, page: 'in use', ...summary(warm) },
  ];
}

/** The page anew, with the garment on its list and closed. */
async function loadClosed(page: Page, count: number): Promise<void> {
  await page.evaluate(putGarments, { garment: garmentWith(count, 'coat', NAME), count: 1 });
  await page.reload();
  await page.getByRole('article', { name: NAME }).waitFor();
  await page.waitForTimeout(500); // the list itself is done
}

/**
 * What the page's thread works to open the garment on a page just loaded, all of it: the
 * median at this machine's speed, times as much as the phone is slower. Unlike the times
 * it doesn't grow when the machine has other jobs.
 */
async function workOfOpening(page: Page, count: number): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const worked = async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN) * 1000;
  };
  const all: number[] = [];
  for (let i = 0; i < OPENINGS; i++) {
    await loadClosed(page, count);
    const before = await worked();
    await page.locator('article h2 button').first().dispatchEvent('click');
    await page.waitForTimeout(300); // all of it is painted
    all.push(((await worked()) - before) * SLOWER);
  }
  await session.detach();
  return median(all);
}

function summary(times: readonly Opening[]) {
  const seen = times.map((one) => one.seen);
  const whole = times.map((one) => one.whole);
  return {
    median: median(seen).toFixed(1),
    worst: Math.max(...seen).toFixed(1),
    'all of it, median': median(whole).toFixed(1),
    'all of it, worst': Math.max(...whole).toFixed(1),
  };
}

/** Opens the garment, waits until it is painted, and closes it for the next time. */
async function open(page: Page, count: number): Promise<Opening> {
  const opener = page.getByRole('article', { name: NAME }).getByRole('heading', { level: 2 });
  await opener.scrollIntoViewIfNeeded();
  const box = await opener.boundingBox();
  if (!box) throw new Error('the garment is not on the screen');
  const watch = await page.evaluateHandle(timeToOpen, count);
  await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
  const took = await watch.evaluate(({ painted }) => painted);
  await opener.getByRole('button').tap();
  await page.waitForFunction(() => !document.querySelector('article section'));
  await page.waitForTimeout(100);
  return took;
}

/** Runs in the page. */
function timeToOpen(count: number) {
  const painted = new Promise<Opening>((done, failed) => {
    setTimeout(() => failed(new Error('the garment did not open')), 10_000);
    let pressed = 0;
    let seen = 0;
    let waiting = false;
    const look = () => {
      const there = document.querySelectorAll('article section li').length;
      if (there === 0 || waiting) return;
      waiting = true;
      // A frame callback runs before the paint, and the message it posts after it.
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => {
          waiting = false;
          const took = performance.now() - pressed;
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
    addEventListener(
      'pointerdown',
      (event) => {
        pressed = event.timeStamp;
      },
      { capture: true, once: true },
    );
  });
  return { painted };
}
