import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Field } from '../../../src/tape/picture/field.ts';
import { boxDown, doubled, fieldOf, logOf, sample } from '../../../src/tape/picture/field.ts';
import { BLACK_LEVEL } from '../../../src/tape/picture/limits.ts';
import { number } from '../made/even-numbers.ts';

const draw = (
  width: number,
  height: number,
  grey: (x: number, y: number) => number,
): Field<never> => ({
  width,
  height,
  values: Float32Array.from({ length: width * height }, (_, i) =>
    grey(i % width, Math.floor(i / width)),
  ),
});

/** Grey that a bilinear sampler gives exactly. */
const SADDLES = fc.tuple(...Array.from({ length: 4 }, () => fc.integer({ min: -8, max: 8 }))).map(
  ([a, b, c, d]) =>
    (x: number, y: number) =>
      100 + a! + b! * x + c! * y + (d! * x * y) / 8,
);

test('a grey picture keeps its levels', () => {
  const field = fieldOf({ width: 3, height: 1, pixels: Uint8Array.of(0, 128, 255) });
  expect([...field.values]).toEqual([0, 128, 255]);
});

describe('shrunk', () => {
  test('by means of boxes, and without the rest at the edges', () => {
    const field = draw(5, 3, (x, y) => x + 10 * y);
    const small = boxDown(field, 2);
    expect(small).toMatchObject({ width: 2, height: 1 });
    expect([...small.values]).toEqual([5.5, 7.5]);
  });

  test('by 1 it is the same field', () => {
    const field = draw(4, 4, (x) => x);
    expect(boxDown(field, 1)).toBe(field);
  });

  test('a picture of bytes is shrunk as its field is', () => {
    const pixels = fc.uint8Array({ minLength: 77, maxLength: 77 });
    fc.assert(
      fc.property(pixels, fc.integer({ min: 1, max: 4 }), (bytes, factor) => {
        const image = { width: 11, height: 7, pixels: bytes };
        expect(boxDown(image, factor)).toEqual(boxDown(fieldOf(image), factor));
      }),
    );
  });

  test('in two steps or in one is the same', () => {
    const random = fc.array(fc.integer({ min: 0, max: 255 }), { minLength: 144, maxLength: 144 });
    fc.assert(
      fc.property(random, (greys) => {
        const field = draw(12, 12, (x, y) => greys[12 * y + x]!);
        const once = boxDown(field, 6).values;
        boxDown(boxDown(field, 3), 2).values.forEach((v, i) => {
          expect(v).toBeCloseTo(once[i]!, 3);
        });
      }),
    );
  });
});

describe('sampled', () => {
  const field = draw(6, 5, (x, y) => 10 * x + y);

  test.each([
    [0, 0, 0],
    [2, 3, 23],
    [1.25, 0.5, 13],
  ])('at %d, %d is %d', (x, y, value) => {
    expect(sample(field, x, y)).toBeCloseTo(value, 5);
  });

  test.each([
    [-0.01, 1],
    [1, -0.01],
    [5, 1],
    [1, 4],
    [Number.NaN, 1],
  ])('outside, at %d, %d, it is not a number', (x, y) => {
    expect(sample(field, x, y)).toBeNaN();
  });

  test('between samples it goes straight', () => {
    const place = number(0, 8.99);
    fc.assert(
      fc.property(SADDLES, place, place, (grey, x, y) => {
        const [ix, iy] = [Math.floor(x), Math.floor(y)];
        // Along either axis a saddle is straight, so within one square it is the truth.
        const flat = draw(10, 10, grey);
        expect(sample(flat, x, y)).toBeCloseTo(grey(x, y), 2);
        expect(sample(flat, ix, iy)).toBeCloseTo(grey(ix, iy), 3);
      }),
    );
  });
});

test('doubled, then shrunk again, a slope is itself but at the border', () => {
  fc.assert(
    fc.property(SADDLES, (grey) => {
      const field = draw(7, 6, grey);
      const big = doubled(field);
      expect(big).toMatchObject({ width: 14, height: 12 });
      const again = boxDown(big, 2);
      for (let y = 1; y < 5; y++) {
        for (let x = 1; x < 6; x++) expect(again.values[7 * y + x]).toBeCloseTo(grey(x, y), 2);
      }
    }),
  );
});

describe('the logarithm', () => {
  test('turns half the light into the same step everywhere, black stays finite', () => {
    const log = logOf(draw(4, 1, (x) => [0, 10, 90, 190][x]!));
    const [black, grey, light, twice] = log.values;
    expect(black).toBeCloseTo(Math.log(10), 5);
    expect(grey! - black!).toBeCloseTo(Math.LN2, 5);
    expect(twice! - light!).toBeCloseTo(Math.LN2, 5);
  });

  test('is that of each grey itself, however near they lie', () => {
    const greys = fc.array(fc.float({ min: 0, max: 255, noNaN: true }), { maxLength: 30 });
    const near = greys.map((all) => all.flatMap((grey) => [grey, grey + 1e-4, grey]));
    fc.assert(
      fc.property(near, (all) => {
        const field = draw(all.length, 1, (x) => all[x]!);
        const plain = field.values.map((grey) => Math.log(grey + BLACK_LEVEL));
        expect(logOf(field).values).toEqual(plain);
      }),
    );
  });

  test('is made once for each field', () => {
    const field = draw(2, 2, (x) => x);
    expect(logOf(field)).toBe(logOf(field));
    expect(logOf(draw(2, 2, (x) => x))).not.toBe(logOf(field));
  });
});
