import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STEP } from '../../../src/lengths/graduation.ts';
import { inches, mm, toInches, toMm } from '../../../src/lengths/length.ts';
import { spaceClosures } from '../../../src/sewing/closures/closures.ts';
import { markOut } from '../../../src/sewing/marks.ts';
import { byCount, opening, placesMm, planFor, roomy, typed } from './closures-cases.ts';

describe('published', () => {
  // treadleyardgoods.blogspot.com, 2023/08 (a shop's page): 8 buttons, 15 in first to
  // last: 15/7 = 2.14, about 2 1/8 in. Divide by spaces, not by buttons.
  test('8 buttons over 15 in stand 2.14 in apart', () => {
    const plan = planFor(opening(inches(15), byCount(8)));
    expect(plan.stretches).toHaveLength(1);
    expect(plan.stretches[0]!.spaces).toBe(7);
    expect(toInches(plan.stretches[0]!.pitch)).toBeCloseTo(2.14, 2);
  });

  // The Sun (Auckland), 4 July 1927 (a newspaper): 4 buttonholes 2 in apart, 1 in beyond
  // each end, on a strip of 8 in.
  test('a strip of 8 in carries 4 buttonholes 2 in apart, 1 in from each end', () => {
    const ends = { top: inches(1), bottom: inches(1) };
    const byPitch = planFor(opening(inches(8), { by: 'exact', pitch: inches(2) }, ends));
    expect(byPitch.count).toBe(4);
    expect(byPitch.remainder).toEqual({ above: 0, below: 0 });
    expect(planFor(opening(inches(8), byCount(4), ends)).stretches).toEqual([
      { spaces: 3, pitch: inches(2), asMade: false },
    ]);
  });

  // Butterick, The New Dressmaker (1921), ch. 24: mark top and bottom, then divide the
  // distance into the wanted number of spaces.
  test('top and bottom are marked first, then the distance is divided', () => {
    const ends = { top: inches(0.5), bottom: inches(1.5) };
    const plan = planFor(opening(inches(20), byCount(7), ends));
    const places = plan.run.marks.map(({ at }) => toInches(at));
    expect(places).toEqual([0.5, 3.5, 6.5, 9.5, 12.5, 15.5, 18.5]);
  });

  // Butterick, The New Dressmaker (1921), p. 117: hooks 1 1/4 in apart. That 15 in then
  // takes 13 of them is derived here.
  test('hooks 1 1/4 in apart over 15 in are 13', () => {
    const plan = planFor(opening(inches(15), { by: 'exact', pitch: inches(1.25) }));
    expect(plan.count).toBe(13);
    expect(plan.remainder?.below).toBe(0);
  });
});

// The demo record, an invented waistcoat: 46.3 cm, seven hooks, 1.2 and 2.5 cm at the ends.
test('the demo waistcoat has its seven hooks 7.1 cm apart', () => {
  const plan = planFor(opening(mm(463), byCount(7), { top: mm(12), bottom: mm(25) }));
  expect(plan.stretches).toEqual([{ spaces: 6, pitch: mm(71), asMade: false }]);
  expect(placesMm(plan)).toEqual([12, 83, 154, 225, 296, 367, 438]);
  expect(plan.run.marks.map(({ label }) => label)).toEqual(['1', '2', '3', '4', '5', '6', '7']);
});

describe('worked by hand', () => {
  test('one alone stands in the middle of what is left', () => {
    const plan = planFor(opening(mm(100), byCount(1), { top: mm(10), bottom: mm(30) }));
    expect(placesMm(plan)).toEqual([40]);
    expect(plan.stretches).toEqual([]);
  });

  test('ends of a whole and of half a space', () => {
    expect(placesMm(planFor(opening(mm(120), byCount(3), { ends: 'whole' })))).toEqual([
      30, 60, 90,
    ]);
    expect(placesMm(planFor(opening(mm(120), byCount(3), { ends: 'half' })))).toEqual([
      20, 60, 100,
    ]);
  });

  test('a kept pitch leaves its remainder below, whatever the ends', () => {
    const rule = { by: 'exact', pitch: mm(30) } as const;
    const given = planFor(opening(mm(130), rule, { top: mm(10), bottom: mm(5) }));
    expect(placesMm(given)).toEqual([10, 40, 70, 100]);
    expect(given.remainder).toEqual({ above: 0, below: mm(25) });
    const whole = planFor(opening(mm(130), rule, { ends: 'whole' }));
    expect(placesMm(whole)).toEqual([30, 60, 90]);
    expect(whole.remainder?.below).toBe(mm(10));
    const half = planFor(opening(mm(130), rule, { ends: 'half' }));
    expect(placesMm(half)).toEqual([15, 45, 75, 105]);
    expect(half.remainder?.below).toBe(mm(10));
  });

  test('nothing gives way, and no level is spoken of, where none is asked and none are sewn', () => {
    expect(planFor(opening(mm(120), byCount(3)))).toMatchObject({ level: undefined, givesWay: [] });
  });

  test('a clear gap is kept between items', () => {
    const plan = planFor(opening(mm(130), { by: 'gap', gap: mm(18), width: mm(12) }));
    expect(placesMm(plan)).toEqual([0, 30, 60, 90, 120]);
    expect(plan.gap).toBe(mm(18));
    expect(plan.remainder?.below).toBe(mm(10));
  });

  test('the clear gap is shown when the width is known, down to touching', () => {
    expect(planFor(opening(mm(90), byCount(4), { width: mm(12) })).gap).toBe(mm(18));
    expect(planFor(opening(mm(90), byCount(4), { width: mm(30) })).gap).toBe(0);
    expect(planFor(opening(mm(90), byCount(4))).gap).toBeUndefined();
  });

  test('nothing between first and last leaves one', () => {
    const ends = { top: mm(50), bottom: mm(50) };
    expect(planFor(opening(mm(100), { by: 'widest', pitch: mm(30) }, ends)).count).toBe(1);
    expect(planFor(opening(mm(100), { by: 'exact', pitch: mm(30) }, ends)).count).toBe(1);
    expect(planFor(opening(mm(100), byCount(1), ends)).count).toBe(1);
  });
});

describe('laws', () => {
  const even = fc.tuple(roomy, fc.integer({ min: 1, max: 40 }));

  test('ends and spaces add up to the opening', () => {
    fc.assert(
      fc.property(even, ([edge, count]) => {
        const plan = planFor({ ...edge, rule: byCount(count) });
        expect(plan.count).toBe(count);
        const spaces = plan.stretches.reduce((sum, s) => sum + s.spaces * s.pitch, 0);
        expect(plan.ends.top + spaces + plan.ends.bottom).toBeCloseTo(edge.opening, 3);
      }),
    );
  });

  test('a row between equal ends is the same from either end', () => {
    fc.assert(
      fc.property(even, ([edge, count]) => {
        const plan = planFor({ ...edge, bottom: edge.top, rule: byCount(count) });
        const there = plan.run.marks.map(({ at }) => at);
        const back = there.map((at) => edge.opening - at).reverse();
        there.forEach((at, i) => {
          expect(at).toBeCloseTo(back[i]!, 4);
        });
      }),
    );
  });

  test('a shared end is a whole or half a space', () => {
    fc.assert(
      fc.property(even, ([edge, count]) => {
        const shares = { whole: 1, half: 0.5, given: 0 };
        const plan = planFor({ ...edge, rule: byCount(count) });
        if (edge.ends === 'given' || count === 1) return;
        expect(plan.ends.top).toBeCloseTo(plan.stretches[0]!.pitch * shares[edge.ends], 3);
        expect(plan.ends.bottom).toBeCloseTo(plan.ends.top, 3);
      }),
    );
  });

  test('a widest pitch is never exceeded, and one mark fewer would exceed it', () => {
    fc.assert(
      fc.property(roomy, typed(1, 300), (edge, pitch) => {
        const plan = planFor({ ...edge, rule: { by: 'widest', pitch } });
        for (const stretch of plan.stretches) expect(stretch.pitch).toBeLessThanOrEqual(pitch);
        // Two carry first and last, one carries nothing: no pitch asks for fewer.
        if (plan.count <= (edge.ends === 'given' ? 2 : 1)) return;
        const fewer = planFor({ ...edge, rule: byCount(plan.count - 1) });
        const wider = fewer.stretches[0]?.pitch ?? fewer.ends.top * (edge.ends === 'half' ? 2 : 1);
        expect(wider).toBeGreaterThan(pitch);
      }),
    );
  });

  test('a kept pitch leaves less than itself', () => {
    fc.assert(
      fc.property(roomy, typed(1, 99), (edge, pitch) => {
        const plan = planFor({ ...edge, rule: { by: 'exact', pitch } });
        expect(plan.remainder!.below).toBeGreaterThanOrEqual(0);
        expect(plan.remainder!.below).toBeLessThan(pitch);
        const share = { whole: 1, half: 0.5, given: 0 }[edge.ends] * pitch;
        const end = edge.ends === 'given' ? edge.bottom : share;
        expect(plan.ends.bottom).toBeCloseTo(end + plan.remainder!.below, 3);
      }),
    );
  });

  test('two thousand are all in their places', () => {
    const plan = planFor(opening(mm(99_950), byCount(2000)));
    const marked = markOut(plan.run, STEP['1mm']);
    expect(marked.marks).toHaveLength(2000);
    expect(marked.marks.map(({ at }) => toMm(at))).toEqual(
      Array.from({ length: 2000 }, (_, i) => i * 50),
    );
    expect(spaceClosures(opening(mm(99_950), byCount(2001))).ok).toBe(false);
  });

  test('ties are exact: 3 over 25 mm on whole millimetres go to the even one', () => {
    const plan = planFor(opening(mm(25), byCount(3)));
    expect(markOut(plan.run, STEP['1mm']).marks.map(({ at }) => toMm(at))).toEqual([0, 12, 25]);
  });
});
