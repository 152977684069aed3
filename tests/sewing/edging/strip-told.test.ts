import { describe, expect, test } from 'vitest';
import { exactLength, type Length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import type { StripInput } from '../../../src/sewing/edging/strip.ts';
import { stripProblems } from '../../../src/sewing/edging/strip-checks.ts';
import { stripHoles } from '../../../src/sewing/edging/strip-holes.ts';
import { type JoinInput, joinsOf } from '../../../src/sewing/edging/strip-joins.ts';
import { strikesOf, websOf } from '../../../src/sewing/edging/strip-material.ts';
import { boundTold } from '../as-told.ts';
import { A_STRIP } from './a-strip.ts';

// Worked on drawings here, no source.

const at = (set: Partial<StripInput>) => {
  const [first, ...rest] = stripProblems({ ...A_STRIP, ...set });
  return first
    ? ({ ok: false, problems: [first, ...rest] } as const)
    : ({ ok: true, value: undefined } as const);
};
const fields = (set: Partial<StripInput>) =>
  stripProblems({ ...A_STRIP, ...set }).map(({ field }) => field);

describe('what a refusal says will do does', () => {
  test.each<[string, Partial<StripInput>, number]>([
    ['one row breaks the far edge', {}, 19],
    ['level rows touch', { rows: 'level' }, 9],
    ['staggered rows meet', { rows: 'staggered' }, 10],
    ['round corners staggered rows may stand level', { rows: 'staggered', corners: [mm(200)] }, 9],
  ])('a margin: %s', (_, set, under) => {
    const margin = (of: number) => at({ ...set, margin: of as Length });
    expect(boundTold(margin, mm(19.5), 'margin', 'under')).toBe(mm(under));
    expect(boundTold(margin, mm(0.5), 'margin', 'over')).toBe(mm(1));
  });

  test('a bend of more than half the width, and no more than once round', () => {
    const short = (of: number) => at({ radius: of as Length, length: mm(50) });
    expect(boundTold(short, mm(9), 'radius', 'over')).toBe(mm(10));
    const long = (of: number) => at({ radius: of as Length });
    expect(boundTold(long, mm(30), 'radius', 'least') / mm(1)).toBeCloseTo(200 / Math.PI, 6);
    // Just once round is no problem.
    expect(fields({ radius: mm(100), length: mm(600) })).toEqual([]);
  });

  test('corners of 20 to 160 degrees, where there are any', () => {
    const angle = (of: number) => at({ angle: of, corners: [mm(200)] });
    expect(boundTold(angle, 5, 'angle', 'least')).toBe(20);
    expect(boundTold(angle, 170, 'angle', 'most')).toBe(160);
    expect(fields({ angle: 5 })).toEqual([]);
  });

  test('holes that don’t touch each other, nor a cut end where there is one', () => {
    const pitch = (of: number) => at({ pitch: of as Length });
    expect(boundTold(pitch, mm(1), 'pitch', 'over')).toBe(mm(2));
    expect(boundTold(pitch, mm(500), 'pitch', 'most')).toBe(mm(400));
    const end = (of: number) => at({ end: of as Length });
    expect(boundTold(end, mm(0.5), 'end', 'over')).toBe(mm(1));
    expect(fields({ end: mm(0.5), fit: 'loop' })).toEqual([]);
    expect(fields({ end: mm(-1), fit: 'loop' })).toEqual(['end']);
  });

  test('an outline: the angle its corners need to come round', () => {
    const outline = { fit: 'loop' as const, length: mm(600), angle: 80 };
    const corners = (count: number) =>
      Array.from({ length: count }, (_, i) => mm((i * 600) / count));
    // 180° − 360° ÷ corners: a triangle, a square, a pentagon; two are no outline, three the least.
    for (const [count, needed] of [
      [2, 60],
      [3, 60],
      [4, 90],
      [5, 108],
    ] as const) {
      const found = stripHoles({ ...A_STRIP, ...outline, corners: corners(count) });
      expect(found).toMatchObject({
        problems: [{ kind: 'not-round', field: 'angle', corners: count, given: 80, needed }],
      });
    }
    // Three on the way, and no fourth in the start would bring it round.
    const three = { ...A_STRIP, ...outline, corners: [mm(150), mm(300), mm(450)] };
    expect(stripHoles(three)).toMatchObject({ problems: [{ corners: 3, needed: 60 }] });
  });
});

describe('an outline measured by hand', () => {
  const square = (set: Partial<StripInput>) =>
    stripHoles({
      ...{ ...A_STRIP, fit: 'loop', corners: [0, 100, 200, 300].map(mm), ...set },
    });

  test('may turn a degree more or less than once round, and no further', () => {
    const at = (angle: number) => square({ angle }).ok;
    expect([89.75, 90.25].map(at)).toEqual([true, true]);
    expect([89.7, 90.3].map(at)).toEqual([false, false]);
  });

  test('may miss its beginning by a little, where its last side then lies on its first', () => {
    expect(square({ length: mm(401) }).ok).toBe(true);
    expect(square({ length: mm(404) })).toMatchObject({
      problems: [{ kind: 'gap', gap: expect.closeTo(mm(4), 3) }],
    });
  });
});

describe('sides that lie over each other', () => {
  // Five corners of 108°, 5 m round: a side of 33 is less than what may be missed, so that its neighbours can cross.
  test.each([
    [[33, 1858, 579, 814, 1727], 2, 5],
    [[3180, 1504, 1037, 3449, 33], 1, 4],
  ])('an outline of sides %j', (sides, side, other) => {
    const places = sides.map((_, i) => sides.slice(0, i).reduce((sum, long) => sum + long, 0));
    const length = mm(places.reduce((_, at, i) => at + (sides[i] ?? 0), 0));
    const set = {
      fit: 'loop',
      angle: 108,
      corners: places.map(mm),
      pitch: mm(20),
      length,
    } as const;
    expect(stripHoles({ ...A_STRIP, ...set })).toMatchObject({
      problems: [{ kind: 'crosses-itself', side, other }],
    });
  });

  test('two of 20 that are 40 apart only touch', () => {
    const corners = [mm(100), mm(140)];
    expect(stripHoles({ ...A_STRIP, length: mm(240), corners }).ok).toBe(true);
  });
});

describe('joins', () => {
  const joined = (holes: readonly number[], set: Partial<JoinInput> = {}) =>
    joinsOf({
      ...{ length: mm(100), stock: mm(65), half: mm(1), sound: mm(3), avoid: [], ...set },
      holes: holes.map((place) => exactLength(mm(place))),
    });

  test('a place with material left is before a nearer one without', () => {
    // Midway at 20, 39, 50 and 71; 50 would be even, with 2 to each hole’s centre.
    const found = joined([10, 30, 48, 52, 90]);
    expect(found?.at.map(toMm)).toEqual([39]);
    expect(found?.thin).toBe(false);
  });

  test('one that is thin is told, also beside one that isn’t', () => {
    const found = joined([48, 52, 90, 110], { length: mm(150), stock: mm(60) });
    expect(found?.at.map(toMm)).toEqual([50, 100]);
    expect(found?.thin).toBe(true);
  });

  test('holes that just touch leave no place, three of room just enough', () => {
    expect(joined([49, 51])).toBeUndefined();
    expect(joined([48.9, 51.1])?.thin).toBe(true);
    expect(joined([47, 53])?.thin).toBe(false);
    expect(joined([47.1, 52.9])?.thin).toBe(true);
  });

  test('a place from which the far end is out of reach is passed over, however even', () => {
    // Pieces of 40 over 100: 75 is the only place past 60, and from 32 it is too far.
    const found = joined([29, 35, 41, 70, 80], {
      ...{ length: mm(100), stock: mm(40), avoid: [{ at: mm(55), clear: exactLength(mm(5)) }] },
    });
    expect(found?.at.map(toMm)).toEqual([38, 75]);
  });

  test('one that needs no join has none, a thousand joins are the most', () => {
    expect(joined([10, 90], { stock: mm(100) })).toEqual({ at: [], pieces: 1, thin: false });
    // Holes each 10 from 5 on: a join each 10.
    const many = (pieces: number) =>
      joined(
        Array.from({ length: pieces }, (_, i) => 5 + 10 * i),
        { length: mm(10 * pieces), stock: mm(10) },
      );
    expect(many(1001)?.pieces).toBe(1001);
    expect(many(1002)).toBeUndefined();
  });

  test('just as far from a crossing as asked will do, a unit less will not', () => {
    const avoid = (clear: number) => [{ at: mm(30), clear: exactLength(clear) }];
    expect(joined([40, 60], { avoid: avoid(mm(20)) })?.at.map(toMm)).toEqual([50]);
    expect(joined([40, 60], { avoid: avoid(mm(20) + 1) })).toBeUndefined();
  });

  test('pieces that are just long enough are', () => {
    const found = joined([50, 70], { length: mm(120), stock: mm(60) });
    expect(found).toMatchObject({ pieces: 2, thin: false });
    expect(found?.at.map(toMm)).toEqual([60]);
    expect(joined([50, 70], { length: mm(120), stock: (mm(60) - 1) as Length })).toBeUndefined();
  });
});

describe('room at corners', () => {
  const turned = (set: Partial<StripInput>) =>
    stripHoles({ ...A_STRIP, corners: [mm(200)], ...set });

  // A mitre of 20; or to the first hole, half a pitch on, and back as far as its row is in.
  test.each<[string, Partial<StripInput>, number]>([
    ['one row, its mitre', {}, 20],
    ['level rows, 4 + 4 + 15', { rows: 'level' }, 23],
    ['one row that begins at 20, 20 + 4 + 5', { end: mm(20) }, 29],
  ])('from a cut end: %s', (_, set, least) => {
    const first = (of: number) => turned({ ...set, corners: [of as Length] });
    expect(boundTold(first, mm(5), 'corners', 'least')).toBe(mm(least));
    expect(boundTold(first, mm(399), 'corners', 'most')).toBe(mm(400 - least));
    const length = (of: number) =>
      turned({ ...set, length: of as Length, corners: [(of / 2) as Length] });
    expect(boundTold(length, mm(2 * least - 2), 'length', 'needed')).toBe(mm(2 * least));
  });

  test.each<[string, Partial<StripInput>, number]>([
    ['two mitres', {}, 40],
    ['level rows, 15 at both ends and 20 between two holes', { rows: 'level', pitch: mm(40) }, 50],
    ['one row, 5 at both ends', { pitch: mm(70) }, 45],
  ])('from corner to corner: %s', (_, set, needed) => {
    const second = (of: number) =>
      turned({ ...set, end: mm(4), corners: [mm(150), (mm(150) + of) as Length] });
    expect(boundTold(second, mm(30), 'corners', 'needed')).toBe(mm(needed));
  });
});

describe('material and strikes', () => {
  const holesOf = (set: Partial<StripInput>) => {
    const input = { ...A_STRIP, ...set };
    const holes = stripHoles(input);
    if (!holes.ok) throw new Error(JSON.stringify(holes.problems));
    return { input, holes: holes.value };
  };
  const webs = (set: Partial<StripInput>) => {
    const { input, holes } = holesOf(set);
    return websOf(input, holes);
  };

  test('a hole’s width of it is enough, less is thin', () => {
    const along = (pitch: number) =>
      webs({ pitch: mm(pitch), end: mm(5) }).find(({ place }) => place === 'along');
    expect(along(4)).toEqual({ place: 'along', clear: mm(2), thin: false });
    expect(along(3.99)?.thin).toBe(true);
  });

  test('between rows: straight across where they turn corners, else half a pitch on; bent, on its own circles', () => {
    const rows = (set: Partial<StripInput>) =>
      toMm(
        webs({ rows: 'staggered', ...set }).find(({ place }) => place === 'rows')?.clear ?? ZERO,
      );
    expect(rows({ corners: [mm(200)] })).toBeCloseTo(10 - 2, 6);
    expect(rows({})).toBeCloseTo(Math.hypot(10, 4) - 2, 6);
    // At 105 and 95 from the middle of a bend of 100, 4 along it apart: by their places in the plane.
    const [out, turn] = [105, 4 / 100];
    const apart = Math.hypot(out - 95 * Math.cos(turn), 95 * Math.sin(turn));
    expect(rows({ radius: mm(100) })).toBeCloseTo(apart - 2, 6);
  });

  test('an angle without a corner is none: round a loop holes are their pitch apart', () => {
    const [along] = webs({ fit: 'loop', angle: 30 });
    expect(along).toEqual({ place: 'along', clear: mm(6), thin: false });
  });

  test('one hole has none along it, an outline none at an end', () => {
    expect(webs({ length: mm(8) }).map(({ place }) => place)).toEqual(['edge', 'end']);
    const corners = [mm(100), mm(200), mm(300)];
    expect(webs({ fit: 'loop', corners }).map(({ place }) => place)).toEqual(['along', 'edge']);
  });

  test('an iron is out by the pitch that is furthest off, for each tooth past its first', () => {
    // 150 to a corner, 5 in: 141 in 18 of 7.83; beyond it 241 in 30 of 8.03. Off by 1/6 each.
    const { input, holes } = holesOf({ corners: [mm(150)] });
    expect(toMm(strikesOf(input, holes, 2).off)).toBeCloseTo(1 / 6, 4);
    expect(toMm(strikesOf(input, holes, 4).off)).toBeCloseTo(3 / 6, 4);
    expect([strikesOf(input, holes, 3).fits, strikesOf(input, holes, 5).fits]).toEqual([
      true,
      false,
    ]);
    // Four spaces in 33 are 8.25, a quarter off: over two of them just a quarter of a hole.
    const just = holesOf({ length: mm(41), fit: 'fill' });
    expect(strikesOf(just.input, just.holes, 3).fits).toBe(true);
  });
});
