import { expect, test } from 'vitest';
import { showsMore } from '../../../src/tape/reader/look-closer.ts';

/** A window with scales of so many numbers, those below 0 in doubt. */
const window = (...counts: number[]) => ({
  scales: counts.map((count) => ({
    sure: count > 0,
    numbers: Array.from({ length: Math.abs(count) }, (_, i) => ({ value: i, x: i, y: 0 })),
  })),
});

test('of windows that show a scale for sure that with more numbers is taken', () => {
  expect(showsMore(window(8), window(5))).toBe(true);
  expect(showsMore(window(5), window(8))).toBe(false);
  expect(showsMore(window(5), window(5))).toBe(false);
});

test('a sure scale goes before any number that is in doubt, beside it too', () => {
  expect(showsMore(window(5), window(-12))).toBe(true);
  expect(showsMore(window(-12), window(5))).toBe(false);
  expect(showsMore(window(6), window(5, -12))).toBe(true);
  expect(showsMore(window(-6), window(-5))).toBe(true);
});
