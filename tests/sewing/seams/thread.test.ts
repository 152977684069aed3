/**
 * Published examples of thread (rows 4.1 to 4.18, 22.1 to 22.5 and 22.13 of the check values), each with its source.
 * AE: a thread maker's bulletin on estimating consumption, archived 2008. TXC: teaching pages on
 * textile calculation, 2015.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, length, mm, UNITS_PER_INCH, ZERO } from '../../../src/lengths/length.ts';
import {
  fillsFor,
  handThreads,
  sizesOf,
  spoolsFor,
  type ThreadInput,
  threadFor,
} from '../../../src/sewing/seams/thread.ts';
import { threadRatio, waysFor } from '../../../src/sewing/seams/thread-ratio.ts';
import { GUIDE, RATIOS, THREADS } from '../../../src/sewing/sources/thread.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const yards = (units: number) => units / (36 * UNITS_PER_INCH);

/** AE: a seam of 42 in, which it takes as 1.17 yd; 8 stitches to the inch, 0.075 in thick. */
const seam: ThreadInput = {
  stitch: 'chain',
  by: 'formula',
  thickness: inches(0.075),
  stitchLong: inches(1 / 8),
  seams: [inches(1.17 * 36)],
  passes: 1,
  end: ZERO,
  waste: 15,
};
const plan = (set: Partial<ThreadInput>) => solved(threadFor({ ...seam, ...set }));
const yardsOf = (set: Partial<ThreadInput>) => yards(plan(set).all).toFixed(2);

describe('published', () => {
  test('4.1 (AE): a chainstitch by formula: 5.20; 6.08 yd; with 15 % 7.00', () => {
    expect(plan({}).ratio.toFixed(2)).toBe('5.20');
    expect([yardsOf({ waste: 0 }), yardsOf({})]).toEqual(['6.08', '7.00']);
    // Of its 42 in unrounded, 0.3 % less.
    expect(yardsOf({ seams: [inches(42)] })).toBe('6.98');
  });

  test.each([
    ['.055', '4.88'],
    ['.060', '4.96'],
    ['.065', '5.04'],
    ['.070', '5.12'],
    ['.075', '5.20'],
  ])('4.2 (AE): the chart at 8 to the inch, %s in thick: %s', (thick, printed) => {
    expect(plan({ thickness: inches(Number(thick)) }).ratio.toFixed(2)).toBe(printed);
  });

  test('4.3 (AE): by its ratio of 5: 5.85 yd; with 15 % 6.73, of which the looper 60 %', () => {
    const guide = plan({ by: 'guide' });
    expect([yardsOf({ by: 'guide', waste: 0 }), yardsOf({ by: 'guide' })]).toEqual([
      '5.85',
      '6.73',
    ]);
    expect(yards(guide.byOther ?? 0).toFixed(2)).toBe('4.04');
  });

  test('4.4 (AE): 3 in unpicked, needle 9, looper 8: 3.51 + 3.12 = 6.63 yd; with 15 % 7.62', () => {
    const sample = {
      ...({ by: 'sample', sampleSeam: inches(3) } as const),
      ...{ sampleNeedle: inches(9), sampleOther: inches(8) },
    };
    const bare = plan({ ...sample, waste: 0 });
    expect(
      [bare.byNeedle, bare.byOther, bare.all].map((one) => yards(one ?? 0).toFixed(2)),
    ).toEqual(['3.51', '3.12', '6.63']);
    expect(yardsOf(sample)).toBe('7.62');
    // 4.5: the three ways spread over 13 % of the least.
    expect((yards(bare.all) / 5.85 - 1).toFixed(2)).toBe('0.13');
  });

  test('4.8 to 4.10 (TXC): 101 3.09, 301 2.2, 401 4.45', () => {
    const of = (stitch: 'single' | 'lock' | 'chain', thick: number, per: number) =>
      solved(
        threadRatio({
          ...{ stitch, by: 'formula', thickness: inches(thick) },
          stitchLong: length(Math.round(UNITS_PER_INCH / per)),
        }),
      ).ratio;
    expect(of('single', 0.005, 9).toFixed(2)).toBe('3.09');
    expect(of('lock', 0.01, 10).toFixed(1)).toBe('2.2');
    expect(of('chain', 0.015, 15).toFixed(2)).toBe('4.45');
    // 4.9, its metric twin; 4.15: 2.5 is 0.025 in at 10 to the inch.
    const metric = { stitch: 'lock', by: 'formula', thickness: mm(0.254) } as const;
    expect(solved(threadRatio({ ...metric, stitchLong: mm(2.54) })).ratio.toFixed(3)).toBe('2.200');
    expect(of('lock', 0.025, 10).toFixed(2)).toBe('2.50');
  });

  test('4.12 and 4.13: both tables, which differ but for the lockstitch', () => {
    // 4.11: what is said to be the formula of a 504 isn't agreed on, so it has its table.
    expect(RATIOS.value).toMatchObject({ lock: 2.5, single: 4, chain: 5.5, zigzag: 7, over3: 14 });
    expect(RATIOS.value).toMatchObject({ over2: 12, over4: 18, safety: 20, twin: 18, cover9: 32 });
    expect(GUIDE.value).toEqual({ lock: 2.5, single: 5, blind: 4.5, zigzag: 5.5 });
    expect(waysFor('zigzag')).toEqual(['formula', 'table', 'guide', 'sample']);
    expect([waysFor('over3'), waysFor('hand')]).toEqual([['table', 'sample'], ['sample']]);
  });

  test('4.17: 20, 15 and 8 cm of seam are 43 cm together', () => {
    const seams = [mm(200), mm(150), mm(80)];
    const all = plan({ stitch: 'lock', by: 'table', seams, waste: 0 });
    expect(all.all / 2.5).toBeCloseTo(mm(430), 3);
    const ends = plan({ stitch: 'lock', by: 'table', seams, waste: 0, end: mm(25) });
    expect(ends.all / 2.5).toBeCloseTo(mm(430 + 3 * 50), 3);
  });

  test('4.18: a thread of 18 to 24 in: so many for a need, 4 in of each left (common practice)', () => {
    const by = {
      ...({ stitch: 'hand', by: 'sample' } as const),
      ...{ sampleSeam: inches(1), sampleNeedle: inches(3), seams: [inches(14)], waste: 0 },
    };
    expect(solved(handThreads(plan(by), inches(18), inches(4)))).toBe(3);
    expect(solved(handThreads(plan(by), inches(24), inches(4)))).toBe(3);
    expect(solved(handThreads(plan(by), inches(25), inches(4)))).toBe(2);
    expect(fieldsOf(handThreads(plan(by), inches(4), inches(4)))).toEqual(['working']);
  });

  test.each([
    [25, 120],
    [30, 100],
    [40, 75],
    [60, 50],
  ])('22.2: tex %d is ticket %d', (tex, ticket) => {
    expect(solved(sizesOf(tex)).ticket).toBe(ticket);
  });

  // 22.1, by definition; 22.3 and 22.4: a teaching page of 2017; 22.5: a page on thread numbering.
  test('22.1, 22.3, 22.5: tex 30 is 270 denier and cotton ticket 59; of 60/2 a gram is 30 m', () => {
    const { denier, cotton } = solved(sizesOf(30));
    expect([denier, cotton.toFixed(0)]).toEqual([270, '59']);
    expect((2 * solved(sizesOf((1000 * 2) / 60)).metric).toFixed(6)).toBe('60.000000');
  });

  test.each([
    [30, 3, 30],
    [40, 2, 60],
    [60, 3, 60],
    [80, 4, 60],
    [20, 3, 20],
  ])('22.4: %d/%d in metric count is ticket %d', (count, plies, ticket) => {
    expect(solved(sizesOf((1000 * plies) / count)).ticket).toBeCloseTo(ticket, 9);
  });

  test('22.13, derived: a stitch of 2.5 in 1 mm: 7.0 round a rectangle, 5.75 round an ellipse', () => {
    const by = { stitch: 'lock', by: 'formula', thickness: mm(1), stitchLong: mm(2.5) } as const;
    const { ratio, least } = solved(threadRatio(by));
    expect([ratio * 2.5, (least ?? 0) * 2.5].map((one) => one.toFixed(2))).toEqual([
      '7.00',
      '5.75',
    ]);
  });
});

describe('spools', () => {
  const m = (many: number) => mm(1000 * many);
  test('a bobbin is wound from the needle’s; a looper has its own', () => {
    const lock = plan({ stitch: 'lock', by: 'table', seams: [m(40)], waste: 0 });
    expect(solved(spoolsFor('lock', lock, m(100)))).toBe(1);
    expect(solved(fillsFor(lock, m(20)))).toBe(3);
    const chain = plan({ by: 'guide', seams: [m(22)], waste: 0 });
    expect(solved(spoolsFor('chain', chain, m(100)))).toBe(2);
    expect(solved(spoolsFor('chain', chain, m(60)))).toBe(3);
  });

  test('never fewer than threads in use, and none for no seam', () => {
    const over = plan({ stitch: 'over3', by: 'table', seams: [m(1)] });
    expect(solved(spoolsFor('over3', over, m(1000)))).toBe(3);
    expect(solved(spoolsFor('over3', plan({ seams: [] }), m(1000)))).toBe(0);
  });

  test('law: however the threads share it, so many spools do', () => {
    const shares = fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 3, maxLength: 9 });
    fc.assert(
      fc.property(shares, fc.integer({ min: 1, max: 200 }), (parts, spool) => {
        const all = parts.reduce((sum, one) => sum + one, 0);
        const each = parts.reduce((sum, one) => sum + Math.ceil(one / spool), 0);
        expect(each).toBeLessThanOrEqual(Math.ceil(all / spool) + parts.length - 1);
      }),
      { seed: 3001 },
    );
  });
});

describe('laws', () => {
  const long = fc.integer({ min: 1, max: 4_000_000 }).map((units) => length(units * 8));
  const stitch = fc.constantFrom(...(Object.keys(THREADS) as (keyof typeof THREADS)[]));
  const any = fc
    .record({
      stitch,
      way: fc.nat(),
      thickness: fc.integer({ min: 100, max: 80_000 }).map(length),
      stitchLong: fc.integer({ min: 4000, max: 60_000 }).map(length),
      zigWide: fc.integer({ min: 4000, max: 60_000 }).map(length),
      sampleSeam: long,
      sampleNeedle: long,
      sampleOther: long,
      seams: fc.array(long, { maxLength: 5 }),
      passes: fc.integer({ min: 1, max: 4 }),
      end: fc.integer({ min: 0, max: 400_000 }).map(length),
      waste: fc.integer({ min: 0, max: 40 }),
    })
    .map(({ way, ...input }): ThreadInput => {
      const ways = waysFor(input.stitch);
      return { ...input, by: ways[way % ways.length] ?? 'sample' };
    });

  test('seams together take what they take one by one, and parts add up to all', () => {
    fc.assert(
      fc.property(any, (input) => {
        const { all, each, byNeedle, byOther } = solved(threadFor(input));
        const alone = input.seams.map((one) => solved(threadFor({ ...input, seams: [one] })).all);
        expect(each).toEqual(alone);
        if (byNeedle !== undefined) expect(byNeedle + (byOther ?? 0)).toBeCloseTo(all, 0);
      }),
      { seed: 3002 },
    );
  });

  test('all of it as large, the thread is as large; more waste, passes or ends never take less', () => {
    fc.assert(
      fc.property(any, (input) => {
        const { all } = solved(threadFor(input));
        const sizes = ['thickness', 'stitchLong', 'zigWide', 'end'] as const;
        const twice = Object.fromEntries(sizes.map((key) => [key, length(2 * (input[key] ?? 0))]));
        const seams = input.seams.map((one) => length(2 * one));
        expect(solved(threadFor({ ...input, ...twice, seams })).all / 2).toBeCloseTo(all, 0);
        for (const more of [
          { waste: input.waste + 1 },
          { passes: input.passes + 1 },
          { end: length(input.end + 8000) },
        ]) {
          expect(solved(threadFor({ ...input, ...more })).all).toBeGreaterThanOrEqual(all);
        }
      }),
      { seed: 3003 },
    );
  });

  // 4.16: of what is sewn, the stitches' density matters most, the thickness little.
  test('stitches closer by a tenth take more than cloth thicker by a tenth', () => {
    fc.assert(
      fc.property(any, ({ thickness, stitchLong, zigWide }) => {
        const ratio = (thick: number, close: number) =>
          solved(
            threadRatio({
              ...{ stitch: 'zigzag', by: 'formula', zigWide },
              thickness: length(Math.round((thickness ?? 0) * thick)),
              stitchLong: length(Math.round((stitchLong ?? 0) / close)),
            }),
          ).ratio;
        expect(ratio(1, 1.1)).toBeGreaterThan(ratio(1, 1));
        expect(ratio(1, 1.1)).toBeGreaterThan(ratio(1.1, 1) - 1e-3);
      }),
      { seed: 3004 },
    );
  });
});

test('what is wrong names its field', () => {
  const wrong = (set: Partial<ThreadInput>) => fieldsOf(threadFor({ ...seam, ...set }));
  expect(wrong({ seams: [mm(10), ZERO, mm(-1)] })).toEqual(['seams']);
  expect(wrong({ passes: 0, end: mm(-1), waste: 101 })).toEqual(['passes', 'end', 'waste']);
  expect(wrong({ thickness: ZERO, stitchLong: ZERO })).toEqual(['thickness', 'stitchLong']);
  expect(wrong({ stitchLong: mm(0.05) })).toEqual(['stitchLong']);
  expect(wrong({ by: 'sample' })).toEqual(['sampleSeam', 'sampleNeedle']);
  expect(fieldsOf(spoolsFor('lock', plan({}), ZERO))).toEqual(['spool']);
  expect(fieldsOf(fillsFor(plan({}), ZERO))).toEqual(['bobbin']);
  expect(fieldsOf(sizesOf(0))).toEqual(['tex']);
});
