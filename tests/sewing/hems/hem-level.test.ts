/** Derived here, no source. Row 2.16: pins about 3 in apart (It's Fun to Sew a Cotton School Dress), 1 to 3 in (Koester, Hems): two extension circulars. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactLength, inches, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { type HemLevelInput, hemLevel, hemPlaces } from '../../../src/sewing/hems/hem-level.ts';
import { PINS_APART } from '../../../src/sewing/sources/hem-level.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
const SKIRT: HemLevelInput = { heights: [30, 31.5, 33, 32].map(cm), hem: cm(38), allowance: cm(4) };

test('a hem 38 above the floor with 4 turned up: raw edges at 30 to 33 lose 4 to 1', () => {
  const { trims, lowest } = solved(hemLevel(SKIRT));
  expect([trims.map(toMm), toMm(lowest)]).toEqual([[40, 25, 10, 20], 370]);
});

test('2.16: 65 in round, pinned 3 in apart, are 22 places; 1 in apart, 65', () => {
  const [least, most] = PINS_APART.value;
  expect([hemPlaces(inches(65), most), hemPlaces(inches(65), least)]).toEqual([22, 65]);
  expect(hemPlaces(inches(1), most)).toBe(1);
});

test('refused: no places, too many, less than nothing, a hem on the floor', () => {
  const of = (set: Partial<HemLevelInput>) => fieldsOf(hemLevel({ ...SKIRT, ...set }));
  expect(of({ heights: [] })).toEqual(['heights']);
  expect(of({ heights: Array.from({ length: 61 }, () => cm(30)) })).toEqual(['heights']);
  expect(of({ heights: Array.from({ length: 60 }, () => cm(30)) })).toEqual([]);
  expect(of({ heights: [cm(30), mm(-1)] })).toEqual(['heights']);
  expect(of({ hem: ZERO })).toEqual(['hem']);
  expect(of({ allowance: mm(-1) })).toEqual(['allowance']);
});

test('trimmed, every place is as high; at the lowest hem none lacks and one loses nothing; turned round, turned round', () => {
  fc.assert(
    fc.property(
      fc.array(typed(0, 900), { minLength: 1, maxLength: 20 }),
      typed(20, 1200),
      typed(0, 80),
      (heights, hem, allowance) => {
        const { trims, lowest } = solved(hemLevel({ heights, hem, allowance }));
        heights.forEach((height, i) => {
          expect(height + (trims[i] ?? 0) + allowance).toBe(hem);
        });
        if (lowest <= 0) return;
        const least = solved(hemLevel({ heights, hem: length(lowest), allowance })).trims;
        expect(Math.min(...least)).toBe(0);
        const turned = solved(hemLevel({ heights: [...heights].reverse(), hem, allowance }));
        expect([...turned.trims].reverse()).toEqual(trims);
        const twice = solved(
          hemLevel({
            ...{ heights: heights.map((one) => length(2 * one)), hem: length(2 * hem) },
            allowance: length(2 * allowance),
          }),
        );
        expect(twice.trims).toEqual(trims.map((one) => exactLength(2 * one)));
      },
    ),
    { numRuns: 300, seed: 3210 },
  );
});
