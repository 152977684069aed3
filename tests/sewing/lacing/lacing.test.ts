import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, type Length, LONGEST, mm, toMm } from '../../../src/lengths/length.ts';
import { lace } from '../../../src/sewing/lacing/lacing.ts';
import { halfPaths, joiningPath } from '../../../src/sewing/lacing/lacing-halves.ts';
import type { LacingInput } from '../../../src/sewing/lacing/lacing-input.ts';
import { type LacingKind, PUBLISHED, strandsOf } from '../../../src/sewing/lacing/lacing-kinds.ts';
import { partsOf, pathOf } from '../../../src/sewing/lacing/lacing-repeat.ts';
import { readSteps } from '../../../src/sewing/lacing/lacing-steps.ts';
import { toCut } from '../../../src/sewing/lacing/lacing-to-cut.ts';
import { fieldsOf } from '../outcomes.ts';
import { anyLacing, BENCH, lacedOf } from './laced.ts';

const perPitch = (set: Partial<LacingInput>) => toMm(lacedOf(set).perPitch);

describe('examples', () => {
  test('over the edge: 5 + √(8² + 5²) + 2 × 3 = 20.43 mm a pitch, 2.55 × the edge (derived here)', () => {
    expect(perPitch({ kind: 'edge' })).toBeCloseTo(20.434, 3);
    expect(lacedOf({ kind: 'edge' }).factor).toBeCloseTo(2.554, 3);
  });

  test('slanted outside: 2√(4² + 7²) + 2 × 3 = 22.12 mm a pitch, 2.77 × the edge (derived here)', () => {
    expect(perPitch({ kind: 'outside' })).toBeCloseTo(22.125, 3);
    expect(lacedOf({ kind: 'outside' }).factor).toBeCloseTo(2.766, 3);
  });

  test('running: 8 + 3; saddle: twice that; cross: twice over the edge (derived here)', () => {
    expect(perPitch({ kind: 'running' })).toBe(11);
    expect(perPitch({ kind: 'saddle' })).toBe(22);
    expect(perPitch({ kind: 'cross' })).toBeCloseTo(40.868, 3);
  });

  test('loops: 2 × 5 + 8 + 2 × 3 and a turn of 2 × 5; double, 16 more (derived here)', () => {
    expect(perPitch({ kind: 'single-loop' })).toBe(34);
    expect(perPitch({ kind: 'double-loop' })).toBe(50);
    expect(perPitch({ kind: 'single-loop', lace: mm(3) })).toBe(30);
  });

  test('holes are one more than stitches: one stitch, two holes, two passes', () => {
    // fineleatherworking.com: n stitches need n + 1 holes.
    expect(lacedOf({ kind: 'running', holes: 2 }).parts).toEqual({
      straight: mm(8),
      passes: 2,
      turns: 0,
    });
  });

  test('no piece is longer than asked, and none is cut where one is long enough', () => {
    // 12 stitches of 1½ × 8 mm, as published for running, and 3 through the first hole.
    const exact = lacedOf({ kind: 'running', holes: 13, longest: mm(147) });
    expect(toMm(exact.total)).toBe(147);
    expect(exact.pieces).toBe(1);
    expect(lacedOf({ kind: 'running', holes: 13, longest: mm(146) }).pieces).toBe(2);
  });

  test('from the middle: running, an odd count begins in its centre hole, one end on each face', () => {
    const seven = { kind: 'running', holes: 7, tail: mm(100) } as const;
    const { middle, total, parts } = lacedOf({ ...seven, start: 'middle' });
    expect(middle).toMatchObject({ at: { hole: 4, beyond: 0 }, face: undefined });
    // The same way through the same holes as from one end (derived here).
    expect(parts).toEqual(lacedOf(seven).parts);
    // Three stitches of 12 mm, as published, and half of the hole: 1½ × 48 + 3 in all.
    expect(middle?.halves.map(toMm)).toEqual([1.5 + 3 * 12 + 100, 1.5 + 3 * 12 + 100]);
    expect(total).toBe(lacedOf(seven).total);
  });

  test('from the middle: both ends begin on one face, so with lace between two holes', () => {
    const even = lacedOf({ holes: 26, start: 'middle', tail: mm(100) });
    expect(even.middle).toMatchObject({ at: { hole: 13, beyond: 0.5 }, face: 'back' });
    // Half a pitch on the back, a pass, twelve stitches, a tail (derived here).
    for (const half of even.middle?.halves ?? []) {
      expect(toMm(half)).toBeCloseTo(4 + 3 + 12 * 20.434 + 100, 2);
    }
    const odd = lacedOf({ holes: 27, start: 'middle', tail: mm(100) });
    expect(odd.middle).toMatchObject({ at: { hole: 14, beyond: 0.5 }, face: 'back' });
    const [toFirst, toLast] = odd.middle?.halves ?? [];
    expect(toMm(toFirst as Length)).toBeCloseTo(4 + 3 + 13 * 20.434 + 100, 2);
    expect(toMm(toLast as Length)).toBeCloseTo(4 + 3 + 12 * 20.434 + 100, 2);
    expect(lacedOf({ kind: 'single-loop', start: 'middle' }).middle?.face).toBe('front');
    expect(lacedOf({ start: 'end' }).middle).toBeUndefined();
    expect(lacedOf({ kind: 'saddle', start: 'middle' }).middle).toBeUndefined();
  });

  test('from the middle in pieces: one lies over it, as many more to each side', () => {
    // 4 + 3 + 49 × 20.434 + 100 = 1108.27 mm each way, 2216.5 in all (derived here): more than 2 yd.
    const { middle, pieces, each } = lacedOf({ holes: 100, start: 'middle', tail: mm(100) });
    expect(pieces).toBe(3);
    expect(toMm(each)).toBeCloseTo(2216.54 / 3, 2);
    expect(middle?.first.map(toMm)).toEqual([
      expect.closeTo(2216.54 / 6, 2),
      expect.closeTo(2216.54 / 6, 2),
    ]);
    const one = lacedOf({ holes: 26, start: 'middle' });
    expect(one.pieces).toBe(1);
    expect(one.middle?.first).toEqual(one.middle?.halves);
  });

  // xerxesmillion.blogspot.com, 2020: of nine slits one was left unused; a loop that starts
  // and ends outside needs an even count.
  test('in and out, an even count ends on the face it started from', () => {
    expect(lacedOf({ kind: 'running', holes: 8 }).ends).toEqual(['back', 'back']);
    expect(lacedOf({ kind: 'running', holes: 9 }).ends).toEqual(['back', 'front']);
    expect(lacedOf({ kind: 'saddle', holes: 9 }).ends).toBeUndefined();
  });
});

describe('lacings of one’s own, over less than a repeat', () => {
  const own = (typed: string) => {
    const read = readSteps(typed, BENCH.margin);
    if (!read.ok) throw new Error('no repeat');
    return read.repeat;
  };
  const over = (typed: string, stitches: number) =>
    pathOf(own(typed), stitches).map(({ along, across, face }) => [along, toMm(across), face]);

  test('it goes on to the next hole of the row, and through it', () => {
    expect(over('0 1 f; 1 0 f; 1 0 b; 2 1 b; 2 1 f', 1)).toEqual([
      [0, 5, 'front'],
      [1, 0, 'front'],
      [1, 0, 'back'],
      [2, 5, 'back'],
      [2, 5, 'front'],
    ]);
  });

  test('where it doesn’t go through there, it ends on the face it came on', () => {
    const long = '0 1 f; 1 1 f; 2 1 f; 2 1 b; 3 1 b; 3 1 f';
    expect(over(long, 1)).toEqual([
      [0, 5, 'front'],
      [1, 5, 'front'],
    ]);
    expect(over('0 1 f; 0.5 2 f; 0.5 2 b; 0.5 0 b; 0.5 0 f; 2 1 f', 1).at(-1)).toEqual([
      2,
      5,
      'front',
    ]);
  });

  test('its ends lie on the faces it comes to there', () => {
    const ends = (holes: number) =>
      lacedOf({ kind: 'own', own: own('0 1 f; 1 1 f; 1 1 b; 3 1 b; 3 1 f'), holes }).ends;
    expect([ends(2), ends(4)]).toEqual([
      ['back', 'back'],
      ['back', 'front'],
    ]);
  });

  test('a turn every other hole is half a turn a pitch; the first one comes after the first repeat', () => {
    const turning = own('0 1 f; 1 1 f; 1 1 b; 2 1 b; 2 1 f turn');
    // 8 and 3 through, and half of 2 × 5 over the lace.
    expect(perPitch({ kind: 'own', own: turning })).toBe(16);
    const turns = (stitches: number) => partsOf(pathOf(turning, stitches), BENCH.pitch).turns;
    expect([turns(1), turns(2), turns(3)]).toEqual([0, 1, 1]);
  });
});

test('two needles, or there and back: a saddle stitch begins on both faces, a cross at both ends', () => {
  const ways = (kind: LacingKind) =>
    strandsOf(kind, BENCH).map(({ repeat, back }) => [repeat.points[0]?.face, back]);
  expect(ways('running')).toEqual([['front', false]]);
  expect(ways('saddle')).toEqual([
    ['front', false],
    ['back', false],
  ]);
  expect(ways('cross')).toEqual([
    ['front', false],
    ['front', true],
  ]);
});

test('from one hole the halves go on from both faces, from two from one, joined on the other', () => {
  const [strand] = strandsOf('running', BENCH);
  if (!strand) throw new Error('no strand');
  const begun = (left: number, right: number) =>
    halfPaths(strand.repeat, { left, right }, [1, 1]).map(([first]) => [first?.along, first?.face]);
  expect(begun(3, 3)).toEqual([
    [3, 'back'],
    [3, 'front'],
  ]);
  expect(begun(3, 4)).toEqual([
    [3, 'front'],
    [4, 'front'],
  ]);
  expect(joiningPath(strand.repeat, { left: 3, right: 3 })).toEqual([]);
  expect(joiningPath(strand.repeat, { left: 3, right: 4 })).toMatchObject([
    { along: 3, face: 'back' },
    { along: 4, face: 'back' },
  ]);
});

test('at just the least and just the most that is published it is within', () => {
  const range = PUBLISHED.running?.value ?? [0, 0];
  for (const times of range) {
    const way = exactLength(times * mm(400) + mm(3));
    const cut = toCut({ kind: 'running', way, through: mm(3), edge: mm(400), tails: mm(100) });
    expect(cut).toMatchObject({ by: 'within', off: 0 });
  }
});

describe('refused, with the field', () => {
  const WRONG: [string, Partial<LacingInput>, string][] = [
    ['one hole', { holes: 1 }, 'holes'],
    ['half a hole', { holes: 2.5 }, 'holes'],
    ['more holes than anyone laces', { holes: 2001 }, 'holes'],
    ['no pitch', { pitch: mm(0) }, 'pitch'],
    ['no margin', { margin: mm(-1) }, 'margin'],
    ['no thickness', { thickness: mm(0) }, 'thickness'],
    ['thicker than two pitches', { thickness: mm(16.1) }, 'thickness'],
    ['thicker than any hand laces', { pitch: mm(40), thickness: mm(30.1) }, 'thickness'],
    ['no lace', { lace: mm(0) }, 'lace'],
    ['inside where it is outside', { outside: mm(-1) }, 'outside'],
    ['a tail less than nothing', { tail: mm(-1) }, 'tail'],
    ['pieces of nothing', { longest: mm(0) }, 'longest'],
    ['pieces that are all splices', { longest: mm(1) }, 'longest'],
    ['a row longer than any', { holes: 2000, pitch: mm(600) }, 'pitch'],
    ['a margin out of all bounds', { margin: LONGEST, lace: mm(3) }, 'margin'],
  ];
  test.each(WRONG)('%s', (_, set, field) => {
    expect(fieldsOf(lace({ ...BENCH, ...set }))).toEqual([field]);
  });

  test('at its limits it is answered', () => {
    // Four repeats of running on 4 mm, 24 mm each (derived here); shorter where one piece is enough.
    const running = { kind: 'running', holes: 51, thickness: mm(4) } as const;
    expect(fieldsOf(lace({ ...BENCH, ...running, longest: mm(96) }))).toEqual([]);
    expect(fieldsOf(lace({ ...BENCH, ...running, longest: mm(95.9) }))).toEqual(['longest']);
    expect(fieldsOf(lace({ ...BENCH, ...running, holes: 3, longest: mm(28) }))).toEqual([]);
    expect(fieldsOf(lace({ ...BENCH, thickness: mm(16) }))).toEqual([]);
    expect(fieldsOf(lace({ ...BENCH, holes: 2000, tail: mm(0), outside: mm(0) }))).toEqual([]);
  });
});

describe('laws', () => {
  test('from one end it is a pass, a pitch’s worth for each stitch, and the tails', () => {
    fc.assert(
      fc.property(anyLacing, (any) => {
        const input = { ...any, start: 'end' as const };
        const { perPitch: each, geometry } = lacedOf(input);
        const expected = input.thickness + (input.holes - 1) * each + 2 * input.tail;
        expect(geometry / expected).toBeCloseTo(1, 9);
      }),
    );
  });

  test('two more holes take two more pitches of lace, wherever it starts', () => {
    fc.assert(
      fc.property(anyLacing, (input) => {
        const here = lacedOf(input);
        const more = lacedOf({ ...input, holes: input.holes + 2 });
        expect((more.geometry - here.geometry) / (2 * here.perPitch)).toBeCloseTo(1, 6);
      }),
    );
  });

  test('twice as large in everything, it takes twice the lace in the same pieces', () => {
    fc.assert(
      fc.property(anyLacing, (input) => {
        const twice = (x: Length) => (2 * x) as Length;
        const large = lacedOf({
          ...input,
          pitch: twice(input.pitch),
          margin: twice(input.margin),
          thickness: twice(input.thickness),
          lace: input.lace && twice(input.lace),
          outside: twice(input.outside),
          tail: twice(input.tail),
          longest: twice(input.longest),
        });
        const small = lacedOf(input);
        expect(large.total / small.total).toBeCloseTo(2, 9);
        expect([large.pieces, large.factor]).toEqual([
          small.pieces,
          expect.closeTo(small.factor, 9),
        ]);
      }),
    );
  });

  test('the parts add up, the halves are all of it, and no piece is longer than asked', () => {
    fc.assert(
      fc.property(anyLacing, (input) => {
        const { parts, extra, tails, geometry, total, middle, pieces, each } = lacedOf(input);
        const { straight, passes, turns } = parts;
        const added = straight + passes * input.thickness + turns * extra + tails;
        expect(geometry / added).toBeCloseTo(1, 9);
        expect(pieces * each).toBeCloseTo(total, 4);
        expect(each).toBeLessThanOrEqual(input.longest);
        expect((pieces - (middle ? 2 : 1)) * input.longest).toBeLessThan(total);
        if (!middle) return;
        const [toFirst, toLast] = middle.halves;
        expect(toFirst + toLast).toBeCloseTo(total, 4);
        const [here, there] = middle.first;
        expect(here + there).toBeCloseTo(each, 4);
        expect((toFirst - here) / each).toBeCloseTo((pieces - 1) / 2, 6);
        expect(Math.min(here, there)).toBeGreaterThan(0);
      }),
    );
  });

  test('every hole is passed by each strand; a thicker strip takes more', () => {
    fc.assert(
      fc.property(anyLacing, (input) => {
        const { parts, strands, geometry } = lacedOf({ ...input, kind: 'running' });
        expect([parts.passes, strands.length]).toEqual([input.holes, 1]);
        const thicker = {
          ...input,
          kind: 'running' as const,
          thickness: (input.thickness + 8) as Length,
        };
        const outcome = lace(thicker);
        if (outcome.ok) expect(outcome.value.geometry - geometry).toBeCloseTo(8 * input.holes, 6);
      }),
    );
  });
});

describe('a lacing of one’s own', () => {
  const OVER = '0 1 front; 1 0 front; 1 0 back; 1 1 back; 1 1 front';
  const repeatOf = (typed: string) => {
    const read = readSteps(typed, BENCH.margin);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    return read.repeat;
  };
  const own = (typed: string, set: Partial<LacingInput> = {}) =>
    lacedOf({ ...set, kind: 'own', own: repeatOf(typed) });

  test('written step by step, over the edge is what it is by name', () => {
    expect(own(OVER).total).toBe(lacedOf({ kind: 'edge' }).geometry);
    expect(own('0 1 f; 1 1 f; 1 1 b; 2 1 b; 2 1 f', { holes: 10 }).total).toBe(
      lacedOf({ kind: 'running', holes: 10 }).geometry,
    );
    const loop = '0 1 b\n0 0 b\n0 0 f turn\n1 0 f\n1 1 f\n1 1 b';
    expect(own(loop).total).toBe(lacedOf({ kind: 'single-loop' }).geometry);
    expect(own(OVER).off).toBeUndefined();
  });

  test('begun before or after the first hole is passed, it takes the same lace', () => {
    const after = '0 1 f; 1 1 f; 1 1 b; 2 1 b; 2 1 f';
    const before = '0 1 b; 0 1 f; 1 1 f; 1 1 b; 2 1 b';
    for (const holes of [2, 3, 9, 10]) {
      expect(own(before, { holes }).total).toBe(own(after, { holes }).total);
    }
  });

  test('stitches that are no multiple of the repeat end at the last hole, and it is said', () => {
    const three = '0 1 f; 1 1 f; 1 1 b; 3 1 b; 3 1 f';
    const one = own(three, { holes: 5 });
    expect(one.doubts).toEqual([{ kind: 'cut-short', advance: 3, stitches: 4 }]);
    expect(toMm(one.total)).toBe(3 + 8 + 3 + 16 + 3 + 8 + 3);
    expect(own(three, { holes: 7 }).doubts).toEqual([]);
  });

  test('steps that reach past the row are told, at either end and from the middle', () => {
    const back = '0 1 f; 2 1 f; 2 1 b; 1 1 b; 1 1 f';
    expect(own(back, { holes: 10 }).doubts).toEqual([{ kind: 'beyond', end: 'last', by: 1 }]);
    const loop = '0 1 b; 0 0 b; 0 0 f; -1.5 0 f; 1 0 f; 1 1 f; 1 1 b';
    expect(own(loop, { holes: 10 }).doubts).toEqual([{ kind: 'beyond', end: 'first', by: 1.5 }]);
    expect(own(OVER, { holes: 10 }).doubts).toEqual([]);
    // To both sides of the middle, what reaches back reaches over the other half.
    expect(own(loop, { holes: 10, start: 'middle' }).doubts).toEqual([]);
    expect(own(back, { holes: 10, start: 'middle' }).doubts).toEqual([
      { kind: 'beyond', end: 'first', by: 1 },
      { kind: 'beyond', end: 'last', by: 1 },
    ]);
  });

  test('walked n pitches, any repeat is n times one (derived here)', () => {
    const step = fc.record({
      along: fc.integer({ min: -8, max: 8 }).map((x) => x / 4),
      across: fc.integer({ min: -4, max: 8 }).map((x) => x / 4),
    });
    const arbitrary = fc.tuple(
      fc.array(step, { minLength: 1, maxLength: 6 }),
      fc.integer({ min: 1, max: 3 }),
    );
    fc.assert(
      fc.property(arbitrary, fc.integer({ min: 1, max: 20 }), ([steps, advance], times) => {
        const points = [{ along: 0, across: 1 }, ...steps].map(({ along, across }, i) => ({
          along,
          across: mm(across),
          face: i % 2 === 0 ? ('front' as const) : ('back' as const),
        }));
        const repeat = { points, advance };
        const once = partsOf(pathOf(repeat, advance), mm(1));
        const often = partsOf(pathOf(repeat, times * advance), mm(1));
        expect(often.straight).toBeCloseTo(times * once.straight, 3);
        expect(often.passes).toBe(times * once.passes);
      }),
    );
  });
});
