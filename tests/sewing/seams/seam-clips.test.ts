import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactLength, inches, length, mm, toInches, toMm } from '../../../src/lengths/length.ts';
import { type ClipInput, clipCurve } from '../../../src/sewing/seams/seam-clips.ts';
import { guideFor } from '../../../src/sewing/seams/seam-guide.ts';
import { CLIPS, PLATE_LINES } from '../../../src/sewing/sources/seams.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const curve: ClipInput = { radius: mm(80), allowance: mm(10), opening: mm(2) };

test('a curve of 80 mm with 10 mm allowance, clips opening 2 mm: 16 mm by the opening (derived here)', () => {
  expect(toMm(solved(clipCurve(curve)).byOpening)).toBe(16);
});

// Goodheart-Willcox, Apparel (2012), p. 452: every 1/4 to 1/2 in. Where the opening alone would let them
// be further apart (3 in of radius, 1/4 in of allowance, opening 1/8 in: 1 1/2 in) the lesser is said.
test('clips are no further apart than published, and where the opening asks for less, than that', () => {
  const mild = { radius: inches(3), allowance: inches(1 / 4), opening: inches(1 / 8) };
  const wide = solved(clipCurve(mild));
  expect([toInches(wide.byOpening), toInches(wide.spacing)]).toEqual([1.5, 0.5]);
  const sharp = solved(clipCurve({ ...mild, radius: inches(0.75) }));
  expect([toInches(sharp.byOpening), toInches(sharp.spacing)]).toEqual([0.375, 0.375]);
});

// Goodheart-Willcox, Apparel (2012), p. 452: a clip every 1/4 to 1/2 in: 24 to 48 spaces on 12 in.
test.each([
  [1 / 4, 48],
  [1 / 2, 24],
])('clips %d in apart make %d spaces of a curve of 12 in', (apart, spaces) => {
  expect(CLIPS.value.map(toInches)).toContain(apart);
  // A radius of 4 in and 1/2 in allowance: the opening is an eighth of the spacing.
  const opening = inches(apart / 8);
  const input = { radius: inches(4), allowance: inches(1 / 2), opening, along: inches(12) };
  const { spacing, run } = solved(clipCurve(input));
  expect(toInches(spacing)).toBe(apart);
  expect(run?.marks).toHaveLength(spaces - 1);
  expect(toInches(run?.marks[0]?.at ?? exactLength(0))).toBeCloseTo(apart, 9);
});

// 3 × 20/7 is 60/7: seven of them are 60, but 7.000000000000001 in a double. 14 × 3 × 20/14 likewise.
test.each([
  [20, 7, 3, 60, 7],
  [20, 11, 5, 100, 11],
  [20, 14, 3, 90, 21],
])(
  'radius %d, allowance %d, opening %d on %d mm: %d spaces, and no clip for the noise of dividing',
  (radius, allowance, opening, along, spaces) => {
    const input = { radius: mm(radius), allowance: mm(allowance), opening: mm(opening) };
    const marks = (length: number) => solved(clipCurve({ ...input, along: mm(length) })).run?.marks;
    expect(marks(along)).toHaveLength(spaces - 1);
    // A hundredth of a millimetre more is one more space.
    expect(marks(along + 0.01)).toHaveLength(spaces);
  },
);

test('clips are numbered from the beginning of the curve, even along it', () => {
  const { run } = solved(clipCurve({ ...curve, along: mm(36) }));
  expect(run).toEqual({
    datum: 'zero',
    length: mm(36),
    marks: [12, 24].map((at, i) => ({ at: mm(at), label: `${i + 1}`, kind: 'measure' })),
  });
});

test('a short curve needs no clip; 2,000 spaces are the most, and not one more', () => {
  expect(solved(clipCurve({ ...curve, along: inches(1 / 2) })).run?.marks).toEqual([]);
  expect(solved(clipCurve({ ...curve, along: mm(1) })).run?.marks).toEqual([]);
  // Opening 0.01 on 80 and 10: 0.08 between clips.
  const fine = { ...curve, opening: mm(0.01) };
  expect(solved(clipCurve({ ...fine, along: mm(160) })).run?.marks).toHaveLength(1999);
  expect(clipCurve({ ...fine, along: mm(160.001) })).toMatchObject({
    problems: [{ kind: 'too-close', field: 'opening', least: mm(160.001) / 16_000, most: 2000 }],
  });
});

test('an opening as wide as the allowance may be, and so may a whole circle', () => {
  expect(clipCurve({ ...curve, opening: mm(10) }).ok).toBe(true);
  expect(clipCurve({ ...curve, opening: length(mm(10) + 1) }).ok).toBe(false);
  const least = clipCurve({ ...curve, allowance: length(inches(1 / 8) + 1) });
  expect(solved(least).deep).toBe(1);
});

// sewingsupport.com (a teaching page): stop about 1/8 in short of the stitching.
test('a clip stops 1/8 in short of the stitching', () => {
  const { deep } = solved(clipCurve({ ...curve, allowance: inches(5 / 8) }));
  expect(toInches(deep)).toBe(1 / 2);
});

// Goodheart-Willcox, Apparel (2012), p. 452: the sharper the curve, the closer.
test('the sharper a curve, the closer its clips', () => {
  const radius = fc.integer({ min: 20, max: 2000 });
  fc.assert(
    fc.property(radius, radius, (a, b) => {
      const spacing = (r: number) => solved(clipCurve({ ...curve, radius: mm(r) })).byOpening;
      expect(Math.sign(spacing(a) - spacing(b))).toBe(Math.sign(a - b));
    }),
  );
});

test('no clip opens by more than is allowed, and all of them take up the difference', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 20, max: 500 }),
      fc.integer({ min: 5, max: 40 }),
      fc.integer({ min: 1, max: 5 }),
      fc.double({ min: 0.05, max: 1, noNaN: true }),
      (radius, allowance, opening, part) => {
        const along = mm(2 * Math.PI * radius * part);
        const input = { radius: mm(radius), allowance: mm(allowance), opening: mm(opening) };
        const outcome = clipCurve({ ...input, along });
        fc.pre(outcome.ok);
        const { differs, run, spacing } = solved(outcome);
        // The raw edge is an arc of the same angle, an allowance further out.
        const angle = along / mm(radius);
        expect(toMm(differs ?? exactLength(0))).toBeCloseTo(allowance * angle, 6);
        const places = [0, ...(run?.marks ?? []).map(({ at }) => at as number), along];
        places.slice(1).forEach((place, i) => {
          const space = place - (places[i] ?? 0);
          expect(space).toBeLessThanOrEqual(spacing * (1 + 1e-6));
          expect((space / mm(radius)) * allowance).toBeLessThanOrEqual(opening * (1 + 1e-6));
        });
        // One space fewer would be too wide.
        if (places.length > 2) expect(along / (places.length - 2)).toBeGreaterThan(spacing);
        expect(spacing).toBeLessThanOrEqual(CLIPS.value[1]);
      },
    ),
    { seed: 1207 },
  );
});

test('clips that can’t be name their field', () => {
  expect(fieldsOf(clipCurve({ ...curve, radius: mm(0), opening: mm(0) }))).toEqual([
    'radius',
    'opening',
  ]);
  expect(fieldsOf(clipCurve({ ...curve, along: mm(0) }))).toEqual(['along']);
  expect(fieldsOf(clipCurve({ ...curve, allowance: inches(1 / 8) }))).toEqual(['allowance']);
  expect(fieldsOf(clipCurve({ ...curve, opening: mm(11) }))).toEqual(['opening']);
  // Longer than the whole circle.
  expect(fieldsOf(clipCurve({ ...curve, along: mm(503) }))).toEqual(['along']);
  expect(clipCurve({ ...curve, along: mm(502) }).ok).toBe(true);
  const far = { ...curve, radius: mm(100_000), along: mm(30_000) };
  expect(clipCurve(far)).toMatchObject({ problems: [{ kind: 'too-long', field: 'along' }] });
  const crowded = clipCurve({ ...curve, opening: length(1), along: mm(500) });
  expect(crowded).toMatchObject({ problems: [{ kind: 'too-close', field: 'opening' }] });
});

test('the guide is the same distance in both units, and the nearest plate line is near', () => {
  const guide = guideFor(inches(5 / 8));
  expect(guide).toMatchObject({ mm: 15.875, inches: 0.625, line: inches(5 / 8), off: 0 });
  const metric = guideFor(exactLength(mm(16)));
  expect(toMm(metric.line)).toBe(15.875);
  expect(toMm(metric.off)).toBe(-0.125);
});

test('no plate line is nearer than the one named', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500_000 }), (units) => {
      const { line, off } = guideFor(length(units));
      expect(line - off).toBe(units);
      for (const other of PLATE_LINES) {
        expect(Math.abs(off)).toBeLessThanOrEqual(Math.abs(other - units));
      }
    }),
  );
});

test('clips that were begun stay as many, evenly apart', () => {
  const { run } = solved(clipCurve({ ...curve, along: mm(80), count: 7 }));
  expect(run?.marks.map(({ at }) => toMm(at))).toEqual([10, 20, 30, 40, 50, 60, 70]);
});
