import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, type Length, mm, toInches, toMm } from '../../../src/lengths/length.ts';
import type { LacingInput } from '../../../src/sewing/lacing/lacing-input.ts';
import { type LacingKind, PUBLISHED } from '../../../src/sewing/lacing/lacing-kinds.ts';
import { anyLacing, lacedOf } from './laced.ts';

/** A fine edge of so many inches: holes 1/4 in apart, 1/8 in from the edge, leather of 1/16 in. */
const fine = (edge: number, set: Partial<LacingInput>) =>
  lacedOf({
    holes: 4 * edge + 1,
    pitch: inches(1 / 4),
    margin: inches(1 / 8),
    thickness: inches(1 / 16),
    ...set,
  });

/** The lace that goes through the first hole is no part of a factor for the edge. */
const THROUGH = 1 / 16;

describe('published, and never cut shorter', () => {
  // kingsmerecrafts.info, page 38: running is 1½ × the edge, 18 in takes 27 in; the same
  // factor in Texas 4-H L-382, e-scoutcraft.com and leathercircle.com.
  test('running, an edge of 18 in takes 27 in', () => {
    const { total, geometry, by } = fine(18, { kind: 'running' });
    expect(toInches(total)).toBeCloseTo(27 + THROUGH, 9);
    // Geometry alone, 18 × (1/4 + 1/16) ÷ 1/4 = 22 1/2 in, would be 4 1/2 in short.
    expect(toInches(geometry)).toBeCloseTo(22.5 + THROUGH, 9);
    expect(by).toBe('published');
  });

  // leathercircle.com, lace leather: 6½ and 8½ × the edge.
  test.each<[LacingKind, number]>([
    ['single-loop', 6.5],
    ['double-loop', 8.5],
  ])('%s of 60 in takes %f times that', (kind, times) => {
    const { total, geometry, by, off, doubts } = fine(60, { kind });
    expect(toInches(total)).toBeCloseTo(60 * times + THROUGH, 9);
    expect(geometry).toBeLessThan(0.9 * total);
    expect(by).toBe('published');
    expect(doubts).toEqual([{ kind: 'off-published', off, less: true }]);
  });

  // 6½ × 60 in = 390 in (leathercircle.com) at no more than 2 yd at a time (Griswold, Handicraft).
  test('390 in of single loop are six pieces of 2 yd, five splices', () => {
    const { pieces, each, total } = fine(60, { kind: 'single-loop' });
    expect(pieces).toBe(6);
    expect(pieces * each).toBeCloseTo(total, 6);
  });

  test.each<[LacingKind, readonly [number, number]]>([
    // Texas 4-H L-382 and leathercircle.com, which differ.
    ['edge', [2.5, 3.5]],
    ['outside', [2.5, 3.5]],
    // Texas 4-H L-382; kingsmerecrafts.info, page 38.
    ['running', [1.5, 1.5]],
    // bushcraftuk.com (2½), pastorbobleather.com (3), twigscraft.com (4), which differ.
    ['saddle', [2.5, 4]],
    // kingsmerecrafts.info, page 126.
    ['cross', [5, 6]],
    // leathercircle.com.
    ['single-loop', [6.5, 6.5]],
    ['double-loop', [8.5, 8.5]],
  ])('%s: published as written, and the least of it is cut at any rate', (kind, range) => {
    expect(PUBLISHED[kind]?.value).toEqual(range);
    for (const set of [{}, { start: 'middle' }, { thickness: mm(0.5) }] as const) {
      const { total, edge, tails } = lacedOf({ ...set, kind, tail: mm(70) });
      expect((total - tails) / edge).toBeGreaterThanOrEqual(range[0]);
    }
  });

  test('whip by geometry is 2.6 × where 2½ and 3½ are published: it lies within, and is cut', () => {
    const { factor, off, by, doubts } = fine(10, { kind: 'edge', thickness: inches(1 / 8) });
    // (0.125 + √(0.25² + 0.125²) + 0.25) ÷ 0.25, derived here.
    expect(factor).toBeCloseTo(2.618, 3);
    expect([off, by, doubts]).toEqual([0, 'within', []]);
  });

  test('cross at 8, 5 and 3 mm is 5.1 ×, within 5 to 6; margins as wide as the pitch make it more, and it is said', () => {
    expect(lacedOf({ kind: 'cross' })).toMatchObject({ by: 'within', doubts: [] });
    // 2 × (7 + √(8² + 7²) + 6) ÷ 8 = 5.9 with a margin of 7; with 9, 2 × (9 + √145 + 6) ÷ 8 = 6.76.
    const wide = lacedOf({ kind: 'cross', margin: mm(9) });
    expect(wide.factor).toBeCloseTo(6.76, 2);
    expect(wide.total).toBe(wide.geometry);
    expect(wide.by).toBe('geometry');
    expect(wide.doubts).toMatchObject([{ kind: 'off-published', less: false }]);
    expect(wide.off).toBeCloseTo((6.76 - 6) / 6, 2);
  });

  test('from 10 % apart it is said, on either side; nearer it is not', () => {
    // Running is (8 + T) ÷ 8: 1.35 with 2.8 mm, 1.65 with 5.2 mm, both 10 % off 1½.
    const doubts = (thickness: number) =>
      lacedOf({ kind: 'running', thickness: mm(thickness) }).doubts.map(({ kind }) => kind);
    expect(doubts(2.8)).toEqual(['off-published']);
    expect(doubts(2.81)).toEqual([]);
    expect(doubts(5.19)).toEqual([]);
    expect(doubts(5.2)).toEqual(['off-published']);
  });

  test('steps of one’s own have nothing published beside them', () => {
    const repeat = {
      points: [
        { along: 0, across: mm(5), face: 'front' as const },
        { along: 1, across: mm(5), face: 'front' as const },
        { along: 1, across: mm(5), face: 'back' as const },
        { along: 2, across: mm(5), face: 'back' as const },
      ],
      advance: 2,
    };
    const { total, geometry, by, off } = lacedOf({ kind: 'own', own: repeat });
    expect(total).toBe(geometry);
    expect([by, off]).toEqual(['alone', undefined]);
  });
});

describe('what follows from the length to cut', () => {
  test('pieces, halves and what of the first piece goes to each side', () => {
    // 6½ × 400 mm = 2600 mm and 3 through the first hole: two pieces of 2 yd (derived here).
    const fromEnd = lacedOf({ kind: 'single-loop', tail: mm(100) });
    expect(toMm(fromEnd.total)).toBeCloseTo(2600 + 3 + 200, 6);
    expect(fromEnd.pieces).toBe(2);
    const middle = lacedOf({ kind: 'single-loop', tail: mm(100), start: 'middle' });
    expect(toMm(middle.total)).toBeCloseTo(2600 + 3 + 200, 6);
    const [toFirst = 0, toLast = 0] = middle.middle?.halves ?? [];
    expect(toMm((toFirst + toLast) as Length)).toBeCloseTo(2803, 6);
    // 25 of 50 stitches lie before the middle stitch’s one end, 24 past the other.
    expect(toFirst).toBeGreaterThan(toLast);
  });

  test('a closed round has a stitch for each hole: its first hole is laced twice', () => {
    // 50 holes round 400 mm, so 51 with the first again: 6½ × 400 (leathercircle.com).
    const { total, edge } = lacedOf({ kind: 'single-loop', holes: 51 });
    expect(toMm(edge)).toBe(400);
    expect(toMm(total)).toBeCloseTo(6.5 * 400 + 3, 6);
  });
});

test('law: the greater of geometry and the least published is cut, and all is shared out of it', () => {
  fc.assert(
    fc.property(anyLacing, (input) => {
      const { total, geometry, published, tails, edge, by, off, middle, pieces, each, doubts } =
        lacedOf(input);
      const [least, most] = PUBLISHED[input.kind]?.value ?? [0, 0];
      const through = input.thickness;
      const shortest = least * edge + through + tails;
      expect(published?.[0]).toBeCloseTo(shortest, 4);
      expect(published?.[1]).toBeCloseTo(most * edge + through + tails, 4);
      expect(total).toBeCloseTo(Math.max(geometry, shortest), 4);
      if (by === 'published') expect(total).toBeGreaterThan(geometry);
      else expect(total).toBe(geometry);
      expect(doubts.some(({ kind }) => kind === 'off-published')).toBe((off ?? 0) >= 0.1 - 1e-9);
      expect(pieces * each).toBeCloseTo(total, 4);
      if (!middle) return;
      expect(middle.halves[0] + middle.halves[1]).toBeCloseTo(total, 4);
      expect(Math.min(...middle.halves)).toBeGreaterThanOrEqual(input.tail);
    }),
    { seed: 1201 },
  );
});
