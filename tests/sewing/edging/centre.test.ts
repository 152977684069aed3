import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LONGEST, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { type Counted, type CountInput, centreByCount } from '../../../src/sewing/edging/centre.ts';
import type { HolePlace } from '../../../src/sewing/hole-place.ts';

function solved(input: CountInput): Counted {
  const outcome = centreByCount(input);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const fieldsOf = (input: CountInput) => {
  const outcome = centreByCount(input);
  return outcome.ok ? [] : outcome.problems.map(({ field }) => field);
};

test('odd: a hole is the middle; even: between two (counting, derived here)', () => {
  expect(solved({ count: 27 }).centre).toEqual({ hole: 14, beyond: 0 });
  expect(solved({ count: 26 }).centre).toEqual({ hole: 13, beyond: 0.5 });
  expect(solved({ count: 2 }).centre).toEqual({ hole: 1, beyond: 0.5 });
});

// oaksidesaddlery.uk, saddlery rules (a trade page): a belt with 7 holes has its fit at hole 4.
test('of a belt’s 7 holes the fourth is the middle', () => {
  expect(solved({ count: 7 }).centre).toEqual({ hole: 4, beyond: 0 });
});

const along = ({ hole, beyond }: HolePlace) => hole + beyond;

test('halves, quarters and eighths are even from both ends', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 2000 }), (count) => {
      const { eighths, centre } = solved({ count });
      expect(eighths[3]).toEqual(centre);
      eighths.forEach((place, i) => {
        const mirror = eighths[6 - i] as HolePlace;
        expect(along(place) + along(mirror)).toBeCloseTo(count + 1, 9);
        expect(along(place)).toBeCloseTo(1 + ((count - 1) * (i + 1)) / 8, 9);
      });
    }),
  );
});

test('two ends counted differently are doubted', () => {
  expect(solved({ count: 27, other: 27 }).doubts).toEqual([]);
  expect(solved({ count: 27, other: 28 }).doubts).toEqual([
    { kind: 'ends-differ', count: 27, other: 28 },
  ]);
});

test('27 holes at 8 mm are 208 mm; 207 agrees, 216 means 28 (the invented waistcoat)', () => {
  const row = { count: 27, pitch: mm(8) };
  expect(toMm(solved(row).length ?? ZERO)).toBe(208);
  expect(solved({ ...row, measured: mm(207) }).doubts).toEqual([]);
  expect(solved({ ...row, measured: mm(216) }).doubts).toMatchObject([
    { kind: 'length-differs', likelier: 28 },
  ]);
});

test('a right count is never doubted when measured within half a pitch, a wrong one always is', () => {
  const count = fc.integer({ min: 3, max: 300 });
  fc.assert(
    fc.property(
      count,
      fc.integer({ min: 2, max: 30 }),
      fc.double({ min: -0.45, max: 0.45, noNaN: true }),
      (n, pitch, off) => {
        const measured = mm((n - 1 + off) * pitch);
        expect(solved({ count: n, pitch: mm(pitch), measured }).doubts).toEqual([]);
        const wrong = solved({ count: n + 1, pitch: mm(pitch), measured }).doubts;
        expect(wrong).toMatchObject([{ likelier: n }]);
      },
    ),
  );
});

test('the holes are marks from the first, the centre named', () => {
  const { run } = solved({ count: 5, pitch: mm(8) });
  expect(toMm(run?.length ?? ZERO)).toBe(32);
  expect(run?.marks.map(({ at, kind }) => [toMm(at), kind])).toEqual([
    [0, 'hole'],
    [8, 'hole'],
    [16, 'centre'],
    [24, 'hole'],
    [32, 'hole'],
  ]);
});

test('counts that can’t be name their field', () => {
  expect(fieldsOf({ count: 1 })).toEqual(['count']);
  expect(fieldsOf({ count: 2.5 })).toEqual(['count']);
  expect(fieldsOf({ count: 2001 })).toEqual(['count']);
  expect(fieldsOf({ count: 5, other: 0 })).toEqual(['other']);
  expect(fieldsOf({ count: 5, pitch: ZERO })).toEqual(['pitch']);
  expect(fieldsOf({ count: 5, measured: mm(-1) })).toEqual(['measured']);
});

test('midway between two counts another one is likelier, never the one that was counted', () => {
  const row = { count: 27, pitch: mm(8) };
  expect(solved({ ...row, measured: mm(204) }).doubts).toMatchObject([{ likelier: 26 }]);
  expect(solved({ ...row, measured: mm(212) }).doubts).toMatchObject([{ likelier: 28 }]);
});

test('a length two holes longer or shorter means two more or fewer', () => {
  const row = { count: 27, pitch: mm(8) };
  expect(solved({ ...row, measured: mm(224) }).doubts).toMatchObject([{ likelier: 29 }]);
  expect(solved({ ...row, measured: mm(192) }).doubts).toMatchObject([{ likelier: 25 }]);
});

test('where no count agrees, none is said to be likelier', () => {
  const short = solved({ count: 9, pitch: mm(8), measured: mm(1) });
  expect(short.doubts).toMatchObject([{ kind: 'length-differs', likelier: undefined }]);
  const long = solved({ count: 9, pitch: mm(1), measured: mm(5000) });
  expect(long.doubts).toMatchObject([{ kind: 'length-differs', likelier: undefined }]);
});

test('a row longer than any names its pitch', () => {
  expect(fieldsOf({ count: 2000, pitch: mm(600) })).toEqual(['pitch']);
  expect(fieldsOf({ count: 2, pitch: LONGEST })).toEqual([]);
});
