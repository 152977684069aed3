/**
 * Published: row 14.7, a school's course (moodlehub.ca, page 47834): 4 to 5 cm finished, underlap 5 to 8, cut twice
 * the width with its seams, as long as waist, ease and underlap. Rows 20.35 (hand past wrist): ANSUR II. The rest is arithmetic.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ExactLength, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import {
  type BandInput,
  band,
  bandPieces,
  takenUp,
  timesWide,
} from '../../../src/sewing/bands/band.ts';
import { boundTold } from '../as-told.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
const toCm = (x: ExactLength) => Number((toMm(x) / 10).toFixed(4));

const WAIST: BandInput = {
  ...{ girth: cm(70), ease: cm(2), opens: 'back', overlap: ZERO, underlap: cm(5) },
  ...{ pass: undefined, wide: cm(4), make: 'fold', thickness: undefined, seam: cm(1.5) },
  front: undefined,
};
const plan = (set: Partial<BandInput> = {}) => solved(band({ ...WAIST, ...set }));
const marks = (set: Partial<BandInput> = {}) => plan(set).run.marks.map(({ at }) => toCm(at));

test('14.7: waist, ease, underlap and seams; twice the width with seams', () => {
  expect([plan().long, plan().across].map(toCm)).toEqual([80, 11]);
  expect([plan({ make: 'two' }).across, plan({ make: 'back' }).across].map(toCm)).toEqual([7, 19]);
});

test('a fold of thick cloth takes 0.43 of its thickness less', () => {
  const thick = plan({ thickness: mm(2) });
  expect(toMm(thick.folded)).toBeCloseTo(-0.858, 3);
  expect(toMm(thick.across)).toBeCloseTo(110 - 0.858, 3);
  expect(plan({ thickness: mm(2), make: 'two' }).folded).toBe(0);
});

test('marks: sides and middles from the finished end; a lapped end has its own', () => {
  expect(marks()).toEqual([19.5, 37.5, 55.5, 73.5]);
  expect(marks({ underlap: ZERO, overlap: cm(2) })).toEqual([3.5, 21.5, 39.5, 57.5]);
  expect(marks({ opens: 'ring', underlap: ZERO })).toEqual([19.5, 37.5, 55.5]);
  // 38 in front, 34 behind.
  expect(marks({ front: cm(38) })).toEqual([18.5, 37.5, 56.5, 73.5]);
  expect(marks({ front: cm(38), opens: 'front' })).toEqual([20.5, 37.5, 54.5, 73.5]);
  expect(marks({ front: cm(38), opens: 'side' })).toEqual([20.5, 39.5, 56.5, 73.5]);
});

test('pieces of a band longer than its cloth; what its edge takes up', () => {
  const pieces = (there: number | undefined) =>
    bandPieces(plan(), cm(1.5), there === undefined ? undefined : cm(there));
  expect(solved(pieces(undefined))).toEqual({ count: 1, long: cm(80) });
  expect(solved(pieces(80)).count).toBe(1);
  const two = solved(pieces(79));
  expect([two.count, toCm(two.long)]).toEqual([2, 41.5]);
  expect(fieldsOf(pieces(3))).toEqual(['cloth']);
  expect(fieldsOf(pieces(0))).toContain('cloth');
  expect([toCm(takenUp(cm(100), plan())), takenUp(undefined, plan())]).toEqual([28, 0]);
});

describe('what is refused', () => {
  test.each<[string, Partial<BandInput>, string]>([
    ['no girth', { girth: ZERO }, 'girth'],
    ['no width', { wide: ZERO }, 'wide'],
    ['ease below nothing', { ease: mm(-1) }, 'ease'],
    ['an underlap below nothing', { underlap: mm(-1) }, 'underlap'],
    ['an overlap below nothing', { overlap: mm(-1) }, 'overlap'],
    ['a seam below nothing', { seam: mm(-1) }, 'seam'],
    ['a ring under what it has to pass', { opens: 'ring', pass: cm(73) }, 'ease'],
    ['a front as long as all round', { front: cm(72) }, 'front'],
    ['a front of nothing', { front: ZERO }, 'front'],
    ['cloth too thick to fold so narrow', { thickness: mm(21) }, 'thickness'],
  ])('%s', (_, set, field) => {
    expect(fieldsOf(band({ ...WAIST, ...set }))).toEqual([field]);
  });

  test('what opens needs to pass nothing, and a ring as large as its hand does', () => {
    expect(band({ ...WAIST, pass: cm(73) }).ok).toBe(true);
    expect(band({ ...WAIST, opens: 'ring', pass: cm(72) }).ok).toBe(true);
  });
});

const whole = fc.record({
  girth: typed(150, 1200),
  ease: typed(0, 100),
  opens: fc.constantFrom('back' as const, 'front' as const, 'side' as const),
  overlap: typed(0, 50),
  underlap: typed(0, 80),
  wide: typed(10, 100),
  make: fc.constantFrom('fold' as const, 'two' as const, 'back' as const),
  seam: typed(0, 20),
});

describe('laws', () => {
  test('twice as large, twice as long; front and back exchanged, the same marks; joined again, as long as it was', () => {
    fc.assert(
      fc.property(whole, fc.integer({ min: 30, max: 70 }), typed(60, 900), (some, part, there) => {
        const input: BandInput = { ...WAIST, ...some };
        const one = plan(input);
        const twice = plan({
          ...input,
          ...{
            girth: length(2 * input.girth),
            ease: length(2 * input.ease),
            seam: length(2 * input.seam),
          },
          ...{ overlap: length(2 * input.overlap), underlap: length(2 * input.underlap) },
          wide: length(2 * input.wide),
        });
        expect([twice.long, twice.across]).toEqual([2 * one.long, 2 * one.across]);
        const front = length(Math.round((one.round * part) / 100));
        const other = length(one.round - front);
        const behind = plan({ ...input, opens: 'back', front }).run.marks;
        const before = plan({ ...input, opens: 'front', front: other }).run.marks;
        for (const [i, { at }] of behind.entries()) expect(before[i]?.at).toBeCloseTo(at, 3);
        const { count, long } = solved(bandPieces(one, input.seam, there));
        expect(count * (long - 2 * input.seam)).toBeCloseTo(one.long - 2 * input.seam, 2);
        expect(long).toBeLessThanOrEqual(Math.max(there, one.long / count) + 1e-3);
      }),
      { numRuns: 400, seed: 2110 },
    );
  });
});

describe('what a refusal says will do does', () => {
  const at = (set: Partial<BandInput>) => band({ ...WAIST, ...set });

  test('a ring passes with as much ease as is told; one that opens needs none', () => {
    const ring = (ease: number) => at({ ease: length(ease), opens: 'ring', pass: cm(90) });
    expect(boundTold(ring, ZERO, 'ease', 'least')).toBe(cm(20));
    expect(at({ ease: ZERO, pass: cm(90) }).ok).toBe(true);
    expect(at({ ease: ZERO, opens: 'ring' }).ok).toBe(true);
  });

  test('a front less than all round, cloth no thicker than half of what shows', () => {
    const front = (of: number) => at({ front: length(of) });
    expect(boundTold(front, cm(80), 'front', 'under')).toBe(cm(72));
    const thickness = (of: number) => at({ thickness: length(of) });
    expect(boundTold(thickness, cm(3), 'thickness', 'most')).toBe(cm(2));
  });

  test('both laps lengthen it, and cloth of more than two seams pieces it', () => {
    expect(toCm(plan({ overlap: cm(2) }).finished)).toBe(79);
    const cloth = (of: number) => bandPieces(plan(), cm(1.5), length(of));
    expect(boundTold(cloth, cm(1), 'cloth', 'over')).toBe(cm(3));
  });

  test('how often each is as wide as it shows', () => {
    expect(['fold', 'two', 'back'].map((make) => timesWide(make as BandInput['make']))).toEqual([
      2, 1, 4,
    ]);
  });
});
