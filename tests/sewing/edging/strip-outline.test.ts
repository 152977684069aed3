import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Length, mm, toMm } from '../../../src/lengths/length.ts';
import type { Rows, StripInput } from '../../../src/sewing/edging/strip.ts';
import { stripHoles } from '../../../src/sewing/edging/strip-holes.ts';
import { sidesOf } from '../../../src/sewing/edging/strip-sides.ts';
import { fieldsOf, solved } from '../outcomes.ts';
import { planeOf } from './strip-plane.ts';

const RECTANGLE: StripInput = {
  length: mm(500),
  width: mm(20),
  pitch: mm(8),
  margin: mm(5),
  hole: mm(2),
  rows: 'one',
  fit: 'loop',
  middle: 'any',
  corners: [mm(100), mm(250), mm(350)],
  angle: 90,
};
const outline = (set: Partial<StripInput> = {}) => stripHoles({ ...RECTANGLE, ...set });
const problemsOf = (set: Partial<StripInput>) => {
  const outcome = outline(set);
  return outcome.ok ? [] : outcome.problems;
};

describe('a closed outline', () => {
  test('a rectangle of 100 by 150: each hole in a corner is shared by two sides, and counted once', () => {
    const [row] = solved(outline()).rows;
    // Between corner holes 90 and 140: 11 spaces of 8.18 and 17 or 18 (17.5 of 8), twice (derived here).
    const long = [17, 18].sort((a, b) => Math.abs(140 / a - 8) - Math.abs(140 / b - 8))[0] ?? 0;
    expect(row?.count).toBe(2 * (11 + long));
    expect(row?.runs).toHaveLength(4);
    expect(row?.runs.every(({ datum }) => datum === 'edge-corner')).toBe(true);
    const last = row?.runs.at(-1)?.marks.at(-1);
    expect([last?.label, last?.kind]).toEqual(['1', 'corner']);
    const labels = row?.runs.flatMap(({ marks }) => marks.slice(1).map(({ label }) => label)) ?? [];
    expect(new Set(labels).size).toBe(row?.count);
  });

  test('the same however the first corner is given, or begun within a side', () => {
    const { count } = solved(outline());
    const at = (...places: number[]) => places.map((place) => mm(place));
    expect(solved(outline({ corners: at(0, 100, 250, 350) })).count).toBe(count);
    expect(solved(outline({ corners: at(100, 250, 350, 500) })).count).toBe(count);
    expect(solved(outline({ corners: at(0, 100, 250, 350, 500) })).count).toBe(count);
    expect(solved(outline({ corners: at(30, 130, 280, 380) })).count).toBe(count);
  });

  test('along open corners the same edge has a hole more: nothing is shared at its ends', () => {
    const open = solved(stripHoles({ ...RECTANGLE, fit: 'fill', length: mm(380) }));
    expect(open.rows[0]?.runs.at(-1)?.marks.at(-1)?.kind).toBe('hole');
    expect(open.rows[0]?.ends).toBeDefined();
  });

  test.each([3, 5, 6])('%d equal sides close', (sides) => {
    const angle = 180 - 360 / sides;
    const corners = Array.from({ length: sides - 1 }, (_, i) => mm(100 * (i + 1)));
    const { count } = solved(outline({ length: mm(100 * sides), corners, angle }));
    expect(count % sides).toBe(0);
  });

  test.each<[string, Partial<StripInput>, string, string]>([
    ['corners that turn too little', { angle: 100 }, 'not-round', 'angle'],
    ['a corner too few', { corners: [mm(100), mm(250)] }, 'not-round', 'angle'],
    [
      'sides that miss where they begin',
      { corners: [mm(100), mm(250), mm(320)] },
      'gap',
      'corners',
    ],
    ['a side with no room', { corners: [mm(30), mm(250), mm(280)] }, 'does-not-fit', 'corners'],
    ['out of order', { corners: [mm(250), mm(100), mm(350)] }, 'not-in-order', 'corners'],
    ['past the length', { corners: [mm(100), mm(250), mm(600)] }, 'outside', 'corners'],
    ['twice', { corners: [mm(100), mm(100), mm(350)] }, 'twice', 'corners'],
  ])('refused, with the field: %s', (_, set, kind, field) => {
    expect(problemsOf(set)).toMatchObject([{ kind, field }]);
  });
});

describe('a strip that crosses itself', () => {
  const OPEN = { ...RECTANGLE, fit: 'fill' as const };
  const turning = (...sides: number[]): StripInput => {
    const ends = sides.map((_, i) => sides.slice(0, i + 1).reduce((sum, side) => sum + side, 0));
    return { ...OPEN, corners: ends.slice(0, -1).map(mm), length: mm(ends.at(-1) ?? 0) };
  };

  test('is refused, with the sides', () => {
    // Side 4 ends in the corner that side 1 begins in, and side 5 would lie along it.
    const outcome = stripHoles(turning(150, 150, 150, 150, 100));
    expect(outcome.ok ? [] : outcome.problems).toEqual([
      { kind: 'crosses-itself', field: 'corners', side: 1, other: 4 },
    ]);
  });

  test('a spiral that runs inside itself is not', () => {
    expect(fieldsOf(stripHoles(turning(150, 150, 150, 120, 80)))).toEqual([]);
  });
});

const sizes = (least: number, most: number) => fc.integer({ min: least, max: most });
const turned: fc.Arbitrary<StripInput> = fc
  .record({
    sides: fc.array(sizes(30, 200), { minLength: 3, maxLength: 7 }),
    width: sizes(8, 30),
    angle: sizes(40, 150),
    pitch: sizes(5, 20),
    rows: fc.constantFrom<Rows>('one', 'level'),
  })
  .map(({ sides, ...rest }) => {
    const ends = sides.map((_, i) => sides.slice(0, i + 1).reduce((sum, side) => sum + side, 0));
    return {
      ...RECTANGLE,
      fit: 'fill' as const,
      margin: mm(3),
      rows: rest.rows,
      width: mm(rest.width),
      pitch: mm(rest.pitch),
      angle: rest.angle,
      length: mm(ends.at(-1) ?? 0),
      corners: ends.slice(0, -1).map(mm),
    };
  });

/** Places all over each side’s leather, every 5 mm, in mm: inside the mitres by a little. */
function leather(strip: StripInput): { x: number; y: number }[][] {
  const plane = planeOf(strip);
  const half = Math.tan((strip.angle * Math.PI) / 360);
  return sidesOf(strip).map(({ long, begins, ends }, side) => {
    const places: { x: number; y: number }[] = [];
    for (let across = 0; across <= strip.width; across += strip.width / 4) {
      const back = across / half;
      const from = begins ? back : 0;
      const to = ends ? long - back : long;
      const steps = Math.max(1, Math.ceil((to - from) / mm(5)));
      for (let i = 0; i <= steps; i++) {
        const [x, y] = plane.place(side, from + ((to - from) * i) / steps, across);
        places.push({ x: x / 8000, y: y / 8000 });
      }
    }
    return places;
  });
}

/** The nearest any leather of sides comes that no corner joins, by places on it. */
function nearest(sides: { x: number; y: number }[][]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [i, one] of sides.entries()) {
    for (const other of sides.slice(i + 2)) {
      for (const a of one) {
        for (const b of other) least = Math.min(least, Math.hypot(a.x - b.x, a.y - b.y));
      }
    }
  }
  return least;
}

describe('laws, against brute force on the flat', () => {
  test('what is accepted nowhere lies on itself; what is refused for it does', () => {
    let [crossed, laid] = [0, 0];
    fc.assert(
      fc.property(turned, (strip) => {
        const outcome = stripHoles(strip);
        const why = outcome.ok ? undefined : outcome.problems[0].kind;
        if (why !== undefined && why !== 'crosses-itself') return;
        // Places 5 mm along and a quarter of the width across: leather on leather is nearer than that.
        const step = Math.hypot(2.5, toMm(strip.width) / 8) + 0.01;
        const near = nearest(leather(strip));
        if (why === 'crosses-itself') {
          crossed++;
          expect(near).toBeLessThan(step);
        } else {
          laid++;
          expect(near).toBeGreaterThan(0);
        }
      }),
      { numRuns: 100, seed: 1211 },
    );
    expect(Math.min(crossed, laid)).toBeGreaterThan(5);
  });

  test('no two holes of an accepted strip overlap, on whatever sides', () => {
    fc.assert(
      fc.property(turned, (strip) => {
        const outcome = stripHoles(strip);
        if (!outcome.ok) return;
        const plane = planeOf(strip);
        const holes = outcome.value.rows.flatMap(({ runs, across }) =>
          runs.flatMap(({ marks }, side) =>
            marks.slice(side === 0 ? 0 : 1).map(({ at }) => plane.place(side, at, across)),
          ),
        );
        for (const [i, [x, y]] of holes.entries()) {
          for (const [ox, oy] of holes.slice(i + 1)) {
            expect(Math.hypot(x - ox, y - oy)).toBeGreaterThan(strip.hole - 1);
          }
        }
      }),
      { numRuns: 100, seed: 1212 },
    );
  });

  test('each side has the pitch nearest to the wanted one, of all counts', () => {
    fc.assert(
      fc.property(turned, (strip) => {
        const outcome = stripHoles(strip);
        if (!outcome.ok) return;
        for (const { runs, pitches } of outcome.value.rows) {
          for (const [side, { marks }] of runs.entries()) {
            const [first, last] = [marks[0]?.at ?? 0, marks.at(-1)?.at ?? 0];
            const off = Math.abs((pitches[side] ?? 0) - strip.pitch);
            for (let spaces = 1; spaces < 100; spaces++) {
              const own = (last - first) / spaces;
              if (own < Math.max(strip.pitch / 2, strip.hole + 80)) break;
              expect(Math.abs(own - strip.pitch)).toBeGreaterThan(off - 0.01);
            }
          }
        }
      }),
      { numRuns: 200, seed: 1213 },
    );
  });

  test('a rectangle is closed with as many holes as spaces, its corners in their places', () => {
    const any = fc.record({ a: sizes(60, 300), b: sizes(60, 300), pitch: sizes(5, 20) });
    fc.assert(
      fc.property(any, ({ a, b, pitch }) => {
        const corners = [a, a + b, 2 * a + b].map(mm);
        const set = { length: mm(2 * (a + b)), corners, pitch: mm(pitch), rows: 'level' as const };
        for (const { count, runs, pitches, across } of solved(outline(set)).rows) {
          const round = runs.reduce((sum, { marks }) => sum + marks.length - 1, 0);
          expect(count).toBe(round);
          for (const [i, { marks, length }] of runs.entries()) {
            expect(marks[0]?.at).toBeCloseTo(across, 3);
            expect((marks.at(-1)?.at ?? 0) + across).toBeCloseTo(length as Length, 3);
            expect(length).toBe(mm(i % 2 === 0 ? a : b));
          }
          expect(pitches[0]).toBeCloseTo(pitches[2] ?? 0, 6);
        }
      }),
      { numRuns: 200, seed: 1214 },
    );
  });
});
