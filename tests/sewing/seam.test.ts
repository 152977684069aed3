import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  exactLength,
  inches,
  type Length,
  length,
  mm,
  toInches,
  toMm,
  ZERO,
} from '../../src/lengths/length.ts';
import type { Outcome } from '../../src/sewing/problem.ts';
import {
  allowanceChange,
  clipSpacing,
  girthEffect,
  guideFor,
  letOut,
} from '../../src/sewing/seam-change.ts';
import {
  type Finish,
  finishSeam,
  leastAllowance,
  USUAL_FRENCH,
} from '../../src/sewing/seam-finish.ts';
import { CLIPS, FRENCH, FRENCH_WIDE } from '../../src/sewing/sources/seams.ts';

function solved<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const fieldsOf = (outcome: Outcome<unknown>) =>
  outcome.ok ? [] : outcome.problems.map(({ field }) => field);

const of = (finish: Finish, given: Length = inches(5 / 8), french = USUAL_FRENCH) => ({
  finish,
  given,
  ...french,
});

// enleedesigns.com, French seams (a trade page): 3/8 + 1/4 = 5/8; and 1/4 + 1/4 = 1/2.
test('a French seam of 3/8 and 1/4 in takes a 5/8 in allowance', () => {
  const plan = solved(finishSeam(of('french', inches(5 / 8), FRENCH.value)));
  expect(toInches(plan.consumed)).toBe(5 / 8);
  expect(plan.over).toBe(0);
  const half = { first: inches(1 / 4), trim: inches(1 / 8), second: inches(1 / 4) };
  expect(toInches(solved(finishSeam(of('french', inches(1 / 2), half))).consumed)).toBe(1 / 2);
});

// Utah State University Extension, French Seam: 3/8 + 3/8 = 3/4, 1/8 in over a 5/8 in pattern.
test('two rows of 3/8 in are flagged on a 5/8 in allowance: 1/8 in over on each edge', () => {
  const plan = solved(finishSeam(of('french', inches(5 / 8), FRENCH_WIDE.value)));
  expect(toInches(plan.consumed)).toBe(3 / 4);
  expect(toInches(plan.over)).toBe(1 / 8);
});

test('a second row no wider than the trimmed edge lets the raw edge show (derived here)', () => {
  const narrow = { first: inches(3 / 8), trim: inches(1 / 8), second: inches(1 / 8) };
  expect(fieldsOf(finishSeam(of('french', inches(5 / 8), narrow)))).toEqual(['second']);
});

test('the rows of a French seam, from the final stitch line', () => {
  const { rows } = solved(finishSeam(of('french')));
  expect(rows.map((row) => [row.do, row.at && toInches(row.at)])).toEqual([
    ['sew-first', 1 / 4],
    ['trim', 3 / 8],
    ['turn', 1 / 4],
    ['sew-second', 0],
  ]);
});

// bellaonline.com, art60164 (a trade page): 5/8 allowance, under layer 1/8, turned under 3/8,
// stitched 1/4 in from the seam: 5/8 − 3/8 = 1/4, more than the 1/8 in left under it.
test('a flat-felled seam is stitched 1/4 in from the seam', () => {
  const { rows } = solved(finishSeam(of('felled')));
  const at = (what: string) => rows.find((row) => row.do === what)?.at ?? ZERO;
  expect(toInches(at('fell-stitch'))).toBe(1 / 4);
  expect(at('fell-stitch')).toBeGreaterThan(at('trim-under'));
});

// bellaonline.com, art60164: mock French on 5/8 presses to 5/16.
test('a mock French seam presses to the middle', () => {
  const { rows } = solved(finishSeam(of('mock-french')));
  expect(toInches(rows[1]?.at ?? ZERO)).toBe(5 / 16);
});

// wikisum.wiki, French seam (a trade page): strip = allowance + 1/4 in: 5/8 → 7/8.
test('a bound 5/8 in allowance wants a strip of 7/8 in', () => {
  expect(toInches(solved(finishSeam(of('bound'))).strip ?? ZERO)).toBe(7 / 8);
});

// Goodheart-Willcox, Apparel (2012), p. 451: the widest layer faces outside, 1/4 in.
test('a graded seam leaves the outer layer widest', () => {
  const { rows } = solved(finishSeam(of('graded')));
  const at = (what: string) => rows.find((row) => row.do === what)?.at ?? ZERO;
  expect(at('trim')).toBeGreaterThan(at('trim-inner'));
  expect(toInches(at('trim'))).toBe(1 / 4);
});

const FINISHES: Finish[] = ['plain', 'french', 'felled', 'mock-french', 'bound', 'graded'];

test.each(FINISHES)('%s works on its least allowance, in order and within it', (finish) => {
  const least = leastAllowance(of(finish));
  const plan = solved(finishSeam(of(finish, length(Math.ceil(least)))));
  expect(plan.over).toBe(0);
  for (const { at } of plan.rows) {
    if (at === undefined) continue;
    expect(at).toBeGreaterThanOrEqual(0);
    expect(at).toBeLessThanOrEqual(plan.consumed);
  }
});

test('what is taken, what is spare and what is over make up the allowance', () => {
  const part = fc.integer({ min: 1, max: 400_000 });
  fc.assert(
    fc.property(part, part, part, part, (given, first, trim, second) => {
      const outcome = finishSeam({ finish: 'french', given, first, trim, second } as never);
      fc.pre(outcome.ok);
      const { consumed, over, spare } = solved(outcome);
      expect(consumed - over + spare).toBe(given);
      expect(Math.min(over, spare)).toBe(0);
    }),
  );
});

test('an allowance too small for its finish says the least', () => {
  const small = finishSeam(of('felled', inches(3 / 8)));
  expect(small).toMatchObject({ ok: false, problems: [{ field: 'given', least: inches(1 / 2) }] });
  expect(fieldsOf(finishSeam(of('plain', ZERO)))).toEqual(['given']);
});

test('four seams sewn 2 mm too wide take 16 mm off the girth (derived here)', () => {
  expect(toMm(girthEffect(mm(15), mm(17), 4))).toBe(-16);
  expect(toMm(allowanceChange(mm(15), mm(10)))).toBe(5);
});

test('letting out and taking in undo each other, and add up round the girth', () => {
  const change = fc.integer({ min: 1, max: 80_000 });
  fc.assert(
    fc.property(change, fc.integer({ min: 1, max: 12 }), (by, seams) => {
      const input = { allowance: mm(500), seams, least: ZERO };
      const out = solved(letOut({ ...input, change: length(by) }));
      const taken = solved(letOut({ ...input, change: length(-by) }));
      expect(out.eachEdge).toBe(-taken.eachEdge);
      expect(out.eachEdge * 2 * seams).toBeCloseTo(by, 6);
    }),
  );
});

test('no more is let out than the finish is left', () => {
  const outcome = letOut({ allowance: mm(15), change: mm(100), seams: 4, least: mm(10) });
  expect(outcome).toMatchObject({ ok: false, problems: [{ field: 'change', most: mm(40) }] });
  expect(fieldsOf(letOut({ allowance: mm(15), change: mm(1), seams: 0, least: ZERO }))).toEqual([
    'seams',
  ]);
  expect(fieldsOf(letOut({ allowance: mm(15), change: mm(1), seams: 1.5, least: ZERO }))).toEqual([
    'seams',
  ]);
});

test('a curve of 80 mm with 10 mm allowance, clips opening 2 mm: every 16 mm (derived here)', () => {
  expect(toMm(solved(clipSpacing(mm(80), mm(10), mm(2))))).toBe(16);
});

// Goodheart-Willcox, Apparel (2012), p. 452: every 1/4 to 1/2 in, sharper closer.
test('a sharper curve is clipped closer', () => {
  const spacing = (radius: number) => solved(clipSpacing(mm(radius), mm(15), mm(2)));
  expect(spacing(50)).toBeLessThan(spacing(100));
  expect(toInches(CLIPS.value.closest)).toBe(1 / 4);
  expect(toInches(CLIPS.value.widest)).toBe(1 / 2);
});

test('the guide is the same distance in both units, and the nearest plate line is near', () => {
  const guide = guideFor(inches(5 / 8));
  expect(guide).toMatchObject({ mm: 15.875, inches: 0.625, line: inches(5 / 8), off: 0 });
  const metric = guideFor(exactLength(mm(16)));
  expect(toMm(metric.line)).toBe(15.875);
});
