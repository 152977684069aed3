import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Outline, type Point, signedArea } from '../../../src/lay/outline.ts';
import { ARC_MM, arcCorners } from '../../../src/lay/pieces/arc-side.ts';
import {
  MOST_CORNERS,
  type PieceShape,
  pieceOutline,
} from '../../../src/lay/pieces/piece-outline.ts';
import { outlines, shared } from '../lays.ts';

function outlineOf(shape: PieceShape): Outline {
  const found = pieceOutline(shape);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value.outline;
}

function problemsOf(shape: PieceShape) {
  const found = pieceOutline(shape);
  return found.ok ? [] : found.problems;
}

const points = (...corners: Point[]): PieceShape => ({ kind: 'points', points: corners });

test('a straight piece is as long and as wide as it is said to be', () => {
  const shape: PieceShape = { kind: 'straight', length: 400, width: 250 };
  expect(pieceOutline(shape)).toEqual({
    ok: true,
    value: {
      outline: [
        [0, 0],
        [400, 0],
        [400, 250],
        [0, 250],
      ],
      sides: [0, 1, 2, 3],
    },
  });
});

test('a tapered piece has the area of a trapezium, slanted on both sides or on the high one', () => {
  // A trapezium's area: half the sum of its parallel sides times the distance between them.
  const gore = { kind: 'tapered', length: 600, start: 150, end: 350 } as const;
  const both = outlineOf({ ...gore, slant: 'both' });
  const high = outlineOf({ ...gore, slant: 'high' });
  expect(signedArea(both)).toBe(600 * 250);
  expect(signedArea(high)).toBe(600 * 250);
  expect(both[0]).toEqual([0, 100]);
  expect(high.slice(0, 2)).toEqual([
    [0, 0],
    [600, 0],
  ]);
  const point = outlineOf({ ...gore, start: 0, slant: 'both' });
  expect(point).toHaveLength(3);
  expect(signedArea(point)).toBe((600 * 350) / 2);
});

test('a side that bows out adds a segment of its circle and a little, one that bows in takes one', () => {
  // The circle's segment over a chord: (r² / 2) (θ − sin θ); half a circle of 100: π 100² / 2.
  const half = (Math.PI * 100 ** 2) / 2;
  const round = { kind: 'straight', length: 300, width: 200 } as const;
  const out = signedArea(outlineOf({ ...round, rises: [0, 100] })) - 300 * 200 - half;
  expect(out).toBeGreaterThan(0);
  expect(out).toBeLessThan(ARC_MM * Math.PI * 100);
  const into = signedArea(outlineOf({ ...round, rises: [0, -100] })) - 300 * 200 + half;
  expect(into).toBeGreaterThan(0);
  expect(into).toBeLessThan(ARC_MM * Math.PI * 100);
});

test('every corner of an arc lies outside the piece, and no farther than half a millimetre', () => {
  const side = fc.record({
    chord: fc.double({ min: 1, max: 3000, noNaN: true }),
    bow: fc.double({ min: -0.5, max: 0.5, noNaN: true }).filter((bow) => Math.abs(bow) > 1e-6),
    turn: fc.double({ min: 0, max: 7, noNaN: true }),
  });
  const law = fc.property(side, ({ chord, bow, turn }) => {
    const rise = bow * chord;
    const along: Point = [Math.cos(turn), Math.sin(turn)];
    const to: Point = [chord * along[0], chord * along[1]];
    const corners = arcCorners([0, 0], to, rise);
    // The circle through both ends and the top of the bow (intersecting chords): r = c² / 8h + h / 2.
    const radius = chord ** 2 / (8 * Math.abs(rise)) + Math.abs(rise) / 2;
    const middle = rise > 0 ? rise - radius : rise + radius;
    const centre: Point = [to[0] / 2 + middle * along[1], to[1] / 2 - middle * along[0]];
    const all = [[0, 0] as Point, ...corners, to];
    for (const [i, [x, y]] of all.slice(1).entries()) {
      const [u, v] = all[i]!;
      const least = 1e-9 * (radius + 1);
      const far = Math.hypot(x - centre[0], y - centre[1]) - radius;
      expect(far).toBeLessThanOrEqual(ARC_MM + least);
      expect(far).toBeGreaterThanOrEqual(-least);
      // The way between two corners touches the circle from outside, or is a chord of it.
      const length = Math.hypot(x - u, y - v);
      const near =
        Math.abs((centre[0] - u) * (y - v) - (centre[1] - v) * (x - u)) / length - radius;
      expect(Math.abs(near)).toBeLessThanOrEqual(ARC_MM + least);
      if (rise > 0) expect(near).toBeGreaterThanOrEqual(-least);
      else expect(far).toBeLessThanOrEqual(least);
    }
  });
  fc.assert(law, { seed: 18, numRuns: 500 });
});

test('an outline is the same piece whichever way round it is entered', () => {
  const law = fc.property(
    outlines(),
    fc.array(fc.integer({ min: -9, max: 9 })),
    (corners, bows) => {
      const count = corners.length;
      const rises = corners.map((_, i) => bows[i] ?? 0);
      const back = [...corners].reverse();
      // The side from a corner to the next is, of the outline back to front, the one before it.
      const backRises = rises.map((_, i) => rises[(2 * count - 2 - i) % count]!);
      const one = pieceOutline({ kind: 'points', points: corners, rises });
      const other = pieceOutline({ kind: 'points', points: back, rises: backRises });
      expect(other.ok).toBe(one.ok);
      if (!one.ok || !other.ok) return;
      const area = signedArea(one.value.outline);
      expect(area).toBeGreaterThan(0);
      expect(signedArea(other.value.outline)).toBeCloseTo(area, 6);
      expect(shared(one.value.outline, other.value.outline)).toBeCloseTo(area, 3);
      for (const [k, side] of other.value.sides.entries()) {
        const at = other.value.outline[k]!;
        const twin = one.value.outline.findIndex(
          ([x, y]) => Math.hypot(x - at[0], y - at[1]) < 1e-6,
        );
        expect(one.value.sides[twin]).toBe((2 * count - 2 - side) % count);
      }
    },
  );
  fc.assert(law, { seed: 18, numRuns: 100 });
});

test('sides that cross are named, with the place', () => {
  expect(problemsOf(points([0, 0], [100, 100], [100, 0], [0, 80]))).toEqual([
    {
      kind: 'crosses',
      side: 0,
      other: 2,
      x: expect.closeTo(400 / 9, 9),
      y: expect.closeTo(400 / 9, 9),
    },
  ]);
  // A corner on another side, a side that runs back, and the same way twice.
  expect(problemsOf(points([0, 0], [100, 0], [100, 50], [50, 0], [0, 50]))).toMatchObject([
    { kind: 'crosses', x: 50, y: 0 },
  ]);
  expect(problemsOf(points([0, 0], [100, 0], [50, 0], [50, 50]))).toMatchObject([
    { kind: 'crosses', side: 0, other: 1, x: 100, y: 0 },
  ]);
  // Two sides of a narrow strip that bow into each other.
  expect(
    problemsOf({ kind: 'straight', length: 400, width: 50, rises: [-40, 0, -40, 0] }),
  ).toMatchObject([{ kind: 'crosses', side: 0, other: 2 }]);
});

test('an outline is refused where two of its ways meet, and nowhere else', () => {
  // Whole numbers, so that each way can be looked at beside each other without rounding.
  const turn = ([a, b]: Point, [c, d]: Point, [e, f]: Point) =>
    Math.sign((c - a) * (f - b) - (d - b) * (e - a));
  const on = (a: Point, b: Point, p: Point) =>
    turn(a, b, p) === 0 && (p[0] - a[0]) * (p[0] - b[0]) + (p[1] - a[1]) * (p[1] - b[1]) <= 0;
  const meet = (a: Point, b: Point, c: Point, d: Point) =>
    on(a, b, c) ||
    on(a, b, d) ||
    on(c, d, a) ||
    on(c, d, b) ||
    (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0);
  const place = fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 }));
  const ring = fc.uniqueArray(place, { minLength: 3, maxLength: 8, selector: String });
  const law = fc.property(ring, (corners) => {
    const at = (i: number) => corners[i % corners.length]!;
    const crosses = corners.some((_, i) =>
      corners.some((_, j) => {
        if (j <= i) return false;
        if (j === i + 1) return on(at(i), at(j), at(j + 1)) || on(at(j), at(j + 1), at(i));
        const last = i === 0 && j === corners.length - 1;
        if (last) return on(at(j), at(0), at(1)) || on(at(0), at(1), at(j));
        return meet(at(i), at(i + 1), at(j), at(j + 1));
      }),
    );
    const [first] = problemsOf(points(...corners));
    if (first?.kind === 'no-area' || first?.kind === 'out-of-range') return;
    expect(first?.kind).toBe(crosses ? 'crosses' : undefined);
  });
  fc.assert(law, { seed: 18, numRuns: 3000 });
});

test('what makes no piece is said, with its facts', () => {
  expect(problemsOf(points([0, 0], [9, 9]))).toEqual([{ kind: 'too-few', points: 2, least: 3 }]);
  expect(problemsOf(points([0, 0], [9, 9], [0, 0], [9, 9]))).toMatchObject([{ kind: 'no-area' }]);
  expect(problemsOf(points([0, 0], [30, 10], [90, 30]))).toMatchObject([{ kind: 'no-area' }]);
  expect(problemsOf(points([5, 5], [5, 5], [5, 5]))).toMatchObject([
    { kind: 'too-few', points: 0 },
  ]);
  expect(problemsOf(points([0, 0], [Number.NaN, 9], [0, 1e300]))).toEqual([
    { kind: 'not-a-number', field: 'x', at: 1 },
    { kind: 'out-of-range', field: 'y', at: 2, mm: 1e300, least: -50_000, most: 50_000 },
  ]);
  expect(problemsOf({ kind: 'straight', length: 0, width: Number.POSITIVE_INFINITY })).toEqual([
    { kind: 'out-of-range', field: 'length', mm: 0, least: 1, most: 50_000 },
    { kind: 'not-a-number', field: 'width' },
  ]);
  expect(
    problemsOf({ kind: 'tapered', length: 90, start: 0, end: 0, slant: 'both' }),
  ).toMatchObject([{ field: 'start' }, { field: 'end' }]);
  expect(problemsOf({ kind: 'straight', length: 90, width: 60, rises: [0, 31] })).toEqual([
    { kind: 'too-round', at: 1, mm: 31, most: 30 },
  ]);
  const many = Array.from({ length: MOST_CORNERS + 1 }, (_, i): Point => [i, i % 7]);
  expect(problemsOf(points(...many))).toMatchObject([{ kind: 'too-many', most: MOST_CORNERS }]);
});
