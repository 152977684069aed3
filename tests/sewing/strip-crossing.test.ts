import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, type Length, mm, toMm, ZERO } from '../../src/lengths/length.ts';
import type { Crossed, StripAcross } from '../../src/sewing/crossing-holes.ts';
import type { Rows } from '../../src/sewing/strip.ts';
import { crossing } from '../../src/sewing/strip-crossing.ts';
import { fieldsOf, solved } from './outcomes.ts';

const STRIP: StripAcross = {
  width: mm(20),
  pitch: mm(8),
  margin: mm(5),
  rows: 'level',
  phase: ZERO,
};
const SQUARE: Crossed = { lower: STRIP, upper: STRIP, angle: 90, hole: mm(2) };

/** The same by other means: every hole of long strips, one by one, in mm. */
function byHand({ lower, upper, angle, hole }: Crossed, pitch: number, shift: number) {
  const φ = (angle * Math.PI) / 180;
  const holesOf = (strip: StripAcross, own: number, moved: number) => {
    const apart = toMm(strip.width) / 2 - toMm(strip.margin);
    const rows = strip.rows === 'one' ? [-apart] : [-apart, apart];
    return rows.flatMap((y, row) => {
      const start =
        toMm(strip.phase) + moved + (row === 1 && strip.rows === 'staggered' ? own / 2 : 0);
      const many = Math.ceil(2000 / own);
      return Array.from({ length: 2 * many + 1 }, (_, i) => ({ x: start + (i - many) * own, y }));
    });
  };
  const d = toMm(hole);
  const over = holesOf(upper, pitch, shift)
    .map(({ x, y }) => ({
      x: x * Math.cos(φ) - y * Math.sin(φ),
      y: x * Math.sin(φ) + y * Math.cos(φ),
    }))
    .filter(({ y }) => Math.abs(y) <= toMm(lower.width) / 2);
  const below = holesOf(lower, toMm(lower.pitch), 0).filter(
    ({ x, y }) => Math.abs(y * Math.cos(φ) - x * Math.sin(φ)) <= toMm(upper.width) / 2 + 2 * d,
  );
  let [clashes, shared, room] = [0, 0, Number.POSITIVE_INFINITY];
  for (const one of over) {
    const near = Math.min(...below.map((other) => Math.hypot(one.x - other.x, one.y - other.y)));
    if (near <= d / 4) shared++;
    else {
      if (near < 2 * d) clashes++;
      room = Math.min(room, near);
    }
  }
  return { over: over.length, clashes, shared, room };
}

describe('examples', () => {
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
    expect(toMm(other.otherPitch?.pitch as Length)).toBeCloseTo(8.32, 9);
  });
});

const WRONG: [string, Partial<Crossed>, string][] = [
  ['too sharp', { angle: 19 }, 'angle'],
  ['too blunt', { angle: 161 }, 'angle'],
  ['no angle', { angle: Number.NaN }, 'angle'],
  ['no hole', { hole: ZERO }, 'hole'],
  ['holes that overlap', { lower: { ...STRIP, pitch: mm(2) } }, 'pitch'],
  ['holes that break the edge', { upper: { ...STRIP, margin: mm(1) } }, 'upperMargin'],
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
  width: fc.integer({ min: 12, max: 40 }).map(mm),
  pitch: fc.integer({ min: 5, max: 14 }).map(mm),
  margin: fc.integer({ min: 3, max: 5 }).map(mm),
  rows: fc.constantFrom<Rows>('one', 'level', 'staggered'),
  phase: fc.integer({ min: 0, max: 60 }).map((tenths) => exactLength(mm(tenths / 10))),
});
const crossings: fc.Arbitrary<Crossed> = fc.record({
  lower: strips,
  upper: strips,
  angle: fc.integer({ min: 20, max: 160 }),
  hole: fc.constantFrom(mm(1.5), mm(2), mm(2.5)),
});

describe('against brute force', () => {
  test('as laid and shifted, the same holes are shared and clash, with the same room', () => {
    fc.assert(
      fc.property(crossings, (input) => {
        const { asLaid, best } = solved(crossing(input));
        for (const found of [asLaid, best]) {
          const hand = byHand(input, toMm(found.pitch), toMm(found.shift));
          // On a bound itself the last place of a sum decides.
          const close = (one: number, other: number) => Math.abs(one - other) <= 1;
          expect(close(found.holes.length, hand.over)).toBe(true);
          if (found.holes.length !== hand.over) continue;
          expect(close(found.clashes, hand.clashes)).toBe(true);
          if (found.clashes !== hand.clashes || found.shared !== hand.shared) continue;
          if (found.room === undefined) expect(hand.room).toBe(Number.POSITIVE_INFINITY);
          else expect(toMm(found.room)).toBeCloseTo(hand.room, 3);
        }
      }),
      { numRuns: 60 },
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
          expect(hand.room).toBeLessThanOrEqual(toMm((best.room ?? 0) as Length) + 1e-3);
        }
      }),
      { numRuns: 12 },
    );
  });
});
