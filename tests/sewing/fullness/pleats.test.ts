/**
 * Published: National Instructional Media Institute (Government of India), CITS Dress Making, Trade
 * Practical, vol. 2, 2024, pages 202–205. Of an exercise the page prints the question only; its
 * answer is worked here by the page's own rule.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STEP } from '../../../src/lengths/graduation.ts';
import { exactLength, inches, type Length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { stripsFor } from '../../../src/sewing/cloth/strips.ts';
import type { PleatKind, PleatsInput } from '../../../src/sewing/fullness/pleat-input.ts';
import { LINES } from '../../../src/sewing/fullness/pleat-marks.ts';
import { cameOut, pleats } from '../../../src/sewing/fullness/pleats.ts';
import { markOut } from '../../../src/sewing/marks.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';
import { visibleBetween } from './pleats-folded.ts';

const cm = (x: number) => mm(10 * x);
const toCm = (x: number) => toMm(exactLength(x)) / 10;
const byWidth = (width: Length) => ({ by: 'width', width }) as const;
const byCount = (count: number) => ({ by: 'count', count }) as const;

const FINE: PleatsInput = {
  kind: 'knife',
  finished: cm(92),
  rule: byWidth(cm(5)),
  depth: cm(4),
  ends: 'fold',
  flat: ZERO,
  seam: ZERO,
};
const plan = (set: Partial<PleatsInput>) => solved(pleats({ ...FINE, ...set }));

describe('published', () => {
  test('11.1 and 11.2, page 203, worked: 92 cm in pleats of 5, 4 deep: 18, each 5.1, a strip of 236', () => {
    const { count, width, strip, takeUp } = plan({});
    expect([count, toCm(strip), toCm(count * takeUp)]).toEqual([18, 236, 144]);
    expect(toCm(width).toFixed(1)).toBe('5.1');
  });

  test('11.20, page 203, up or down at will: 17 and 19 beside it (19: a strip of 244, worked here)', () => {
    const beside = plan({}).beside.map((one) => [one.count, toCm(one.strip)]);
    expect(beside).toEqual([
      [17, 228],
      [19, 244],
    ]);
    expect(toCm(plan({}).beside[1]?.width ?? 0).toFixed(3)).toBe('4.842');
  });

  test('11.4, page 204, worked: normal pleats take three times the width, and 2 cm of seam', () => {
    const normal = { finished: cm(50), rule: byWidth(cm(2.5)), depth: cm(2.5), seam: cm(1) };
    const { count, strip, cut, layers } = plan(normal);
    expect([count, toCm(strip), toCm(cut), layers]).toEqual([20, 150, 152, 3]);
  });

  test.each<[string, PleatKind, number, number, number]>([
    ['11.5, page 204, worked: a box pleat', 'box', 60, 12, 108],
    ['11.6, pages 204–205, worked: an inverted pleat', 'inverted', 66, 6.5, 92],
  ])('%s takes four depths', (_, kind, finished, depth, strip) => {
    const one = { kind, finished: cm(finished), depth: cm(depth), rule: byCount(1) };
    expect(toCm(plan(one).strip)).toBe(strip);
  });

  // Page 205, exercises (11.7, 11.9, 11.10, 11.13): depth, width, finished → pleats, strip.
  test.each([
    [3, 4, 80, 20, 200],
    [4, 4, 48, 12, 144],
    [3, 3, 168, 56, 504],
    [4.5, 5, 260, 52, 728],
    [3.5, 3, 144, 48, 480],
    [4.2, 4, 172.2, 43, 533.4],
    [2.5, 4, 124, 31, 279],
    [2.5, 3.5, 59.5, 17, 144.5],
  ])('page 205: %d deep, %d wide, over %d cm', (depth, width, finished, count, strip) => {
    const all = plan({ depth: cm(depth), rule: byWidth(cm(width)), finished: cm(finished) });
    expect([all.count, toCm(all.strip)]).toEqual([count, strip]);
  });

  test('11.8 and 11.12, page 205: 12 pleats 4.2 deep over 62 cm are 5.1667 wide; 5 normal ones over 15.5 are 3.1', () => {
    const twelve = plan({ finished: cm(62), depth: cm(4.2), rule: byCount(12) });
    expect([toCm(twelve.width).toFixed(4), toCm(twelve.strip)]).toEqual(['5.1667', 162.8]);
    const five = plan({ finished: cm(15.5), depth: cm(3.1), rule: byCount(5) });
    expect([toCm(five.width), toCm(five.strip)]).toEqual([3.1, 46.5]);
  });

  test('11.14, page 205: a strip of 120 with 8 pleats 4 deep comes out at 56', () => {
    const input = { ...FINE, finished: cm(60), rule: byCount(8) };
    expect(toCm(solved(cameOut(cm(120), input)))).toBe(56);
    expect(fieldsOf(cameOut(cm(64), input))).toEqual(['depth']);
  });

  test('11.14, page 205: of 120 with 8 normal pleats 4 deep, 32 lie in pleats and 24 stay flat', () => {
    const { count, strip, width } = plan({ finished: cm(56), flat: cm(24), rule: byWidth(cm(4)) });
    expect([count, toCm(strip), toCm(width)]).toEqual([8, 120, 4]);
  });

  // Page 205, exercises (11.10, 11.11): strip, cloth, seam lost on each strip, cut deep → strips, cloth. The first
  // is 11.3, page 203, worked: its line (c) prints 2.34 m for its own 2.36; 3 strips and 45 cm either way.
  test.each([
    [236, 90, 2, 15, 3, 45],
    [504, 105, 1.5, 22, 5, 110],
    [728, 90, 2, 12, 9, 108],
    [480, 122, 3, 10, 5, 50],
    [533.4, 148, 2.5, 48, 4, 192],
    [279, 130, 2, 18.5, 3, 55.5],
    [567, 114, 2.5, 15, 6, 90],
  ])('a strip of %d cm of cloth %d wide', (strip, wide, lost, deep, count, cloth) => {
    const input = { needed: cm(strip), cloth: cm(wide), seam: cm(lost / 2), deep: cm(deep) };
    const strips = solved(stripsFor(input));
    expect([strips.count, toCm(strips.cloth ?? 0), strips.joins]).toEqual([
      count,
      cloth,
      count - 1,
    ]);
  });

  // L. I. Baldt, Clothing for Women, 1916, part 4 of the outer garments (11.16, 11.17): an inverted pleat at a
  // seam, once its width to one edge and three times to the other; two facing plaits, eight times.
  test('an inverted pleat at a seam adds 1 and 3 widths to its edges, two of them 8', () => {
    const one = plan({ kind: 'inverted', rule: byCount(1) });
    const [fold = 0, middle = 0, last = 0] = one.run.marks.map(({ at }) => at);
    expect([middle - fold, last - middle].map(toCm)).toEqual([8, 8]);
    expect(one.takeUp).toBe(4 * cm(4));
    expect(toCm(plan({ kind: 'inverted', rule: byCount(2) }).strip - cm(92))).toBe(8 * 4);
  });
});

describe('the lines', () => {
  const placesOf = (set: Partial<PleatsInput>) =>
    plan(set).run.marks.map(({ at, kind }) => `${kind} ${toCm(at)}`);

  test('a knife pleat folds at its end, onto the line two depths on; seams come before', () => {
    const set = { finished: cm(10), rule: byCount(2), depth: cm(2), seam: cm(1) };
    expect(placesOf(set)).toEqual(['fold 6', 'placement 10', 'fold 15', 'placement 19']);
  });

  test('with half a space at the ends each folds in its middle; what stays flat comes last', () => {
    const set = { finished: cm(13), rule: byCount(2), depth: cm(2), seam: cm(1) };
    const half = { ...set, ends: 'half', flat: cm(3) } as const;
    expect(placesOf(half)).toEqual(['fold 3.5', 'placement 7.5', 'fold 12.5', 'placement 16.5']);
    expect(toCm(plan(half).cut)).toBe(23);
    expect(placesOf({ ...set, flat: cm(3) })).toEqual([
      'fold 6',
      'placement 10',
      'fold 15',
      'placement 19',
    ]);
  });

  test('a first fold that reaches past the seam is told, and by how much', () => {
    const set = { finished: cm(20), rule: byCount(5) };
    expect(plan(set).past).toBeUndefined();
    expect(plan({ ...set, depth: cm(5) }).past).toBe(cm(1));
    expect(plan({ ...set, ends: 'half' }).past).toBe(cm(2));
    expect(plan({ ...set, ends: 'half', depth: cm(2) }).past).toBeUndefined();
    expect(plan({ ...set, kind: 'inverted' }).past).toBeUndefined();
  });

  test('a box folds at both sides of its front', () => {
    const set = { kind: 'box', finished: cm(10), rule: byCount(1), depth: cm(2) } as const;
    expect(placesOf(set)).toEqual(['placement 3', 'fold 7', 'fold 11', 'placement 15']);
    expect(placesOf({ ...set, face: cm(6) })).toEqual([
      'placement 2',
      'fold 6',
      'fold 12',
      'placement 16',
    ]);
  });

  test('the folds of an inverted pleat meet over its middle', () => {
    const set = { kind: 'inverted', finished: cm(10), rule: byCount(1), depth: cm(2) } as const;
    expect(placesOf(set)).toEqual(['fold 5', 'placement 9', 'fold 13']);
  });

  test('11.19, from the definitions: normal pleats do not lie over each other, deeper ones do', () => {
    expect(plan({ finished: cm(20), rule: byCount(5) })).toMatchObject({
      overlap: false,
      layers: 3,
    });
    expect(plan({ finished: cm(19), rule: byCount(5) })).toMatchObject({
      overlap: true,
      layers: 5,
    });
    const box = { kind: 'box', rule: byCount(5), depth: cm(4) } as const;
    expect(plan(box).overlap).toBe(false);
    expect(plan({ ...box, face: cm(7.9) }).overlap).toBe(true);
  });
});

const kinds = fc.constantFrom<PleatKind>('knife', 'box', 'inverted');
const anyPleats = fc
  .record({
    kind: kinds,
    finished: typed(20, 3000),
    rule: fc.oneof(typed(5, 300).map(byWidth), fc.integer({ min: 1, max: 80 }).map(byCount)),
    depth: typed(1, 100),
    face: fc.option(typed(2, 100), { nil: undefined }),
    ends: fc.constantFrom('fold', 'half'),
    flat: typed(0, 200),
    seam: typed(0, 30),
  })
  .filter((input) => pleats(input).ok);

describe('laws', () => {
  test('what shows and what is folded away make the strip, and the last edge is the finished width', () => {
    fc.assert(
      fc.property(anyPleats, (input) => {
        const { run, strip, cut, count, takeUp, width } = solved(pleats(input));
        expect(run.marks).toHaveLength(count * LINES[input.kind]);
        expect(strip).toBe(input.finished + count * takeUp);
        expect(cut).toBe(strip + 2 * input.seam);
        expect(count * width).toBeCloseTo(input.finished - input.flat, 4);
        const shown = visibleBetween(run.marks, input.kind);
        const last = run.marks.at(-1)?.at ?? 0;
        expect(cut - last).toBeGreaterThanOrEqual(input.seam + input.flat - 1e-3);
        expect((shown.at(-1) ?? 0) + (cut - last)).toBeCloseTo(input.finished + 2 * input.seam, 3);
        run.marks.slice(1).forEach((mark, i) => {
          expect(mark.at).toBeGreaterThanOrEqual((run.marks[i]?.at ?? 0) - 1e-3);
        });
      }),
      { seed: 1307 },
    );
  });

  // The rule of two data (derived here): 18 pleats taken from the strip alone, by eighths, could
  // come out as much as 1 1/8 in off.
  test('marked with any tape, every place is within half a graduation when it is folded', () => {
    const step = fc.constantFrom(...Object.values(STEP));
    fc.assert(
      fc.property(anyPleats, step, (input, graduation) => {
        const { run } = solved(pleats(input));
        const marked = markOut(run, graduation).marks;
        const [planned, made] = [run.marks, marked].map((all) => visibleBetween(all, input.kind));
        made?.forEach((at, i) => {
          // A first line that is a placement line, or a seam, has nothing folded before it.
          expect(Math.abs(at - (planned?.[i] ?? 0))).toBeLessThanOrEqual(graduation / 2 + 1e-3);
        });
        for (const { at, exact } of marked) {
          expect(Math.abs(at - exact)).toBeLessThanOrEqual(graduation + 1e-3);
        }
      }),
      { seed: 1308 },
    );
  });

  test('eighteen pleats that take 2 5/16 in come out right by eighths; each rounded alone, 1 1/8 in off', () => {
    const input = {
      ...FINE,
      finished: inches(36),
      rule: byCount(18),
      depth: inches(1 + 5 / 32),
    };
    const { run, takeUp, strip } = solved(pleats(input));
    const { marks } = markOut(run, STEP['1/8in']);
    expect(visibleBetween(marks, 'knife').at(-1)).toBe(inches(36));
    const alone = Math.round(takeUp / STEP['1/8in']) * STEP['1/8in'];
    expect(Math.abs(strip - 18 * alone - inches(36))).toBe(inches(1 + 1 / 8));
  });

  // Brute force: of every count there could be, none brings the number nearer to P ÷ w.
  test('no other count is nearer to the width that was wanted, and those beside it are the next', () => {
    fc.assert(
      fc.property(typed(20, 1500), typed(5, 300), (finished, width) => {
        const { count, beside } = plan({ finished, rule: byWidth(width) });
        const off = (n: number) => Math.abs(finished - n * width);
        const all = Array.from({ length: 300 }, (_, i) => i + 1);
        const nearest = all.reduce((best, n) => (off(n) < off(best) ? n : best));
        expect(count).toBe(nearest);
        expect(beside.map((one) => one.count)).toEqual(
          all.filter((n) => Math.abs(n - nearest) === 1),
        );
        for (const one of beside) {
          expect(one.strip).toBe(plan({ finished, rule: byCount(one.count) }).strip);
        }
      }),
      { seed: 1309 },
    );
  });

  // Brute force: the layers at points all along, each fold laid out.
  test('knife pleats never lie in more layers than said', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 20 }),
        typed(5, 60),
        typed(2, 150),
        (n, width, depth) => {
          const finished = (n * width) as Length;
          const { layers = 0 } = plan({ finished, rule: byCount(n), depth });
          const at = Array.from({ length: 400 }, (_, i) => ((i + 0.37) * finished) / 400);
          const most = Math.max(
            ...at.map(
              (x) =>
                1 +
                2 *
                  Array.from({ length: n }, (_, i) => (i + 1) * width).filter(
                    (fold) => x < fold && x > fold - depth,
                  ).length,
            ),
          );
          expect(most).toBeLessThanOrEqual(layers);
        },
      ),
      { seed: 1310, numRuns: 60 },
    );
  });

  test('the fewest strips that come to the length are taken, and what is over is less than one', () => {
    fc.assert(
      fc.property(typed(20, 9000), typed(200, 1600), typed(0, 30), (needed, cloth, seam) => {
        const { count, left } = solved(stripsFor({ needed, cloth, seam }));
        const long = (n: number) => n * (cloth - 2 * seam);
        expect(long(count)).toBeGreaterThanOrEqual(needed);
        expect(long(count - 1)).toBeLessThan(needed);
        expect(left).toBe(long(count) - needed);
      }),
      { seed: 1311 },
    );
  });
});

test('a whole number of widths is that number: 4.2 ÷ 1.4 is 3', () => {
  expect(plan({ finished: cm(4.2), rule: byWidth(cm(1.4)) }).count).toBe(3);
  expect(solved(stripsFor({ needed: cm(4.2), cloth: cm(1.4), seam: ZERO })).count).toBe(3);
});

test.each<[string, Partial<PleatsInput>, string[]]>([
  ['nothing to pleat', { finished: ZERO }, ['finished']],
  ['no depth', { depth: ZERO }, ['depth']],
  ['a seam of less than nothing', { seam: cm(-1) }, ['seam']],
  ['a flat part of less than nothing', { flat: cm(-1) }, ['flat']],
  ['nothing but a flat part', { flat: cm(92) }, ['flat']],
  ['no pleat', { rule: byCount(0) }, ['count']],
  ['half a pleat', { rule: byCount(2.5) }, ['count']],
  ['too many', { rule: byCount(301) }, ['count']],
  ['no width', { rule: byWidth(ZERO) }, ['width']],
  ['so narrow that there are too many', { rule: byWidth(cm(0.3)) }, ['width']],
  ['boxes as wide as twice their depth, without room', { kind: 'box', depth: cm(2.6) }, ['depth']],
  ['boxes with a front too wide', { kind: 'box', face: cm(5.2) }, ['face']],
])('%s: the field is named', (_, set, fields) => {
  expect(fieldsOf(pleats({ ...FINE, ...set }))).toEqual(fields);
});

test.each([
  ['cloth that is all seam', { cloth: cm(2), seam: cm(1) }, ['cloth']],
  ['so narrow that there are too many', { cloth: cm(0.1), seam: ZERO }, ['cloth']],
  ['cut to nothing', { deep: ZERO }, ['deep']],
  ['ends of less than nothing', { ends: mm(-1) }, ['ends']],
])('%s: the field is named', (_, set, fields) => {
  const fine = { needed: cm(236), cloth: cm(90), seam: cm(1) };
  expect(fieldsOf(stripsFor({ ...fine, ...set }))).toEqual(fields);
});
