import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser } from './harness.ts';
import { workTogether } from './together.ts';
import { pressTogether } from './together-in-hand.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser.close());

// `npm run two-tabs` does the same for longer.
test('two tabs changing the same garments at once lose nothing', async () => {
  const { confirmed, overlapping, lost, complaints } = await workTogether(
    browser,
    inject('address'),
    { changes: 30, seed: 1 },
  );
  expect(lost).toEqual([]);
  expect(confirmed).toBeGreaterThan(40);
  expect(overlapping).toBeGreaterThan(20);
  expect(complaints).toEqual([]);
});

test('two tabs with the same garment in hand, both pressing Made and changing its fields, lose nothing and make nothing twice', async () => {
  const { kept, lost, complaints } = await pressTogether(browser, inject('address'), {
    orders: 16,
    seed: 7,
  });
  expect(lost).toEqual([]);
  // How many are refused, as the other tab was first, hangs on the machine.
  expect(kept.make).toBeGreaterThan(2);
  expect(kept.settle + kept.type).toBeGreaterThan(5);
  expect(complaints).toEqual([]);
});
