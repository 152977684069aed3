import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Length } from '../../../src/lengths/length.ts';
import type { Fit, HoleRow, Middle, Rows, StripInput } from '../../../src/sewing/edging/strip.ts';
import { stripHoles } from '../../../src/sewing/edging/strip-holes.ts';
import { stripJoins } from '../../../src/sewing/edging/strip-joined.ts';
import { websOf } from '../../../src/sewing/edging/strip-material.ts';
import { placedHoles, planeOf, toSegment } from './strip-plane.ts';

/** A thousandth of a unit: what quotients may be off. */
const NOISE = 1e-3;

const lengths = (least: number, most: number) =>
  fc.integer({ min: least * 8, max: most * 8 }).map((parts) => (parts * 1000) as Length);

/** Holes as close as anyone might ask for, and closer: most are refused or only just fit. */
const shared = {
  width: lengths(4, 30),
  pitch: lengths(2, 12),
  margin: lengths(1, 15),
  hole: lengths(1, 6),
  rows: fc.constantFrom<Rows>('one', 'level', 'staggered'),
  fit: fc.constantFrom<Fit>('split', 'far-end', 'fill', 'loop'),
  middle: fc.constantFrom<Middle>('any', 'hole', 'between'),
  end: fc.option(lengths(0, 12), { nil: undefined }),
};
const straightOrBent: fc.Arbitrary<StripInput> = fc.record({
  ...shared,
  length: lengths(5, 200),
  radius: fc.option(lengths(2, 90), { nil: undefined }),
  corners: fc.constant([]),
  angle: fc.constant(90),
});
const turned: fc.Arbitrary<StripInput> = fc
  .record({
    ...shared,
    radius: fc.constant(undefined),
    sides: fc.array(lengths(10, 150), { minLength: 2, maxLength: 4 }),
    angle: fc.integer({ min: 20, max: 160 }),
  })
  .map(({ sides, ...rest }) => {
    const ends = sides.map((_, i) => sides.slice(0, i + 1).reduce((sum, side) => sum + side, 0));
    const corners = ends.slice(0, -1) as Length[];
    return { ...rest, length: ends.at(-1) as Length, corners };
  });

/** Of holes on one side, or on sides so many apart at the most. */
function nearestPair(strip: StripInput, rows: readonly HoleRow[], sides: number): number {
  const holes = placedHoles(strip, rows);
  let least = Number.POSITIVE_INFINITY;
  for (const [i, one] of holes.entries()) {
    for (const other of holes.slice(i + 1)) {
      if (Math.abs(one.side - other.side) > sides) continue;
      least = Math.min(least, Math.hypot(one.x - other.x, one.y - other.y));
    }
  }
  return least;
}

test.each([
  ['straight or bent', straightOrBent],
  ['with corners', turned],
])('%s: no two holes overlap, and none breaks an edge or a cut end', (_, strips) => {
  fc.assert(
    fc.property(strips, (strip) => {
      const outcome = stripHoles(strip);
      if (!outcome.ok) return;
      const { rows } = outcome.value;
      const holes = placedHoles(strip, rows);
      expect(holes).toHaveLength(outcome.value.count);
      expect(nearestPair(strip, rows, Number.POSITIVE_INFINITY)).toBeGreaterThan(
        strip.hole - NOISE,
      );
      const plane = planeOf(strip);
      const edge = Math.min(...holes.map((hole) => plane.toEdges(hole)));
      expect(edge).toBeGreaterThan(strip.hole / 2 - NOISE);
      for (const [cut, side] of [
        [plane.cut(0), 0],
        [plane.cut(strip.length), strip.corners.length],
      ] as const) {
        const near = holes.filter((hole) => Math.abs(hole.side - side) <= 2);
        const clear = Math.min(...near.map((hole) => toSegment(hole, cut)));
        expect(clear).toBeGreaterThan(strip.hole / 2 - NOISE);
      }
    }),
    { numRuns: 1000 },
  );
});

test.each([
  ['straight or bent', straightOrBent],
  ['with corners', turned],
])('%s: what is said to be left is what is left', (_, strips) => {
  fc.assert(
    fc.property(strips, (strip) => {
      const outcome = stripHoles(strip);
      if (!outcome.ok) return;
      const { rows } = outcome.value;
      const webs = new Map(websOf(strip, outcome.value).map(({ place, clear }) => [place, clear]));
      const plane = planeOf(strip);
      const holes = placedHoles(strip, rows);
      const least = (which: readonly number[]) => Math.min(...which) - strip.hole / 2;
      const cuts = [plane.cut(0), plane.cut(strip.length)];
      // Bent so far that the cut ends come near each other, there is a cut between the nearest.
      const isOpen = strip.radius === undefined || strip.length < 3 * strip.radius;
      const far = Number.POSITIVE_INFINITY;
      const said = Math.min(webs.get('along') ?? far, webs.get('rows') ?? far);
      const found = nearestPair(strip, rows, 1) - strip.hole;
      if (isOpen && strip.corners.length === 0 && rows.some(({ count }) => count > 1)) {
        expect(said).toBeCloseTo(found, 2);
      } else if (isOpen) {
        expect(said).toBeLessThanOrEqual(found + NOISE);
      }
      expect(webs.get('edge')).toBeCloseTo(least(holes.map((hole) => plane.toEdges(hole))), 2);
      if (strip.corners.length > 0) return;
      const end = least(holes.flatMap((hole) => cuts.map((cut) => toSegment(hole, cut))));
      expect(webs.get('end')).toBeLessThanOrEqual(end + NOISE);
      if (strip.radius === undefined) expect(webs.get('end')).toBeCloseTo(end, 2);
    }),
    { numRuns: 1000 },
  );
});

test.each([
  ['straight or bent', straightOrBent],
  ['with corners', turned],
])('%s: no join goes through a hole, a corner or a crossing', (_, strips) => {
  const crossings = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 2 });
  fc.assert(
    fc.property(strips, lengths(10, 100), crossings, (strip, stock, parts) => {
      const outcome = stripHoles(strip);
      if (!outcome.ok) return;
      const { rows } = outcome.value;
      const crossed = parts.map((part) => Math.round(part * strip.length) as Length);
      const found = stripJoins(strip, rows, stock, crossed);
      if (!found) return;
      const plane = planeOf(strip);
      const holes = placedHoles(strip, rows);
      const cuts = [0, ...found.at, strip.length];
      for (const [i, at] of cuts.slice(1).entries()) {
        expect(at - (cuts[i] as number)).toBeLessThanOrEqual(stock + 0.01);
      }
      for (const at of found.at) {
        const side = strip.corners.filter((corner) => corner <= at).length;
        const near = holes.filter((hole) => Math.abs(hole.side - side) <= 2);
        const clear = Math.min(...near.map((hole) => toSegment(hole, plane.cut(at))));
        expect(clear).toBeGreaterThan(strip.hole / 2 - NOISE);
        const off = Math.min(
          ...[...strip.corners, ...crossed].map((place) => Math.abs(place - at)),
        );
        expect(off).toBeGreaterThan(strip.width - 0.01);
        if (!found.thin) expect(clear).toBeGreaterThan(1.5 * strip.hole - 0.01);
      }
    }),
    { numRuns: 1000 },
  );
});
