/**
 * Published: A. P. Margolis, Make Your Own Dress Patterns, 1985, ch. 2, row 15.1 (bust 35, waist 27, hip 37);
 * patternstudio101.com, skirt darts (a teaching page), row 15.2. Levels are derived here, no source.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  inches,
  type Length,
  LONGEST,
  length,
  mm,
  toInches,
  toMm,
  ZERO,
} from '../../../src/lengths/length.ts';
import {
  type DartsInput,
  darts,
  levelIntakes,
  levelRun,
  type Taking,
} from '../../../src/sewing/shaping/darts.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
const dartKind = (field: string, count: number, share: number, long: Length): Taking => ({
  ...{ field, count, share },
  long: { field: `${field}Long`, length: long },
});
const SKIRT: DartsInput = {
  larger: inches(37),
  smaller: inches(29),
  kinds: [
    { field: 'sides', count: 4, share: 13 },
    dartKind('front', 2, 8, inches(4)),
    dartKind('back', 2, 16, inches(5)),
  ],
  step: inches(1 / 8),
};
const taken = (set: Partial<DartsInput>) => solved(darts({ ...SKIRT, ...set }));

describe('published', () => {
  test('15.1: 35 − 27 is 8 in, 37 − 27 is 10', () => {
    expect(toInches(taken({ larger: inches(35), smaller: inches(27) }).intake)).toBe(8);
    expect(toInches(taken({ smaller: inches(27) }).intake)).toBe(10);
  });

  test('15.2: 1.04, 0.64 and 1.28 in come to 1, 5/8 and 1 3/8, 8 in whole; printed 1 1/4, 1/4 in short', () => {
    const { each, left, exact } = taken({});
    expect(exact.map((one) => Number(toInches(one).toFixed(2)))).toEqual([1.04, 0.64, 1.28]);
    expect([each.map(toInches), left]).toEqual([[1, 5 / 8, 1 + 3 / 8], 0]);
  });
});

const METRIC: DartsInput = {
  larger: cm(94),
  smaller: cm(74),
  kinds: [
    { field: 'sides', count: 4, share: 13 },
    dartKind('front', 2, 8, cm(10)),
    dartKind('back', 2, 16, cm(13)),
  ],
  step: mm(1),
};
const at = (
  levels: number[],
  girths: number[],
  legs: 'straight' | 'curved' = 'straight',
  set: Partial<DartsInput> = {},
) => {
  const input = { ...METRIC, ...set };
  const plan = solved(darts(input));
  return levelIntakes(input, plan, { levels: levels.map(cm), girths: girths.map(cm), legs });
};

describe('levels between', () => {
  test('as a run they lie down from the smaller girth, numbered, with the girths they are of', () => {
    const found = solved(at([5, 13, 17], [82, 90, 93]));
    expect(found.map(({ level }) => [toMm(level.at), toMm(level.girth)])).toEqual([
      [50, 820],
      [130, 900],
      [170, 930],
    ]);
    expect(levelRun(found)).toEqual({
      datum: 'zero',
      length: cm(17),
      marks: [
        { at: cm(5), label: '1', kind: 'level' },
        { at: cm(13), label: '2', kind: 'level' },
        { at: cm(17), label: '3', kind: 'level' },
      ],
    });
    expect(levelRun([])).toEqual({ datum: 'zero', length: 0, marks: [] });
  });

  test('where darts take more than there is, it says what they take and what there is', () => {
    // Half of 1.6 and 8/13 of 3.2, both twice, 5.538; 94 less 91 is 3.
    const taken = 2 * 0.8 + (2 * 3.2 * 8) / 13;
    expect(at([5], [91])).toMatchObject({
      problems: [{ kind: 'does-not-fit', room: cm(3), needed: expect.closeTo(cm(taken), -1) }],
    });
    expect(fieldsOf(at([5], [95]))).toEqual(['girths']);
    expect(fieldsOf(at([5], [94], 'curved'))).toEqual([]);
    expect(fieldsOf(at([5], [74], 'curved'))).toEqual([]);
  });

  test('straight darts narrow evenly, the sides take the rest; past their points all of it', () => {
    const [first, last] = solved(at([5, 13], [82, 90]));
    // 12 cm there: half of 1.6, 8/13 of 3.2, both twice; the rest over four edges.
    const back = (3.2 * 8) / 13;
    expect(first?.each.map((one) => toMm(one) / 10)).toEqual([
      expect.closeTo((12 - 1.6 - 2 * back) / 4, 4),
      expect.closeTo(0.8, 6),
      expect.closeTo(back, 4),
    ]);
    expect(last?.each.map((one) => toMm(one) / 10)).toEqual([1, 0, 0]);
  });

  test('curved, each takes its share of what is taken there', () => {
    const [one] = solved(at([5], [84], 'curved'));
    expect(one?.each.map((each) => Number((toMm(each) / 10).toFixed(3)))).toEqual([1.3, 0.8, 1.6]);
  });

  test('refused: out of order, not as many, outside, darts that take more than there is, no seam beside them', () => {
    expect(fieldsOf(at([5, 5], [82, 83]))).toEqual(['levels']);
    expect(fieldsOf(at([0], [82]))).toEqual(['levels']);
    expect(fieldsOf(at([5], []))).toEqual(['girths']);
    expect(fieldsOf(at([5], [95]))).toEqual(['girths']);
    expect(fieldsOf(at([5], [73]))).toEqual(['girths']);
    expect(fieldsOf(at([5], [91]))).toEqual(['girths']);
    expect(at([5], [91], 'curved').ok).toBe(true);
    const darted = { kinds: [dartKind('front', 4, 25, cm(10))] };
    expect(fieldsOf(at([5], [84], 'straight', darted))).toEqual(['sides']);
    expect(at([], [], 'straight', darted).ok).toBe(true);
    expect(at([5], [84], 'curved', darted).ok).toBe(true);
    // A seam that takes no share is none.
    const idle = { kinds: [{ field: 'sides', count: 4, share: 0 }, ...darted.kinds] };
    expect(fieldsOf(at([5], [84], 'straight', idle))).toEqual(['sides']);
    const girth = (of: number) => at([5], [of / cm(1)], 'curved');
    expect(boundTold(girth, cm(95), 'girths', 'most')).toBe(cm(94));
    expect(boundTold(girth, cm(73), 'girths', 'least')).toBe(cm(74));
    expect(fieldsOf(at([LONGEST / cm(1) + 1], [84], 'curved'))).toEqual(['levels']);
  });
});

test('refused: girths the wrong way round or of nothing, a dart of no length, shares that aren’t whole', () => {
  const fields = (set: Partial<DartsInput>) => fieldsOf(darts({ ...METRIC, ...set }));
  expect(fields({ larger: cm(74) })).toEqual(['larger']);
  expect(fields({ larger: ZERO, smaller: ZERO })).toEqual(['larger', 'smaller']);
  expect(fields({ kinds: [dartKind('front', 2, 50, ZERO)] })).toEqual(['frontLong']);
  expect(fields({ kinds: [dartKind('front', 2, 40, cm(10))] })).toEqual(['frontShare']);
});

describe('laws', () => {
  const whole = fc.record({
    larger: fc.integer({ min: 600, max: 1400 }).map(mm),
    less: fc.integer({ min: 8, max: 300 }).map(mm),
    sides: fc.integer({ min: 5, max: 15 }),
    at: fc.integer({ min: 1, max: 200 }).map(mm),
    part: fc.integer({ min: 0, max: 100 }),
  });
  test('at every level all of the intake is taken; twice as large, twice as much', () => {
    fc.assert(
      fc.property(whole, fc.constantFrom('straight' as const, 'curved' as const), (any, legs) => {
        const { larger, less, sides, part } = any;
        const darted = (100 - 4 * sides) / 4;
        const input: DartsInput = {
          larger,
          smaller: length(larger - less),
          kinds: [
            { field: 'sides', count: 4, share: sides },
            dartKind('front', 2, darted, cm(9)),
            dartKind('back', 2, darted, cm(14)),
          ],
          step: mm(1),
        };
        const plan = solved(darts(input));
        const asked = {
          levels: [any.at],
          girths: [length(larger - Math.round((less * part) / 100))],
          legs,
        };
        const found = levelIntakes(input, plan, asked);
        if (!found.ok) {
          expect(legs).toBe('straight');
          return;
        }
        for (const { each, intake } of found.value) {
          const sum = input.kinds.reduce((all, { count }, i) => all + count * (each[i] ?? 0), 0);
          expect(sum).toBeCloseTo(intake, 2);
          for (const one of each) expect(one).toBeGreaterThanOrEqual(0);
        }
        const total = input.kinds.reduce(
          (all, { count }, i) => all + count * (plan.each[i] ?? 0),
          0,
        );
        expect(total + plan.left).toBe(plan.intake);
        const twice = {
          ...input,
          ...{ larger: length(2 * larger), smaller: length(2 * input.smaller), step: mm(2) },
        };
        expect(solved(darts(twice)).each).toEqual(plan.each.map((one) => 2 * one));
      }),
      { numRuns: 500, seed: 1820 },
    );
  });
});
