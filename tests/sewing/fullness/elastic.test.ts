/**
 * Published: trade pages on elastic, row 14.4; judging standards of 2023, a school course and a sewing
 * guideline sheet, rows 14.1 to 14.3; a teaching page on casings, rows 14.8 and 14.9. Row 14.5 is worked
 * here by arithmetic alone, no source.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, inches, mm, toInches, toMm, ZERO } from '../../../src/lengths/length.ts';
import { type CasingInput, casing } from '../../../src/sewing/fullness/casing.ts';
import { type ElasticInput, elastic, ofRing } from '../../../src/sewing/fullness/elastic.ts';
import { CASING_MORE, WAIST_LESS } from '../../../src/sewing/sources/elastic.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);

const WAIST: ElasticInput = {
  girth: cm(84),
  how: { by: 'sample', flat: cm(20), worn: cm(21), most: cm(36) },
  pass: cm(102),
  round: cm(110),
  lap: ZERO,
};
const plan = (set: Partial<ElasticInput>) => solved(elastic({ ...WAIST, ...set }));
const CASING: CasingInput = {
  width: mm(25),
  thick: ZERO,
  ease: mm(2),
  turn: mm(5),
  edge: ZERO,
  header: ZERO,
};
const turned = (set: Partial<CasingInput>) => solved(casing({ ...CASING, ...set }));

describe('published', () => {
  // By arithmetic, no source.
  test('14.5: hips 102, elastic 80: it has to stretch by 27.5 %', () => {
    const { ring, worn, passing, least } = plan({});
    expect(toMm(ring)).toBeCloseTo(800, 6);
    expect([worn, passing].map((x) => Number(x?.toFixed(6)))).toEqual([0.05, 0.275]);
    expect(toMm(least ?? ring)).toBeCloseTo((1020 * 20) / 36, 6);
  });

  test('14.4: a waist less 2 in, snug 2 to 4: of 70 to 100 cm that is 5 to 15 %', () => {
    const { ring } = plan({ girth: inches(30), how: { by: 'rule' } });
    expect(toInches(ring)).toBe(28);
    const [less, more] = WAIST_LESS.value;
    expect([less / cm(100), more / cm(70)].map((x) => Math.round(100 * x))).toEqual([5, 15]);
  });

  test('14.2: elastic of 25 mm, 2 mm wider, first turn 5: 32 mm, its edge stitching not counted', () => {
    expect(toMm(turned({}).allowance)).toBe(32);
  });

  test('14.1 to 14.3 conflict: 2 mm, 1/8 in, 1/4 in', () => {
    expect(CASING_MORE.map(({ value }) => Number(toMm(value).toFixed(3)))).toEqual([
      2, 3.175, 6.35,
    ]);
    // The last is stitched 1/8 in from its fold: what is clear agrees with the second.
    const sheet = { width: inches(1.5), turn: inches(1 / 4), edge: inches(1 / 8) };
    const { depth, clear } = turned({ ...sheet, ease: inches(1 / 8) });
    expect(toInches(depth)).toBe(1.75);
    expect(toInches(exactLength(clear - sheet.width))).toBe(1 / 8);
  });

  test('14.9: 1 1/2 in of elastic: 1/4 turned, 1 3/4 turned again, 1 5/8 left open', () => {
    const set = {
      width: inches(1.5),
      turn: inches(1 / 4),
      ease: inches(1 / 8),
      edge: inches(1 / 8),
    };
    const { depth, allowance, opening } = turned(set);
    expect([depth, allowance, opening].map(toInches)).toEqual([1.75, 2, 1.625]);
  });

  test('14.8: 1 1/2 in takes a patch of 3 in, 2 in one of 4', () => {
    expect([1.5, 2].map((width) => toInches(turned({ width: inches(width) }).patch))).toEqual([
      3, 4,
    ]);
  });
});

describe('what is refused', () => {
  test.each<[string, Partial<ElasticInput>, string]>([
    ['nothing round', { girth: ZERO }, 'girth'],
    [
      'a sample that doesn’t stretch',
      { how: { by: 'sample', flat: cm(20), worn: cm(20) } },
      'sampleWorn',
    ],
    [
      'one that goes less far than it holds',
      { how: { by: 'sample', flat: cm(20), worn: cm(21), most: cm(20.5) } },
      'sampleMost',
    ],
    ['no stretch', { how: { by: 'percent', percent: 0 } }, 'percent'],
    ['as long as what it holds', { how: { by: 'there', there: cm(84) } }, 'there'],
    ['all of it lap', { how: { by: 'there', there: cm(2) }, lap: cm(2) }, 'there'],
    ['a waist under 2 in', { girth: inches(2), how: { by: 'rule' } }, 'girth'],
    ['14.6, a casing that doesn’t pass', { round: cm(101) }, 'round'],
  ])('%s', (_, set, field) => {
    expect(fieldsOf(elastic({ ...WAIST, ...set }))).toEqual([field]);
  });

  test('a casing its elastic can’t turn in, or of none', () => {
    expect(fieldsOf(casing({ ...CASING, ease: mm(0.9), thick: mm(1) }))).toEqual(['ease']);
    expect(fieldsOf(casing({ ...CASING, width: ZERO }))).toEqual(['width']);
    expect(fieldsOf(casing({ ...CASING, turn: mm(-1), edge: mm(-1), header: mm(-1) }))).toEqual([
      'turn',
      'edge',
      'header',
    ]);
  });
});

const anyElastic = fc
  .record({
    girth: typed(100, 1500),
    how: fc.oneof(
      fc.tuple(typed(50, 300), typed(1, 200), typed(0, 300)).map(([flat, more, further]) => {
        const worn = exactLength(flat + more) as typeof flat;
        return { by: 'sample', flat, worn, most: (worn + further) as typeof flat } as const;
      }),
      fc.integer({ min: 1, max: 100 }).map((percent) => ({ by: 'percent', percent }) as const),
      fc.constant({ by: 'rule' } as const),
      typed(60, 1400).map((there) => ({ by: 'there', there }) as const),
    ),
    pass: fc.option(typed(100, 1800), { nil: undefined }),
    round: fc.option(typed(100, 3000), { nil: undefined }),
    lap: typed(0, 40),
  })
  .filter((input) => elastic(input).ok);

describe('laws', () => {
  test('stretched by what is said it is the body, and what it passes; at its least it goes just so far', () => {
    fc.assert(
      fc.property(anyElastic, (input) => {
        const { ring, cut, worn, passing, least } = plan(input);
        expect(cut - ring).toBeCloseTo(input.lap, 4);
        expect(ring).toBeLessThan(input.girth);
        expect(ring * (1 + worn)).toBeCloseTo(input.girth, 2);
        if (input.pass !== undefined)
          expect(ring * (1 + (passing ?? 0))).toBeCloseTo(input.pass, 2);
        if (least === undefined || input.how.by !== 'sample' || !input.how.most) return;
        const at = ofRing(input, least);
        expect(at.passing).toBeCloseTo(input.how.most / input.how.flat - 1, 6);
      }),
      { numRuns: 2000, seed: 1711 },
    );
  });

  test('twice as large all is twice as long and stretches as far', () => {
    const twice = <T extends number>(x: T) => (2 * x) as T;
    fc.assert(
      fc.property(
        anyElastic.filter(({ how }) => how.by === 'sample' || how.by === 'percent'),
        (input) => {
          const { girth, pass, round, lap } = input;
          const large = plan({
            ...{ girth: twice(girth), how: input.how, lap: twice(lap) },
            ...(pass !== undefined && { pass: twice(pass) }),
            ...(round !== undefined && { round: twice(round) }),
            ...(pass === undefined && { pass: undefined }),
            ...(round === undefined && { round: undefined }),
          });
          const one = plan(input);
          // Both are up to a whole unit.
          expect(Math.abs(large.cut - 2 * one.cut)).toBeLessThanOrEqual(2);
          expect([large.worn, large.passing, large.fullness]).toEqual([
            expect.closeTo(one.worn, 2),
            one.passing === undefined ? undefined : expect.closeTo(one.passing, 2),
            one.fullness,
          ]);
        },
      ),
      { numRuns: 1000, seed: 1712 },
    );
  });

  test('what is added above the fold is taken up by turn, header, room and edge, in whole units', () => {
    const any = fc.record({
      width: typed(3, 80),
      thick: typed(0, 2),
      ease: typed(2, 12),
      turn: typed(0, 20),
      edge: typed(0, 6),
      header: typed(0, 40),
    });
    fc.assert(
      fc.property(any, (input) => {
        const { allowance, depth, stitch, clear } = turned(input);
        expect(allowance - depth).toBe(input.turn);
        expect(depth - stitch).toBe(input.edge);
        expect(stitch - clear).toBe(input.header);
        expect(clear - input.width).toBeGreaterThanOrEqual(input.thick);
      }),
      { numRuns: 1000, seed: 1713 },
    );
  });
});
