import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, type Length, length, mm, toInches, ZERO } from '../../src/lengths/length.ts';
import { finishSeam, leastAllowance, USUAL_FRENCH } from '../../src/sewing/seam-finish.ts';
import type { Finish } from '../../src/sewing/seam-rows.ts';
import { FRENCH, FRENCH_WIDE } from '../../src/sewing/sources/seams.ts';
import { fieldsOf, solved } from './outcomes.ts';

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
  const untrimmed = { first: inches(3 / 8), trim: inches(3 / 8), second: inches(1 / 2) };
  expect(fieldsOf(finishSeam(of('french', inches(5 / 8), untrimmed)))).toEqual(['trim']);
});

test('the rows of a French seam, from the final stitch line', () => {
  const { rows } = solved(finishSeam(of('french')));
  expect(rows.map((row) => [row.do, row.at && toInches(row.at)])).toEqual([
    ['sew-first', 1 / 4],
    ['trim-first', 3 / 8],
    ['turn', 1 / 4],
    ['sew-second', 0],
  ]);
  // As it is done: 3/8 in from the raw edge, trimmed to 1/8 in beside that row (enleedesigns.com).
  expect(rows.map(({ beside }) => beside && toInches(beside))).toEqual([
    3 / 8,
    1 / 8,
    undefined,
    undefined,
  ]);
});

test('rows of a French seam lie as far from the raw edge as they are said to', () => {
  const part = fc.integer({ min: 1, max: 400_000 });
  fc.assert(
    fc.property(part, part, part, (first, trim, second) => {
      const outcome = finishSeam({ finish: 'french', given: mm(1), first, trim, second } as never);
      expect(outcome.ok).toBe(trim < first && second > trim);
      if (!outcome.ok) return;
      const { consumed, rows } = outcome.value;
      const at = (what: string) => rows.find((row) => row.do === what)?.at ?? Number.NaN;
      expect(consumed - at('sew-first')).toBe(first);
      expect(at('trim-first') - at('sew-first')).toBe(trim);
      // Turned, the trimmed edges reach back from the first row and must stay hidden.
      expect(at('turn') - trim).toBeGreaterThan(at('sew-second'));
    }),
  );
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
  expect(rows.map(({ at }) => toInches(at ?? ZERO))).toEqual([0, 5 / 16, 5 / 16]);
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

// Goodheart-Willcox, Apparel (2012), p. 451: trimmed to 1/8 to 1/4 in.
test('a plain seam is trimmed to 1/4 in, and one that is narrower is left', () => {
  const rows = (given: Length) => solved(finishSeam(of('plain', given))).rows;
  expect(rows(inches(5 / 8)).map((row) => row.do)).toEqual([
    'sew',
    'trim',
    'overcast',
    'press-open',
  ]);
  expect(rows(inches(5 / 8))[1]?.at).toBe(inches(1 / 4));
  expect(rows(inches(1 / 4)).map((row) => row.do)).toEqual(['sew', 'overcast', 'press-open']);
  expect(fieldsOf(finishSeam(of('plain', inches(1 / 16))))).toEqual(['given']);
});

// wikisum.wiki, French seam (a trade page): the strip is stitched 1/8 in from the edge.
test('a bound seam has its strip 1/8 in from the edge, whatever the allowance', () => {
  fc.assert(
    fc.property(fc.integer({ min: 60_000, max: 800_000 }), (units) => {
      const given = length(units);
      const { rows, strip } = solved(finishSeam(of('bound', given)));
      expect(given - (rows[1]?.at ?? 0)).toBe(inches(1 / 8));
      expect((strip ?? 0) - given).toBe(inches(1 / 4));
    }),
  );
});

test('every finish is worked on its least allowance and on none that is less', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...FINISHES.filter((finish) => finish !== 'french')),
      fc.integer({ min: 1, max: 400_000 }),
      (finish, units) => {
        const input = of(finish, length(units));
        const outcome = finishSeam(input);
        expect(outcome.ok).toBe(units >= leastAllowance(input));
        if (!outcome.ok) return;
        const { rows, consumed, over, spare } = outcome.value;
        expect([consumed, over, spare]).toEqual([units, 0, 0]);
        for (const { at } of rows) {
          expect(at ?? 0).toBeGreaterThanOrEqual(0);
          expect(at ?? 0).toBeLessThanOrEqual(consumed);
        }
      },
    ),
  );
});

// Of the felled seam's figures (bellaonline.com, art60164), the French one's (enleedesigns.com), the
// trimming and grading (Goodheart-Willcox, Apparel, p. 451); of mock French and bound ours, no source.
test.each([
  ['plain', 1 / 8],
  ['french', 5 / 8],
  ['felled', 1 / 2],
  ['mock-french', 1 / 2],
  ['bound', 1 / 4],
  ['graded', 1 / 4],
] as const)('%s needs at least %d in', (finish, least) => {
  expect(toInches(leastAllowance(of(finish)))).toBe(least);
});
