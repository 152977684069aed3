import { expect, test } from 'vitest';
import { exactLength, inches, length, mm, toInches } from '../../src/lengths/length.ts';
import { benchUnit } from '../../src/lengths/unit.ts';

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

// By definition (NBS Circular 572, addendum of 22 Jan 1960): 25.4 mm are an inch.
test('a length in inches is what was measured in them', () => {
  expect([inches(1.375), mm(25.4), mm(63.5)].map(toInches)).toEqual([1.375, 1, 2.5]);
});

test('a bench works in centimetres, inches or millimetres, and in nothing else', () => {
  expect(['cm', 'in', 'mm'].map(benchUnit)).toEqual(['cm', 'in', 'mm']);
  expect(['m', 'CM', '', 'toString', undefined].map(benchUnit)).toEqual(Array(5).fill(undefined));
});
