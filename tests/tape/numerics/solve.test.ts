import fc from 'fast-check';
import { expect, test } from 'vitest';
import { median } from '../../../src/tape/numerics/order.ts';
import { leastSquares } from '../../../src/tape/numerics/solve.ts';
import { number } from '../made/even-numbers.ts';

const COEFFICIENT = number(-5, 5);

/** y = a + b·x + c·x² at x = −3 to 3. */
const rows = (truth: readonly number[], weight: (i: number) => number) =>
  Array.from({ length: 7 }, (_, i) => {
    const x = i - 3;
    const [a = 0, b = 0, c = 0] = truth;
    return [1, x, x * x, a + b * x + c * x * x, weight(i)];
  });

test('equations that agree give their solution, whatever the weights', () => {
  fc.assert(
    fc.property(
      fc.tuple(COEFFICIENT, COEFFICIENT, COEFFICIENT),
      fc.array(number(0.1, 10), { minLength: 7, maxLength: 7 }),
      (truth, weights) => {
        const found = leastSquares(
          rows(truth, (i) => weights[i]!),
          3,
        );
        truth.forEach((value, i) => {
          expect(found?.[i]).toBeCloseTo(value, 6);
        });
      },
    ),
  );
});

// Of values of one unknown the least squares are the weighted mean (from memory: Gauss 1809).
test('one unknown is the weighted mean', () => {
  expect(
    leastSquares(
      [
        [1, 10, 1],
        [1, 16, 2],
      ],
      1,
    )?.[0],
  ).toBeCloseTo(14, 12);
});

test('what is left is square to every coefficient', () => {
  const equation = fc.tuple(COEFFICIENT, COEFFICIENT);
  fc.assert(
    fc.property(fc.array(equation, { minLength: 4, maxLength: 12 }), (places) => {
      const all = places.map(([x, y]) => [1, x, y, 1]);
      const fit = leastSquares(all, 2);
      fc.pre(fit !== null && [...fit].every((each) => Math.abs(each) < 1e3));
      const left = places.map(([x, y]) => y - fit![0]! - fit![1]! * x);
      expect(left.reduce((sum, r) => sum + r, 0)).toBeCloseTo(0, 5);
      expect(left.reduce((sum, r, i) => sum + r * places[i]![0], 0)).toBeCloseTo(0, 5);
    }),
  );
});

test('unknowns of very different size are no obstacle', () => {
  const places = [1, 2, 3, 4];
  const found = leastSquares(
    places.map((x) => [1e-7 * x, 1, 5 + 2 * x, 1]),
    2,
  );
  expect(found?.[0]).toBeCloseTo(2e7, -2);
  expect(found?.[1]).toBeCloseTo(5, 4);
});

test.each([
  ['nothing', []],
  ['one equation for two unknowns', [[1, 2, 3, 1]]],
  [
    'the same equation twice',
    [
      [1, 2, 3, 1],
      [2, 4, 6, 1],
    ],
  ],
  [
    'equations of no weight',
    [
      [1, 2, 3, 0],
      [1, 3, 5, 0],
    ],
  ],
])('%s settles nothing', (_, equations) => {
  expect(leastSquares(equations, 2)).toBeNull();
});

test('equations that are not numbers settle nothing', () => {
  expect(
    leastSquares(
      [
        [Number.NaN, 1, 1, 1],
        [1, 2, 1, 1],
      ],
      2,
    ),
  ).toBeNull();
});

test('median: the middle, the upper of two, none of none', () => {
  expect(median([3, 1, 2])).toBe(2);
  expect(median(Float32Array.of(4, 1, 3, 2))).toBe(3);
  expect(median([10, 9, 1])).toBe(9);
  expect(median([])).toBeNaN();
});

test('median: half the values at most lie to either side', () => {
  fc.assert(
    fc.property(fc.array(fc.integer(), { minLength: 1 }), (values) => {
      const middle = median(values);
      expect(values).toContain(middle);
      expect(values.filter((v) => v < middle).length).toBeLessThanOrEqual(values.length / 2);
      expect(values.filter((v) => v > middle).length).toBeLessThanOrEqual(values.length / 2);
    }),
  );
});
