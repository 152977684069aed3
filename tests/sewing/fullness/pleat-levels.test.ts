/**
 * Published: A Complete Course in Dressmaking, vol. 5 (about 1922), pages 64–69: half of a skirt, 44
 * in round, is pleated to 14 at the waist, 20 at the hips and 27 1/2 at the hem. Of 8 pleats the
 * panel's takes 2 1/8 in all the way, and the other 7 share what is left to go.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  exactLength,
  inches,
  type Length,
  length,
  mm,
  toInches,
  ZERO,
} from '../../../src/lengths/length.ts';
import {
  depthsTaken,
  type PleatKind,
  type PleatsInput,
} from '../../../src/sewing/fullness/pleat-input.ts';
import { pleatsAtLevel } from '../../../src/sewing/fullness/pleat-levels.ts';
import { LINES } from '../../../src/sewing/fullness/pleat-marks.ts';
import { pleats } from '../../../src/sewing/fullness/pleats.ts';
import { boundTold } from '../as-told.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';
import { visibleBetween } from './pleats-folded.ts';

const KNIFE: PleatsInput = {
  kind: 'knife',
  finished: inches(14),
  rule: { by: 'count', count: 7 },
  depth: inches(2),
  ends: 'fold',
  flat: ZERO,
  seam: ZERO,
};
const at = (input: PleatsInput, across: Length) =>
  pleatsAtLevel(input, solved(pleats(input)), { field: 'lower', across });

describe('published', () => {
  /** The skirt without what its panel's pleat takes, in 7 pleats. */
  const strip = inches(44 - 2.125);
  const skirt = { count: 7, strip, cut: strip };
  const taken = (across: number) => {
    const level = { field: 'lower', across: inches(across) };
    return toInches(exactLength(2 * solved(pleatsAtLevel(KNIFE, skirt, level)).depth));
  };

  test('11.15: 30, 24 and 16 1/2 in have to go: without the panel 27 7/8, 21 7/8 and 14 3/8', () => {
    const toGo = [14, 20, 27.5].map((across) => (7 * taken(across)).toFixed(6));
    expect(toGo.map(Number)).toEqual([27.875, 21.875, 14.375]);
  });

  test('11.15: each takes “a little more than 3 7/8” at the waist and 3 1/8 at the hips', () => {
    expect(taken(14).toFixed(2)).toBe('3.98');
    expect(taken(20)).toBe(3.125);
  });
});

test('as wide as the strip they hang open; wider, or all flat, there is none', () => {
  const { strip } = solved(pleats(KNIFE));
  expect(strip).toBe(inches(42));
  expect(solved(at(KNIFE, strip)).depth).toBe(0);
  expect(at(KNIFE, inches(43))).toEqual({
    ok: false,
    problems: [{ kind: 'too-long', field: 'lower', most: strip, given: inches(43) }],
  });
  expect(fieldsOf(at({ ...KNIFE, flat: inches(4) }, inches(4)))).toEqual(['lower']);
});

test('boxes need room at every level, whether their front is given or follows from the depth', () => {
  const box: PleatsInput = { ...KNIFE, kind: 'box', finished: mm(600), depth: mm(20) };
  // A strip of 600 + 7 × 80. Twice the depth is a front that fills all at a third of it.
  expect(at(box, mm(380))).toMatchObject({ problems: [{ kind: 'too-short', field: 'lower' }] });
  expect(solved(at(box, mm(390))).overlap).toBe(false);
  const narrow = { ...box, face: mm(40) };
  expect(fieldsOf(at(narrow, mm(279)))).toEqual(['lower']);
  expect(solved(at(narrow, mm(280))).overlap).toBe(true);
  expect(solved(at(narrow, mm(600))).overlap).toBe(false);
});

// 7 boxes of 20 take 560 of 600 and 50 flat; their fronts 40, or twice their depth there: a third of it.
test.each([
  ['that is given', mm(40), 7 * 40 + 50],
  ['that follows from the depth', undefined, (600 + 560 + 100) / 3],
])('with a flat part, boxes with a front %s need as much more', (_, face, least) => {
  const box = {
    ...KNIFE,
    kind: 'box' as const,
    finished: mm(600),
    depth: mm(20),
    flat: mm(50),
    face,
  };
  const across = (of: number) => at(box, of as Length);
  expect(boundTold(across, mm(60), 'lower', 'least') / mm(1)).toBeCloseTo(least, 9);
});

// A strip of 60: two inverted pleats of 5 over 20 just meet, over less they lie on each other.
test('inverted folds that just meet don’t overlap', () => {
  const two = { by: 'count', count: 2 } as const;
  const inverted = {
    ...KNIFE,
    kind: 'inverted' as const,
    finished: mm(20),
    depth: mm(5),
    rule: two,
  };
  expect([mm(20), mm(19.9)].map((of) => solved(at(inverted, of)).overlap)).toEqual([false, true]);
});

test('folds that lie over each other at a level are seen there', () => {
  // As deep as wide, or half as wide, at a third of the strip: of 42 in, and of 70.
  expect(solved(at(KNIFE, inches(14))).overlap).toBe(false);
  expect(solved(at(KNIFE, inches(13.9))).overlap).toBe(true);
  const inverted = { ...KNIFE, kind: 'inverted' as const };
  expect(solved(at(inverted, inches(23.4))).overlap).toBe(false);
  expect(solved(at(inverted, inches(23.3))).overlap).toBe(true);
});

const anyKnown = fc
  .record({
    kind: fc.constantFrom<PleatKind>('knife', 'box', 'inverted'),
    finished: typed(20, 3000),
    rule: fc.record({ by: fc.constant('count' as const), count: fc.integer({ min: 1, max: 60 }) }),
    depth: typed(1, 100),
    ends: fc.constantFrom('fold' as const, 'half' as const),
    flat: typed(0, 200),
    seam: typed(0, 30),
  })
  .filter((input) => pleats(input).ok);

describe('laws', () => {
  test('where it comes out as at the top, depth, width and every line are as at the top', () => {
    fc.assert(
      fc.property(anyKnown, (input) => {
        const top = solved(pleats(input));
        const same = solved(at(input, input.finished));
        expect(same.depth).toBe(input.depth);
        expect(same.width).toBe(top.width);
        expect(same.overlap).toBe(top.overlap);
        expect(same.run).toEqual(top.run);
      }),
      { seed: 1312 },
    );
  });

  // A second road: the strip marked at that level is folded line by line, and what shows is measured.
  test('the strip folded by its lines is as wide as it should be there', () => {
    fc.assert(
      fc.property(anyKnown, fc.integer({ min: 0, max: 1000 }), (input, part) => {
        const { strip, cut, count } = solved(pleats(input));
        const across = length(input.flat + Math.round(((strip - input.flat) * part) / 1000));
        const found = at(input, across);
        if (!found.ok) {
          expect(input.kind === 'box' || part === 0).toBe(true);
          return;
        }
        const { run, depth } = found.value;
        const takes = depthsTaken(input.kind).value * depth * count;
        expect(across + takes).toBeCloseTo(strip, 3);
        expect(run.marks).toHaveLength(count * LINES[input.kind]);
        const shown = visibleBetween(run.marks, input.kind);
        const last = run.marks.at(-1)?.at ?? 0;
        expect((shown.at(-1) ?? 0) + (cut - last)).toBeCloseTo(across + 2 * input.seam, 3);
      }),
      { seed: 1313 },
    );
  });
});
