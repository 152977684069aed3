/**
 * Published: National Instructional Media Institute (Government of India), CITS Dress Making, Trade Theory,
 * page 250: rows 13.7 (three tiers at 1 1/2 come to 3.375 times) and 13.8 (depths worked to 29 in). Strips by the
 * rule of 13.3. Growing depths are derived here, and added up by steps.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, inches, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { stripsFor } from '../../../src/sewing/cloth/strips.ts';
import { gathers } from '../../../src/sewing/fullness/gathers.ts';
import { depthsOf, type TiersInput, tierMarks, tiers } from '../../../src/sewing/fullness/tiers.ts';
import { TIER_DEPTHS, TIERS } from '../../../src/sewing/sources/gathers.ts';
import { boundTold } from '../as-told.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
const SKIRT: TiersInput = {
  edge: cm(72),
  ratios: [1.5],
  depths: { by: 'own', depths: [20, 25, 30].map(cm) },
  ring: true,
  seam: cm(1),
  between: cm(1),
  hem: cm(3),
  cloth: cm(140),
  parts: 4,
};
const plan = (set: Partial<TiersInput> = {}) => solved(tiers({ ...SKIRT, ...set }));

describe('published', () => {
  test('13.7: three tiers at 1 1/2 come to 3.375 times', () => {
    const { tiers: all, full } = plan();
    expect(full).toBeCloseTo(3.375, 9);
    expect(all.map(({ strip }) => toMm(strip) / 10)).toEqual([108, 162, 243]);
    expect(TIERS.value).toEqual({ first: [1, 1.5], next: [1.5, 2] });
  });

  test('13.8: 6 1/4 + 6 3/4 + 7 1/4 + 8 3/4 come to 29 in', () => {
    const depths = TIER_DEPTHS.value.map(inches);
    const given = plan({ depths: { by: 'own', depths, long: inches(29) } });
    expect([given.long, given.left]).toEqual([inches(29), 0]);
  });

  // 13.3: 1.80 m at 3 times, 12 deep and 3 for seam and hem, of cloth 1.10 wide, joins not counted: 5 strips, 75 cm.
  test('13.3: one tier is a frill', () => {
    const { cloth, tiers: all } = plan({
      ...{ edge: cm(180), ratios: [3], depths: { by: 'own', depths: [cm(12)] } },
      ...{ ring: false, seam: ZERO, between: cm(1.5), hem: cm(1.5), cloth: cm(110) },
    });
    expect([toMm(all[0]!.cut), all[0]!.strips.count, toMm(cloth)]).toEqual([5400, 5, 750]);
  });
});

test('cloth that is all seam is told with its seams, and a length of nothing as that', () => {
  const cloth = (of: number) => tiers({ ...SKIRT, cloth: length(of) });
  expect(boundTold(cloth, cm(1), 'cloth', 'over')).toBe(cm(2));
  const depths = { by: 'growing', count: 3, long: ZERO, growth: 9 } as const;
  expect(fieldsOf(tiers({ ...SKIRT, depths }))).toEqual(['long', 'growth']);
});

describe('worked by hand', () => {
  test('each tier is cut with two seams, the last with one and its hem, in whole strips', () => {
    const { tiers: all, cloth } = plan();
    expect(all.map(({ cutDeep }) => toMm(cutDeep))).toEqual([220, 270, 340]);
    expect(all.map(({ strips }) => [strips.count, strips.joins])).toEqual([
      ...[
        [1, 1],
        [2, 2],
        [2, 2],
      ],
    ]);
    expect(toMm(cloth)).toBe(220 + 2 * 270 + 2 * 340);
    expect(all.map(({ cut }) => toMm(cut))).toEqual([1100, 1640, 2450]);
  });

  test('a fullness of its own for each, and quarters that meet, each at its own scale', () => {
    const { tiers: all } = plan({ ratios: [1, 2, 1.5] });
    expect(all.map(({ ratio }) => ratio)).toEqual([1, 2, 1.5]);
    const { strip, edge } = tierMarks(SKIRT, all[1]!);
    expect(strip.marks.map(({ at, label }) => [label, toMm(at)])).toEqual([
      ...[
        ['0', 10],
        ['1', 370],
        ['2', 730],
        ['3', 1090],
      ],
    ]);
    expect(edge.marks.map(({ at }) => toMm(at))).toEqual([0, 180, 360, 540]);
  });

  test('62 cm in three tiers, each 1.2 times as deep as the one above', () => {
    const { tiers: all, left } = plan({
      depths: { by: 'growing', count: 3, long: cm(62), growth: 1.2 },
    });
    expect(all.map(({ deep }) => Math.round(toMm(deep) * 100) / 100)).toEqual([
      170.33, 204.4, 245.27,
    ]);
    expect(left).toBe(0);
  });

  test('a tier that was cut otherwise: those below go by it', () => {
    const { tiers: all } = solved(tiers(SKIRT, [exactLength(cm(122))]));
    expect(all.map(({ strip }) => toMm(strip))).toEqual([1200, 1800, 2700]);
    expect(all[0]!.ratio).toBeCloseTo(120 / 72, 9);
    expect(toMm(tierMarks(SKIRT, all[1]!).edge.marks[1]!.at)).toBe(300);
    // Cut shorter than its own ends, there is still a unit of it.
    expect(solved(tiers(SKIRT, [exactLength(100)])).tiers[0]!.strip).toBe(1);
  });

  test('what is left of a length, or over it, is told', () => {
    const depths = [20, 25, 30].map(cm);
    expect(toMm(plan({ depths: { by: 'own', depths, long: cm(80) } }).left!)).toBe(50);
    expect(toMm(plan({ depths: { by: 'own', depths, long: cm(70) } }).left!)).toBe(-50);
    expect(plan().left).toBeUndefined();
  });
});

describe('refused', () => {
  const growing = { by: 'growing', count: 3, long: cm(60), growth: 1.2 } as const;
  test.each<[string, Partial<TiersInput>, string[]]>([
    ['no edge', { edge: ZERO }, ['edge']],
    ['a fullness under 1, or over 20', { ratios: [1.5, 0.9, 21] }, ['ratios']],
    ['no number at all', { ratios: [Number.NaN] }, ['ratios']],
    ['over 20', { ratios: [20.1] }, ['ratios']],
    ['under 1', { ratios: [0.9] }, ['ratios']],
    [
      'growing: so short that a tier has no unit',
      { depths: { ...growing, growth: 5, long: length(14) } },
      ['long'],
    ],
    ['no fullness', { ratios: [] }, ['ratios']],
    ['not as many', { ratios: [1.5, 2] }, ['ratios']],
    ['no tiers', { depths: { by: 'own', depths: [] } }, ['depths']],
    ['six', { depths: { by: 'own', depths: [1, 2, 3, 4, 5, 6].map(cm) } }, ['depths']],
    ['a tier of no depth', { depths: { by: 'own', depths: [cm(10), ZERO] } }, ['depths']],
    ['no length', { depths: { by: 'own', depths: [cm(10)], long: ZERO } }, ['long']],
    ['growing: no tiers', { depths: { ...growing, count: 0 } }, ['count']],
    ['growing: six', { depths: { ...growing, count: 6 } }, ['count']],
    ['growing: no length', { depths: { ...growing, long: ZERO } }, ['long']],
    ['growing: hardly', { depths: { ...growing, growth: 0.19 } }, ['growth']],
    ['growing: much', { depths: { ...growing, growth: 5.1 } }, ['growth']],
    [
      'less than nothing',
      { seam: mm(-1), between: mm(-1), hem: mm(-1) },
      ['seam', 'between', 'hem'],
    ],
    ['cloth that is all seam', { cloth: cm(2) }, ['cloth']],
    ['one part', { parts: 1 }, ['parts']],
    ['17 parts', { parts: 17 }, ['parts']],
    ['over a kilometre', { edge: cm(90_000) }, ['edge']],
  ])('%s', (_, set, fields) => {
    expect(fieldsOf(tiers({ ...SKIRT, ...set }))).toEqual(fields);
  });

  test('growing: the least length has a unit for every tier; none at all is said to be none', () => {
    const outcome = tiers({ ...SKIRT, depths: { ...growing, growth: 5, long: length(14) } });
    // 1 of 1 + 5 + 25.
    expect(outcome).toMatchObject({ problems: [{ kind: 'too-short', least: 31, given: 14 }] });
    expect(
      fieldsOf(tiers({ ...SKIRT, depths: { ...growing, growth: 5, long: length(31) } })),
    ).toEqual([]);
    expect(tiers({ ...SKIRT, ratios: [] })).toMatchObject({ problems: [{ kind: 'too-few' }] });
    const both = tiers({ ...SKIRT, depths: { ...growing, count: 0, growth: 9 } });
    expect(fieldsOf(both)).toEqual(['count', 'growth']);
  });

  test('a tier that was cut longer than all strips there may be is refused at the cloth', () => {
    expect(fieldsOf(tiers(SKIRT, [exactLength(cm(80_000))]))).toEqual(['cloth']);
  });

  test('at the ends of what is taken there is an answer', () => {
    for (const set of [
      { ratios: [1] },
      { ratios: [20], depths: { by: 'own', depths: [cm(1)] } as const },
      { depths: { ...growing, growth: 0.2 } },
      { depths: { ...growing, growth: 5 } },
      { depths: { ...growing, count: 5 } },
      { parts: 16 },
    ]) {
      expect(fieldsOf(tiers({ ...SKIRT, ...set }))).toEqual([]);
    }
  });

  test('the most that an edge may be has an answer', () => {
    const outcome = tiers({ ...SKIRT, edge: cm(90_000), cloth: cm(12) });
    const most = outcome.ok ? ZERO : (outcome.problems[0] as { most: number }).most;
    expect(most).toBeCloseTo((500 * cm(10)) / 3.375 - 3, 3);
    expect(fieldsOf(tiers({ ...SKIRT, edge: length(Math.floor(most)), cloth: cm(12) }))).toEqual(
      [],
    );
  });
});

describe('laws', () => {
  const ratio = fc.integer({ min: 100, max: 300 }).map((n) => n / 100);
  const some = fc.record({
    edge: typed(300, 1500),
    ratios: fc.array(ratio, { minLength: 3, maxLength: 3 }),
    depths: fc
      .array(typed(50, 400), { minLength: 3, maxLength: 3 })
      .map((depths) => ({ by: 'own', depths }) as const),
    ring: fc.boolean(),
    seam: typed(0, 20),
    between: typed(0, 20),
    hem: typed(0, 60),
    cloth: typed(500, 1600),
    parts: fc.integer({ min: 2, max: 12 }),
  });

  test('each tier is a gathered strip of its own, and its strips those of it', () => {
    fc.assert(
      fc.property(some, (input) => {
        const { tiers: all, cloth } = solved(tiers(input));
        let above = input.edge;
        let sum = 0;
        for (const [i, one] of all.entries()) {
          const { ring, seam, parts } = input;
          const alone = solved(
            gathers({
              ...{ edge: above, flat: ZERO, full: { by: 'ratio', ratio: input.ratios[i]! } },
              ...{ ring, ends: seam, parts },
            }),
          );
          expect([one.strip, one.cut]).toEqual([alone.strip, alone.cut]);
          expect(tierMarks(input, one)).toEqual(alone.marks);
          const strips = solved(
            stripsFor({ needed: one.strip, cloth: input.cloth, seam, ring, deep: one.cutDeep }),
          );
          expect(one.strips).toEqual(strips);
          sum += strips.cloth!;
          above = one.strip;
        }
        expect(cloth).toBe(sum);
      }),
      { numRuns: 200, seed: 1307 },
    );
  });

  test('cut as planned, nothing changes', () => {
    fc.assert(
      fc.property(some, (input) => {
        const found = solved(tiers(input));
        const again = solved(
          tiers(
            input,
            found.tiers.map(({ cut }) => cut),
          ),
        );
        expect(again).toEqual(found);
      }),
      { numRuns: 100, seed: 1308 },
    );
  });

  test('growing depths come to the length, each so much deeper than the one above', () => {
    const growing = fc.record({
      by: fc.constant('growing' as const),
      count: fc.integer({ min: 1, max: 5 }),
      long: typed(200, 1500),
      growth: fc.integer({ min: 60, max: 200 }).map((n) => n / 100),
    });
    fc.assert(
      fc.property(growing, (input) => {
        const depths = depthsOf(input);
        expect(depths.reduce((sum, one) => sum + one, 0)).toBe(input.long);
        expect(depths).toHaveLength(input.count);
        depths.slice(1).forEach((deep, i) => {
          expect(Math.abs(deep - depths[i]! * input.growth)).toBeLessThan(4);
        });
      }),
      { numRuns: 200, seed: 1309 },
    );
  });
});
