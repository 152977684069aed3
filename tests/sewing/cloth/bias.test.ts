/**
 * Rows 17.1 to 17.5, 7.11, 7.12 and 7.14 of the check values. NIMI: National Instructional Media
 * Institute (Government of India), CITS Dress Making, Trade Practical, vol. 2, 2024, page 220.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  exactLength,
  inches,
  length,
  mm,
  toInches,
  toMm,
  ZERO,
} from '../../../src/lengths/length.ts';
import {
  alongSelvedge,
  areaFor,
  areaGives,
  type BiasInput,
  biasFor,
  biasFrom,
  joinTakes,
} from '../../../src/sewing/cloth/bias.ts';
import {
  areaForRound,
  areaGivesRound,
  roundFrom,
  singleFor,
  singleFrom,
  squareFor,
} from '../../../src/sewing/cloth/bias-round.ts';
import { THIRD_MORE } from '../../../src/sewing/sources/bias.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
const toCm = (x: number) => toMm(exactLength(x)) / 10;

const strips: BiasInput = { width: cm(2.5), cloth: cm(86), shortest: cm(10), seam: ZERO };

describe('published', () => {
  // L. I. Baldt, Clothing for Women, 1916, chapter 22: width → inches and eighths along the selvedge.
  test('17.1: of 22 widths 19 agree to the eighth; 2, 6 1/2 and 8 are printed one eighth low', () => {
    const eighths = [6, 11, 17, 22, 28, 34, 40, 45, 51, 57, 62, 68, 73, 79, 85, 90, 96, 102, 107];
    const printed = [...eighths, 113, 119, 124];
    const off = printed.flatMap((eighth, i) => {
      const width = (i + 1) / 2;
      const ours = Math.round(8 * toInches(alongSelvedge(inches(width))));
      return ours === eighth ? [] : [[width, ours - eighth]];
    });
    expect(off).toEqual([
      [2, 1],
      [6.5, 1],
      [8, 1],
    ]);
  });

  // A Sewing Course for Teachers: one third more.
  test('17.2: the quick rule is 5.7 % too narrow', () => {
    expect((100 * (1 - THIRD_MORE.value / Math.SQRT2)).toFixed(1)).toBe('5.7');
  });

  test('17.3 (NIMI): 5 m of 2.5 cm from 86, shortest 10: 15.12 cm by area; in whole strips 15.7, with joins of 6 mm 16.8', () => {
    expect(toCm(areaFor(strips, cm(500))).toFixed(2)).toBe('15.12');
    expect(toCm(solved(biasFor(strips, cm(500)))).toFixed(1)).toBe('15.7');
    const joined = { ...strips, seam: mm(6) };
    expect(Math.ceil(10 * toCm(solved(biasFor(joined, cm(500)))))).toBe(168);
  });

  test('17.4 (NIMI): 96 × 20 cm in strips of 2, shortest 10: 934.8 by its 10 ÷ 1.4, 935.0 by √2', () => {
    const inverse = { ...strips, width: cm(2), cloth: cm(96) };
    expect(toCm(areaGives(inverse, cm(20))).toFixed(1)).toBe('935.0');
    expect(((96 * 20 - 7.1 ** 2) / 2).toFixed(1)).toBe('934.8');
    expect(toCm(solved(biasFrom(inverse, cm(20))).long)).toBeLessThan(934.8);
  });

  test('17.5 (NIMI): one strip of 3 cm from a square of 65: printed 88 with 1.4, 88.9 with √2', () => {
    expect(toCm(solved(singleFrom(cm(3), cm(65)))).toFixed(1)).toBe('88.9');
    expect(((65 - 3 / 1.4) * 1.4).toFixed(0)).toBe('88');
  });

  test('17.7: a join takes 2√2 seams', () => {
    expect(toMm(joinTakes(mm(6))).toFixed(2)).toBe('16.97');
  });

  // Quilting pages, sewaquilt.com and mydecozo.co.uk: side² ÷ width, seams left out.
  test('7.11: by area 12 in gives 72, 20 gives 200, 36 gives 648; whole rounds never more', () => {
    const area = (side: number) => areaGivesRound(inches(2), inches(side), inches(side));
    expect([12, 20, 36].map((side) => toInches(area(side)))).toEqual([72, 200, 648]);
    const by = { width: inches(2), seam: ZERO };
    const long = [12, 20, 36].map((side) =>
      toInches(solved(roundFrom(by, inches(side), inches(side))).long),
    );
    expect(long.map((one) => one.toFixed(1))).toEqual(['67.9', '198.0', '610.9']);
    for (const [i, area] of [72, 200, 648].entries()) expect(long[i]).toBeLessThan(area);
  });

  // A quilting page, quiltersquestiontime.com: 250 × 2 = 500, its root 22.36, so 23.
  test('7.12: 250 in of 2: a square of 22.63, so 23; 22.36 itself gives 221', () => {
    expect(toInches(areaForRound(inches(2), inches(250))).toFixed(2)).toBe('22.36');
    const by = { width: inches(2), seam: ZERO };
    expect(toInches(solved(squareFor(by, inches(250)))).toFixed(2)).toBe('22.63');
    const root = solved(roundFrom(by, inches(22.36), inches(22.36)));
    expect([root.rounds, toInches(root.long).toFixed(0)]).toEqual([7, '221']);
    expect(solved(roundFrom(by, inches(23), inches(23))).joins).toBe(15);
  });

  // A teaching page: 22 in square, 1/4 in lost, strips of 3: 157.7 by area.
  test('7.14: with 1/8 in of each edge in the seams, by area 157.7; in whole rounds 153.8', () => {
    expect((21.75 ** 2 / 3).toFixed(1)).toBe('157.7');
    const round = solved(
      roundFrom({ width: inches(3), seam: inches(1 / 8) }, inches(22), inches(22)),
    );
    expect([round.rounds, toInches(round.long).toFixed(1)]).toEqual([5, '153.8']);
  });
});

describe('laws', () => {
  const any = fc
    .record({
      width: fc.integer({ min: 80_000, max: 800_000 }).map(length),
      cloth: fc.integer({ min: 2_400_000, max: 12_000_000 }).map(length),
      more: fc.integer({ min: 0, max: 1_200_000 }),
      seam: fc.integer({ min: 0, max: 100_000 }).map(length),
    })
    .map(({ more, ...rest }): BiasInput => {
      return { ...rest, shortest: length(Math.ceil(joinTakes(rest.seam)) + more) };
    });
  const piece = fc.integer({ min: 2_400_000, max: 16_000_000 }).map(length);

  test('strips: never more than the area, more from a longer piece, and there and back', () => {
    fc.assert(
      fc.property(any, piece, fc.integer({ min: 1, max: 800_000 }), (input, long, more) => {
        const found = solved(biasFrom(input, long));
        expect(found.long).toBeLessThanOrEqual(areaGives(input, long) + 8);
        expect(found.joins).toBe(found.strips - 1);
        const bare = solved(biasFrom({ ...input, seam: ZERO }, long)).long;
        expect(bare - found.long).toBeCloseTo(found.joins * joinTakes(input.seam), 0);
        const longer = solved(biasFrom(input, length(long + more)));
        expect(longer.long).toBeGreaterThanOrEqual(found.long - 8);
        const need = length(Math.max(1, Math.floor(found.long)));
        const back = solved(biasFor(input, need));
        expect(back).toBeLessThanOrEqual(long);
        expect(solved(biasFrom(input, back)).long).toBeGreaterThanOrEqual(need - 2);
        expect(back).toBeGreaterThanOrEqual(areaFor(input, need) - 8);
      }),
      { seed: 2604, numRuns: 200 },
    );
  });

  test('strips: lines lie on the piece, a width apart, and the piece turned gives the same', () => {
    fc.assert(
      fc.property(any, piece, (input, long) => {
        const { lines, strips, long: joined } = solved(biasFrom(input, long));
        expect(lines).toHaveLength(strips + 1);
        for (const [i, at] of lines.slice(1).entries()) {
          expect((at - (lines[i] ?? 0)) / Math.SQRT2).toBeCloseTo(input.width, 3);
        }
        expect(lines.at(-1)).toBeLessThanOrEqual(input.cloth + long);
        const turned = solved(biasFrom({ ...input, cloth: long }, input.cloth));
        expect(turned.long).toBeCloseTo(joined, 0);
      }),
      { seed: 2605, numRuns: 200 },
    );
  });

  test('continuous: the square found gives it, a little less does not, and no area gives less', () => {
    const by = fc.record({
      width: fc.integer({ min: 80_000, max: 800_000 }).map(length),
      seam: fc.integer({ min: 0, max: 100_000 }).map(length),
    });
    fc.assert(
      fc.property(by, fc.integer({ min: 4_000_000, max: 400_000_000 }), (input, units) => {
        const need = length(units);
        const side = solved(squareFor(input, need));
        const up = length(Math.ceil(side));
        const round = solved(roundFrom(input, up, up));
        expect(round.long).toBeGreaterThanOrEqual(need - 600);
        expect(round.joins).toBeLessThanOrEqual(2 * round.rounds - 1);
        const area = (up - 2 * input.seam) ** 2 / input.width;
        expect(round.long).toBeLessThanOrEqual(area + 600);
        // What pages without seams and rounds promise is never less, and their square never larger.
        expect(areaGivesRound(input.width, up, up)).toBeGreaterThanOrEqual(round.long - 600);
        expect(areaForRound(input.width, need)).toBeLessThanOrEqual(side + 1);
        const less = length(up - 800);
        const smaller = roundFrom(input, less, less);
        expect(smaller.ok ? smaller.value.long : 0).toBeLessThan(need);
      }),
      { seed: 2606 },
    );
  });

  test('one strip: there and back', () => {
    const long = fc.integer({ min: 8000, max: 8_000_000 }).map(length);
    fc.assert(
      fc.property(long, long, (width, need) => {
        const side = length(Math.ceil(solved(singleFor(width, need))));
        const back = solved(singleFrom(width, side));
        expect(back - need).toBeGreaterThan(-1e-3);
        expect(back - need).toBeLessThan(2);
      }),
      { seed: 2607 },
    );
  });
});

test('what is wrong names its field', () => {
  const wrong = (set: Partial<BiasInput>, piece = cm(20)) =>
    fieldsOf(biasFrom({ ...strips, ...set }, piece));
  expect(wrong({ width: ZERO, cloth: ZERO, seam: mm(-1) })).toEqual(['width', 'cloth', 'seam']);
  expect(wrong({ seam: cm(4) })).toEqual(['shortest']);
  expect(wrong({ shortest: cm(200) })).toEqual(['cloth']);
  expect(wrong({}, cm(5))).toEqual(['long']);
  expect(wrong({ width: mm(1) })).toEqual(['width']);
  expect(fieldsOf(biasFor(strips, ZERO))).toEqual(['need']);
  expect(fieldsOf(biasFor(strips, mm(999_999)))).toEqual(['need']);
  expect(fieldsOf(biasFor({ ...strips, width: mm(1) }, cm(500)))).toEqual(['width']);
  const by = { width: cm(3), seam: cm(1) };
  expect(fieldsOf(roundFrom(by, cm(5), cm(5)))).toEqual(['long']);
  expect(fieldsOf(roundFrom(by, cm(30), cm(2)))).toEqual(['sideShort']);
  expect(fieldsOf(roundFrom({ ...by, width: mm(1) }, cm(90), cm(90)))).toEqual(['width']);
  expect(fieldsOf(squareFor({ ...by, width: mm(1) }, mm(999_999)))).toEqual(['width']);
  expect(fieldsOf(singleFrom(cm(3), cm(2)))).toEqual(['long']);
});
