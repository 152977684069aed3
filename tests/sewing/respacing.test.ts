import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, toMm } from '../../src/lengths/length.ts';
import type { Ends } from '../../src/sewing/closure-input.ts';
import { byCount, opening, placesMm, planFor, someEnds } from './closures-cases.ts';

const waistcoat = { top: mm(12), bottom: mm(25) };
const seven = [12, 83, 154, 225, 296, 367, 438];
const around = (...sewn: number[]) =>
  opening(mm(463), byCount(7), { ...waistcoat, sewn: sewn.map(mm) });

describe('the demo waistcoat, some of its hooks sewn', () => {
  test('sewn as planned, the rest come out as planned, in whatever order', () => {
    for (const sewn of [[12], [438], [225], [83, 296], [296, 83], [12, 438], seven]) {
      expect(placesMm(planFor(around(...sewn)))).toEqual(seven);
    }
  });

  test('sewn ones stay where they are, the rest are spread evenly around them', () => {
    const plan = planFor(around(12, 85, 150));
    expect(placesMm(plan)).toEqual([12, 85, 150, 222, 294, 366, 438]);
    expect(plan.run.marks.map(({ kind }) => kind)).toEqual([
      ...['sewn', 'sewn', 'sewn'],
      ...['closure', 'closure', 'closure', 'closure'],
    ]);
    expect(
      plan.stretches.map(({ spaces, pitch, asMade }) => [spaces, toMm(pitch), asMade]),
    ).toEqual([
      [1, 73, true],
      [1, 65, true],
      [4, 72, false],
    ]);
  });

  test('one sewn a hair inside the first or last place is that one as made', () => {
    expect(placesMm(planFor(around(13)))[0]).toBe(13);
    expect(placesMm(planFor(around(437))).at(-1)).toBe(437);
    expect(planFor(around(13)).count).toBe(7);
  });

  test('one sewn beyond the first or last place takes its part', () => {
    expect(placesMm(planFor(around(6))).slice(0, 2)).toEqual([6, 78]);
    expect(placesMm(planFor(around(450))).at(-1)).toBe(450);
  });

  test('first and last are still wanted where only the middle is sewn', () => {
    const places = placesMm(planFor(around(200, 250)));
    expect(places[0]).toBe(12);
    expect(places.at(-1)).toBe(438);
  });

  test('nothing left to sew: the row as made', () => {
    const plan = planFor({ ...around(20, 90, 400), rule: byCount(3) });
    expect(placesMm(plan)).toEqual([20, 90, 400]);
    expect(plan.stretches.every(({ asMade }) => asMade)).toBe(true);
  });
});

describe('sewn, with the other rules', () => {
  test('a widest pitch asks for the fewest more', () => {
    const input = { ...around(12, 300), rule: { by: 'widest', pitch: mm(75) } as const };
    // 288 needs four spaces of 72, the 138 below two of 69.
    expect(placesMm(planFor(input))).toEqual([12, 84, 156, 228, 300, 369, 438]);
  });

  test('a kept pitch becomes the nearest even one', () => {
    const input = { ...around(12, 300), rule: { by: 'exact', pitch: mm(71) } as const };
    expect(placesMm(planFor(input))).toEqual([12, 84, 156, 228, 300, 369, 438]);
    const gap = { by: 'gap', gap: mm(59), width: mm(12) } as const;
    expect(planFor({ ...input, rule: gap }).gap).toBe(mm(57));
  });

  test('a level takes a mark unless a sewn one is near enough to serve it', () => {
    const free = planFor({ ...around(12, 83), level: mm(200) });
    expect(free.run.marks.find(({ kind }) => kind === 'level')?.at).toBe(mm(200));
    expect(free.level?.off).toBe(0);
    const served = planFor({ ...around(12, 83), level: mm(80) });
    expect(served.run.marks.some(({ kind }) => kind === 'level')).toBe(false);
    expect(served.level?.off).toBe(mm(3));
    expect(served.count).toBe(7);
  });
});

/** Positions on a small ruler, so that every way of placing them can be tried. */
const small = fc
  .record({
    size: fc.integer({ min: 6, max: 14 }),
    ends: someEnds,
    top: fc.integer({ min: 0, max: 2 }),
    bottom: fc.integer({ min: 0, max: 2 }),
    sewn: fc.uniqueArray(fc.integer({ min: 0, max: 14 }), { minLength: 1, maxLength: 4 }),
    more: fc.integer({ min: 0, max: 3 }),
  })
  .map((given) => ({ ...given, sewn: given.sewn.filter((at) => at <= given.size) }))
  .filter(({ sewn }) => sewn.length > 0)
  .map(({ ends, top, bottom, size, ...rest }) => ({
    ...rest,
    ends: ends as Ends,
    size,
    first: ends === 'given' ? top : 0,
    last: ends === 'given' ? size - bottom : size,
  }));

type Small = typeof small extends fc.Arbitrary<infer Case> ? Case : never;

/**
 * The widest space of a row, from its places alone. A free end of half a space,
 * or one left bare, counts double; one of a whole space counts as it is.
 */
function widest(places: readonly number[], { ends, first, last }: Small): number {
  const doubled = ends === 'whole' ? 1 : 2;
  const steps = places.slice(1).map((at, i) => at - places[i]!);
  return Math.max(...steps, doubled * (places[0]! - first), doubled * (last - places.at(-1)!));
}

/** Every way to put `more` marks on the given places, in order. */
function* choices(free: readonly number[], more: number): Generator<number[]> {
  if (more === 0) yield [];
  else
    for (let i = 0; i < free.length; i++)
      for (const rest of choices(free.slice(i + 1), more - 1)) yield [free[i]!, ...rest];
}

/** A first or last mark that is new stands where it was asked for. */
function keepsEnds(places: readonly number[], { ends, first, last, sewn }: Small): boolean {
  if (ends !== 'given') return true;
  const held = (at: number, end: number) => at === end || sewn.includes(at);
  return held(places[0]!, first) && held(places.at(-1)!, last);
}

function ourPlaces(given: Small): number[] {
  const { size, ends, first, last, sewn, more } = given;
  const rest = { ends, top: mm(first), bottom: mm(size - last), sewn: sewn.map(mm) };
  const plan = planFor(opening(mm(size), byCount(sewn.length + more), rest));
  return plan.run.marks.map(({ at }) => toMm(at));
}

describe('optimal', () => {
  test('no placing on a ruler leaves a narrower widest space', () => {
    fc.assert(
      fc.property(small, (given) => {
        const ours = widest(ourPlaces(given), given);
        const { first, last, sewn, more, size } = given;
        const free = Array.from({ length: size * 2 + 1 }, (_, i) => i / 2).filter(
          (at) => at >= first && at <= last && !sewn.includes(at),
        );
        for (const added of choices(free, more)) {
          const places = [...sewn, ...added].sort((a, b) => a - b);
          if (keepsEnds(places, given)) {
            expect(ours).toBeLessThanOrEqual(widest(places, given) + 1e-9);
          }
        }
      }),
      { numRuns: 1000 },
    );
  }, 60_000);

  test('it is the least that any sharing over the stretches gives', () => {
    fc.assert(
      fc.property(small, (given) => {
        const ours = widest(ourPlaces(given), given);
        expect(ours).toBeCloseTo(leastOfSharings(given), 6);
      }),
      { numRuns: 2000 },
    );
  });
});

/** Shares the marks in every way over the stretches; formulas of arithmetic §3, written again. */
function leastOfSharings({ ends, first, last, sewn, more }: Small): number {
  const fixed = [...sewn].sort((a, b) => a - b);
  const inner = (s: number) => (k: number) => s / (k + 1);
  const outer = {
    given: (s: number) => (k: number) => (k === 0 ? 2 * s : s / k),
    half: (s: number) => (k: number) => (2 * s) / (2 * k + 1),
    whole: inner,
  }[ends];
  const stretches = [
    outer(Math.max(0, fixed[0]! - first)),
    ...fixed.slice(1).map((at, i) => inner(at - fixed[i]!)),
    outer(Math.max(0, last - fixed.at(-1)!)),
  ];
  const best = (i: number, left: number): number => {
    const space = stretches[i]!;
    if (i === stretches.length - 1) return space(left);
    const shares = Array.from({ length: left + 1 }, (_, k) =>
      Math.max(space(k), best(i + 1, left - k)),
    );
    return Math.min(...shares);
  };
  return best(0, more);
}
