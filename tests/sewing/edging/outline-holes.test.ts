/** Rows 6.14 and 6.21 of the check values; sharing by number is held to every other way to share. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Length, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import {
  laidOut,
  type Outline,
  outlineHoles,
  pairHoles,
} from '../../../src/sewing/edging/outline-holes.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const panel: Outline = { shape: 'rectangle', wide: mm(120), high: mm(180), margin: mm(5) };

// A teaching page on leather (6.14): the corner hole lies where the two margin lines cross; worked by hand.
test('6.14: 12 × 18 cm, margin and pitch 5 mm: 22, 34, 22, 34, in all 112, corners shared', () => {
  const found = solved(outlineHoles(panel, { by: 'pitch', pitch: mm(5) }));
  expect(found.sides.map(({ spaces }) => spaces)).toEqual([22, 34, 22, 34]);
  expect(found.count).toBe(112);
  expect(found.corners).toEqual([1, 23, 57, 79]);
  expect(found.run.marks.map(({ kind }) => kind).filter((kind) => kind === 'corner')).toHaveLength(
    4,
  );
  const again = solved(outlineHoles(panel, { by: 'count', count: 112 }));
  expect(again.sides).toEqual(found.sides);
});

// A page on pouches (6.21): 8 slits 22 mm apart were planned and came out 9, the last one unused.
test('6.21: round 176 mm at 22 mm there are 8, no ninth', () => {
  const found = solved(pairHoles(mm(176), mm(170), { by: 'pitch', pitch: mm(22) }));
  expect(found.count).toBe(8);
  expect(toMm(found.other.pitch)).toBe(21.25);
});

test('a regular outline’s line is nearer its middle by the margin; a circle’s is a ring', () => {
  const six: Outline = { shape: 'regular', sides: 6, side: mm(80), margin: mm(10) };
  const found = solved(outlineHoles(six, { by: 'count', count: 12 }));
  // The hexagon so far inside: its sides are as long as its radius, 80 − 10 ÷ cos 30°.
  expect(toMm(found.sides[0]?.line ?? ZERO)).toBeCloseTo(80 - 10 / Math.cos(Math.PI / 6), 9);
  const ring = solved(
    outlineHoles({ shape: 'circle', across: mm(200), margin: mm(10) }, { by: 'count', count: 90 }),
  );
  expect(toMm(ring.sides[0]?.pitch ?? ZERO)).toBeCloseTo(2 * Math.PI, 9);
  expect(ring.corners).toEqual([]);
});

test('side by side it is the rectangle, the regular outline, and one with a corner that goes in', () => {
  const by = { by: 'pitch', pitch: mm(5) } as const;
  const four: Outline = {
    ...{ shape: 'free', margin: mm(5) },
    ...{ sides: [120, 180, 120, 180].map(mm), corners: [90, 90, 90, 90] },
  };
  const found = solved(outlineHoles(four, by));
  expect(found.count).toBe(112);
  expect(found.corners).toEqual([1, 23, 57, 79]);
  const six: Outline = {
    ...{ shape: 'free', margin: mm(10) },
    ...{ sides: Array(6).fill(mm(80)), corners: Array(6).fill(120) },
  };
  const line = solved(outlineHoles(six, by)).sides[0]?.line ?? ZERO;
  expect(toMm(line)).toBeCloseTo(80 - 10 / Math.cos(Math.PI / 6), 6);
  // An L: 100 by 100 with 60 by 60 out of it. At the corner that goes in both its sides are longer by the margin.
  const ell: Outline = {
    ...{ shape: 'free', margin: mm(5) },
    ...{ sides: [100, 100, 40, 60, 60, 40].map(mm), corners: [90, 90, 90, 270, 90, 90] },
  };
  const lines = solved(outlineHoles(ell, by)).sides.map((side) => Math.round(toMm(side.line)));
  expect(lines).toEqual([90, 90, 30, 60, 60, 30]);
});

test('laid out it goes round to where it begins, each corner to the right; one that goes in to the left', () => {
  const ell = {
    sides: [100, 100, 40, 60, 60, 40].map(mm),
    corners: [90, 90, 90, 270, 90, 90],
  };
  const places = laidOut(ell).map(([x, y]) => [x, y].map((one) => Math.round(one / 8000) + 0));
  expect(places).toEqual([
    [0, 0],
    [100, 0],
    [100, 100],
    [60, 100],
    [60, 40],
    [0, 40],
    [0, 0],
  ]);
});

test('a margin that meets says how wide it may be: half the narrow way, or where the first side is gone', () => {
  const most = (outline: Outline) => {
    const found = outlineHoles(outline, { by: 'count', count: 30 });
    const under = found.ok ? 0 : (found.problems[0] as { under?: number }).under;
    return Math.round(toMm(length(Math.round(under ?? 0))) * 1000) / 1000;
  };
  expect(most({ ...panel, margin: mm(60) })).toBe(60);
  expect(most({ shape: 'circle', across: mm(80), margin: mm(40) })).toBe(40);
  const six: Outline = { shape: 'regular', sides: 6, side: mm(80), margin: mm(70) };
  expect(most(six)).toBe(69.282); // its inner radius, 40 × √3
  const ell: Outline = {
    ...{ shape: 'free', margin: mm(20) },
    ...{ sides: [100, 100, 40, 60, 60, 40].map(mm), corners: [90, 90, 90, 270, 90, 90] },
  };
  expect(most(ell)).toBe(20); // the sides of 40 lose it at both their ends
});

test('corners from 10° to 350° are taken, and others named with both ends', () => {
  const of = (corners: number[]) =>
    outlineHoles(
      {
        ...{ shape: 'free', margin: ZERO, corners },
        ...{ sides: [100, 100, 100, 100].map(mm) },
      },
      { by: 'count', count: 30 },
    );
  expect(fieldsOf(of([10, 170, 10, 170]))).toEqual([]);
  expect(of([10, 170, 10, 351])).toMatchObject({
    problems: [{ kind: 'out-of-range', given: 351, least: 10, most: 350 }],
  });
  expect(of([90, 90, 90])).toMatchObject({
    problems: [{ kind: 'not-as-many', given: 3, needed: 4 }],
  });
});

test('holes are numbered from the first corner; those of a pair lie alike along each', () => {
  const { run } = solved(outlineHoles(panel, { by: 'count', count: 6 }));
  expect(run.marks.map(({ label, at }) => [label, toMm(at)])).toEqual([
    ['1', 0],
    ['2', 110],
    ['3', 195],
    ['4', 280],
    ['5', 390],
    ['6', 475],
  ]);
  const pair = solved(pairHoles(mm(100), mm(80), { by: 'count', count: 4 }));
  expect(pair.one.run.marks.map(({ at, kind }) => [toMm(at), kind])).toEqual([
    [0, 'hole'],
    [25, 'hole'],
    [50, 'hole'],
    [75, 'hole'],
  ]);
  expect(pair.other.run.marks.map(({ at }) => toMm(at))).toEqual([0, 20, 40, 60]);
  expect(fieldsOf(pairHoles(mm(100), mm(80), { by: 'pitch', pitch: mm(0.01) }))).toEqual(['pitch']);
});

test('side by side, refused: two sides, none, a corner too few, one too sharp, ends apart, a margin that meets', () => {
  const of = (set: object) =>
    fieldsOf(
      outlineHoles(
        {
          ...{ shape: 'free', margin: mm(5), corners: [90, 90, 90, 90] },
          ...{ sides: [120, 180, 120, 180].map(mm), ...set },
        } as Outline,
        { by: 'pitch', pitch: mm(5) },
      ),
    );
  expect(of({})).toEqual([]);
  expect(of({ sides: [mm(10), mm(10)], corners: [90, 90] })).toEqual(['ownSides']);
  expect(of({ sides: [120, 0, 0, 180].map(mm) })).toEqual(['ownSides']);
  expect(of({ corners: [90, 90, 90] })).toEqual(['ownCorners']);
  expect(of({ corners: [90, 9, 171, 90] })).toEqual(['ownCorners']);
  expect(of({ corners: [90, 351, 9, 90] })).toEqual(['ownCorners']);
  // 600 round: 12 apart still close, as corners are measured, too; 13 don't.
  expect(of({ sides: [120, 180, 132, 180].map(mm) })).toEqual([]);
  expect(of({ sides: [120, 180, 133, 180].map(mm) })).toEqual(['ownSides']);
  expect(of({ margin: mm(60) })).toEqual(['margin']);
  expect(of({ margin: mm(59) })).toEqual([]);
});

describe('laws', () => {
  const size = fc.integer({ min: 160_000, max: 1_600_000 }).map(length);
  const outlines = fc
    .record({ wide: size, high: size, margin: fc.integer({ min: 0, max: 79_000 }).map(length) })
    .map((of): Outline => ({ shape: 'rectangle', ...of }));
  const pitch = fc.integer({ min: 8000, max: 160_000 }).map(length);

  test('by pitch: every corner has its hole, and no space is nearer to the pitch with one more or fewer', () => {
    fc.assert(
      fc.property(outlines, pitch, (outline, wanted) => {
        const { sides, count, run, corners } = solved(
          outlineHoles(outline, { by: 'pitch', pitch: wanted }),
        );
        expect(count).toBe(sides.reduce((sum, { spaces }) => sum + spaces, 0));
        let from = 0;
        for (const [i, { line, spaces }] of sides.entries()) {
          expect(run.marks[(corners[i] ?? 0) - 1]?.at).toBeCloseTo(from, 3);
          from += line;
          expect(Math.abs(line / wanted - spaces)).toBeLessThanOrEqual(
            Math.max(0.5, 1 - line / wanted),
          );
        }
        const places = run.marks.map(({ at }) => at);
        for (const [i, at] of places.slice(1).entries()) expect(at).toBeGreaterThan(places[i] ?? 0);
      }),
      { seed: 3301 },
    );
  });

  test('by number: no other sharing has a smaller greatest pitch', () => {
    fc.assert(
      fc.property(size, size, fc.integer({ min: 4, max: 14 }), (wide, high, count) => {
        const outline: Outline = { shape: 'rectangle', wide, high, margin: ZERO };
        const { sides } = solved(outlineHoles(outline, { by: 'count', count }));
        const ours = Math.max(...sides.map(({ pitch: apart }) => apart));
        for (let a = 1; a <= count - 3; a += 1)
          for (let b = 1; b <= count - a - 2; b += 1)
            for (let c = 1; c <= count - a - b - 1; c += 1) {
              const d = count - a - b - c;
              const other = Math.max(wide / a, high / b, wide / c, high / d);
              expect(ours).toBeLessThanOrEqual(other + 1e-6);
            }
      }),
      { seed: 3302, numRuns: 60 },
    );
  });

  test('turned, a rectangle has the same holes; scaled, the same numbers', () => {
    fc.assert(
      fc.property(size, size, pitch, fc.integer({ min: 2, max: 5 }), (wide, high, wanted, k) => {
        const of = (w: number, h: number, by: number) =>
          solved(
            outlineHoles(
              { shape: 'rectangle', wide: length(by * w), high: length(by * h), margin: ZERO },
              { by: 'pitch', pitch: length(by * wanted) },
            ),
          );
        const one = of(wide, high, 1);
        expect(of(high, wide, 1).count).toBe(one.count);
        expect(of(wide, high, k).sides.map(({ spaces }) => spaces)).toEqual(
          one.sides.map(({ spaces }) => spaces),
        );
      }),
      { seed: 3303 },
    );
  });

  test('two edges have as many holes each, by the same fractions; swapped, they swap', () => {
    fc.assert(
      fc.property(size, size, fc.integer({ min: 1, max: 300 }), (one, other, count) => {
        const found = solved(pairHoles(one, other, { by: 'count', count }));
        const back = solved(pairHoles(other, one, { by: 'count', count }));
        expect(back.one).toEqual(found.other);
        expect((1 + found.longer) * (1 + back.longer)).toBeCloseTo(1, 9);
        for (const [i, { at }] of found.one.run.marks.entries()) {
          expect(at / one).toBeCloseTo((found.other.run.marks[i]?.at ?? 0) / other, 9);
        }
      }),
      { seed: 3304 },
    );
  });
});

test('what is wrong names its field', () => {
  const by = { by: 'pitch', pitch: mm(5) } as const;
  const none: Outline = { shape: 'rectangle', wide: ZERO, high: ZERO, margin: mm(-1) };
  expect(fieldsOf(outlineHoles(none, { by: 'pitch', pitch: ZERO }))).toEqual([
    ...['wide', 'high', 'margin', 'pitch'],
  ]);
  expect(fieldsOf(outlineHoles({ ...panel, margin: mm(60) }, by))).toEqual(['margin']);
  expect(fieldsOf(outlineHoles(panel, { by: 'count', count: 3 }))).toEqual(['count']);
  expect(fieldsOf(outlineHoles(panel, { by: 'count', count: 2001 }))).toEqual(['count']);
  expect(fieldsOf(outlineHoles(panel, { by: 'pitch', pitch: length(800) }))).toEqual(['pitch']);
  const regular: Outline = { shape: 'regular', sides: 2, side: ZERO, margin: ZERO };
  expect(fieldsOf(outlineHoles(regular, by))).toEqual(['sides', 'side']);
  const six: Outline = { shape: 'regular', sides: 6, side: mm(20), margin: mm(18) };
  expect(fieldsOf(outlineHoles(six, by))).toEqual(['margin']);
  expect(fieldsOf(outlineHoles({ shape: 'circle', across: ZERO, margin: ZERO }, by))).toEqual([
    'across',
  ]);
  const ring: Outline = { shape: 'circle', across: mm(20), margin: mm(10) };
  expect(fieldsOf(outlineHoles(ring, by))).toEqual(['margin']);
  expect(fieldsOf(pairHoles(ZERO, ZERO, { by: 'count', count: 0 }))).toEqual([
    'one',
    'other',
    'count',
  ]);
});

test('by pitch, 2,000 holes are the most: round 2 m a millimetre apart', () => {
  const two: Outline = { shape: 'rectangle', wide: mm(400), high: mm(600), margin: ZERO };
  const at = (pitch: number) => outlineHoles(two, { by: 'pitch', pitch: pitch as Length });
  expect(boundTold(at, 1, 'pitch', 'least')).toBe(mm(1));
});

test('a side between two corners that go in has line at any margin, and says nothing of it', () => {
  // A U, 100 wide and 80 deep, with 40 by 50 out of its top: its arms are 30 wide.
  const u: Outline = {
    ...{ shape: 'free', margin: mm(15) },
    ...{ sides: [100, 80, 30, 50, 40, 50, 30, 80].map(mm) },
    ...{ corners: [90, 90, 90, 270, 270, 90, 90, 90] },
  };
  const at = (margin: number) =>
    outlineHoles({ ...u, margin: margin as Length }, { by: 'count', count: 40 });
  expect(boundTold(at, mm(20), 'margin', 'under') / mm(1)).toBeCloseTo(15, 3);
});

test('a corner of just 350° is no reason to refuse an outline', () => {
  const sides = [100, 100, 100, 100].map(mm);
  const outline: Outline = { shape: 'free', margin: ZERO, sides, corners: [350, 90, 90, 90] };
  expect(fieldsOf(outlineHoles(outline, { by: 'count', count: 30 }))).toEqual(['ownSides']);
});
