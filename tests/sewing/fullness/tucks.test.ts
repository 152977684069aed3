/**
 * Published: National Instructional Media Institute (Government of India), CITS Dress Making, Trade
 * Practical, vol. 2, 2024, page 209, rows 12.2 to 12.4; Home and School Sewing, chapter 21, rows 12.1 and
 * 12.7; School Needlework, row 12.13; a teaching page of 2009, row 12.5. Rows 12.11 and 12.12 are arithmetic, no source.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STEP, toGraduation } from '../../../src/lengths/graduation.ts';
import { exactLength, inches, mm, toInches, toMm, ZERO } from '../../../src/lengths/length.ts';
import type { TucksInput } from '../../../src/sewing/fullness/tuck-input.ts';
import { depthOf, TUCK_LINES, tucks } from '../../../src/sewing/fullness/tucks.ts';
import { markOut } from '../../../src/sewing/marks.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
const toCm = (x: number | undefined) => Number((toMm(exactLength(x ?? 0)) / 10).toFixed(6));

const FRONT: TucksInput = {
  finished: cm(28),
  first: cm(2),
  last: cm(2),
  spread: { by: 'gap', gap: cm(1.5), fit: 'no-wider' },
  depth: cm(0.2),
  step: ZERO,
  lies: 'last',
  seam: ZERO,
};
const plan = (set: Partial<TucksInput>) => solved(tucks({ ...FRONT, ...set }));
const spacing = (x: number, fit: 'nearest' | 'no-wider' = 'nearest') =>
  ({ by: 'spacing', spacing: cm(x), fit }) as const;

describe('published', () => {
  test('12.3, worked: 28 cm, gap 1.5, tuck 2 mm, edges 2: 14.1, so 15 gaps, 16 tucks, 34.4 cut, 1.6 apart', () => {
    const all = plan({});
    expect([all.count, toCm(all.cut), toCm(all.taken), toCm(all.spacing), toCm(all.gap)]).toEqual([
      16, 34.4, 6.4, 1.6, 1.4,
    ]);
    expect(24 / 1.7).toBeCloseTo(14.1, 1);
  });

  test('12.3, to the nearest: 15 tucks, 34.0, 1.714; the printed 16 stands beside it', () => {
    const nearest = plan({ spread: { by: 'gap', gap: cm(1.5), fit: 'nearest' } });
    expect([nearest.count, toCm(nearest.cut), toCm(nearest.spacing)]).toEqual([15, 34, 1.714286]);
    expect(nearest.beside.map(({ count, cut }) => [count, toCm(cut)])).toEqual([
      [14, 33.6],
      [16, 34.4],
    ]);
  });

  // Finished, from stitch line to stitch line, edges → tucks.
  test.each([
    ['12.2, worked', 39, 1.2, 1.5, 31],
    ['12.4, exercise', 44, 2, 2, 21],
    ['12.4, exercise', 24, 1.5, 1.5, 15],
  ])('%s: %d cm, %d apart, edges %d: %d tucks', (_, finished, apart, edge, count) => {
    const set = { finished: cm(finished), first: cm(edge), last: cm(edge), spread: spacing(apart) };
    expect(plan(set).count).toBe(count);
  });

  test('12.1 and 12.5: a tuck takes its depth twice; four of 1/8 in take 1 in', () => {
    const set = { spread: { by: 'count', count: 4 }, depth: inches(1 / 8) } as const;
    expect(toInches(plan(set).taken)).toBe(1);
  });

  test('12.7: three groups of three, as far apart as a group is wide', () => {
    // Two spacings and a tuck: 2 × 1 + 0.2 wide; clear between them 2.2, so 2.4 from stitch line to stitch line.
    const spread = { by: 'groups', groups: 3, each: 3, spacing: cm(1) } as const;
    const { between, count, places } = plan({ finished: cm(4 + 6 + 4.8), spread });
    expect([count, toCm(between)]).toEqual([9, 2.4]);
    expect(places.map(toCm)).toEqual([2, 3, 4, 6.4, 7.4, 8.4, 10.8, 11.8, 12.8]);
  });
});

describe('the lines', () => {
  test('12.13: two stitch lines twice the depth apart, the fold midway; as far on as tucks before it take', () => {
    const { run } = plan({
      spread: { by: 'count', count: 3 },
      depth: cm(1),
      seam: cm(1),
      last: cm(3),
    });
    expect(run.marks.map(({ at, kind }) => `${kind} ${toCm(at)}`)).toEqual([
      ...['stitch 3', 'fold 4', 'stitch 5'],
      ...['stitch 16.5', 'fold 17.5', 'stitch 18.5'],
      ...['stitch 30', 'fold 31', 'stitch 32'],
    ]);
  });

  test('each deeper than the one before it', () => {
    const set = { spread: { by: 'count', count: 3 }, depth: cm(1), step: cm(0.5) } as const;
    const { run, cut, taken } = plan(set);
    expect([toCm(taken), toCm(cut)]).toEqual([9, 37]);
    expect(run.marks.map(({ at }) => toCm(at))).toEqual([2, 3, 4, 16, 17.5, 19, 31, 33, 35]);
  });
});

// By hand: 2, 3 and 4 mm take 1.8 cm a group.
describe('graduated groups', () => {
  const groups = { by: 'groups', groups: 3, each: 3, spacing: cm(1) } as const;
  const grown = { spread: groups, step: cm(0.1) };

  test('anew in each group each has the same depths, else they grow through all', () => {
    const anew = plan({ ...grown, anew: true });
    expect([toCm(anew.taken), toCm(anew.cut)]).toEqual([5.4, 33.4]);
    expect(toCm(plan(grown).taken)).toBe(10.8);
    // The second group begins 9 on, and after the 1.8 of the first.
    expect(anew.run.marks.slice(9, 12).map(({ at }) => toCm(at))).toEqual([14.8, 15, 15.2]);
    expect(
      Array.from({ length: 6 }, (_, i) => toCm(depthOf({ ...FRONT, ...grown, anew: true }, i))),
    ).toEqual([...[0.2, 0.3, 0.4, 0.2, 0.3, 0.4]]);
  });

  test('clear between them is the least: within a group, or from its deepest to the next one', () => {
    // Pressed on, the second of a group lies 0.3 towards the third; back, the third 0.4 towards it.
    expect(toCm(plan({ ...grown, anew: true }).gap)).toBe(0.7);
    // Through all groups the last but one is 0.9 deep.
    expect(toCm(plan(grown).gap)).toBe(0.1);
    expect(toCm(plan({ ...grown, anew: true, lies: 'first' }).gap)).toBe(0.6);
    // (14.8 − 4 − 3 × 2 × 1.2) ÷ 2 = 1.8 to the next group, less 1.6; within a group 1.2 − 0.9.
    const deep = { finished: cm(14.8), step: cm(0.7), spread: { ...groups, spacing: cm(1.2) } };
    expect(toCm(plan({ ...deep, anew: true }).gap)).toBe(0.2);
  });

  test('of what is in no groups, and of tucks all alike, it says nothing', () => {
    expect(plan({ anew: true, step: cm(0.1) })).toEqual(plan({ step: cm(0.1) }));
    expect(plan({ spread: groups, anew: true }).run).toEqual(plan({ spread: groups }).run);
  });
});

describe('what is refused', () => {
  test.each<[string, Partial<TucksInput>, string]>([
    ['no depth', { depth: ZERO }, 'depth'],
    ['edges past the width', { first: cm(15), last: cm(14) }, 'first'],
    ['a tuck over its edge', { last: cm(0.1) }, 'last'],
    ['one over the first edge', { first: cm(0.1), lies: 'first' }, 'first'],
    [
      'over 300 of them',
      { spread: { by: 'spacing', spacing: mm(0.5), fit: 'nearest' } },
      'spacing',
    ],
    [
      'gaps for over 300',
      { depth: mm(0.1), spread: { by: 'gap', gap: ZERO, fit: 'nearest' } },
      'gap',
    ],
    [
      'two where there is room for one',
      { first: cm(14), last: cm(14), spread: { by: 'count', count: 2 } },
      'count',
    ],
    [
      'groups that don’t fit',
      { spread: { by: 'groups', groups: 4, each: 4, spacing: cm(2) } },
      'groups',
    ],
    ['one group', { spread: { by: 'groups', groups: 1, each: 4, spacing: cm(1) } }, 'groups'],
  ])('%s', (_, set, field) => {
    expect(fieldsOf(tucks({ ...FRONT, ...set }))).toEqual([field]);
  });

  test('edges that meet leave one tuck', () => {
    const one = plan({ first: cm(14), last: cm(14) });
    expect([one.count, one.spacing, one.gap, toCm(one.cut)]).toEqual([
      1,
      undefined,
      undefined,
      28.4,
    ]);
  });
});

const anyTucks = fc
  .record({
    finished: typed(50, 1500),
    first: typed(0, 60),
    last: typed(0, 60),
    spread: fc.oneof(
      fc
        .tuple(typed(2, 80), fc.constantFrom('nearest', 'no-closer', 'no-wider'))
        .map(([wide, fit]) => ({ by: 'spacing', spacing: wide, fit }) as const),
      fc
        .tuple(typed(0, 80), fc.constantFrom('nearest', 'no-closer', 'no-wider'))
        .map(([wide, fit]) => ({ by: 'gap', gap: wide, fit }) as const),
      fc.integer({ min: 1, max: 60 }).map((count) => ({ by: 'count', count }) as const),
      fc
        .tuple(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 2, max: 6 }), typed(2, 40))
        .map(([groups, each, wide]) => ({ by: 'groups', groups, each, spacing: wide }) as const),
    ),
    depth: typed(1, 30),
    step: typed(0, 3),
    anew: fc.boolean(),
    lies: fc.constantFrom('first', 'last'),
    seam: typed(0, 20),
  })
  .filter((input) => tucks(input).ok);

describe('laws', () => {
  test('folded away one by one the cloth is the finished width, each tuck where it is to lie', () => {
    fc.assert(
      fc.property(anyTucks, (input) => {
        const { run, cut, count, places, taken } = plan(input);
        expect(run.marks).toHaveLength(TUCK_LINES * count);
        expect(cut - taken - 2 * input.seam).toBe(input.finished);
        let folded = 0;
        for (let i = 0; i < count; i += 1) {
          const [from, fold, to] = run.marks.slice(TUCK_LINES * i, TUCK_LINES * (i + 1));
          if (!from || !fold || !to) throw new Error('a tuck has three lines');
          expect(from.at - folded - input.seam).toBeCloseTo(places[i] ?? -1, 3);
          expect(fold.at - from.at).toBeCloseTo(depthOf(input, i), 3);
          expect(to.at - fold.at).toBeCloseTo(depthOf(input, i), 3);
          folded += to.at - from.at;
        }
        expect(folded).toBeCloseTo(taken, 2);
        expect((places.at(-1) ?? 0) + input.last).toBeLessThanOrEqual(input.finished + 1e-3);
      }),
      { numRuns: 400, seed: 1731 },
    );
  });

  test('no closer, no wider and nearest are as they say', () => {
    fc.assert(
      fc.property(anyTucks, (input) => {
        const { spread, depth } = input;
        if (spread.by !== 'gap' && spread.by !== 'spacing') return;
        const { spacing: apart, count } = plan(input);
        const wanted = spread.by === 'gap' ? spread.gap + depth : spread.spacing;
        if (apart === undefined || count <= 2) return;
        if (spread.fit === 'no-closer') expect(apart).toBeGreaterThan(wanted - 1e-3);
        if (spread.fit === 'no-wider') expect(apart).toBeLessThan(wanted + 1e-3);
        const gaps = (apart * (count - 1)) / wanted;
        if (spread.fit === 'nearest') expect(Math.abs(gaps - (count - 1))).toBeLessThan(0.5 + 1e-6);
      }),
      { numRuns: 1500, seed: 1732 },
    );
  });

  // Two data in one row: what shows and what is folded away are rounded each by itself.
  test('marked with a tape, each place is within half a graduation once it is folded, however many tucks there are', () => {
    fc.assert(
      fc.property(anyTucks, fc.constantFrom(...Object.values(STEP)), (input, step) => {
        const { run } = plan(input);
        const marked = markOut(run, step);
        marked.marks.forEach(({ at }, i) => {
          const { at: exact = ZERO, taken = ZERO } = run.marks[i] ?? {};
          const shown = at - toGraduation(taken, step);
          expect(Math.abs(shown - (exact - taken))).toBeLessThanOrEqual(step / 2 + 1);
          expect(Math.abs(at - exact)).toBeLessThanOrEqual(step + 1);
        });
      }),
      { numRuns: 200, seed: 1733 },
    );
  });

  test('mirrored, its places are mirrored; twice as large, twice as large', () => {
    const even = anyTucks.filter(({ step, spread }) => step === 0 && spread.by !== 'groups');
    fc.assert(
      fc.property(even, (input) => {
        const { finished, first, last, lies } = input;
        const { places, count } = plan(input);
        if (count === 1) return;
        const mirrored = plan({
          ...input,
          ...{ first: last, last: first, lies: lies === 'last' ? 'first' : 'last' },
        });
        const back = [...mirrored.places].reverse().map((place) => finished - place);
        places.forEach((place, i) => {
          expect(back[i]).toBeCloseTo(place, 3);
        });
      }),
      { numRuns: 300, seed: 1734 },
    );
  });
});
