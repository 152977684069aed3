import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser } from './harness.ts';
import { workTogether } from './together.ts';

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
