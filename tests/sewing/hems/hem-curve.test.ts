import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hemQuotes } from '#words/published/published-hem-words.ts';
import { inches, LONGEST, mm, toInches, toMm, ZERO } from '../../../src/lengths/length.ts';
import { type CurveInput, curvedHem } from '../../../src/sewing/hems/hem-curve.ts';
import { EASE_BY_CLOTH, HEM_DEPTHS, SKIRT_DEPTHS } from '../../../src/sewing/sources/hems.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const rise = (chord: number, by: number): CurveInput => ({
  by: 'rise',
  chord: mm(chord),
  rise: mm(by),
  inward: false,
});

test('a chord of 400 and a rise of 50 are a radius of 425; 20 deep leaves 9.4 % (derived here)', () => {
  const curve = solved(curvedHem(mm(20), rise(400, 50), EASE_BY_CLOTH.medium));
  expect(toMm(curve.radius ?? ZERO)).toBe(425);
  expect(curve.fullness).toBeCloseTo(0.0941, 4);
  expect(curve.fits).toBe(false);
  expect(toMm(curve.deepest ?? ZERO)).toBe(12.75);
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
    const readings = { by: 'readings', round, above, apart: inches(depth) } as const;
    const { excess } = solved(curvedHem(inches(depth), readings, 1));
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
          above: mm(2 * half * (r - 40)),
          apart: mm(40), // read elsewhere than the hem is deep: the same curve
        };
        const one = solved(curvedHem(depth, byRise, 0.06));
        const other = solved(curvedHem(depth, readings, 0.06));
        expect(toMm(one.radius ?? ZERO) / r).toBeCloseTo(1, 2);
        expect(one.fullness / other.fullness).toBeCloseTo(1, 2);
      },
    ),
  );
});

// Theta Johnson, It's Fun to Sew a Cotton School Dress: straight sheer up to 4 in, moderately flared
// 2 to 3, heavy cloth up to 2, flared 1 1/2, circle 1/4 or rolled. Texas Extension L-359: fairly straight
// 2 1/2, gored (60 to 70 in round) 2, very circular rolled up to 2: they conflict on a circle.
test('every published depth is there, with what it is for', () => {
  const inchesOf = (depths: typeof HEM_DEPTHS.value) => depths.map((one) => one.map(toInches));
  expect(inchesOf(HEM_DEPTHS.value)).toEqual([
    [0, 4],
    [2, 3],
    [0, 2],
    [1.5, 1.5],
    [0.25, 0.25],
  ]);
  expect(inchesOf(SKIRT_DEPTHS.value)).toEqual([
    [2.5, 2.5],
    [2, 2],
    [0, 2],
  ]);
  // What is said has each figure and each kind in it.
  for (const { quote, value } of [HEM_DEPTHS, SKIRT_DEPTHS]) {
    const { says } = hemQuotes[quote];
    expect(says.match(/circular/)).toBeTruthy();
    for (const [, most] of value) expect(says).toContain(`${WRITTEN[toInches(most)]} in`);
  }
});

const WRITTEN: Record<number, string> = {
  4: '4',
  3: '3',
  2: '2',
  1.5: '1 1/2',
  2.5: '2 1/2',
  0.25: '1/4',
};

// Both agree on the direction: more flare, narrower hem.
test('the published depths never rise as the flare does', () => {
  const most = (depths: typeof HEM_DEPTHS.value) => depths.map((one) => one[1]);
  // The third of the first is for heavy cloth, whatever its flare.
  const byFlare = [most(HEM_DEPTHS.value).filter((_, i) => i !== 2), most(SKIRT_DEPTHS.value)];
  for (const one of byFlare) expect([...one].sort((a, b) => b - a)).toEqual(one);
});

test('the more a cloth eases, the deeper a hem may be', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (a, b) => {
        const deepest = (ease: number) =>
          solved(curvedHem(mm(20), rise(400, 50), ease)).deepest ?? Number.NaN;
        expect(deepest(Math.max(a, b))).toBeGreaterThanOrEqual(deepest(Math.min(a, b)));
      },
    ),
  );
});

test('a curve that can’t be names its field', () => {
  expect(fieldsOf(curvedHem(mm(20), rise(400, 250), 0.06))).toEqual(['rise']);
  expect(fieldsOf(curvedHem(mm(500), rise(400, 50), 0.06))).toEqual(['depth']);
  expect(fieldsOf(curvedHem(mm(20), rise(400, 50), 1.5))).toEqual(['ease']);
  expect(fieldsOf(curvedHem(ZERO, rise(400, 50), 0.06))).toEqual(['depth']);
  expect(fieldsOf(curvedHem(mm(20), rise(400, 50), Number.NaN))).toEqual(['ease']);
  // As deep as the radius, the raw edge would be a point.
  expect(fieldsOf(curvedHem(mm(425), rise(400, 50), 0.06))).toEqual(['depth']);
});

// Derived here: nothing is left over where the turned edge is as long as what it lies on.
test('a straight tube has nothing to lose, and any hem lies flat', () => {
  const [round, above, apart] = [mm(500), mm(500), mm(20)];
  const tube = solved(curvedHem(mm(100), { by: 'readings', round, above, apart }, 0));
  expect(tube).toMatchObject({
    inward: false,
    fullness: 0,
    fits: true,
    radius: undefined,
    deepest: undefined,
  });
});

test('longer above than at the hem line is an inward curve, which never lies flat', () => {
  const readings = { by: 'readings', round: mm(500), above: mm(520), apart: mm(20) } as const;
  const inward = solved(curvedHem(mm(20), readings, 0.5));
  expect(inward).toMatchObject({ inward: true, fits: false, deepest: undefined });
  expect(inward.fullness).toBeCloseTo(0.08, 9);
  const byRise = solved(curvedHem(mm(20), { ...rise(400, 50), inward: true } as CurveInput, 0.5));
  expect(byRise).toMatchObject({ inward: true, fits: false });
});

test('the raw edge is laid on what is two depths nearer the centre (Steiner, derived here)', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 60, max: 3000 }),
      fc.integer({ min: 1, max: 50 }),
      fc.double({ min: 0.01, max: 0.2, noNaN: true }),
      (radius, depth, ease) => {
        const chord = mm(radius); // an arc of 60 degrees
        const byRise = { chord, rise: mm(radius * (1 - Math.cos(Math.PI / 6))), inward: false };
        const curve = solved(curvedHem(mm(depth), { by: 'rise', ...byRise }, ease));
        const arc = (r: number) => (Math.PI / 3) * r;
        const tooLong = arc(radius + depth) - arc(radius - depth);
        expect(curve.fullness * arc(radius)).toBeCloseTo(tooLong, 2);
        expect(curve.fits).toBe(curve.fullness <= ease);
      },
    ),
  );
});

test('just at a limit a curve can still be', () => {
  expect(solved(curvedHem(mm(12.75), rise(400, 50), 0.06)).fits).toBe(true);
  expect(toMm(solved(curvedHem(mm(20), rise(400, 200), 0.06)).radius ?? ZERO)).toBe(200);
});

test('a curve flatter than a kilometre’s is straight', () => {
  const flat = (chord: number) => solved(curvedHem(mm(20), rise(chord, 0.125), 0)).radius;
  expect(toMm(flat(900) ?? ZERO)).toBeCloseTo(810_000.0625, 3);
  expect(flat(1100)).toBeUndefined();
});

test('each length that is nothing is named, and how much it eases as it was given', () => {
  const none = { by: 'readings', round: ZERO, above: ZERO, apart: ZERO } as const;
  expect(fieldsOf(curvedHem(mm(20), none, 0))).toEqual(['round', 'above', 'apart']);
  expect(fieldsOf(curvedHem(mm(20), rise(0, 0), 0))).toEqual(['chord', 'rise']);
  expect(curvedHem(mm(20), rise(400, 50), 1.5)).toMatchObject({ problems: [{ given: 150 }] });
});

// 1 m round that is 1 mm longer than 1 m above it: 1 m × 1000.
test('a radius of just a kilometre is told, a longer one is none', () => {
  const at = (above: number) =>
    solved(
      curvedHem(
        mm(20),
        { by: 'readings', round: mm(1000), above, apart: mm(1000) } as CurveInput,
        0,
      ),
    );
  expect(at(mm(999)).radius).toBe(LONGEST);
  expect(at(mm(999) + 1).radius).toBeUndefined();
});
