import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { progression } from '../../../src/tape/numbering/progression.ts';
import type { NumberRead, NumberRow } from '../../../src/tape/numbers/number-row.ts';
import { readAt } from '../made/read-numbers.ts';

function rowOf(reads: readonly NumberRead[], more: readonly NumberRead[] = []): NumberRow {
  const cells = [...reads, ...more].map(({ cell }) => cell);
  return { cells, height: 20, middle: 0, turned: false, across: 3 };
}

function found(reads: readonly NumberRead[], more: readonly NumberRead[] = []) {
  return progression(reads, rowOf(reads, more));
}

describe('numbers along a row', () => {
  test('centimetres in millimetres', () => {
    const reads = [5, 6, 7, 8].map((value) => readAt(10 * value + 0.3, value));
    const rise = found(reads)!;
    expect(rise).toMatchObject({ perTick: 0.1, step: 1, distinct: 4, total: 4, second: 0 });
    expect(rise.subdivisions).toBeCloseTo(10, 9);
    expect(rise.offset).toBeCloseTo(-0.03, 9);
    expect(rise.reads).toBe(reads);
  });

  test('inches in sixteenths, falling to the right', () => {
    const rise = found([9, 8, 7, 6].map((value) => readAt(-16 * value, value)))!;
    expect(rise).toMatchObject({ perTick: -1 / 16, step: 1, subdivisions: 16, distinct: 4 });
  });

  test('tens in millimetres', () => {
    const rise = found([30, 40, 50].map((value) => readAt(value + 0.2, value)))!;
    expect(rise).toMatchObject({ perTick: 1, step: 10, subdivisions: 10, distinct: 3 });
  });

  test('two of its numbers that fit another rise as well are no second one', () => {
    // 9.3 graduations for one and 20.4 for two: a tape seen at a slant.
    const reads = [readAt(-24.4, 139), readAt(-15.1, 140), readAt(5.3, 142)];
    expect(found(reads)).toMatchObject({ perTick: 0.1, distinct: 3, second: 0 });
    // One of them and a stray number are, of so few.
    expect(found([...reads, readAt(25.3, 146)])?.second).toBeGreaterThan(0);
  });

  test('nor are one of its numbers and one that lost a digit, or, of four, a stray one', () => {
    const tens = [10, 11, 12].map((value) => readAt(8 * value, value));
    expect(found([...tens, readAt(8 * 13, 1)])).toMatchObject({ distinct: 3, second: 0 });
    const four = [51, 53, 54, 55].map((value) => readAt(-10 * value, value));
    const stray = readAt(-10 * 52, 46);
    expect(found([...four, stray])).toMatchObject({ distinct: 4, second: 0 });
    const lost = readAt(-10 * 52, 2);
    expect(found([...four, lost, readAt(-10 * 54 - 2, 1)])).toMatchObject({
      partial: 1,
      second: 0,
    });
    const others = [readAt(-10 * 57.4, 71), readAt(-10 * 58.4, 72)];
    expect(found([...four, ...others])?.second).toBe(2);
  });

  test('words between the numbers read make the step finer', () => {
    const reads = [20, 40, 60, 80].map((value) => readAt(value, value));
    expect(found(reads)?.step).toBe(20);
    const unread = [10, 30, 50, 70].map((value) => readAt(value, 0));
    expect(found(reads, unread)?.step).toBe(10);
  });

  test('a lost digit and a wrong number', () => {
    const values = [101, 102, 3, 104, 77, 106];
    const reads = values.map((value, i) => readAt(10 * i, value));
    expect(found(reads)).toMatchObject({ distinct: 4, partial: 1, total: 6 });
  });

  test('another rise that numbers fit is told', () => {
    const reads = [1, 2, 3, 4, 5].map((value) => readAt(10 * value, value));
    const others = [26, 27, 28].map((value, i) => readAt(10 * i + 12, value));
    expect(found([...reads, ...others])).toMatchObject({ distinct: 5, second: 3 });
  });

  test('places that scatter by most of a step are no progression', () => {
    const places = [3, 4.9, 5.1, 6.9];
    const reads = places.map((place, i) => readAt(place, 3 + i));
    expect(found(reads)?.distinct).toBeLessThan(4);
  });

  test('none in too few, in all alike, or without an order', () => {
    expect(found([])).toBeNull();
    expect(found([readAt(0, 5)])).toBeNull();
    expect(found([readAt(0, 5), readAt(10, 5), readAt(20, 5)])).toBeNull();
    expect(found([readAt(0, 900), readAt(10, 3), readAt(20, 77)])).toBeNull();
  });
});

test('found again however it lies, with noise in the places and a wrong number', () => {
  const scales = fc.record({
    subdivisions: fc.constantFrom(4, 5, 8, 10, 16, 20),
    first: fc.integer({ min: 1, max: 120 }),
    count: fc.integer({ min: 5, max: 12 }),
    direction: fc.constantFrom(1, -1),
    start: fc.integer({ min: -200, max: 200 }),
    noise: fc.array(fc.double({ min: -0.02, max: 0.02, noNaN: true }), {
      minLength: 12,
      maxLength: 12,
    }),
    wrong: fc.integer({ min: 2000, max: 9999 }),
  });
  fc.assert(
    fc.property(scales, ({ subdivisions, first, count, direction, start, noise, wrong }) => {
      const reads = Array.from({ length: count }, (_, i) =>
        readAt(start + direction * subdivisions * (i + noise[i]!), first + i),
      );
      const rise = found([readAt(start - 3, wrong), ...reads])!;
      expect(rise.perTick).toBeCloseTo(direction / subdivisions, 12);
      expect(rise).toMatchObject({ step: 1, distinct: count });
      reads.forEach(({ cell, value }) => {
        expect(Math.abs(rise.perTick * cell.middle + rise.offset - value)).toBeLessThan(0.1);
      });
    }),
  );
});
