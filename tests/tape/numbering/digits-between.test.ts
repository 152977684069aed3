import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { digitsBetween, isNumbered } from '../../../src/tape/numbering/digits-between.ts';
import { placed } from '../made/made-rows.ts';

/** What is read of the digits 1 to 9 between numbers on every `10 · every`th graduation from `zero` on. */
const digits = (every: number, zero: number, count = 30, direction: 1 | -1 = 1) =>
  Array.from({ length: count }, (_, i) => i + 1)
    .filter((i) => i % 10 !== 0)
    .map((i) => placed(zero + direction * i * every, i % 10).read);

describe('digits on the lines between numbers', () => {
  test.each([1, 2])('one to every %i lines tell where the numbers stand', (every) => {
    fc.assert(
      fc.property(fc.integer({ min: -60, max: 60 }), (zero) => {
        const found = digitsBetween(digits(every, zero));
        expect(found?.every).toBe(every);
        expect(found && isNumbered(zero, found)).toBe(true);
        expect(found && isNumbered(zero + 20 * every, found)).toBe(true);
        expect(found && isNumbered(zero + every, found)).toBe(false);
      }),
    );
  });

  test.each([1, 2])('and so they do where the row is followed against its tape (%i)', (every) => {
    fc.assert(
      fc.property(fc.integer({ min: -60, max: 60 }), (zero) => {
        const found = digitsBetween(digits(every, zero, 30, -1));
        expect(found).toMatchObject({ every, direction: -1 });
        expect(found && isNumbered(zero - 20 * every, found)).toBe(true);
        expect(found && isNumbered(zero - 4 * every, found)).toBe(false);
      }),
    );
  });

  test('some misread change nothing; a stroke of the number’s own line read as a 1 neither', () => {
    const reads = digits(2, 4);
    const misread = [3, 11].map((at) => placed(4 + 2 * at, 6).read);
    const found = digitsBetween([...reads.slice(2), ...misread, placed(24, 1).read]);
    expect(found).toEqual({ every: 2, zeroTick: 4, direction: 1 });
  });

  test('say nothing when they are few, the same again and again, or anyhow', () => {
    expect(digitsBetween(digits(1, 0, 7))).toBeUndefined();
    expect(digitsBetween(Array.from({ length: 12 }, (_, i) => placed(10 * i, 5).read))).toBe(
      undefined,
    );
    const anyhow = [7, 3, 3, 8, 1, 5, 5, 2, 9, 4, 6, 1].map((value, i) => placed(i, value).read);
    expect(digitsBetween(anyhow)).toBeUndefined();
    expect(digitsBetween([])).toBeUndefined();
  });

  test('numbers of the scale itself are none', () => {
    const centimetres = Array.from({ length: 9 }, (_, i) => placed(10 * i, i + 1).read);
    expect(digitsBetween(centimetres)).toBeUndefined();
  });
});
