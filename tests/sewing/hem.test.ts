import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, type Length, mm, toInches, toMm, ZERO } from '../../src/lengths/length.ts';
import { type HemInput, hem, hemClass } from '../../src/sewing/hem.ts';
import { type CurveInput, curvedHem } from '../../src/sewing/hem-curve.ts';
import { mitre } from '../../src/sewing/mitre.ts';
import type { Outcome } from '../../src/sewing/problem.ts';
import { EASE_BY_CLOTH, HEM_DEPTHS } from '../../src/sewing/sources/hems.ts';
import { trueTaper } from '../../src/sewing/taper.ts';

function solved<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const fieldsOf = (outcome: Outcome<unknown>) =>
  outcome.ok ? [] : outcome.problems.map(({ field }) => field);

const plain: HemInput = { depth: mm(20), turn: ZERO, thickness: ZERO, edgeStitch: ZERO };

// US Army FM 10-16, General Fabric Repair, fig. 8-3: turn-under 1/2 in, hem 1 in, allowance
// 1 1/2 in; folded to lines 1 in from the raw edge and 2 in from the fold; stitched 1/8 in in.
test('the canvas hem of the manual', () => {
  const canvas = solved(
    hem({ ...plain, depth: inches(1), turn: inches(0.5), edgeStitch: inches(1 / 8) }),
  );
  expect(toInches(canvas.allowance)).toBe(1.5);
  expect(canvas.foldTo).toEqual({ first: inches(1), second: inches(2) });
  expect(toInches(canvas.firstPress ?? ZERO)).toBe(0.5);
  expect(toInches(canvas.hemLine)).toBe(1.5);
  expect(toInches(canvas.stitchUp)).toBe(7 / 8);
  expect(canvas.run.marks.map(({ at }) => toInches(at))).toEqual([0.5, 1.5, 2.375]);
});

// Theta Johnson, It's Fun to Sew a Cotton School Dress: 1/4 + 1/4 → 1/2; 2 1/2 finished → 2 3/4.
// A Complete Course in Dressmaking, vol. 2 p. 6: 1/16 + 1/8 → 3/16.
// emilyhallman.com 2016/09/22 (a blog): 3/8 + 3/8 → 3/4.
test.each([
  [1 / 4, 1 / 4, 1 / 2],
  [2.5, 1 / 4, 2.75],
  [1 / 8, 1 / 16, 3 / 16],
  [3 / 8, 3 / 8, 3 / 4],
])('published: depth %d and turn %d in take %d in', (depth, turn, allowance) => {
  const { allowance: taken } = solved(hem({ ...plain, depth: inches(depth), turn: inches(turn) }));
  expect(toInches(taken)).toBe(allowance);
});

test('thick cloth takes about half a circle a fold (derived here: felt of 2 mm, 3.1 mm)', () => {
  const felt = solved(hem({ ...plain, thickness: mm(2) }));
  expect(toMm(felt.takenByFolds)).toBeCloseTo(3.1, 1);
  const double = solved(hem({ ...plain, turn: mm(10), thickness: mm(2) }));
  expect(toMm(double.takenByFolds)).toBeCloseTo(2 * Math.PI, 3);
  expect(toMm(double.allowance)).toBeCloseTo(30 + 2 * Math.PI, 3);
});

// moodlehub.ca, garment hems: rolled up to 3 mm, narrow up to 1.5 cm, deep over 2 cm.
test.each([
  [3, 'rolled'],
  [4, 'narrow'],
  [15, 'narrow'],
  [16, 'ordinary'],
  [20, 'ordinary'],
  [21, 'deep'],
])('a hem %d mm deep is %s', (depth, called) => {
  expect(hemClass(mm(depth))).toBe(called);
});

test('the lines are in order and their distances make the hem', () => {
  const lengths = fc.integer({ min: 1, max: 200_000 });
  fc.assert(
    fc.property(lengths, lengths, lengths, fc.nat(40_000), (depth, turn, stitch, thickness) => {
      fc.pre(turn <= depth && stitch < depth);
      const input = { depth, turn, thickness, edgeStitch: stitch } as unknown as HemInput;
      const { allowance, firstPress, hemLine, run } = solved(hem(input));
      const fold = (Math.PI / 2) * thickness;
      expect(allowance).toBeCloseTo(depth + turn + 2 * fold, 6);
      expect(hemLine - (firstPress ?? 0)).toBeCloseTo(depth + fold, 6);
      const places = run.marks.map(({ at }) => at);
      expect([...places].sort((a, b) => a - b)).toEqual(places);
      expect(places.at(-1)).toBeLessThanOrEqual(run.length);
    }),
  );
});

test('the cut length is the finished length and the allowance', () => {
  const cut = solved(hem({ ...plain, turn: mm(7), finished: mm(600) })).cutLength;
  expect(toMm(cut ?? ZERO)).toBe(627);
});

test('a hem that can’t be names its field', () => {
  expect(fieldsOf(hem({ ...plain, depth: ZERO }))).toEqual(['depth']);
  expect(fieldsOf(hem({ ...plain, turn: mm(25) }))).toEqual(['turn']);
  expect(fieldsOf(hem({ ...plain, edgeStitch: mm(20) }))).toEqual(['edgeStitch']);
  expect(fieldsOf(hem({ ...plain, finished: mm(15) }))).toEqual(['depth']);
  expect(fieldsOf(hem({ ...plain, thickness: mm(-1) }))).toEqual(['thickness']);
});

const rise = (chord: number, by: number): CurveInput => ({
  by: 'rise',
  chord: mm(chord),
  rise: mm(by),
});

test('a chord of 400 and a rise of 50 are a radius of 425; 20 deep leaves 9.4 % (derived here)', () => {
  const curve = solved(curvedHem(mm(20), rise(400, 50), EASE_BY_CLOTH.medium));
  expect(toMm(curve.radius)).toBe(425);
  expect(curve.fullness).toBeCloseTo(0.0941, 4);
  expect(curve.fits).toBe(false);
  expect(toMm(curve.deepest)).toBe(12.75);
});

// Derived here: a full circle leaves 4πd whatever its radius: 1/4 in 3.14, 1/2 6.28, 1 12.57, 2 25.13.
test.each([
  [0.25, 3.14],
  [0.5, 6.28],
  [1, 12.57],
  [2, 25.13],
])('a full circle turned up %d in leaves %d in', (depth, left) => {
  for (const radius of [10, 30]) {
    const round = inches(2 * Math.PI * radius);
    const above = inches(2 * Math.PI * (radius - depth));
    const { excess } = solved(curvedHem(inches(depth), { by: 'readings', round, above }, 1));
    expect(toInches(excess ?? ZERO)).toBeCloseTo(left, 1);
  }
});

test('chord and rise, and two readings of the same circle, agree', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 200, max: 2000 }),
      fc.double({ min: 0.2, max: 1.4, noNaN: true }),
      (r, half) => {
        const depth = mm(15);
        const byRise = rise(2 * r * Math.sin(half), r * (1 - Math.cos(half)));
        const readings: CurveInput = {
          by: 'readings',
          round: mm(2 * half * r),
          above: mm(2 * half * (r - 15)),
        };
        const one = solved(curvedHem(depth, byRise, 0.06));
        const other = solved(curvedHem(depth, readings, 0.06));
        expect(toMm(one.radius) / r).toBeCloseTo(1, 2);
        expect(one.fullness / other.fullness).toBeCloseTo(1, 2);
      },
    ),
  );
});

// Johnson and Texas Extension L-359 agree on the direction: more flare, narrower hem.
test('the published depths never rise as the flare does', () => {
  const { straight, flared, circle } = HEM_DEPTHS.value;
  expect(flared[1]).toBeLessThanOrEqual(straight[0]);
  expect(circle[0]).toBeLessThanOrEqual(flared[0]);
});

test('the more a cloth eases, the deeper a hem may be', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (a, b) => {
        const deepest = (ease: number) => solved(curvedHem(mm(20), rise(400, 50), ease)).deepest;
        expect(deepest(Math.max(a, b))).toBeGreaterThanOrEqual(deepest(Math.min(a, b)));
      },
    ),
  );
});

test('a curve that can’t be names its field', () => {
  expect(fieldsOf(curvedHem(mm(20), rise(400, 250), 0.06))).toEqual(['rise']);
  expect(fieldsOf(curvedHem(mm(500), rise(400, 50), 0.06))).toEqual(['depth']);
  expect(fieldsOf(curvedHem(mm(20), rise(400, 50), 1.5))).toEqual(['ease']);
  const straight: CurveInput = { by: 'readings', round: mm(500), above: mm(500) };
  expect(fieldsOf(curvedHem(mm(20), straight, 0.06))).toEqual(['above']);
});

test('at a right angle the marks are twice the other depth (derived here: 40 and 15 → 30 and 80)', () => {
  const { alongBottom, upSide, trim } = solved(mitre(mm(40), mm(15), 90));
  expect(toMm(alongBottom)).toBeCloseTo(30, 6);
  expect(toMm(upSide)).toBeCloseTo(80, 6);
  // Hand Sewing Lessons, model 7: 1/4 in outside.
  expect(toInches(trim)).toBe(0.25);
});

test('the two marks of a mitre fall on each other when it is folded', () => {
  const depth = fc.integer({ min: 5, max: 80 });
  fc.assert(
    fc.property(depth, depth, fc.integer({ min: 20, max: 160 }), (a, b, angle) => {
      const outcome = mitre(mm(a), mm(b), angle);
      if (!outcome.ok) return;
      // Raw corner at 0; bottom edge along x, side edge at the angle; C the finished corner.
      const φ = (angle * Math.PI) / 180;
      const side = { x: Math.cos(φ), y: Math.sin(φ) };
      const along = toMm(outcome.value.alongBottom);
      const up = toMm(outcome.value.upSide);
      const corner = { x: (b + a * Math.cos(φ)) / Math.sin(φ), y: a };
      const p = { x: along, y: 0 };
      const q = { x: up * side.x, y: up * side.y };
      // Folding one onto the other keeps their distance to the corner.
      const far = (m: typeof p) => Math.hypot(m.x - corner.x, m.y - corner.y);
      expect(far(p)).toBeCloseTo(far(q), 4);
      // Each mark is as far past its fold line's foot as the raw corner is before it.
      expect(far(p)).toBeCloseTo(Math.hypot(corner.x, corner.y), 4);
    }),
  );
});

test('an angle no corner has is refused, and so is a hem that passes the other’s end', () => {
  expect(fieldsOf(mitre(mm(40), mm(15), 5))).toEqual(['angle']);
  expect(fieldsOf(mitre(mm(40), mm(15), Number.NaN))).toEqual(['angle']);
  expect(fieldsOf(mitre(mm(80), mm(10), 150))).toEqual(['depth']);
  expect(fieldsOf(mitre(mm(40), ZERO, 90))).toEqual(['side']);
});

test('a tapered allowance is the mirror of what it lies on (derived here)', () => {
  const leg = solved(trueTaper({ atHem: mm(200), above: mm(210), depth: mm(40), turn: mm(10) }));
  expect(toMm(leg.atDepth)).toBe(210);
  expect(toMm(leg.eachSide)).toBe(5);
  // Turned back from the inner fold: as wide as the piece 30 mm above the hem line.
  expect(toMm(leg.atRawEdge)).toBe(207.5);
  const straight = solved(
    trueTaper({ atHem: mm(200), above: mm(200), depth: mm(40), turn: ZERO as Length }),
  );
  expect(toMm(straight.eachSide)).toBe(0);
});
