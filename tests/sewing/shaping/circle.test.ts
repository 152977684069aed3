/**
 * Published: a page on bell skirts, row 16.2 (its π is 3.1, its results are cut off after a decimal); a
 * mistake that a teaching page describes, row 16.7. Rows 16.1 and 16.3 to 16.6 are geometry worked by a script
 * apart from this code, no source.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { circle, edgeError, inWidth, roundOf } from '../../../src/sewing/shaping/circle.ts';
import type { CircleInput } from '../../../src/sewing/shaping/circle-input.ts';
import { sectorBox, sectorOf } from '../../../src/sewing/shaping/sector.ts';
import { SHORT_PI } from '../../../src/sewing/sources/circles.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
const toCm = (x: number) => toMm(exactLength(x)) / 10;

const SKIRT: CircleInput = {
  kind: { of: 'skirt', circles: 1, panels: 1 },
  edge: cm(70),
  long: cm(60),
  seam: ZERO,
  side: ZERO,
  hem: ZERO,
  cloth: undefined,
};
const plan = (set: Partial<CircleInput>) => solved(circle({ ...SKIRT, ...set }));
const skirt = (circles: number, panels = 1) => ({ of: 'skirt', circles, panels }) as const;

describe('published, and geometry', () => {
  test.each([
    [1, '11.14'],
    [3 / 4, '14.85'],
    [1 / 2, '22.28'],
    [1 / 4, '44.56'],
  ])('16.1: an edge of 70 on %d of a circle has a radius of %s', (circles, radius) => {
    expect(toCm(plan({ kind: skirt(circles) }).piece.inner).toFixed(2)).toBe(radius);
  });

  // Two quarter panels of half the edge each make a half circle.
  test.each([
    [15, 9.6, '9.55'],
    [17.5, 11.2, '11.14'],
  ])(
    '16.2: a quarter panel on an edge of %d: printed %d with π as 3.1, exactly %s',
    (edge, printed, exact) => {
      const { inner } = plan({ edge: cm(2 * edge), kind: skirt(1 / 2, 2) }).piece;
      expect(toCm(inner).toFixed(2)).toBe(exact);
      const asPrinted = (edge / SHORT_PI.value) * 2;
      expect(Math.floor(10 * asPrinted) / 10).toBe(printed);
      // Not half a per cent: that is what its cut off decimal leaves.
      expect(asPrinted / toCm(inner) - 1).toBeCloseTo(0.0134, 4);
    },
  );

  test('16.3: 60 long it is 447 at the hem, half a circle 258.5', () => {
    expect(toCm(plan({}).hemLine).toFixed(1)).toBe('447.0');
    expect(toCm(plan({ kind: skirt(1 / 2) }).hemLine).toFixed(1)).toBe('258.5');
  });

  test('16.4: cut 1.5 inside, the cut edge is 60.6', () => {
    expect(toCm(plan({ seam: cm(1.5) }).cutEdge).toFixed(1)).toBe('60.6');
    expect(toCm(plan({ seam: cm(1.5) }).edge)).toBeCloseTo(70, 6);
  });

  test('16.5: 5 mm too far out is 31 mm more round the edge', () => {
    expect(Math.round(toMm(edgeError(plan({}), mm(5))))).toBe(31);
  });

  test('16.6: with a hem of 1 the whole circle takes 144.3 square, half of one 72.1 + 11.1 by twice that', () => {
    const { box } = plan({ hem: cm(1) });
    expect([box.wide, box.high].map((x) => toCm(x).toFixed(1))).toEqual(['144.3', '144.3']);
    const half = plan({ hem: cm(1), kind: skirt(1 / 2) });
    expect(toCm(half.box.wide)).toBeCloseTo(2 * toCm(half.cutHem), 6);
    expect(toCm(half.box.high)).toBeCloseTo(toCm(half.cutHem), 6);
  });

  test('16.7: a quarter of the edge as the radius is a mistake: 1.571 times the edge', () => {
    const wrong = roundOf(plan({}), exactLength(cm(70) / 4));
    expect((wrong / cm(70)).toFixed(3)).toBe('1.571');
  });

  // Row 16.10, geometry: what a godet of 60° and 30 cm adds to a hem.
  test('16.10: arcs of one angle: 60° at 30 cm are 31.4', () => {
    const godet = sectorOf({ inner: ZERO, outer: cm(31.416) }, cm(30));
    expect(((godet.angle * 180) / Math.PI).toFixed(2)).toBe('60.00');
    expect(toCm(godet.inner)).toBe(0);
  });
});

describe('what is refused', () => {
  test.each<[string, Partial<CircleInput>, string]>([
    ['no edge', { edge: ZERO }, 'edge'],
    ['a seam that eats the hole', { seam: cm(11.2) }, 'seam'],
    ['no part of a circle', { kind: skirt(0) }, 'circles'],
    ['more than a turn in one piece', { kind: skirt(1.5) }, 'panels'],
    ['no fuller than its edge', { kind: { of: 'flounce', by: 'times', times: 1 } }, 'times'],
    [
      'rings that are all seam',
      { side: cm(30), kind: { of: 'flounce', by: 'radius', radius: cm(5) } },
      'radius',
    ],
    [
      'so full that rings are all seam',
      { side: cm(30), kind: { of: 'flounce', by: 'times', times: 20 } },
      'times',
    ],
    ['a hem no longer than its edge', { kind: { of: 'gores', count: 6, hem: cm(70) } }, 'sweep'],
    ['gores past a turn', { long: cm(5), kind: { of: 'gores', count: 1, hem: cm(300) } }, 'gores'],
  ])('%s', (_, set, field) => {
    expect(fieldsOf(circle({ ...SKIRT, ...set }))).toEqual([field]);
  });

  test('wider than the cloth, it says how many panels go on it; rings of a flounce are as they are', () => {
    const wide = circle({ ...SKIRT, cloth: cm(140) });
    // Halves of 142.2 are as deep as half of that.
    expect(wide).toMatchObject({
      problems: [
        { kind: 'too-short', field: 'cloth' },
        { kind: 'too-few', field: 'panels', least: 2, given: 1 },
      ],
    });
    expect(fieldsOf(circle({ ...SKIRT, kind: skirt(1, 2), cloth: cm(140) }))).toEqual([]);
    const gores = { of: 'gores', count: 2, hem: cm(400) } as const;
    expect(fieldsOf(circle({ ...SKIRT, kind: gores, cloth: cm(50) }))).toEqual(['cloth', 'gores']);
    const ring = { of: 'flounce', by: 'radius', radius: cm(20) } as const;
    expect(fieldsOf(circle({ ...SKIRT, kind: ring, cloth: cm(100) }))).toEqual(['cloth']);
    expect(fieldsOf(circle({ ...SKIRT, cloth: mm(1) }))).toEqual(['cloth']);
  });

  test('what is said to be enough is', () => {
    expect(plan({ kind: skirt(1.5, 2) }).pieces).toBe(2);
    expect(solved(circle({ ...SKIRT, cloth: cm(142.3) })).pieces).toBe(1);
  });
});

const anyKind = fc.oneof(
  fc
    .tuple(fc.constantFrom(1 / 4, 1 / 2, 3 / 4, 1, 1.5), fc.integer({ min: 2, max: 8 }))
    .map(([circles, panels]) => skirt(circles, panels)),
  fc
    .integer({ min: 11, max: 50 })
    .map((n) => ({ of: 'flounce', by: 'times', times: n / 10 }) as const),
  typed(20, 400).map((radius) => ({ of: 'flounce', by: 'radius', radius }) as const),
  fc
    .tuple(fc.integer({ min: 2, max: 16 }), typed(300, 6000))
    .map(([count, hem]) => ({ of: 'gores', count, hem }) as const),
);
const anyCircle = fc
  .record({
    kind: anyKind,
    edge: typed(100, 2000),
    long: typed(30, 1200),
    seam: typed(0, 20),
    side: typed(0, 20),
    hem: typed(0, 60),
    cloth: fc.constant(undefined),
  })
  .filter((input) => circle(input).ok);

// Derived here: rectangles side by side, in rows.
describe('panels in the width of a cloth', () => {
  const quarters = solved(circle({ ...SKIRT, kind: skirt(1, 4) }));
  const { wide, high } = quarters.box;

  test('as many side by side as their rectangles have room, in rows', () => {
    const two = length(Math.ceil(2 * wide));
    expect(inWidth(quarters, two)).toEqual({ side: 2, rows: 2, long: 2 * high, turned: false });
    expect(inWidth(quarters, length(two - 2))).toMatchObject({ side: 1, rows: 4, long: 4 * high });
    expect(inWidth(quarters, cm(900))).toMatchObject({ side: 4, rows: 1, long: high });
  });

  test('turned where only that goes on it', () => {
    const half = solved(circle({ ...SKIRT, kind: skirt(1, 2) }));
    const { box } = half;
    expect(box.wide).toBeGreaterThan(box.high);
    const found = inWidth(half, length(Math.ceil(box.high)));
    expect(found).toEqual({ side: 1, rows: 2, long: 2 * box.wide, turned: true });
  });

  test('wider cloth never takes more of its length, and all pieces have a place', () => {
    fc.assert(
      fc.property(anyCircle, typed(10, 3000), typed(1, 500), (input, over, more) => {
        const found = plan(input);
        const least = Math.ceil(Math.max(found.box.wide, found.box.high));
        const one = inWidth(found, length(least + over));
        const other = inWidth(found, length(least + over + more));
        expect(other.long).toBeLessThanOrEqual(one.long);
        expect(one.side * one.rows).toBeGreaterThanOrEqual(found.pieces);
      }),
      { seed: 1617, numRuns: 100 },
    );
  });
});

describe('laws', () => {
  test('all round it is the edge; down from it the hem grows by its angle; one law is behind all', () => {
    fc.assert(
      fc.property(anyCircle, (input) => {
        const found = plan(input);
        const { piece, pieces, hemLine, edge, lost } = found;
        expect(Math.abs(edge - input.edge)).toBeLessThan(1e-3);
        expect(hemLine - edge).toBeCloseTo(pieces * piece.angle * input.long, 2);
        expect(piece.outer - piece.inner).toBeCloseTo(input.long, 4);
        const again = sectorOf(
          {
            inner: exactLength((edge + lost) / pieces),
            outer: exactLength((hemLine + lost) / pieces),
          },
          input.long,
        );
        expect(again.inner / piece.inner).toBeCloseTo(1, 6);
        expect(again.angle).toBeCloseTo(piece.angle, 6);
      }),
      { numRuns: 2000, seed: 1721 },
    );
  });

  test('a flounce is at least as full as asked, with one ring fewer it would not be', () => {
    const flounces = anyCircle.filter(({ kind }) => kind.of === 'flounce' && kind.by === 'times');
    fc.assert(
      fc.property(flounces, (input) => {
        const { hemLine, edge, pieces, piece } = plan(input);
        const { kind } = input;
        if (kind.of !== 'flounce' || kind.by !== 'times') return;
        expect(hemLine / edge).toBeGreaterThan(kind.times - 1e-6);
        const asked = input.long / (kind.times - 1);
        expect(piece.inner).toBeLessThan(asked + 1);
        if (pieces === 1) return;
        const fewer = (input.edge / (pieces - 1) + 2 * input.side) / (2 * Math.PI);
        expect(fewer).toBeGreaterThan(asked - 1);
      }),
      { numRuns: 1000, seed: 1722 },
    );
  });

  // Another road: the outline walked point by point, its sides moved out by the allowance.
  test('the cloth for one piece is as large as the piece walked round, and no larger', () => {
    fc.assert(
      fc.property(
        anyCircle.filter(({ side }) => side > 0),
        fc.integer({ min: 3, max: 170 }),
        (input, degrees) => {
          const { cutRadius, cutHem } = plan(input);
          const angle = (degrees * Math.PI) / 180;
          const cut = { inner: cutRadius, outer: cutHem, angle };
          const box = sectorBox(cut, ZERO);
          const from = box.grain === 'side' ? 0 : -angle / 2;
          const walked = Array.from({ length: 2001 }, (_, i) => from + (i / 2000) * angle).flatMap(
            (turn) =>
              [cutRadius, cutHem].map((r) => [r * Math.sin(turn), r * Math.cos(turn)] as const),
          );
          const extent = (axis: 0 | 1) => {
            const all = walked.map((point) => point[axis]);
            return Math.max(...all) - Math.min(...all);
          };
          expect(extent(0) / box.wide).toBeCloseTo(1, 4);
          expect(extent(1) / box.high).toBeCloseTo(1, 4);
          // An allowance adds to it, never more than itself on each side where arcs are wide.
          const more = sectorBox(cut, input.side);
          expect(more.wide * more.high).toBeGreaterThan(box.wide * box.high - 1);
        },
      ),
      { numRuns: 300, seed: 1723 },
    );
  });

  test('twice as large all is twice as large, and turned as far', () => {
    fc.assert(
      fc.property(
        anyCircle.filter(({ kind }) => kind.of === 'skirt'),
        (input) => {
          const twice = <T extends number>(x: T) => (2 * x) as T;
          const { edge, long, seam, side, hem } = input;
          const large = plan({
            ...input,
            ...{ edge: twice(edge), long: twice(long), seam: twice(seam) },
            ...{ side: twice(side), hem: twice(hem) },
          });
          const one = plan(input);
          expect(large.cutRadius / one.cutRadius).toBeCloseTo(2, 9);
          expect(large.box.wide / one.box.wide).toBeCloseTo(2, 9);
          expect(large.piece.angle).toBe(one.piece.angle);
        },
      ),
      { numRuns: 500, seed: 1724 },
    );
  });
});
