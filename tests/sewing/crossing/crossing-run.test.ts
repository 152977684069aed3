import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import type { Crossed, StripAcross } from '../../../src/sewing/crossing/crossing-holes.ts';
import { newHoles } from '../../../src/sewing/crossing/crossing-run.ts';
import {
  type Crossing,
  crossing,
  type UpperHole,
} from '../../../src/sewing/crossing/strip-crossing.ts';
import { STRIP } from '../edging/strip-across.ts';
import { solved } from '../outcomes.ts';

/** A crossing with nothing of it yet. */
const NONE: Crossing = {
  ...{ shift: ZERO, pitch: mm(8), clashes: 0, shared: 0, room: undefined, holes: [] },
};

test('square: along from the last hole of the first row before them, across from its edge', () => {
  // Upper rows at ∓5 along the lower strip, holes at −8, 0 and 8 across it (derived here): the
  // lower strip's holes are at 8i along, the last before −5 is at −8.
  const { asLaid } = solved(crossing({ lower: STRIP, upper: STRIP, angle: 90, hole: mm(2) }));
  const found = newHoles(STRIP, asLaid);
  expect(toMm(found?.from ?? ZERO)).toBe(-8);
  expect(found?.run.datum).toBe('hole-before');
  expect(found?.run.length).toBe(mm(13));
  expect(found?.run.marks.map(({ label }) => label)).toEqual(['1', '2', '3', '4', '5', '6']);
  expect(
    found?.run.marks.map(({ at, across }) => [at, across ?? ZERO].map((x) => Math.round(toMm(x)))),
  ).toEqual([
    [3, 2],
    [3, 10],
    [3, 18],
    [13, 2],
    [13, 10],
    [13, 18],
  ]);
});

test('where every hole is shared there is none', () => {
  const one = { ...STRIP, rows: 'one' as const, margin: mm(10), pitch: mm(30) };
  const { asLaid } = solved(crossing({ lower: one, upper: one, angle: 90, hole: mm(2) }));
  expect(asLaid.shared).toBe(1);
  expect(newHoles(one, asLaid)).toBeUndefined();
});

describe('holes level with each other, or with one that is made', () => {
  const hole = (along: number, across: number) => ({
    ...{ along: exactLength(along), across: exactLength(mm(across)) },
    ...{ meets: 'clear' as const, nearEdge: false },
  });
  const of = (...holes: UpperHole[]) =>
    newHoles({ ...STRIP, phase: exactLength(mm(8) / 3) }, { ...NONE, holes });

  test('are in order across, whatever the last places of a sum', () => {
    const found = of(hole(mm(12), 3), hole(mm(12) + 1e-6, -3));
    expect(found?.run.marks.map(({ across }) => toMm(across ?? ZERO))).toEqual([7, 13]);
  });

  test('are measured from that one, at nothing', () => {
    const found = of(hole(mm(8) / 3 + mm(16), 3));
    expect([found?.run.marks[0]?.at, found?.run.length]).toEqual([0, 0]);
  });
});

test('they are the holes that are not shared, in order, less than a pitch from the one before', () => {
  const sized = (least: number, most: number) => fc.integer({ min: least, max: most }).map(mm);
  const strips: fc.Arbitrary<StripAcross> = fc.record({
    width: sized(16, 40),
    pitch: sized(5, 14),
    margin: sized(3, 5),
    rows: fc.constantFrom('one' as const, 'level' as const, 'staggered' as const),
    phase: sized(0, 6),
  });
  const crossings: fc.Arbitrary<Crossed> = fc.record({
    lower: strips,
    upper: strips,
    angle: fc.integer({ min: 20, max: 160 }),
    hole: fc.constant(mm(2)),
  });
  fc.assert(
    fc.property(crossings, (input) => {
      const { asLaid } = solved(crossing(input));
      const { run, from } = newHoles(input.lower, asLaid) ?? {};
      const fresh = asLaid.holes.filter(({ meets }) => meets !== 'shared');
      expect(run?.marks.length ?? 0).toBe(fresh.length);
      if (!run || from === undefined) return;
      const off = (from - input.lower.phase) / input.lower.pitch;
      expect(off).toBeCloseTo(Math.round(off), 6);
      expect(run.marks[0]?.at).toBeGreaterThanOrEqual(0);
      expect(run.marks[0]?.at).toBeLessThan(input.lower.pitch);
      run.marks.forEach(({ at, across }, i) => {
        expect(at).toBeLessThanOrEqual(run.length);
        expect(at).toBeGreaterThanOrEqual((run.marks[i - 1]?.at ?? 0) - 1);
        const y = (across ?? 0) - input.lower.width / 2;
        const away = fresh.map((hole) => Math.hypot(hole.along - from - at, hole.across - y));
        expect(Math.min(...away)).toBeLessThan(1);
      });
      expect(exactLength(run.length - (run.marks.at(-1)?.at ?? 0))).toBeLessThanOrEqual(1);
    }),
  );
});
