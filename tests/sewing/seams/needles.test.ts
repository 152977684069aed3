import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { needleFromMetric, needleFromUs } from '../../../src/sewing/seams/needles.ts';
import { answer, problems } from '../closures/closures-cases.ts';

describe('published', () => {
  // apparelscience.com, needle number system (a trade page), and from US 21 supplydivision.co.uk,
  // sewing guide (a trade page).
  test.each([
    [9, 65],
    [10, 70],
    [11, 75],
    [12, 80],
    [14, 90],
    [16, 100],
    [18, 110],
    [19, 120],
    [21, 130],
    [22, 140],
    [23, 160],
  ])('US %d is metric %d', (us, metric) => {
    expect(answer(needleFromUs(us)).needle).toEqual({ us, metric });
    expect(answer(needleFromMetric(metric)).needle).toEqual({ us, metric });
    expect(answer(needleFromUs(us)).between).toBeUndefined();
  });

  // apparelscience.com, worked: (12 − 8) × 5 + 60 = 80. The rule ends at US 19: it would say 115.
  test('the rule of fives holds below US 19', () => {
    expect(answer(needleFromUs(12)).byRule).toBe(80);
    expect(answer(needleFromMetric(80)).byRule).toBe(12);
    expect(answer(needleFromUs(19)).byRule).toBeUndefined();
    expect(answer(needleFromMetric(115)).byRule).toBeUndefined();
    for (const us of [9, 10, 11, 12, 14, 16, 18]) {
      const { needle, byRule } = answer(needleFromUs(us));
      expect(byRule).toBe(needle.metric);
    }
  });

  // supplydivision.co.uk prints US 13 beside metric 80, against the rule's 12.
  test('12 or 13 is disputed at metric 80', () => {
    expect(answer(needleFromMetric(80))).toMatchObject({ needle: { us: 12 }, disputed: true });
    expect(answer(needleFromUs(13)).disputed).toBe(true);
    expect(answer(needleFromMetric(90)).disputed).toBe(false);
  });
});

test('between two sizes, the nearer; midway the finer, and both are said', () => {
  const between = answer(needleFromMetric(88));
  expect(between.needle.us).toBe(14);
  expect(between.between?.map(({ us }) => us)).toEqual([12, 14]);
  expect(answer(needleFromMetric(85)).needle.us).toBe(12);
  expect(answer(needleFromUs(20))).toMatchObject({
    needle: { us: 19 },
    between: [{ metric: 120 }, { metric: 130 }],
  });
});

test('a thicker needle never has a smaller number', () => {
  const sizes = fc.double({ min: 65, max: 160, noNaN: true });
  fc.assert(
    fc.property(sizes, sizes, (a, b) => {
      const us = [a, b]
        .sort((x, y) => x - y)
        .map((size) => answer(needleFromMetric(size)).needle.us);
      expect(us[0]!).toBeLessThanOrEqual(us[1]!);
    }),
  );
});

test('sizes nobody sells are problems', () => {
  for (const size of [0, -5, 64, 161, Number.NaN, Infinity]) {
    expect(problems(needleFromMetric(size))).toEqual([
      { kind: 'out-of-range', field: 'metric', given: size, least: 65, most: 160 },
    ]);
  }
  expect(problems(needleFromUs(8))[0]).toMatchObject({ field: 'us', least: 9, most: 23 });
});
