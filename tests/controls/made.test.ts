import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readMade, writeMade } from '../../src/controls/made.ts';
import { withUnits } from '../../src/controls/with-units.ts';
import { readLengths } from '../../src/lengths/read-lengths.ts';

test('what was measured is kept by mark, as typed', () => {
  const made = readMade(writeMade(new Map(), '3', '15.6'));
  expect([...made]).toEqual([['3', '15.6']]);
  expect(writeMade(made, '5', '30 1/8 in')).toBe('3=15.6; 5=30 1/8 in');
  expect(writeMade(made, '3', '')).toBe('');
});

test('nonsense in an address is passed over', () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      for (const [label, typed] of readMade(text)) {
        expect(label).not.toBe('');
        expect(typed).not.toBe('');
      }
    }),
  );
});

test('a bare number gets its unit written, so that it means the same on another bench', () => {
  expect(withUnits('18 1/4', 'in')).toBe('18 1/4 in');
  expect(withUnits('1.2; 8.3', 'cm')).toBe('1.2 cm; 8.3 cm');
  expect(withUnits('12 ÷ 7', 'cm')).toBe('12 cm ÷ 7');
  expect(withUnits('2 × 5/8', 'in')).toBe('2 × 5/8 in');
  expect(withUnits('5/8 in', 'cm')).toBe('5/8 in');
  expect(withUnits('12 -5/8', 'in')).toBe('12 -5/8');
  expect(withUnits('', 'cm')).toBe('');
});

const number = fc.constantFrom('12', '4.5', '5/8', '1 5/8', '3 in', '2 cm', '24 L', '2 × 3');

test('written out or not, it is the same length', () => {
  fc.assert(
    fc.property(fc.array(number, { minLength: 1, maxLength: 4 }), (terms) => {
      const typed = terms.join(' + ');
      const before = readLengths(typed, 'in');
      expect(readLengths(withUnits(typed, 'in'), 'mm')).toEqual(before);
    }),
  );
});
