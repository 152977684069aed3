import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, type Length, LONGEST, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { clashRanges, fewestClashes } from '../../../src/sewing/crossing/crossing-clear.ts';
import type { Crossed, StripAcross } from '../../../src/sewing/crossing/crossing-holes.ts';
import { crossing } from '../../../src/sewing/crossing/strip-crossing.ts';
import type { Rows } from '../../../src/sewing/edging/strip.ts';
import { STRIP } from '../edging/strip-across.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const SQUARE: Crossed = { lower: STRIP, upper: STRIP, angle: 90, hole: mm(2) };

/** What the last places of a sum may be off by, in mm. */
const NOISE = 1e-7;

/** The same by other means: every hole of long strips, one by one, in mm. */
function byHand({ lower, upper, angle, hole }: Crossed, pitch: number, shift: number) {
  const φ = (angle * Math.PI) / 180;
  const holesOf = (strip: StripAcross, own: number, moved: number) => {
    const apart = toMm(strip.width) / 2 - toMm(strip.margin);
    const rows = strip.rows === 'one' ? [-apart] : [-apart, apart];
    return rows.flatMap((y, row) => {
      const start =
        toMm(strip.phase) + moved + (row === 1 && strip.rows === 'staggered' ? own / 2 : 0);
      const many = Math.ceil(1000 / own);
      return Array.from({ length: 2 * many + 1 }, (_, i) => ({ x: start + (i - many) * own, y }));
    });
  };
  const d = toMm(hole);
  const over = holesOf(upper, pitch, shift)
    .map(({ x, y }) => ({
      x: x * Math.cos(φ) - y * Math.sin(φ),
      y: x * Math.sin(φ) + y * Math.cos(φ),
    }))
    .filter(({ y }) => Math.abs(y) <= toMm(lower.width) / 2 + NOISE);
  const below = holesOf(lower, toMm(lower.pitch), 0);
  const apart = (one: { x: number; y: number }, other: { x: number; y: number }) =>
    Math.hypot(one.x - other.x, one.y - other.y);
  const near = over.map((one) => Math.min(...below.map((other) => apart(one, other))));
  const fresh = over.filter((_, i) => (near[i] ?? 0) > d / 4 + NOISE);
  return {
    over: over.length,
    shared: over.length - fresh.length,
    clashes: near.filter((away) => away > d / 4 + NOISE && away < 2 * d - NOISE).length,
    room: Math.min(
      ...near.filter((away) => away > d / 4 + NOISE),
      ...fresh.flatMap((one, i) => fresh.slice(i + 1).map((other) => apart(one, other))),
    ),
  };
}

describe('examples', () => {
  test('square and on whole numbers, a hole a quarter of a punch off another is shared', () => {
    const lower = { ...STRIP, width: mm(16), pitch: mm(6), margin: mm(4), phase: mm(7) };
    const upper = { ...STRIP, pitch: mm(10), rows: 'staggered' as const, phase: mm(1.5) };
    const { asLaid } = solved(
      crossing({ ...SQUARE, lower: { ...lower, rows: 'one' as const }, upper }),
    );
    expect([asLaid.shared, asLaid.clashes]).toEqual([1, 0]);
  });

  test('a clear pitch is found also where it is so for few pitches and shifts', () => {
    const widths = { width: mm(15), pitch: mm(4.5), margin: mm(2.5) };
    const lower = { ...widths, rows: 'staggered' as const, phase: mm(2.9) };
    const upper = { width: mm(10), pitch: mm(4.5), margin: mm(3), rows: 'level' as const };
    const { best, otherPitch } = solved(
      crossing({ lower, upper: { ...upper, phase: mm(1.6) }, angle: 100, hole: mm(1) }),
    );
    expect(best.clashes).toBeGreaterThan(0);
    expect(otherPitch?.clashes).toBe(0);
    // 9.7 % off it, and clear (counted one by one).
    expect(Math.abs(toMm(otherPitch?.pitch as Length) / 4.5 - 1)).toBeCloseTo(0.097, 2);
  });

  test('new holes are near each other too', () => {
    // The upper row's holes are 3 apart, those of the lower one 40 (derived here).
    const lower = { ...STRIP, pitch: mm(40), rows: 'one' as const };
    const upper = { ...STRIP, pitch: mm(3), rows: 'one' as const };
    const { asLaid } = solved(crossing({ ...SQUARE, lower, upper }));
    expect(toMm(asLaid.room as Length)).toBe(3);
  });

  test('the nearest hole of the lower strip counts, also beside the upper one', () => {
    // One new hole in the middle; along the lower row the next holes are 15 to each side,
    // where a strip 10 wide no longer lies (derived here).
    const lower = { ...STRIP, pitch: mm(30), rows: 'one' as const, phase: mm(15) };
    const upper = { ...STRIP, width: mm(10), pitch: mm(30), rows: 'one' as const };
    const { asLaid } = solved(crossing({ ...SQUARE, lower, upper }));
    expect(asLaid.holes).toHaveLength(1);
    expect(toMm(asLaid.room as Length)).toBeCloseTo(Math.hypot(15, 5), 9);
  });

  test('square over each other with equal pitch, margins on the pitch: every hole is shared', () => {
    // 20 wide, holes at ±4 and at 4 ± 8i: all four of the upper strip's fall on the lower one's.
    const strip = { ...STRIP, margin: mm(6), phase: exactLength(mm(4)) };
    const { asLaid, best } = solved(crossing({ ...SQUARE, lower: strip, upper: strip }));
    expect(asLaid.shared).toBe(
      asLaid.holes.filter(({ across }) => Math.abs(toMm(across)) < 5).length,
    );
    expect(best.clashes).toBe(0);
  });

  test('a clash is found, and the shift that clears it with the most room', () => {
    // Rows at ±5 and holes at 8i: over the lower rows those of the upper are 3 or 5 off along (derived here).
    const { asLaid, best } = solved(crossing(SQUARE));
    expect(asLaid.clashes).toBe(byHand(SQUARE, 8, 0).clashes);
    expect(best.clashes).toBeLessThanOrEqual(asLaid.clashes);
    expect(best.room ?? 0).toBeGreaterThanOrEqual(0);
  });

  test('with no clear shift it says so, and another pitch is offered where one is clear', () => {
    const dense = { ...STRIP, pitch: mm(3.4), rows: 'staggered' as const };
    const plan = solved(crossing({ ...SQUARE, lower: dense, upper: dense, angle: 35 }));
    expect(plan.best.clashes).toBeGreaterThan(0);
    if (plan.otherPitch) expect(plan.otherPitch.clashes).toBe(0);
    const narrow = { ...STRIP, width: mm(16), margin: mm(4) };
    const even = { ...narrow, rows: 'staggered' as const };
    const other = solved(crossing({ ...SQUARE, lower: even, upper: even, angle: 60 }));
    expect(other.best.clashes).toBe(1);
    expect(other.otherPitch?.clashes).toBe(0);
    // In steps of 0.1 %; 8.32 is the first in steps of half a per cent.
    expect(toMm(other.otherPitch?.pitch as Length)).toBeCloseTo(8.296, 9);
  });
});

describe('the shift with fewest clashes, counted one by one', () => {
  // Invented; of each pair the steps of 0.1 mm have so many at the least.
  test.each<[string, Crossed, steps: number, found: number]>([
    [
      'between two steps',
      {
        lower: {
          ...STRIP,
          width: mm(15),
          pitch: mm(2.8),
          margin: mm(3.6),
          rows: 'staggered',
          phase: mm(1.91),
        },
        upper: {
          ...STRIP,
          width: mm(12),
          pitch: mm(9.6),
          margin: mm(4),
          rows: 'one',
          phase: mm(2.23),
        },
        angle: 118,
        hole: mm(2),
      },
      1,
      0,
    ],
    [
      'in a range of shifts too narrow to be sought',
      {
        lower: { ...STRIP, width: mm(30), pitch: mm(9.1), rows: 'one', phase: mm(1.1) },
        upper: {
          ...STRIP,
          width: mm(23),
          pitch: mm(2.03),
          margin: mm(11.3),
          rows: 'staggered',
          phase: mm(3.5),
        },
        angle: 60,
        hole: mm(1),
      },
      1,
      0,
    ],
  ])('%s', (_, input, steps, found) => {
    const pitch = toMm(input.upper.pitch);
    const { best } = solved(crossing(input));
    expect(best.clashes).toBe(found);
    expect(byHand(input, pitch, toMm(best.shift)).clashes).toBe(found);
    const many = Math.ceil(pitch * 10);
    const tried = Array.from({ length: many }, (__, i) => byHand(input, pitch, i / 10).clashes);
    expect(Math.min(...tried)).toBe(steps);
  });

  test('of holes so small that every range of shifts is narrow, no more than as laid', () => {
    const fine = { ...STRIP, width: mm(4), margin: mm(1.3) };
    const input: Crossed = {
      lower: { ...fine, pitch: mm(0.05), rows: 'staggered' },
      upper: { ...fine, pitch: mm(0.022), rows: 'one' },
      angle: 90,
      hole: mm(0.02),
    };
    expect(fewestClashes(input, clashRanges(input), input.upper.pitch, 160)).toBeUndefined();
    const { asLaid, best, otherPitch } = solved(crossing(input));
    expect(best.clashes).toBeLessThanOrEqual(asLaid.clashes);
    expect(otherPitch).toBeUndefined();
  });
});

test('one hole of each pair alone over the lower strip has more room than both of one', () => {
  // Rows 3 apart, holes beside each other; 14 is the pitch of both.
  const wide = { ...STRIP, pitch: mm(14), margin: mm(5) };
  const lower = { ...wide, width: mm(14), phase: mm(1) };
  const input = { lower, upper: { ...wide, width: mm(13), phase: mm(3) }, angle: 75, hole: mm(2) };
  const { best } = solved(crossing(input));
  const byPlace = byHand(input, 14, toMm(best.shift));
  expect([byPlace.clashes, byPlace.over]).toEqual([0, 2]);
  expect(toMm(best.room as Length)).toBeCloseTo(byPlace.room, 3);
  expect(byPlace.room).toBeGreaterThan(5);
  // A little on a third is, farther from those made and 3 from the one beside it.
  expect(byHand(input, 14, 4.2)).toMatchObject({ clashes: 0, over: 3, room: 3 });
});

test('a nearer pitch that is less is offered as well as one that is more', () => {
  const lower = { ...STRIP, width: mm(24), pitch: mm(12), margin: mm(4) };
  const upper: StripAcross = {
    ...{ width: mm(21), pitch: mm(12), margin: mm(4), rows: 'staggered', phase: mm(3) },
  };
  const input = { lower, upper, angle: 60, hole: mm(2) };
  const { best, otherPitch } = solved(crossing(input));
  expect(best.clashes).toBe(1);
  const pitch = toMm(otherPitch?.pitch as Length);
  expect(pitch).toBeCloseTo(11.868, 9);
  expect(byHand(input, pitch, toMm(otherPitch?.shift as Length)).clashes).toBe(0);
});

test('a pitch that is offered can be typed: its staggered rows don’t touch', () => {
  // Rows 0.15 apart: 1 from hole to hole with a pitch of 2.04, less than 1 with one of 1.90.
  const lower = { ...STRIP, pitch: mm(20), margin: mm(6.37), phase: mm(1.93) };
  const upper: StripAcross = {
    ...{ width: mm(13), pitch: mm(2.04), margin: mm(6.425), rows: 'staggered', phase: mm(2.9) },
  };
  const input = { lower, upper, angle: 90, hole: mm(1) };
  const { best, otherPitch } = solved(crossing(input));
  expect(best.clashes).toBeGreaterThan(0);
  const pitch = (otherPitch?.pitch ?? upper.pitch) as Length;
  expect(fieldsOf(crossing({ ...input, upper: { ...upper, pitch } }))).toEqual([]);
});

const WRONG: [string, Partial<Crossed>, string][] = [
  ['too sharp', { angle: 19 }, 'angle'],
  ['too blunt', { angle: 161 }, 'angle'],
  ['no angle', { angle: Number.NaN }, 'angle'],
  ['no hole', { hole: ZERO }, 'hole'],
  ['holes that overlap', { lower: { ...STRIP, pitch: mm(2) } }, 'pitch'],
  ['holes that break the edge', { upper: { ...STRIP, margin: mm(1) } }, 'upperMargin'],
  ['level rows that overlap', { lower: { ...STRIP, width: mm(10), margin: mm(4.9) } }, 'margin'],
  [
    'staggered rows that overlap',
    { upper: { ...STRIP, pitch: mm(3), rows: 'staggered', margin: mm(9.5) } },
    'upperMargin',
  ],
  ['holes past the middle', { lower: { ...STRIP, margin: mm(10) } }, 'margin'],
  [
    'more than anyone looks at',
    { upper: { ...STRIP, width: mm(1000), pitch: mm(3) } },
    'upperPitch',
  ],
];

test.each(WRONG)('refused, with the field: %s', (_, set, field) => {
  expect(fieldsOf(crossing({ ...SQUARE, ...set }))).toEqual([field]);
});

const strips: fc.Arbitrary<StripAcross> = fc.record({
  width: fc.integer({ min: 13, max: 40 }).map(mm),
  pitch: fc.integer({ min: 10, max: 28 }).map((halves) => mm(halves / 2)),
  margin: fc.integer({ min: 3, max: 5 }).map(mm),
  rows: fc.constantFrom<Rows>('one', 'level', 'staggered'),
  phase: fc.integer({ min: 0, max: 60 }).map((tenths) => mm(tenths / 10)),
});
const crossings: fc.Arbitrary<Crossed> = fc.record({
  lower: strips,
  upper: strips,
  angle: fc.oneof(fc.constantFrom(30, 45, 60, 90), fc.integer({ min: 20, max: 160 })),
  hole: fc.constantFrom(mm(1.5), mm(2), mm(2.5)),
});

describe('against brute force', () => {
  test('as laid and shifted, the same holes are shared and clash, with the same room', () => {
    fc.assert(
      fc.property(crossings, (input) => {
        const { asLaid, best } = solved(crossing(input));
        for (const found of [asLaid, best]) {
          const hand = byHand(input, toMm(found.pitch), toMm(found.shift));
          const { clashes, shared } = found;
          expect({ clashes, shared, over: found.holes.length }).toEqual({
            clashes: hand.clashes,
            shared: hand.shared,
            over: hand.over,
          });
          if (found.room === undefined) expect(hand.room).toBe(Number.POSITIVE_INFINITY);
          else expect(toMm(found.room)).toBeCloseTo(hand.room, 3);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('shifts said to have the fewest clashes have so many, and no other has fewer', () => {
    const part = fc.integer({ min: 1, max: 999 }).map((x) => x / 1000);
    const any = fc.tuple(part, part);
    fc.assert(
      fc.property(
        crossings,
        fc.integer({ min: -100, max: 100 }),
        any,
        (input, off, [at, other]) => {
          const pitch = Math.round(input.upper.pitch * (1 + off / 1000));
          const found = fewestClashes(input, clashRanges(input), pitch, 1e-3);
          if (!found) throw new Error('there are always some');
          const clashesAt = (shift: number) => byHand(input, pitch / 8000, shift / 8000).clashes;
          expect(clashesAt(found.from + (found.to - found.from) * at)).toBe(found.clashes);
          expect(clashesAt(pitch * other)).toBeGreaterThanOrEqual(found.clashes);
        },
      ),
      { numRuns: 100 },
    );
  });

  test('no shift of every 0.1 mm clashes less, nor leaves more room', () => {
    fc.assert(
      fc.property(crossings, (input) => {
        const { best } = solved(crossing(input));
        const pitch = toMm(input.upper.pitch);
        for (let shift = 0; shift < pitch; shift += 0.1) {
          const hand = byHand(input, pitch, shift);
          expect(hand.clashes).toBeGreaterThanOrEqual(best.clashes);
          if (hand.clashes > best.clashes || !Number.isFinite(hand.room)) continue;
          expect(hand.room).toBeLessThanOrEqual(toMm(best.room ?? LONGEST) + 1e-3);
        }
      }),
      { numRuns: 12 },
    );
  });
});
