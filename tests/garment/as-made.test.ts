import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withItsUnit } from '../../src/garment/as-made.ts';
import { readLength } from '../../src/lengths/read-length.ts';

test('law: a measure with its unit means the same on every bench', () => {
  const typed = fc.oneof(
    fc.integer({ min: 0, max: 9999 }).map((tenths) => String(tenths / 10)),
    fc.tuple(fc.nat(99), fc.integer({ min: 1, max: 15 })).map(([a, b]) => `${a} ${b}/16`),
  );
  fc.assert(
    fc.property(typed, fc.constantFrom('mm', 'cm', 'in'), (text, unit) => {
      const written = withItsUnit(text, unit);
      const meant = readLength(text, unit);
      for (const bench of ['mm', 'cm', 'in'] as const) {
        expect(readLength(written, bench)).toEqual(meant);
      }
    }),
  );
});

test('a sum whose parts have no unit is written out exactly', () => {
  expect(withItsUnit('15 + 0.6', 'cm')).toBe('156 mm');
  expect(withItsUnit(' 15.6 ', 'cm')).toBe('15.6 cm');
  expect(withItsUnit('5 in', 'cm')).toBe('5 in');
  expect(withItsUnit('what', 'cm')).toBe('what');
  expect(withItsUnit('15.6', undefined)).toBe('15.6');
});
