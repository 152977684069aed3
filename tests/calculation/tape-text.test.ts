import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bound, byTape } from '../../src/calculation/tape-text.ts';
import { exactLength, inches, length, mm } from '../../src/lengths/length.ts';
import { readLength } from '../../src/lengths/read-length.ts';
import { benchOf } from '../controls/helpers.ts';
import { placesBetween } from '../lengths/arbitrary.ts';

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

// Worked by hand: 5/3 in is 1 5/8 in and 1/24 in (2.7/64) more; 5/16 in is 1/48 in (1.3/64) under 1/3 in.
test('on inches a length is a graduation and what is left over', () => {
  const third = (n: number) => exactLength(inches(n) / 3);
  const eighths = benchOf({ unit: 'in', inch: '1/8in' });
  expect(byTape(third(5), eighths)).toBe('1 5/8 in and 3/64 in over');
  expect(byTape(third(1), eighths)).toBe('3/8 in less 3/64 in');
  expect(byTape(third(1), benchOf({ unit: 'in', inch: '1/16in' }))).toBe(
    '5/16 in and 1/64 in over',
  );
  expect(byTape(inches(13 / 64), eighths)).toBe('13/64 in');
  expect(byTape(length(inches(2) + 20), eighths)).toBe('2 in');
  expect(byTape(inches(2.005), eighths)).toBe('2 in and a hair over');
  expect(byTape(inches(1.995), eighths)).toBe('2 in less a hair');
  expect(byTape(mm(0.5), eighths)).toBe('0.02 in');
  expect(byTape(exactLength(mm(10) / 3), benchOf({ unit: 'mm' }))).toBe('3.33 mm');
});

test('read as it is said, it is the length to half a sixty-fourth of an inch', () => {
  fc.assert(
    fc.property(fc.double({ min: 25_400, max: 4e7, noNaN: true }), (units) => {
      const said = byTape(exactLength(units), benchOf({ unit: 'in' }));
      const over = said.replace('a hair', '0 in');
      const sum = over.replace(/ and (.*) over$/, ' + $1').replace(' less ', ' − ');
      const read = readLength(sum, 'in');
      expect(read.ok && Math.abs(read.value - units)).toBeLessThanOrEqual(inches(1 / 128) + 1);
    }),
    { seed: 12 },
  );
});
