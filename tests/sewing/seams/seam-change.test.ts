import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Length, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import type { Problem } from '../../../src/sewing/problem.ts';
import {
  type ChangeInput,
  changeAllowance,
  type LetOutInput,
  letOut,
} from '../../../src/sewing/seams/seam-change.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const least = (at: Length) => ({ at, more: false });

test('four seams sewn 2 mm too wide take 16 mm off the girth (derived here)', () => {
  const change = solved(changeAllowance({ pattern: mm(15), wanted: mm(17), seams: 4 }));
  expect(toMm(change.girth)).toBe(-16);
  expect(toMm(change.eachEdge)).toBe(-2);
  const less = solved(changeAllowance({ pattern: mm(15), wanted: mm(10), seams: 1 }));
  expect(toMm(less.eachEdge)).toBe(5);
});

test('the girth is what is left between the stitch lines of all the pieces', () => {
  const part = fc.integer({ min: 1, max: 400_000 });
  fc.assert(
    fc.property(part, part, fc.integer({ min: 1, max: 100 }), (pattern, wanted, seams) => {
      // As many pieces as seams, each as wide as 10 m, a seam at both of its edges.
      const sewn = (allowance: number) => seams * (80_000_000 - 2 * allowance);
      const { girth } = solved(
        changeAllowance({ pattern, wanted, seams } as unknown as ChangeInput),
      );
      expect(girth).toBe(sewn(wanted) - sewn(pattern));
    }),
  );
});

test('letting out and taking in undo each other, and add up round the girth', () => {
  const change = fc.integer({ min: 1, max: 80_000 });
  fc.assert(
    fc.property(change, fc.integer({ min: 1, max: 12 }), (by, seams) => {
      const input = { allowance: mm(500), seams, least: least(ZERO) };
      const out = solved(letOut({ ...input, change: length(by) }));
      const taken = solved(letOut({ ...input, change: length(-by) }));
      expect(out.eachEdge).toBe(-taken.eachEdge);
      expect(out.eachEdge * 2 * seams).toBeCloseTo(by, 6);
      expect(out.left + out.eachEdge).toBeCloseTo(mm(500), 6);
    }),
  );
});

test('just as much as the finish leaves is let out, and no more', () => {
  const input = { allowance: mm(15), seams: 4, least: least(mm(10)) };
  expect(toMm(solved(letOut({ ...input, change: mm(40) })).left)).toBe(10);
  expect(letOut({ ...input, change: mm(40.001) })).toMatchObject({
    problems: [{ kind: 'too-long', field: 'change', most: mm(40) }],
  });
});

/** The input with what its problem asks for: the least or most there may be, or just past it. */
function mend(input: LetOutInput, problem: Problem): LetOutInput {
  switch (problem.kind) {
    case 'too-long':
      return { ...input, change: length(Math.floor(problem.most)) };
    case 'not-under':
      return { ...input, change: length(Math.ceil(problem.under) - 1) };
    case 'too-short':
      return { ...input, allowance: length(Math.ceil(problem.least)) };
    case 'not-over':
      return { ...input, allowance: length(Math.floor(problem.over) + 1) };
    default:
      return input;
  }
}

test('what is left is never under the least, and what would mend it does', () => {
  const part = fc.integer({ min: 1, max: 400_000 });
  const change = fc.integer({ min: -4_000_000, max: 4_000_000 });
  fc.assert(
    fc.property(
      part,
      part,
      change,
      fc.integer({ min: 1, max: 12 }),
      fc.boolean(),
      (allowance, at, by, seams, more) => {
        const input = { allowance: length(allowance), least: { at: length(at), more }, seams };
        const outcome = letOut({ ...input, change: length(by) });
        if (outcome.ok) {
          const { left } = outcome.value;
          expect(more ? left > at : left >= at).toBe(true);
          return;
        }
        const [problem] = outcome.problems;
        const mended = letOut(mend({ ...input, change: length(by) }, problem));
        expect(mended.ok).toBe(true);
      },
    ),
    { seed: 1208 },
  );
});

test('an allowance too small for its finish is named itself, also when taking in', () => {
  const small = { allowance: mm(3), seams: 4, least: least(mm(12)) };
  expect(letOut({ ...small, change: mm(-16) })).toMatchObject({
    problems: [{ kind: 'too-short', field: 'allowance', least: mm(10) }],
  });
  expect(letOut({ ...small, change: mm(16) })).toMatchObject({
    problems: [{ kind: 'too-short', field: 'allowance', least: mm(14) }],
  });
});

test('changes that can’t be name their field', () => {
  const seams = (count: number) =>
    fieldsOf(letOut({ allowance: mm(15), change: mm(1), seams: count, least: least(ZERO) }));
  for (const count of [0, 1.5, 101, Number.NaN]) expect(seams(count)).toEqual(['seams']);
  expect([...seams(1), ...seams(100)]).toEqual([]);
  expect(fieldsOf(changeAllowance({ pattern: mm(-1), wanted: ZERO, seams: 0 }))).toEqual([
    'given',
    'wanted',
    'seams',
  ]);
  expect(changeAllowance({ pattern: ZERO, wanted: mm(15), seams: 2 }).ok).toBe(true);
});

test('an allowance that is just the least has nothing to let out', () => {
  const just = { allowance: mm(10), seams: 4, least: least(mm(10)) };
  expect(letOut({ ...just, change: mm(8) })).toMatchObject({
    problems: [{ kind: 'too-short', field: 'allowance', least: mm(11) }],
  });
});
