import { describe, expect, test } from 'vitest';
import { type Length, mm, ZERO } from '../../../src/lengths/length.ts';
import { closureProblems } from '../../../src/sewing/closures/closure-checks.ts';
import type { ClosuresInput } from '../../../src/sewing/closures/closure-input.ts';
import { spaceClosures } from '../../../src/sewing/closures/closures.ts';
import type { Problem } from '../../../src/sewing/problem.ts';
import { boundTold } from '../as-told.ts';

const ROW: ClosuresInput = {
  ...{ opening: mm(500), ends: 'given', top: mm(20), bottom: mm(30) },
  rule: { by: 'count', count: 6 },
};
const wrong = (set: Partial<ClosuresInput>) => closureProblems({ ...ROW, ...set });
const fields = (set: Partial<ClosuresInput>) => wrong(set).map(({ field }) => field);
const exact = (pitch: number) => ({ by: 'exact', pitch: mm(pitch) }) as const;
const outcome = ([first, ...rest]: Problem[]) =>
  first ? ({ ok: false, problems: [first, ...rest] } as const) : ({ ok: true, value: 0 } as const);

describe('where a level may be', () => {
  // From the first place to the last: as given; a whole or half a pitch of 80 from the edges.
  test.each<[string, Partial<ClosuresInput>, number, number]>([
    ['ends given', {}, 20, 470],
    ['a whole space from the edges', { ends: 'whole', rule: exact(80) }, 80, 420],
    ['half a space from the edges', { ends: 'half', rule: exact(80) }, 40, 460],
  ])('%s', (_, set, least, most) => {
    const at = (level: number) => outcome(wrong({ ...set, level: level as Length }));
    expect(boundTold(at, mm(1), 'level', 'least')).toBe(mm(least));
    expect(boundTold(at, mm(499), 'level', 'most')).toBe(mm(most));
  });

  test('clear of the edges where the pitch isn’t known, or some are sewn', () => {
    for (const set of [{}, { rule: exact(80), sewn: [mm(100)] }]) {
      const at = (level: number) => fields({ ends: 'whole', ...set, level: level as Length });
      expect([at(0), at(1), at(mm(500) - 1), at(mm(500))]).toEqual([['level'], [], [], ['level']]);
      const told = (level: number) =>
        outcome(wrong({ ends: 'half', ...set, level: level as Length }));
      expect(boundTold(told, 0, 'level', 'over')).toBe(0);
      expect(boundTold(told, mm(510), 'level', 'under')).toBe(mm(500));
    }
  });
});

describe('room for what is asked', () => {
  test('spaces at both ends of 300 take 600 of 500, unless some are sewn', () => {
    const rule = { ends: 'whole', rule: exact(300) } as const;
    expect(wrong(rule)).toMatchObject([
      { kind: 'does-not-fit', field: 'pitch', room: mm(500), needed: mm(600) },
    ]);
    expect(wrong({ ...rule, sewn: [mm(100)] })).toEqual([]);
  });

  test('ends that meet leave room for one, not for two; a pitch asks for none', () => {
    const meet = { top: mm(200), bottom: mm(300) };
    expect(fields({ ...meet, rule: { by: 'count', count: 2 } })).toEqual(['bottom']);
    expect(fields({ ...meet, rule: { by: 'count', count: 1 } })).toEqual([]);
    expect(fields({ ...meet, rule: exact(80) })).toEqual([]);
    expect(fields({ ...meet, rule: { by: 'count', count: 2 }, sewn: [mm(200)] })).toEqual([]);
  });
});

describe('how near 2,000 may stand', () => {
  // 440, 500 and 500 mm hold 1,999, 2,001 and 2,000 spaces.
  test.each([
    ['given', mm(440) / 1999],
    ['whole', mm(500) / 2001],
    ['half', mm(500) / 2000],
  ] as const)('ends %s', (ends, least) => {
    const row = { ...ROW, top: mm(30), ends };
    const at = (pitch: number) =>
      spaceClosures({ ...row, rule: { by: 'widest', pitch: pitch as Length } });
    expect(boundTold(at, 1, 'pitch', 'least')).toBeCloseTo(least, 6);
    const width = 300 as Length;
    const apart = (gap: number) =>
      spaceClosures({ ...row, rule: { by: 'gap', gap: gap as Length, width } });
    // A kept pitch leaves the rest below, so that a narrower one may do, too.
    const refusal = apart(1);
    expect(refusal.ok ? [] : refusal.problems).toMatchObject([{ field: 'gap', kind: 'too-close' }]);
    expect(refusal.ok || refusal.problems[0]).toMatchObject({ least: least - width });
    expect(apart(Math.ceil(least) - width).ok).toBe(true);
  });
});

describe('sewn ones', () => {
  test('lie from edge to edge', () => {
    const { opening } = ROW;
    expect(wrong({ rule: exact(80), sewn: [ZERO, opening] })).toEqual([]);
    const past = [-1, opening + 1] as Length[];
    expect(wrong({ rule: exact(80), sewn: past })).toEqual(
      past.map((given) => ({ kind: 'outside', field: 'sewn', given, least: 0, most: opening })),
    );
  });

  test('are 2000 at the most', () => {
    const many = (count: number) =>
      wrong({ rule: exact(80), sewn: Array.from({ length: count }, (_, i) => i as Length) });
    expect(many(2000)).toEqual([]);
    expect(many(2001)).toEqual([{ kind: 'too-many', field: 'sewn', most: 2000, given: 2001 }]);
  });

  test('a width that the gap has of its own is asked there alone', () => {
    const gap = { by: 'gap', gap: mm(10), width: mm(20) } as const;
    expect(fields({ rule: gap, width: ZERO })).toEqual([]);
    expect(fields({ width: ZERO })).toEqual(['width']);
  });
});
