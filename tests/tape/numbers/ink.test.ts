import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inkOf } from '../../../src/tape/numbers/ink.ts';
import type { Field } from '../../../src/tape/picture/field.ts';

test('a stroke across is ink, a stripe along is not', () => {
  const [width, height] = [60, 20];
  const values = Float32Array.from({ length: width * height }, (_, i) => {
    const [x, y] = [i % width, Math.floor(i / width)];
    return x === 30 ? 3 : y > 12 ? 4 : 5;
  });
  const { ink, ground } = inkOf({ width, height, values }, 20);
  // The two rows at each side of an edge along the tape see both grounds.
  const clear = [...ink.keys()].filter((i) => Math.abs(Math.floor(i / width) - 12.5) > 2);
  expect(clear.every((i) => Boolean(ink[i]) === (i % width === 30))).toBe(true);
  expect(ground[5 * width + 5]).toBeCloseTo(5, 1);
});

/** The same by its definition: every neighbourhood summed anew. */
function plainly({ width, height, values }: Field<never>, reach: number) {
  return Array.from(values, (value, at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    const near: number[] = [];
    for (let row = Math.max(0, y - 2); row <= Math.min(height - 1, y + 2); row++) {
      for (
        let column = Math.max(0, x - reach);
        column <= Math.min(width - 1, x + reach);
        column++
      ) {
        const one = values[row * width + column]!;
        if (!Number.isNaN(one)) near.push(one);
      }
    }
    if (near.length < 10) return { ink: 0, ground: 0 };
    const mean = near.reduce((sum, one) => sum + one, 0) / near.length;
    const variance = near.reduce((sum, one) => sum + (one - mean) ** 2, 0) / near.length;
    const spread = Math.sqrt(variance);
    const ink = value < mean - Math.max(0.1, 0.6 * spread) ? 1 : 0;
    return { ink, ground: mean + 0.5 * spread };
  });
}

test('the same as by definition, with holes in the picture', () => {
  const grey = fc.oneof(
    fc.integer({ min: 0, max: 40 }).map((n) => n / 8),
    fc.constant(Number.NaN),
  );
  const picture = fc.integer({ min: 1, max: 12 }).chain((width) =>
    fc.array(grey, { minLength: width, maxLength: 120 }).map((all): Field<never> => {
      const height = Math.floor(all.length / width);
      return { width, height, values: Float32Array.from(all.slice(0, width * height)) };
    }),
  );
  fc.assert(
    fc.property(picture, fc.integer({ min: 1, max: 9 }), (field, reach) => {
      const { ink, ground } = inkOf(field, reach);
      plainly(field, reach).forEach((expected, at) => {
        expect(ground[at]).toBeCloseTo(expected.ground, 4);
        // On the very limit rounding decides.
        const limit = expected.ground;
        if (Math.abs(field.values[at]! - limit) > 1e-6) expect(ink[at]).toBe(expected.ink);
      });
    }),
  );
});
