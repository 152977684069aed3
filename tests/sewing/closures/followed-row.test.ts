import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, type Length, mm } from '../../../src/lengths/length.ts';
import type { ClosuresInput } from '../../../src/sewing/closures/closure-input.ts';
import { spaceClosures } from '../../../src/sewing/closures/closures.ts';
import { placesOf } from '../../../src/sewing/followed-places.ts';

const input = (follow: readonly number[], set: Partial<ClosuresInput> = {}): ClosuresInput => ({
  opening: mm(463),
  ...{ ends: 'given', top: mm(0), bottom: mm(0), rule: { by: 'count', count: follow.length } },
  follow: follow.map((place) => exactLength(place * 8000)),
  ...set,
});

describe('a row that follows another', () => {
  // The buttonholes of the design's invented waistcoat, the third cut 4 mm low and the rest spread: ours, no source.
  test('has its places, from the same edge', () => {
    const row = spaceClosures(input([12, 83, 158, 228, 298, 368, 438]));
    if (!row.ok) throw new Error('no row');
    const { run, stretches, ends, gap } = row.value;
    expect(run.datum).toBe('top-edge');
    expect(run.marks.map(({ at }) => at / 8000)).toEqual([12, 83, 158, 228, 298, 368, 438]);
    expect(stretches.map(({ spaces, pitch }) => [spaces, pitch / 8000])).toEqual([
      [1, 71],
      [1, 75],
      [4, 70],
    ]);
    expect([ends.top / 8000, ends.bottom / 8000]).toEqual([12, 25]);
    expect(gap).toBeUndefined();
  });

  test('the clear gap is of the narrowest space, and of the places so much further on', () => {
    const there = spaceClosures(input([12, 83, 158], { width: mm(15) }));
    if (!there.ok) throw new Error('no row');
    expect(there.value.gap).toBe(mm(56));
    const on = (offset: number) => placesOf(there.value.run, mm(offset)).map((at) => at / 8000);
    expect([on(5), on(-12)]).toEqual([
      [17, 88, 163],
      [0, 71, 146],
    ]);
  });

  test('2,000 places are the most', () => {
    const follow = Array.from({ length: 2000 }, (_, i) => i / 10);
    expect(spaceClosures(input(follow)).ok).toBe(true);
  });

  test('what can’t lie on the opening, or lies twice, is a problem of what it follows', () => {
    const problems = (follow: readonly number[]) => {
      const row = spaceClosures(input(follow));
      return row.ok ? [] : row.problems.map(({ kind, field }) => [kind, field]);
    };
    expect(problems([])).toEqual([['too-few', 'follow']]);
    expect(problems([-1, 5])).toEqual([['outside', 'follow']]);
    expect(problems([5, 464])).toEqual([['outside', 'follow']]);
    expect(problems([5, 5])).toEqual([['twice', 'follow']]);
    expect(problems(Array.from({ length: 2001 }, (_, i) => i / 10))).toEqual([
      ['too-many', 'follow'],
    ]);
  });

  test('law: rising places on the opening are kept to the last 1/8000 mm, and the spaces add up', () => {
    const places = fc.uniqueArray(fc.integer({ min: 0, max: 463 * 8000 }), {
      minLength: 1,
      maxLength: 60,
    });
    fc.assert(
      fc.property(places, (all) => {
        const follow = [...all].sort((a, b) => a - b).map((at) => exactLength(at));
        const row = spaceClosures(input([], { follow }));
        if (!row.ok) throw new Error('no row');
        expect(row.value.run.marks.map(({ at }) => at)).toEqual(follow);
        const spaces = row.value.stretches.reduce((sum, one) => sum + one.spaces, 0);
        expect(spaces).toBe(follow.length - 1);
        const { top, bottom } = row.value.ends;
        const between = row.value.stretches.reduce((s, one) => s + one.spaces * one.pitch, 0);
        expect(top + between + bottom).toBeCloseTo(mm(463) as Length, 0);
      }),
      { seed: 2206, numRuns: 200 },
    );
  });
});
