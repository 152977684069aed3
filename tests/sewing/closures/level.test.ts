import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Length, length, mm, toMm } from '../../../src/lengths/length.ts';
import { spaceClosures } from '../../../src/sewing/closures/closures.ts';
import { byCount, opening, placesMm, planFor, problems, roomy, typed } from './closures-cases.ts';

const waistcoat = { top: mm(12), bottom: mm(25) };

describe('worked by hand', () => {
  // 426 mm from first to last; the level 198 below the first. Of 6 spaces, 3 above at 66 and
  // 3 below at 76 differ by 10; 2 and 4 by 42.
  test('two pitches meet at the level, first and last as asked', () => {
    const plan = planFor(opening(mm(463), byCount(7), { ...waistcoat, level: mm(210) }));
    expect(placesMm(plan)).toEqual([12, 78, 144, 210, 286, 362, 438]);
    expect(plan.stretches.map(({ spaces, pitch }) => [spaces, toMm(pitch)])).toEqual([
      [3, 66],
      [3, 76],
    ]);
    expect(plan.run.marks.map(({ kind }) => kind).indexOf('level')).toBe(3);
  });

  // The level midway, three spaces: 1 above and 2 below, or 2 and 1, differ by 60 both ways.
  test('of two ways that differ alike, the one with fewest above is taken', () => {
    const plan = planFor(opening(mm(240), byCount(4), { level: mm(120) }));
    expect(placesMm(plan)).toEqual([0, 120, 180, 240]);
    const six = planFor(opening(mm(240), byCount(6), { level: mm(120) }));
    expect(placesMm(six)).toEqual([0, 60, 120, 160, 200, 240]);
  });

  test('a single mark goes on the level, and two on a level that is the first or the last', () => {
    expect(placesMm(planFor(opening(mm(240), byCount(1), { level: mm(100) })))).toEqual([100]);
    expect(placesMm(planFor(opening(mm(240), byCount(2), { level: mm(0) })))).toEqual([0, 240]);
    expect(placesMm(planFor(opening(mm(240), byCount(2), { level: mm(240) })))).toEqual([0, 240]);
  });

  // Ends 12 and 25 asked: without a width no end comes nearer to an edge than 12.
  test('one pitch through the level slides the row, no end nearer than the nearer one asked for', () => {
    const far = { top: mm(30), bottom: mm(25), level: mm(233) };
    const slid = planFor(opening(mm(481), byCount(7), { ...far, levelBy: 'moved-ends' }));
    // Even: 30, 101, … 456; the mark at 243 is 10 below the level: sliding up by 10 would bring the
    // first to 20, so that the pitch is made (233 − 25)/3.
    expect(placesMm(slid)[0]).toBe(25);
    expect(placesMm(slid)[3]).toBe(233);
    const near = { ...waistcoat, level: mm(210), levelBy: 'moved-ends' as const };
    const held = planFor(opening(mm(463), byCount(7), near));
    expect(placesMm(held)).toEqual([12, 78, 144, 210, 276, 342, 408]);
    expect(held.stretches).toEqual([{ spaces: 6, pitch: mm(66), asMade: false }]);
  });

  test('no end is nearer to an edge than half the width of a closure', () => {
    const near = { ...waistcoat, level: mm(210), levelBy: 'moved-ends' as const };
    const narrow = planFor(opening(mm(463), byCount(7), { ...near, width: mm(6) }));
    // Half of 6 from the top: (210 − 3)/3 = 69.
    expect(placesMm(narrow)).toEqual([3, 72, 141, 210, 279, 348, 417]);
    const slid = { top: mm(30), bottom: mm(25), level: mm(233), width: mm(6) };
    expect(
      placesMm(planFor(opening(mm(481), byCount(7), { ...slid, levelBy: 'moved-ends' }))),
    ).toEqual([20, 91, 162, 233, 304, 375, 446]);
  });

  test('it is not offered where the level itself is nearer, and refused where it is asked for', () => {
    const input = opening(mm(400), byCount(5), { top: mm(4), level: mm(4), width: mm(10) });
    expect(planFor(input).level?.movedEnds).toBeUndefined();
    expect(problems(spaceClosures({ ...input, levelBy: 'moved-ends' }))).toEqual([
      { kind: 'outside', field: 'level', given: mm(4), least: mm(5), most: mm(395) },
    ]);
  });

  test('a kept pitch through a level stays half a width from the edges, too', () => {
    const rule = { by: 'gap', gap: mm(20), width: mm(20) } as const;
    // 205 is 5 + 5 × 40: the mark at 5 would hang over by 5.
    const plan = planFor(opening(mm(405), rule, { level: mm(205) }));
    expect(placesMm(plan)).toEqual([45, 85, 125, 165, 205, 245, 285, 325, 365]);
    expect(plan.remainder).toEqual({ above: mm(45), below: mm(40) });
  });

  test('a kept pitch goes down to half a width from the edges, and to the share of a space asked for', () => {
    const rule = { by: 'gap', gap: mm(20), width: mm(20) } as const;
    const given = planFor(opening(mm(420), rule, { level: mm(210) }));
    expect([given.ends.top, given.ends.bottom]).toEqual([mm(10), mm(10)]);
    // Half a space is 20: 180 is four and a half spaces from the top, 220 five and a half from the bottom.
    const half = planFor(opening(mm(400), rule, { ends: 'half', level: mm(180) }));
    expect([half.ends.top, half.ends.bottom]).toEqual([mm(20), mm(20)]);
    expect(half.remainder).toEqual({ above: 0, below: 0 });
    expect(half.stretches).toMatchObject([{ spaces: 9, pitch: mm(40) }]);
  });

  test('an item as wide as the opening leaves its level one place, and no room for two', () => {
    const input = opening(mm(100), byCount(3), { level: mm(50), width: mm(100) });
    for (const levelBy of ['two-pitches', 'moved-ends'] as const) {
      expect(problems(spaceClosures({ ...input, levelBy }))[0]).toMatchObject({ kind: 'overlap' });
    }
    expect(planFor({ ...input, rule: byCount(1) }).overhang).toEqual({ top: 0, bottom: 0 });
  });

  test('an item wider than the opening hangs over an edge wherever the level is', () => {
    const wide = opening(mm(100), byCount(3), { level: mm(40), levelBy: 'moved-ends' });
    const at = (width: number) => spaceClosures({ ...wide, width: width as Length });
    expect(problems(at(mm(110)))).toEqual([
      { kind: 'too-long', field: 'width', most: mm(100), given: mm(110) },
    ]);
    expect(problems(at(mm(100)))).toMatchObject([{ field: 'level', least: mm(50), most: mm(50) }]);
  });

  // 0, 100, 200: either of two marks is 50 from a level of 50, and the upper is taken down to it.
  test('of two marks that would move the ends alike, the upper goes on the level', () => {
    const between = { top: mm(60), bottom: mm(60), level: mm(110), width: mm(2) };
    const input = opening(mm(320), byCount(3), { ...between, levelBy: 'moved-ends' });
    expect(placesMm(planFor(input))).toEqual([110, 210, 310]);
  });

  test('items that touch are an answer', () => {
    const touching = { ...waistcoat, level: mm(210), width: mm(66) };
    const plan = planFor(opening(mm(463), byCount(7), touching));
    expect([plan.gap, plan.level?.twoPitches?.gap]).toEqual([0, 0]);
  });

  test('2,000 are the most on both sides of a level together', () => {
    const count = (of: number, level: number, by: 'widest' | 'exact') => {
      const row = spaceClosures(opening(mm(of), { by, pitch: mm(1) }, { level: mm(level) }));
      return row.ok ? row.value.count : row.problems[0].kind;
    };
    expect([count(1999, 1000, 'widest'), count(1999, 1000, 'exact')]).toEqual([2000, 2000]);
    // Half a pitch on, each side needs its last space narrower: one mark more.
    expect(count(1999, 1000.5, 'widest')).toBe('too-close');
    expect(count(2000, 1000, 'exact')).toBe('too-close');
  });

  test('what hangs over an edge is said', () => {
    const input = opening(mm(400), byCount(5), { top: mm(2), bottom: mm(5), width: mm(10) });
    expect(planFor(input).overhang).toEqual({ top: mm(3), bottom: 0 });
    expect(planFor({ ...input, width: undefined }).overhang).toEqual({ top: 0, bottom: 0 });
  });

  test('both answers are offered, whichever is chosen', () => {
    const input = opening(mm(463), byCount(7), { ...waistcoat, level: mm(210) });
    const two = planFor(input);
    const one = planFor({ ...input, levelBy: 'moved-ends' });
    expect(two.level?.movedEnds?.run).toEqual(one.run);
    expect(one.level?.twoPitches?.run).toEqual(two.run);
  });

  test('a level on the first mark changes nothing but its name', () => {
    const input = opening(mm(463), byCount(7), { ...waistcoat, level: mm(12) });
    for (const levelBy of ['two-pitches', 'moved-ends'] as const) {
      expect(placesMm(planFor({ ...input, levelBy }))).toEqual([12, 83, 154, 225, 296, 367, 438]);
    }
  });

  test('one alone goes on the level; two cannot carry top, level and bottom', () => {
    const at = { ...waistcoat, level: mm(210) };
    expect(placesMm(planFor(opening(mm(463), byCount(1), at)))).toEqual([210]);
    expect(problems(spaceClosures(opening(mm(463), byCount(2), at)))).toEqual([
      { kind: 'too-few', field: 'count', least: 3, given: 2 },
    ]);
    // One pitch moves an end instead. With the level as the last, the last moves by 228; as the
    // first, the first moves by 198, and the other no nearer to the edge than 12.
    const moved = planFor(opening(mm(463), byCount(2), { ...at, levelBy: 'moved-ends' }));
    expect(placesMm(moved)).toEqual([210, 451]);
  });

  test('a kept pitch runs through the level and leaves a remainder at either end', () => {
    const rule = { by: 'exact', pitch: mm(60) } as const;
    const plan = planFor(opening(mm(463), rule, { ...waistcoat, level: mm(210) }));
    expect(placesMm(plan)).toEqual([30, 90, 150, 210, 270, 330, 390]);
    expect(plan.remainder).toEqual({ above: mm(18), below: mm(48) });
    expect(plan.level?.twoPitches).toBeUndefined();
  });

  test('an answer whose items would overlap is not offered', () => {
    const ends = { top: mm(20), bottom: mm(20), level: mm(50), width: mm(24) };
    const input = opening(mm(140), byCount(5), ends);
    // Two pitches: 30 above and 23.3 below; one pitch: 25, slid down by 5.
    const moved = planFor({ ...input, levelBy: 'moved-ends' });
    expect(placesMm(moved)).toEqual([25, 50, 75, 100, 125]);
    expect(moved.level?.twoPitches).toBeUndefined();
    expect(problems(spaceClosures(input))[0]!.kind).toBe('overlap');
  });
});

describe('laws', () => {
  /** An opening and a level somewhere from first to last. */
  const withLevel = fc
    .tuple(roomy, fc.double({ min: 0.01, max: 0.99, noNaN: true }))
    .map(([edge, part]) => {
      const [from, to] =
        edge.ends === 'given' ? [edge.top, edge.opening - edge.bottom] : [0, edge.opening];
      return { ...edge, level: length(Math.round(from + part * (to - from))) };
    });
  const shares = { given: 0, half: 0.5, whole: 1 };

  test('a mark lies on the level, whichever way and rule', () => {
    const rules = fc.oneof(
      fc.integer({ min: 3, max: 40 }).map(byCount),
      typed(3, 200).map((pitch) => ({ by: 'widest', pitch }) as const),
      typed(3, 200).map((pitch) => ({ by: 'exact', pitch }) as const),
    );
    const ways = fc.constantFrom('two-pitches', 'moved-ends');
    fc.assert(
      fc.property(withLevel, rules, ways, (edge, rule, levelBy) => {
        const outcome = spaceClosures({ ...edge, rule, levelBy });
        // With shares of a space for ends, an exact pitch can be too wide.
        if (!outcome.ok) {
          expect(['outside', 'does-not-fit']).toContain(outcome.problems[0].kind);
          return;
        }
        const { marks } = outcome.value.run;
        expect(marks.filter(({ kind }) => kind === 'level')).toEqual([
          expect.objectContaining({ at: edge.level }),
        ]);
        marks.slice(1).forEach(({ at }, i) => {
          expect(at).toBeGreaterThan(marks[i]!.at);
        });
        expect(marks[0]!.at).toBeGreaterThanOrEqual(0);
        expect(marks.at(-1)!.at).toBeLessThanOrEqual(edge.opening);
      }),
    );
  });

  test('no other division has two pitches that differ less', () => {
    fc.assert(
      fc.property(withLevel, fc.integer({ min: 3, max: 30 }), (edge, count) => {
        const plan = planFor({ ...edge, rule: byCount(count) });
        const share = shares[edge.ends];
        const above = edge.level - (edge.ends === 'given' ? edge.top : 0);
        const below = edge.opening - edge.level - (edge.ends === 'given' ? edge.bottom : 0);
        const differ = (n: number) =>
          Math.abs(above / (n + share) - below / (count - 1 - n + share));
        const all = Array.from({ length: count }, (_, n) => differ(n)).filter(Number.isFinite);
        const onLevel = plan.run.marks.findIndex(({ kind }) => kind === 'level');
        expect(differ(onLevel)).toBeLessThanOrEqual(Math.min(...all) + 1e-6);
      }),
    );
  });

  test('no other single pitch through the level, clear of the edges, moves the ends less', () => {
    const widths = fc.option(typed(1, 12), { nil: undefined });
    fc.assert(
      fc.property(withLevel, fc.integer({ min: 2, max: 12 }), widths, (edge, count, width) => {
        const input = { ...edge, rule: byCount(count) };
        const even = planFor({ ...input, level: undefined });
        const outcome = spaceClosures({ ...input, width, levelBy: 'moved-ends' });
        const asked = Math.min(even.ends.top, even.ends.bottom) / (edge.ends === 'whole' ? 2 : 1);
        const onLevel = Math.min(asked, edge.level, edge.opening - edge.level);
        const clear = width === undefined ? onLevel : width / 2;
        if (!outcome.ok) {
          expect(outcome.problems[0].field).toBe(
            edge.level < clear || edge.level > edge.opening - clear ? 'level' : 'width',
          );
          // Items overlap only where no mark can be slid to the level with room for them.
          for (let n = 0; n < count && outcome.problems[0].field === 'width'; n++) {
            const upTo = (edge.level - clear) / n;
            const downTo = (edge.opening - clear - edge.level) / (count - 1 - n);
            const pitch = Math.min(even.stretches[0]!.pitch, upTo, downTo);
            expect(pitch).toBeLessThan(width!);
          }
          return;
        }
        const plan = outcome.value;
        expect(plan.ends.top).toBeGreaterThanOrEqual(clear - 1e-3);
        expect(plan.ends.bottom).toBeGreaterThanOrEqual(clear - 1e-3);
        const moved = (top: number, bottom: number) =>
          Math.max(Math.abs(top - even.ends.top), Math.abs(bottom - even.ends.bottom));
        const ours = moved(plan.ends.top, plan.ends.bottom);
        for (let n = 0; n < count; n++) {
          for (let tries = 1; tries <= 200; tries++) {
            const pitch = (tries / 100) * even.stretches[0]!.pitch;
            const top = edge.level - n * pitch;
            const bottom = edge.opening - edge.level - (count - 1 - n) * pitch;
            if (top >= clear && bottom >= clear && pitch >= (width ?? 0)) {
              expect(ours).toBeLessThanOrEqual(moved(top, bottom) + 1e-3);
            }
          }
        }
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  test('a widest pitch holds above and below, and one fewer on either side would exceed it', () => {
    fc.assert(
      fc.property(withLevel, typed(3, 200), (edge, pitch) => {
        const plan = planFor({ ...edge, rule: { by: 'widest', pitch } });
        for (const stretch of plan.stretches) expect(stretch.pitch).toBeLessThanOrEqual(pitch);
        const share = shares[edge.ends];
        const onLevel = plan.run.marks.findIndex(({ kind }) => kind === 'level');
        const above = edge.level - (edge.ends === 'given' ? edge.top : 0);
        if (onLevel > 0) expect(above / (onLevel - 1 + share)).toBeGreaterThan(pitch);
        const below = edge.opening - edge.level - (edge.ends === 'given' ? edge.bottom : 0);
        const nBelow = plan.count - 1 - onLevel;
        if (nBelow > 0) expect(below / (nBelow - 1 + share)).toBeGreaterThan(pitch);
      }),
    );
  });
});
