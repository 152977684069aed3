import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, type Length, length, mm, toInches, ZERO } from '../../../src/lengths/length.ts';
import { finishSeam, leastAllowance, USUAL_ROWS } from '../../../src/sewing/seams/seam-finish.ts';
import type { Finish, FinishInput } from '../../../src/sewing/seams/seam-rows.ts';
import { FELLED, FRENCH, FRENCH_WIDE, TRIMMED } from '../../../src/sewing/sources/seams.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const of = (finish: Finish, given: Length = inches(5 / 8), own: Partial<FinishInput> = {}) => ({
  finish,
  given,
  ...USUAL_ROWS,
  ...own,
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
      const outcome = finishSeam(of('french', mm(1), { first, trim, second } as never));
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
  const { under, turn, given } = FELLED.value;
  const { rows, turnAtMost } = solved(finishSeam(of('felled', given, { under, turn })));
  const at = (what: string) => rows.find((row) => row.do === what)?.at ?? ZERO;
  expect(toInches(at('fell-stitch'))).toBe(1 / 4);
  expect(at('fell-stitch')).toBeGreaterThan(at('trim-under'));
  // The 3/8 in lie in a fold of 1/4 in: more than half the allowance can't lie flat (derived here).
  expect(toInches(turnAtMost ?? ZERO)).toBe(5 / 16);
});

// Trim and turn are the maker's: books fell 3/8 in too (common practice, no source).
test('a flat fell on 3/8 in: trimmed to 1/8 in, 1/8 in turned under, stitched 1/4 in from the seam', () => {
  const own = { under: inches(1 / 8), turn: inches(1 / 8) };
  const { rows, turnAtMost } = solved(finishSeam(of('felled', inches(3 / 8), own)));
  expect(rows.map(({ at }) => toInches(at ?? ZERO))).toEqual([0, 1 / 8, 1 / 4, 1 / 4]);
  expect(turnAtMost).toBeUndefined();
});

test('a fold no wider than what is left under it is refused', () => {
  const part = fc.integer({ min: 1, max: 400_000 }).map(length);
  fc.assert(
    fc.property(part, part, part, (given, under, turn) => {
      const outcome = finishSeam(of('felled', given, { under, turn }));
      expect(outcome.ok).toBe(given - turn > under);
      if (!outcome.ok) {
        expect(outcome.problems[0]).toMatchObject({ kind: 'not-over', field: 'given' });
        return;
      }
      const at = (what: string) => outcome.value.rows.find((row) => row.do === what)?.at ?? ZERO;
      expect(at('fell-stitch')).toBeGreaterThan(at('trim-under'));
      // What is turned under reaches back from the fold; past the seam there is no room for it.
      expect(outcome.value.turnAtMost !== undefined).toBe(at('turn-under') - turn < 0);
    }),
    { seed: 1209 },
  );
  expect(fieldsOf(finishSeam(of('felled', inches(3 / 8))))).toEqual(['given']);
  expect(fieldsOf(finishSeam(of('felled', inches(1), { under: ZERO, turn: mm(-1) })))).toEqual([
    'under',
    'turn',
  ]);
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
  const { at: least, more } = leastAllowance(of(finish));
  const plan = solved(finishSeam(of(finish, length(Math.ceil(least) + (more ? 1 : 0)))));
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
      const outcome = finishSeam(of('french', length(given), { first, trim, second } as never));
      fc.pre(outcome.ok);
      const { consumed, over, spare } = solved(outcome);
      expect(consumed - over + spare).toBe(given);
      expect(Math.min(over, spare)).toBe(0);
    }),
  );
});

test('an allowance too small for its finish says the least', () => {
  const small = finishSeam(of('felled', inches(3 / 8)));
  expect(small).toMatchObject({ ok: false, problems: [{ field: 'given', over: inches(3 / 8) }] });
  expect(fieldsOf(finishSeam(of('plain', ZERO)))).toEqual(['given']);
});

// Common practice, no source: a plain seam is overcast and pressed open as wide as it is. The 1/8 to 1/4 in
// of Goodheart-Willcox, Apparel (2012), p. 451, are of enclosed seams.
test('a plain seam isn’t trimmed, however wide', () => {
  for (const given of [1 / 8, 1 / 4, 5 / 8, 2]) {
    const { rows } = solved(finishSeam(of('plain', inches(given))));
    expect(rows.map((row) => row.do)).toEqual(['sew', 'overcast', 'press-open']);
  }
  expect(fieldsOf(finishSeam(of('plain', inches(1 / 16))))).toEqual(['given']);
});

test('only what is more than the outer layer of a graded seam is trimmed off it', () => {
  const rows = (given: Length) => solved(finishSeam(of('graded', given))).rows.map((row) => row.do);
  expect(rows(inches(1 / 4))).toEqual(['sew', 'trim-inner', 'enclose']);
  expect(rows(inches(3 / 8))).toEqual(['sew', 'trim', 'trim-inner', 'enclose']);
  expect(TRIMMED.value.map(toInches)).toEqual([1 / 8, 1 / 4]);
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
        const { at: least, more } = leastAllowance(input);
        expect(outcome.ok).toBe(more ? units > least : units >= least);
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

// Of the French seam's figures (enleedesigns.com) and the grading (Goodheart-Willcox, Apparel, p. 451); of
// plain, mock French and bound ours, no source; of the felled one by its fields, 1/8 and 1/4 in.
test.each([
  ['plain', 1 / 8],
  ['french', 5 / 8],
  ['felled', 3 / 8],
  ['mock-french', 1 / 2],
  ['bound', 1 / 4],
  ['graded', 1 / 4],
] as const)('%s needs at least %d in', (finish, least) => {
  expect(toInches(leastAllowance(of(finish)).at)).toBe(least);
});
