import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bound } from '../../src/controls/tape-text.ts';
import { exactLength, inches, mm } from '../../src/lengths/length.ts';
import { readLength } from '../../src/lengths/read-length.ts';
import { placesBetween } from '../lengths/arbitrary.ts';
import { benchOf } from './helpers.ts';

const unit = fc.constantFrom('cm' as const, 'mm' as const, 'in' as const);

test('the most there may be, typed as it is said, is no more, and hardly less', () => {
  fc.assert(
    fc.property(placesBetween(6, 5000), unit, (most, of) => {
      const bench = benchOf({ unit: of });
      const typed = (which: 'most' | 'least') => {
        const read = readLength(bound(most, which, bench), of);
        if (!read.ok) throw new Error(JSON.stringify(read.fault));
        return read.value;
      };
      const half = 0.5; // of a unit, 1/16000 mm: what reading a decimal inch rounds
      expect(typed('most')).toBeLessThanOrEqual(most + half);
      const part = of === 'in' ? inches(1 / 64) : mm(0.01); // the finest that is said
      expect(typed('most')).toBeGreaterThan(most - part - half);
      expect(typed('least')).toBeGreaterThanOrEqual(most - half);
      expect(typed('least')).toBeLessThan(most + part + half);
    }),
  );
});

test('a bound that can be said is said as it is', () => {
  expect(bound(mm(12.75), 'most', benchOf({ unit: 'cm' }))).toBe('1.275 cm');
  expect(bound(exactLength(mm(10) / 3), 'most', benchOf({ unit: 'mm' }))).toBe('3.33 mm');
  expect(bound(exactLength(mm(10) / 3), 'least', benchOf({ unit: 'mm' }))).toBe('3.34 mm');
  expect(bound(inches(5 / 8), 'least', benchOf({ unit: 'in' }))).toBe('5/8 in');
  expect(bound(exactLength(inches(1) / 3), 'most', benchOf({ unit: 'in' }))).toBe('21/64 in');
  expect(bound(exactLength(inches(1) / 3), 'least', benchOf({ unit: 'in' }))).toBe('11/32 in');
});
