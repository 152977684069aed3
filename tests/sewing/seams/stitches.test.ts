import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import {
  stitchFromLength,
  stitchFromPerCm,
  stitchFromPerInch,
} from '../../../src/sewing/seams/stitches.ts';
import { SHIRT_STITCHES, TROUSER_STITCHES } from '../../../src/sewing/sources/sizes.ts';
import { answer, problems, typed } from '../closures/closures-cases.ts';

const mmAt = (perInch: number) => toMm(answer(stitchFromPerInch(perInch)).length);

describe('published', () => {
  // stashbandit.net (a teaching page), worked: 25.4/2.5 = 10.16; 25.4/12 = 2.117; 25.4/15 = 1.69.
  test('stitches to the inch as millimetres', () => {
    expect(mmAt(2.5)).toBeCloseTo(10.16, 10);
    expect(mmAt(12)).toBeCloseTo(2.117, 3);
    expect(mmAt(15)).toBeCloseTo(1.69, 2);
  });

  // bonnysews.com and piecefulkwilter.blogspot.com, 2009/05 (teaching pages) print whole numbers
  // that conflict: 1 mm 24, 2 mm 13 or 12, 3 mm 9 or 8, 4 mm 6, 5 mm 5. Exact values lie within
  // 1.5 of either.
  test.each([
    [0.5, 50],
    [1, 24],
    [1.5, 16],
    [2, 13],
    [2, 12],
    [2.5, 10],
    [3, 9],
    [3, 8],
    [3.5, 7],
    [4, 6],
    [5, 5],
  ])('%d mm is about %d to the inch', (millimetres, perInch) => {
    const exact = answer(stitchFromLength(mm(millimetres))).perInch;
    expect(Math.abs(exact - perInch)).toBeLessThan(1.5);
    expect(exact).toBeCloseTo(25.4 / millimetres, 10);
  });

  // US Army TM 10-8400-201-23, table 5-1: shirts 10–14, trousers 12–16 stitches to the inch. As
  // millimetres (2.54–1.81 for shirts) derived here.
  test('what shirts and trousers are sewn with', () => {
    expect(SHIRT_STITCHES.value.map((n) => mmAt(n).toFixed(2))).toEqual(['2.54', '1.81']);
    expect(TROUSER_STITCHES.value.map((n) => mmAt(n).toFixed(2))).toEqual(['2.12', '1.59']);
  });
});

test('there and back again, by inch and by centimetre', () => {
  fc.assert(
    fc.property(typed(1, 100), (given) => {
      const stitch = answer(stitchFromLength(given));
      expect(answer(stitchFromPerInch(stitch.perInch)).length).toBeCloseTo(given, 4);
      expect(answer(stitchFromPerCm(stitch.perCm)).length).toBeCloseTo(given, 4);
      expect(stitch.perInch / stitch.perCm).toBeCloseTo(2.54, 10);
    }),
  );
});

test('problems name the field', () => {
  for (const count of [0, -3, Number.NaN, Infinity]) {
    expect(problems(stitchFromPerInch(count))[0]?.field).toBe('perInch');
    expect(problems(stitchFromPerCm(count))[0]?.field).toBe('perCm');
  }
  const kinds = [ZERO, length(1), mm(1e7)].map((given) => problems(stitchFromLength(given))[0]);
  expect(kinds.map((problem) => problem?.kind)).toEqual(['not-positive', 'too-short', 'too-long']);
  expect(kinds.map((problem) => problem?.field)).toEqual(['stitch', 'stitch', 'stitch']);
});
