import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { costOf, upToUnit, washedWidth, withSpare } from '../../../src/garment/materials/to-buy.ts';
import { LONGEST } from '../../../src/lengths/length.ts';
import { UNITS_PER } from '../../../src/lengths/unit.ts';

const yd = UNITS_PER.yd;
const inYards = (amount: number) => amount / yd;

describe('shrinkage', () => {
  // 7.16, derived: what is bought is L/(1 − s), not L(1 + s).
  test.each([
    ['7.16 3 yd at 5 %', 3, 500, 3.158],
    ['7.16 4 yd at 10 %', 4, 1000, 4.444],
  ])('%s', (_, length, shrinksAlong, buy) => {
    expect(inYards(withSpare(length * yd, { shrinksAlong }))).toBeCloseTo(buy, 3);
  });

  // 7.15: 36 × 42 in comes to 35 × 41 (a quilter's worked example): 2.78 % and 2.38 %.
  test('7.15 what 36 × 42 in loses when it becomes 35 × 41', () => {
    expect(washedWidth(36, { shrinksAcross: 278 })).toBeCloseTo(35, 2);
    expect(washedWidth(42, { shrinksAcross: 238 })).toBeCloseTo(41, 2);
    expect(withSpare(35, { shrinksAlong: 278 })).toBeCloseTo(36, 2);
    expect(withSpare(41, { shrinksAlong: 238 })).toBeCloseTo(42, 2);
  });

  // 7.17: on a home test piece of 20 cm a reading of 1 mm is 0.5 %.
  test('7.17 a millimetre on 20 cm is half a per cent', () => {
    expect(withSpare(199, { shrinksAlong: 50 })).toBeCloseTo(200, 9);
  });

  test('what is bought is enough once it is washed, with what is spare', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e8 }),
        fc.integer({ min: 0, max: 5000 }),
        fc.integer({ min: 0, max: 10_000 }),
        fc.integer({ min: 1, max: 1e6 }),
        (net, shrinksAlong, spare, unit) => {
          const buy = upToUnit(withSpare(net, { shrinksAlong, spare }), unit) ?? 0;
          expect(buy % unit).toBe(0);
          expect(buy * (1 - shrinksAlong / 10_000)).toBeGreaterThan(net * (1 + spare / 1e4) - 1e-4);
          const less = (buy - unit) * (1 - shrinksAlong / 10_000);
          expect(less).toBeLessThan(net * (1 + spare / 1e4) + 1e-4);
        },
      ),
      { seed: 1553, numRuns: 1000 },
    );
  });
});

describe('up to what the shop sells', () => {
  // 7.9: a pattern envelope rounds yards to the nearest 10 cm, and is short where that is down.
  test.each([
    ['7.9 1 1/4 yd', 1.25, 1.1, 1.2],
    ['7.9 1 3/8 yd', 1.375, 1.3, 1.3],
    ['7.9 1 1/2 yd', 1.5, 1.4, 1.4],
    ['7.9 1 3/4 yd', 1.75, 1.6, 1.7],
    ['7.9 1 7/8 yd', 1.875, 1.7, 1.8],
    ['7.9 2 1/4 yd', 2.25, 2.1, 2.1],
    ['7.9 2 3/8 yd', 2.375, 2.2, 2.2],
    ['7.9 2 1/2 yd', 2.5, 2.3, 2.3],
  ])('%s by 10 cm: never less than it is', (_, yards, printed, bought) => {
    const buy = (upToUnit(yards * yd, UNITS_PER.cm * 10) ?? 0) / UNITS_PER.m;
    expect(buy).toBeCloseTo(bought, 9);
    expect(buy).toBeGreaterThanOrEqual(printed);
    expect(buy * UNITS_PER.m).toBeGreaterThanOrEqual(yards * yd);
  });

  // 7.7, worked lengths of skirts: 98/36 = 2.72 → 2 3/4; 147/36 = 4.08, which the source takes
  // down to 4: too little, so here it goes up.
  test.each([
    ['7.7 98 in', 98, 2.75],
    ['7.7 147 in, where the source goes down', 147, 4.25],
  ])('%s by a quarter of a yard', (_, inches, yards) => {
    expect(inYards(upToUnit(inches * UNITS_PER.in, yd / 4) ?? 0)).toBe(yards);
  });

  test('things go up to whole ones, and to whole packs', () => {
    expect(upToUnit(withSpare(7, { spare: 1000 }))).toBe(8);
    expect(upToUnit(7, 10)).toBe(10);
    expect(upToUnit(20, 10)).toBe(20);
    expect(upToUnit(20.000_000_1, 10)).toBe(20);
  });

  test('more than can be reckoned is no number', () => {
    expect(upToUnit(Number.MAX_VALUE)).toBeUndefined();
    expect(upToUnit(Number.NaN)).toBeUndefined();
    // What is sold may be a whole unit more.
    expect(upToUnit(2 * LONGEST - 10, 10)).toBe(2 * LONGEST - 10);
    expect(upToUnit(2 * LONGEST - 9, 10)).toBeUndefined();
  });
});

describe('money', () => {
  test('is whole hundredths, and never less than it costs', () => {
    const metre = UNITS_PER.m;
    expect(costOf(1.9 * metre, { cents: 1250, per: metre })).toBe(2375);
    expect(costOf(1, { cents: 1, per: 3 })).toBe(1);
    expect(costOf(0, { cents: 999, per: 1 })).toBe(0);
  });

  test('is as in fractions of whole numbers', () => {
    const large = fc.integer({ min: 0, max: 8e9 });
    fc.assert(
      fc.property(large, fc.integer({ min: 0, max: 1e9 }), large, (amount, cents, less) => {
        const per = less + 1;
        const cost = BigInt(costOf(amount, { cents, per }));
        const exact = BigInt(amount) * BigInt(cents);
        // Beyond 2^53 a sum of money is no one's: there the nearest will do.
        if (cost > 9_007_199_254_740_991n) return;
        expect(cost * BigInt(per) >= exact && (cost - 1n) * BigInt(per) < exact).toBe(true);
      }),
      { seed: 1554, numRuns: 500 },
    );
  });
});
