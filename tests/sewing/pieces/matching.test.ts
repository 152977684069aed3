/**
 * Published: cap ease is the head less the armhole and never less than nothing (8.9, a teaching page on
 * sleeves, emmakespatterns.com); quarters of an elastic to quarters of its edge (14.10) and both edges in the same parts (13.14)
 * are common practice, no source. Lengths are ours.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, length, mm, toInches, toMm, ZERO } from '../../../src/lengths/length.ts';
import { match, partOf } from '../../../src/sewing/pieces/matching.ts';
import type { MatchInput } from '../../../src/sewing/pieces/matching-input.ts';
import { pairedOf, waysToPair } from '../../../src/sewing/pieces/matching-pairs.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (...all: number[]) => all.map((one) => mm(10 * one));
const FINE: MatchInput = {
  here: cm(12, 12, 11, 11),
  other: cm(12, 12.6, 11.6, 11),
  alone: [],
  shares: [],
  parts: 1,
  weights: [],
};
const found = (set: Partial<MatchInput> = {}) => solved(match({ ...FINE, ...set }));
const places = (run: { marks: readonly { at: number }[] }) =>
  run.marks.map(({ at }) => Number(toMm(at as never).toFixed(3)));

test('8.9: a head of 19 1/4 in on an armhole of 18 has 1 1/4 in of ease, 6.9 %', () => {
  const { ease, part } = found({ here: [inches(18)], other: [inches(19.25)] });
  expect([toInches(ease), (100 * part).toFixed(1)]).toEqual([1.25, '6.9']);
});

test('14.10: quarters of an elastic of 60 to quarters of an edge of 96', () => {
  const { runs } = found({ here: cm(60), other: cm(96), parts: 4 });
  expect(places(runs.here)).toEqual([150, 300, 450]);
  expect(places(runs.other)).toEqual([240, 480, 720]);
});

// By hand: 0.6 on 12 is 5 %, 0.6 on 11 is 5.45 %; 1.2 on 46.
test('the ease of each length and of all', () => {
  const { lengths, ease, part } = found();
  expect(lengths.map((one) => toMm(one.ease))).toEqual([0, 6, 6, 0]);
  expect(lengths.map(({ fullest }) => (100 * fullest).toFixed(2))).toEqual([
    '0.00',
    '5.00',
    '5.45',
    '0.00',
  ]);
  expect([toMm(ease), (100 * part).toFixed(2)]).toEqual([12, '2.61']);
});

describe('notches', () => {
  // By hand: 47.4 − 46 = 1.4, none under the arm, half each above: 12, 12.7, 11.7, 11.
  test('a head of which only the whole is known is notched by the shares', () => {
    const head = found({ other: cm(47.4), shares: [0, 1, 1, 0] });
    expect(head.notches.map((at) => toMm(at))).toEqual([120, 247, 364]);
    expect(head.moves).toBeUndefined();
    expect(places(head.runs.other)).toEqual([120, 247, 364]);
    expect(head.lengths.map(({ ease }) => Math.round(toMm(ease)))).toEqual([0, 7, 7, 0]);
  });

  // By hand: half a neckline, back 9 and front 14.5; a facing of 9.3 and 14.2.
  test('a facing as long as its neckline with its shoulder seam 3 mm too far: moved back by that', () => {
    const { ease, moves } = found({ here: cm(9, 14.5), other: cm(9.3, 14.2) });
    expect([ease, moves]).toEqual([0, [mm(-3)]]);
  });
});

describe('marks between notches', () => {
  test('the longer edge carries the ease unevenly, the shorter is marked evenly', () => {
    const { runs, lengths } = found({
      here: cm(12),
      other: cm(12.8),
      parts: 4,
      weights: [1, 3, 3, 1],
    });
    expect(places(runs.here)).toEqual([30, 60, 90]);
    expect(places(runs.other)).toEqual([31, 64, 97]);
    // 3 of 8 parts of 8 mm on 30 mm.
    expect(lengths[0]?.fullest).toBeCloseTo(0.1, 10);
  });

  test('where the other edge is the shorter, this one carries it', () => {
    const { runs } = found({ here: cm(12.8), other: cm(12), parts: 4, weights: [1, 3, 3, 1] });
    expect(places(runs.other)).toEqual([30, 60, 90]);
    expect(places(runs.here)).toEqual([31, 64, 97]);
  });

  test('notches among them are notches, and both edges have as many of each', () => {
    const { here, other } = found({ parts: 2 }).runs;
    const kinds = (run: typeof here) => run.marks.map(({ kind }) => kind);
    expect(kinds(here)).toEqual([
      'measure',
      'notch',
      'measure',
      'notch',
      'measure',
      'notch',
      'measure',
    ]);
    expect(kinds(other)).toEqual(kinds(here));
    expect(here.marks.map(({ label }) => label)).toEqual(['1', '2', '3', '4', '5', '6', '7']);
  });
});

// By hand: 12 + 12 + 11 + 11 = 46; 24.4 + 22.8 = 47.2; 1.2 on 46 is 2.61 %.
describe('edges of which one has fewer lengths', () => {
  test.each<[string, Partial<MatchInput>, 'here' | 'other']>([
    ['two for four', { other: cm(24.4, 22.8) }, 'other'],
    ['four for one whole', { here: cm(46), other: cm(12, 12.6, 11.6, 11) }, 'here'],
  ])('%s: what they come to in all, no notch and no mark', (_, set, fewer) => {
    const plan = found({ ...set, parts: 2, weights: [1, 2], shares: [1, 1, 1, 1] });
    expect(plan.fewer).toBe(fewer);
    expect([toMm(plan.ease), (100 * plan.part).toFixed(2)]).toEqual([12, '2.61']);
    expect(plan.lengths).toMatchObject([{ here: mm(460), other: mm(472), ease: mm(12) }]);
    expect([plan.notches, plan.moves]).toEqual([[], undefined]);
    expect([places(plan.runs.here), places(plan.runs.other)]).toEqual([[], []]);
  });

  test('one whole to be notched, or as many lengths, is none of it', () => {
    expect(found({ other: cm(47.2) }).fewer).toBeUndefined();
    expect(found().fewer).toBeUndefined();
  });
});

// By hand: 12, 12, 11, 11 against 12, 24, 11: without the second notch 12, 23, 11, eased 0, 1, 0; without the first 24, 11, 11: -12, 13, 0.
describe('a notch that meets none', () => {
  const fewer = { other: cm(12, 24, 11) };

  test('left over, the lengths at both its sides count as one', () => {
    const plan = found({ ...fewer, alone: [2], shares: [0, 1, 0] });
    expect(plan.fewer).toBeUndefined();
    expect(plan.lengths.map(({ ease }) => toMm(ease))).toEqual([0, 10, 0]);
    expect(plan.pairs).toMatchObject({
      met: { here: [1, 3], other: [1, 2] },
      left: { here: [2], other: [] },
    });
    expect(places(plan.runs.here)).toEqual([120, 350]);
    expect(places(plan.runs.other)).toEqual([120, 360]);
    expect(plan.moves).toEqual([0, 0]);
  });

  test('of the other edge; and all that a whole one has', () => {
    const other = found({ here: cm(12, 24, 11), other: cm(12, 12, 11, 11), alone: [2] });
    expect(other.lengths.map(({ ease }) => toMm(ease))).toEqual([0, -10, 0]);
    expect(other.pairs?.left).toEqual({ here: [], other: [2] });
    const whole = found({ here: cm(46), other: cm(12, 12.6, 11.6, 11), alone: [3, 1, 2] });
    expect(whole.lengths.map(({ ease }) => toMm(ease))).toEqual([12]);
    expect(whole.pairs?.left).toEqual({ here: [], other: [1, 2, 3] });
  });

  // By hand, in parts of 46 and 47: |24 − 36| and |12 − 12|, together 0.250, without the third; without the first 0.272.
  test('nothing is taken unasked; what is likeliest is asked first', () => {
    const edges = { here: cm(12, 12, 11, 11), other: cm(12, 24, 11), alone: [] };
    expect(waysToPair(edges).map(({ alone }) => alone)).toEqual([[2], [3], [1]]);
    expect(found(fewer).fewer).toBe('other');
    expect(waysToPair({ ...edges, other: edges.here })).toEqual([]);
  });

  test.each<[string, readonly number[], string[]]>([
    ['one too many', [1, 2], ['alone']],
    ['the same one twice', [2, 2], []],
    ['the end, which is none', [4], ['alone']],
    ['none by that number', [0], ['alone']],
    ['half a notch', [1.5], ['alone']],
  ])('%s', (_, alone, fields) => {
    const outcome = match({ ...FINE, ...fewer, alone });
    expect(outcome.ok ? [] : fieldsOf(outcome)).toEqual(fields);
  });

  test('shares are one for each length that pairs', () => {
    expect(fieldsOf(match({ ...FINE, ...fewer, alone: [2], shares: [1, 1, 1, 1] }))).toEqual([
      'shares',
    ]);
  });
});

const lengths = (n: number) =>
  fc.array(fc.integer({ min: 80_000, max: 4_000_000 }).map(length), { minLength: n, maxLength: n });
const many = fc.integer({ min: 1, max: 8 });

test('lengths add up; moved as they are said to be, the notches share the difference as it is meant', () => {
  fc.assert(
    fc.property(
      many.chain((n) =>
        fc.record({
          here: lengths(n),
          other: lengths(n),
          shares: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: n, maxLength: n }),
        }),
      ),
      fc.integer({ min: 1, max: 5 }),
      (set, parts) => {
        const input = { ...FINE, ...set, parts };
        const outcome = match(input);
        if (!outcome.ok) {
          expect(fieldsOf(outcome)).toEqual(['shares']);
          return;
        }
        const plan = outcome.value;
        const sum = (all: readonly number[]) => all.reduce((one, other) => one + other, 0);
        expect(sum(plan.lengths.map(({ ease }) => ease))).toBeCloseTo(plan.ease, 3);
        // Another road: notches moved, and the edges matched again.
        const moved = plan.moves?.map((by, i) => sum(set.other.slice(0, i + 1)) + by) ?? [];
        const ends = [0, ...moved, sum(set.other)];
        const again = set.here.map((one, i) => (ends[i + 1] ?? 0) - (ends[i] ?? 0) - one);
        const share = plan.ease / sum(set.shares);
        for (const [i, ease] of again.entries()) {
          expect(ease).toBeCloseTo(share * (set.shares[i] ?? 0), 2);
        }
        // In order on both edges, and as many.
        for (const run of [plan.runs.here, plan.runs.other]) {
          const at = [0, ...run.marks.map((mark) => mark.at as number), run.length + 1];
          expect(run.marks).toHaveLength(set.here.length * parts - 1);
          expect(at.every((one, i) => i === 0 || one > (at[i - 1] ?? 0))).toBe(true);
        }
      },
    ),
    { seed: 1520, numRuns: 400 },
  );
});

test('turned round, what was eased is stretched by as much', () => {
  fc.assert(
    fc.property(
      many.chain((n) => fc.tuple(lengths(n), lengths(n))),
      ([here, other]) => {
        if (here.length === 1) return;
        const one = match({ ...FINE, here, other });
        const back = match({ ...FINE, here: other, other: here });
        if (!one.ok || !back.ok) return;
        expect(back.value.ease).toBe(0 - one.value.ease + 0);
        expect(back.value.lengths.map(({ fullest }) => fullest)).toEqual(
          one.value.lengths.map(({ fullest }) => fullest),
        );
        expect(back.value.runs.here.marks).toEqual(one.value.runs.other.marks);
      },
    ),
    { seed: 1521 },
  );
});

test('every way to pair keeps notches where they are and the ease in all; none is missing', () => {
  const sum = (all: readonly number[]) => all.reduce((one, more) => one + more, 0);
  const ends = (all: readonly number[]) => all.map((_, i) => sum(all.slice(0, i + 1)));
  const choose = (n: number, k: number): number => (k === 0 ? 1 : (n * choose(n - 1, k - 1)) / k);
  fc.assert(
    fc.property(many.chain(lengths), many.chain(lengths), (here, other) => {
      const [n, m] = [here.length, other.length];
      const ways = waysToPair({ here, other, alone: [] });
      const unpaired = m !== 1 && m !== n;
      expect(ways).toHaveLength(unpaired ? choose(Math.max(n, m) - 1, Math.abs(n - m)) : 0);
      expect(new Set(ways.map(({ alone }) => alone.join())).size).toBe(ways.length);
      for (const { alone, met, left } of ways) {
        const { lengths: each, ease, fewer } = solved(match({ ...FINE, here, other, alone }));
        expect(fewer).toBeUndefined();
        expect(each).toHaveLength(Math.min(n, m));
        expect(ease).toBe(sum(other) - sum(here) + 0);
        // Another road: where each notch that meets lies on its own edge.
        for (const [edge, own, of] of [
          [here, met.here, each.map((one) => one.here)],
          [other, met.other, each.map((one) => one.other)],
        ] as const) {
          expect(ends(of).slice(0, -1)).toEqual(own.map((notch) => ends(edge)[notch - 1]));
        }
        expect([...left.here, ...left.other].sort()).toEqual([...alone].sort());
      }
    }),
    { seed: 1523, numRuns: 60 },
  );
});

test('what a share is more than, and a notch that is none, are told', () => {
  const told = (set: Partial<MatchInput>) => {
    const outcome = match({ ...FINE, ...set });
    return outcome.ok ? [] : outcome.problems;
  };
  // 46 on 30: 16 of the first length of 12.
  expect(told({ other: cm(30), shares: [1, 0, 0, 0] })).toEqual([
    { kind: 'does-not-fit', field: 'shares', room: mm(120), needed: mm(160) },
  ]);
  expect(told({ other: cm(23, 23), alone: [0, 9, 2] })).toMatchObject([
    { kind: 'too-few', given: 0 },
  ]);
});

test('pairs as they are: which notches meet, and none left over', () => {
  expect(found().pairs).toEqual({
    ...{ here: FINE.here, other: FINE.other },
    ...{ met: { here: [1, 2, 3], other: [1, 2, 3] }, left: { here: [], other: [] } },
  });
  expect(pairedOf({ here: cm(12, 12, 11), other: cm(23, 12), alone: [1, 2] })).toBeUndefined();
  expect(found({ here: cm(46), other: cm(47) }).moves).toEqual([]);
});

test('an edge that is all used up, and more, is shorter by all of it', () => {
  expect([partOf(mm(-100), mm(100)), partOf(mm(-110), mm(100))]).toEqual([-1, -1]);
});

// 12 % and 50 % of one edge, 12 % of the other, twice as long: the first notch meets, whatever their lengths.
test('likeliest is what lies at the same part of both edges, not as far along', () => {
  const ways = waysToPair({ here: cm(12, 38, 50), other: cm(24, 176), alone: [] });
  expect(ways.map(({ alone }) => alone)).toEqual([[2], [1]]);
});

test('in all it is the same ease, however the edges are cut up', () => {
  fc.assert(
    fc.property(many.chain(lengths), many.chain(lengths), (here, other) => {
      const sum = (all: readonly number[]) => all.reduce((one, more) => one + more, 0);
      const outcome = match({ ...FINE, here, other });
      if (!outcome.ok) {
        expect(other).toHaveLength(1);
        return;
      }
      const { ease, fewer, lengths: each } = outcome.value;
      expect(ease).toBe(sum(other) - sum(here) + 0);
      const pairs = other.length === 1 || other.length === here.length;
      expect(fewer).toBe(pairs ? undefined : here.length < other.length ? 'here' : 'other');
      expect(each).toHaveLength(pairs ? here.length : 1);
    }),
    { seed: 1522 },
  );
});

describe('refused', () => {
  test.each<[string, Partial<MatchInput>, string[]]>([
    ['an edge without lengths', { here: [] }, ['here']],
    ['nine lengths', { here: cm(1, 1, 1, 1, 1, 1, 1, 1, 1) }, ['here']],
    ['a length of nothing', { other: [ZERO] }, ['other']],
    ['two shares for four lengths', { shares: [1, 1] }, ['shares']],
    ['a share of less than nothing', { shares: [1, 1, -1, 1] }, ['shares']],
    ['shares that are all nothing', { shares: [0, 0, 0, 0] }, ['shares']],
    ['three weights for two parts', { parts: 2, weights: [1, 1, 1] }, ['weights']],
    ['no parts', { parts: 0 }, ['parts']],
    ['more stretched than there is', { other: cm(30), shares: [1, 0, 0, 0] }, ['shares']],
    ['stretched by all there is', { other: cm(34), shares: [1, 0, 0, 0] }, ['shares']],
    ['two lengths of nothing', { here: [ZERO, ZERO], other: [ZERO, ZERO] }, ['here', 'other']],
    ['two notches that are none', { other: cm(23, 23), alone: [0, 9] }, ['alone']],
  ])('%s', (_, set, fields) => {
    expect(fieldsOf(match({ ...FINE, ...set }))).toEqual(fields);
  });
});
