import fc from 'fast-check';
import { expect, test } from 'vitest';
import { median, nth } from '../../../src/tape/numerics/order.ts';

const values = fc.array(
  fc.oneof(fc.integer({ min: -4, max: 4 }), fc.double(), fc.constant(Number.NaN)),
  { maxLength: 40 },
);

test('what stands at a place is what stands there once all are sorted', () => {
  fc.assert(
    fc.property(values, fc.nat(45), (all, place) => {
      const sorted = new Float64Array(all).sort();
      // Sorting tells −0 from 0.
      expect(nth(new Float64Array(all), place) + 0).toEqual((sorted[place] ?? Number.NaN) + 0);
      expect(median(all) + 0).toEqual((sorted[all.length >> 1] ?? Number.NaN) + 0);
    }),
  );
});
