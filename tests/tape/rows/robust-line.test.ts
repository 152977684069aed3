import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Strip } from '../../../src/tape/frame/strip.ts';
import { alongRow } from '../../../src/tape/picture/space.ts';
import { robustLine } from '../../../src/tape/rows/robust-line.ts';
import { strokeEnergy, strokePlace } from '../../../src/tape/rows/stroke-places.ts';
import { number } from '../made/even-numbers.ts';

const place = (u: number, v: number, weight = 1) => ({ u, v, weight });

describe('a line through most places', () => {
  test('is exact through places on a line, with up to two in five far off it', () => {
    const strays = fc.array(number(8, 30), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(number(-0.1, 0.1), number(-10, 10), strays, (slope, start, off) => {
        const places = Array.from({ length: 20 }, (_, i) => {
          const stray = i % 5 < 2 ? off[Math.floor(i / 5) * 2 + (i % 5)]! * (i % 2 ? 1 : -1) : 0;
          return place(40 * i - 400, start + slope * (40 * i - 400) + stray);
        });
        const line = robustLine(places);
        expect(line?.slope).toBeCloseTo(slope, 6);
        expect(line?.start).toBeCloseTo(start, 4);
      }),
    );
  });

  test('goes by weight where two lines compete', () => {
    const places = Array.from({ length: 20 }, (_, i) =>
      i % 2 ? place(30 * i, 12, 1) : place(30 * i, -5, 3),
    );
    expect(robustLine(places)).toEqual({ slope: expect.closeTo(0), start: expect.closeTo(-5) });
  });

  test('of too few places there is none, nor of places that only climb', () => {
    expect(robustLine([0, 1, 2, 3].map((i) => place(50 * i, 0)))).toBeNull();
    expect(robustLine([0, 1, 2, 3, 4, 5].map((i) => place(10 * i, 5 * i)))).toBeNull();
  });
});

/** A strip 200 long with strokes of 2 px every 8, between v = low and v = high. */
function stripOf(low: number, high: number): Strip {
  const [width, reach] = [200, 20];
  const values = Float32Array.from({ length: width * (2 * reach + 1) }, (_, i) => {
    const v = Math.floor(i / width) - reach;
    return (i % width) % 8 < 2 && v >= low && v <= high ? 3 : 5;
  });
  return { from: alongRow(-50), to: alongRow(149), width, height: 2 * reach + 1, reach, values };
}

const EDGE = { leastAlong: 0.06, acrossCost: 3 };
const EVENLY = () => 1;

describe('where strokes sit', () => {
  test.each([
    [-3, 3],
    [4, 12],
    [-15, -7],
  ])('from %d to %d: about their middle', (low, high) => {
    const strip = stripOf(low, high);
    const found = strokePlace(strip, strokeEnergy(strip, EDGE), 40, 48, EVENLY);
    expect(found?.u).toBe(-50 + 40 + 24);
    expect(found?.v).toBeCloseTo((low + high) / 2, 0);
  });

  test('one readier to believe one side takes that one', () => {
    const [upper, lower] = [stripOf(-14, -6), stripOf(6, 14)];
    const values = upper.values.map((value, i) => Math.min(value, lower.values[i]!));
    const both = { ...upper, values };
    const at = (lean: (v: number) => number) =>
      strokePlace(both, strokeEnergy(both, EDGE), 40, 48, lean)?.v;
    expect(at((v) => (v > 0 ? 1 : 0.5))).toBeCloseTo(10, 0);
    expect(at((v) => (v < 0 ? 1 : 0.5))).toBeCloseTo(-10, 0);
  });

  test('nowhere on an even strip', () => {
    const strip = stripOf(1, 0);
    expect(strokePlace(strip, strokeEnergy(strip, EDGE), 40, 48, EVENLY)).toBeUndefined();
  });

  test('a band that reaches over the border of the picture says nothing', () => {
    const strip = stripOf(-3, 3);
    const values = strip.values.map((value, i) => (i < 20 * strip.width ? Number.NaN : value));
    const cut = { ...strip, values };
    // The picture begins at v = 0 and bands reach 5 to either side.
    const upTo = (most: number) =>
      strokePlace(cut, strokeEnergy(cut, EDGE), 40, 48, (v) => (v <= most ? 1 : 0));
    expect(upTo(5)).toBeUndefined();
    expect(upTo(6)).toBeDefined();
  });
});

test.each([
  ['along the row', 0],
  ['at 45° to it', 1],
])('an edge %s has no energy', (_, lean) => {
  const strip = stripOf(1, 0);
  const step = strip.values.map((_, i) => {
    const v = Math.floor(i / strip.width) - strip.reach;
    return v < lean * ((i % strip.width) - 100) ? 3 : 5;
  });
  expect(Math.max(...strokeEnergy({ ...strip, values: step }, EDGE))).toBe(0);
});
