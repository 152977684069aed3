import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, SMALL_PHONE, takePhone } from './harness.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

/** What a phone can be without, or refuse, and how it is made so. Each runs in the page. */
const LACKING: [string, () => void][] = [
  [
    'a voice',
    () => {
      Object.defineProperty(window, 'speechSynthesis', { value: undefined });
      Object.defineProperty(window, 'SpeechSynthesisUtterance', { value: undefined });
    },
  ],
  [
    'a voice that takes it',
    () => {
      Object.defineProperty(SpeechSynthesis.prototype, 'speak', {
        value: () => {
          throw new DOMException('no', 'NotAllowedError');
        },
      });
    },
  ],
  ['a lock on its screen', () => Reflect.deleteProperty(Navigator.prototype, 'wakeLock')],
  [
    'leave to keep its screen on',
    () => {
      Object.defineProperty(WakeLock.prototype, 'request', {
        value: () => Promise.reject(new DOMException('low battery', 'NotAllowedError')),
      });
    },
  ],
  ['a motor', () => Reflect.deleteProperty(Navigator.prototype, 'vibrate')],
];

test.each(LACKING)(
  'without %s, marks are followed and holes counted as ever',
  async (_, breakIt) => {
    const { page, complaints, close } = await takePhone(browser, inject('address'), {
      size: SMALL_PHONE,
      bench: { voice: 'on' },
      serviceWorkers: 'block',
    });
    const thrown: string[] = [];
    page.on('pageerror', (error) => thrown.push(error.message));
    await page.addInitScript(breakIt);
    await page.goto(`${inject('address')}#/closures/follow`);
    await page.getByText('Hook 1 of 7').waitFor();
    await press(page, /Marked. Next/);
    await page.getByText('Hook 2 of 7').waitFor();
    await press(page, 'Speak');
    await awayAndBack(page);
    await press(page, /Marked. Next/);
    await page.getByText('Hook 3 of 7').waitFor();

    await page.goto(`${inject('address')}#/centre/count?count=8`);
    await press(page, /One more hole/);
    await expect.poll(() => page.locator('.big').textContent()).toBe('9 holes');
    await press(page, 'Speak');
    await press(page, 'Close');
    await page.locator('.answer .number').waitFor();
    expect(thrown).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  },
);

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).tap();

/** The phone is put down and taken up again: the screen's lock is asked for anew. */
const awayAndBack = (page: Page) =>
  page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
