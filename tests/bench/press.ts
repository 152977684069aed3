import type { CDPSession, Locator, Page } from 'playwright-core';

/** How much slower than this machine a phone of the middle sort is taken to be. */
export const SLOWER = 4;

/** What shows the answer, or the mark followed: its last change is what a press waits for. */
const ANSWER = '.answer, .follow .big';

/** A press, in milliseconds by the page's own clock. */
export interface Press {
  /** From the pointer's going down to the end of the frame that painted the answer's last change. */
  took: number;
  /** The same without the wait for the screen's next refresh, which comes 60 times a second. */
  work: number;
  /** All that the main thread worked from then on for a tenth of a second, whatever else the machine did. */
  thread: number;
}

/** A press that isn't answered within this has been lost, and that is a fault. */
const LOST_MS = 10_000;

/**
 * Taps a key and waits for the answer to be painted.
 * @throws Error when the key is not on the screen, or nothing is painted in time
 */
export async function timePress(page: Page, key: Locator): Promise<Press> {
  await key.scrollIntoViewIfNeeded();
  const box = await key.boundingBox();
  if (!box) throw new Error('the key is not on the screen');
  // The page listens before the tap is sent, or the tap could overtake the listening.
  const watch = await page.evaluateHandle(timeToPaint, { answer: ANSWER, lost: LOST_MS });
  const before = await threadTime(page);
  await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
  const painted = await watch.evaluate((one) => one.painted);
  return { ...painted, thread: (await threadTime(page)) - before };
}

const sessions = new WeakMap<Page, Promise<CDPSession>>();

/** What the main thread has worked so far, in ms of its own time. */
async function threadTime(page: Page): Promise<number> {
  const session = await (sessions.get(page) ?? openSession(page));
  const { metrics } = await session.send('Performance.getMetrics');
  return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN);
}

function openSession(page: Page): Promise<CDPSession> {
  const opening = page
    .context()
    .newCDPSession(page)
    .then(async (session) => {
      await session.send('Performance.enable', { timeDomain: 'threadTicks' });
      return session;
    });
  sessions.set(page, opening);
  return opening;
}

/**
 * Runs in the page. A frame callback runs before the paint and the message it posts
 * after it; a change that comes later than that starts the wait anew.
 */
function timeToPaint({ answer, lost }: { answer: string; lost: number }) {
  const painted = new Promise<Omit<Press, 'thread'>>((done, failed) => {
    setTimeout(() => failed(new Error('a press was not answered')), lost);
    let pressed = 0;
    let settled: ReturnType<typeof setTimeout>;
    const afterPaint = () => {
      const changedAt = performance.now();
      requestAnimationFrame(() => {
        const waited = performance.now() - changedAt;
        const painted = () => {
          const took = performance.now() - pressed;
          clearTimeout(settled);
          settled = setTimeout(() => {
            changes.disconnect();
            done({ took, work: took - waited });
          }, 100);
        };
        // Ahead of other work that waits for the same paint, or that would be timed with it.
        scheduler.postTask(painted, { priority: 'user-blocking' });
      });
    };
    let changed = false;
    const changes = new MutationObserver(() => {
      changed = true;
      afterPaint();
    });
    // A key that changes nothing is answered by the frame after it.
    const lifted = () => {
      if (!changed) afterPaint();
    };
    const once = { capture: true, once: true };
    const start = (event: Event) => {
      pressed = event.timeStamp;
      const shown = document.querySelector(answer);
      if (!shown) throw new Error(`nothing on the page is ${answer}`);
      changes.observe(shown, {
        attributes: true,
        characterData: true,
        childList: true,
        subtree: true,
      });
    };
    addEventListener('pointerdown', start, once);
    addEventListener('click', lifted, once);
  });
  return { painted };
}

/** The middle one of some times, in milliseconds. */
export function median(times: readonly number[]): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
