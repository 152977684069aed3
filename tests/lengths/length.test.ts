import { expect, test } from 'vitest';
import { exactLength, length } from '../../src/lengths/length.ts';

test('a length is a whole number of units, an exact one any that is finite: anything else is a mistake of ours', () => {
  for (const units of [0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53]) {
    expect(() => length(units)).toThrow(RangeError);
    expect(() => length(units)).toThrow(`${units}`);
  }
  for (const units of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
    expect(() => exactLength(units)).toThrow(RangeError);
  }
  expect(length(3)).toBe(3);
  expect(exactLength(0.5)).toBe(0.5);
});

test('nought has no sign', () => {
  expect(Object.is(length(-0), 0)).toBe(true);
  expect(Object.is(exactLength(-0), 0)).toBe(true);
});
