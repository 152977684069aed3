import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { length, mm, toMm } from '../../src/lengths/length.ts';
import { spaceClosures } from '../../src/sewing/closures.ts';
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

  test('one pitch through the level slides the row, but never past an edge', () => {
    const far = { top: mm(30), bottom: mm(25), level: mm(213) };
    const slid = planFor(opening(mm(481), byCount(7), { ...far, levelBy: 'moved-ends' }));
    // Even: 30, 101, … 456; the mark at 243 is 30 below the level, the one at 172 is 41 above.
    expect(placesMm(slid)).toEqual([0, 71, 142, 213, 284, 355, 426]);
    // Even: 12, 83, … 438; sliding the mark at 225 up by 15 would carry the first past the edge,
    // so that the pitch is made 70.
    const near = { ...waistcoat, level: mm(210), levelBy: 'moved-ends' as const };
    const held = planFor(opening(mm(463), byCount(7), near));
    expect(placesMm(held)).toEqual([0, 70, 140, 210, 280, 350, 420]);
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
    // first, the first moves by 198, and the other goes down to the edge.
    const moved = planFor(opening(mm(463), byCount(2), { ...at, levelBy: 'moved-ends' }));
    expect(placesMm(moved)).toEqual([210, 463]);
  });

  test('a kept pitch runs through the level and leaves a remainder at either end', () => {
    const rule = { by: 'exact', pitch: mm(60) } as const;
    const plan = planFor(opening(mm(463), rule, { ...waistcoat, level: mm(210) }));
    expect(placesMm(plan)).toEqual([30, 90, 150, 210, 270, 330, 390]);
    expect(plan.remainder).toEqual({ above: mm(18), below: mm(48) });
    expect(plan.level?.twoPitches).toBeUndefined();
  });

  test('an answer whose items would overlap is not offered', () => {
    const ends = { top: mm(10), bottom: mm(10), level: mm(40), width: mm(24) };
    const input = opening(mm(120), byCount(5), ends);
    // Two pitches: 30 above and 23.3 below; one pitch: 25, slid down by 5.
    const moved = planFor({ ...input, levelBy: 'moved-ends' });
    expect(placesMm(moved)).toEqual([15, 40, 65, 90, 115]);
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

  test('no other single pitch through the level moves the ends less', () => {
    fc.assert(
      fc.property(withLevel, fc.integer({ min: 2, max: 12 }), (edge, count) => {
        const input = { ...edge, rule: byCount(count) };
        const even = planFor({ ...input, level: undefined });
        const plan = planFor({ ...input, levelBy: 'moved-ends' });
        const moved = (top: number, bottom: number) =>
          Math.max(Math.abs(top - even.ends.top), Math.abs(bottom - even.ends.bottom));
        const ours = moved(plan.ends.top, plan.ends.bottom);
        for (let n = 0; n < count; n++) {
          for (let tries = 1; tries <= 200; tries++) {
            const pitch = (tries / 100) * even.stretches[0]!.pitch;
            const top = edge.level - n * pitch;
            const bottom = edge.opening - edge.level - (count - 1 - n) * pitch;
            if (top >= 0 && bottom >= 0) {
              expect(ours).toBeLessThanOrEqual(moved(top, bottom) + 1e-3);
            }
          }
        }
      }),
      { numRuns: 60 },
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
