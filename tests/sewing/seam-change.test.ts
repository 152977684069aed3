import fc from 'fast-check';
import { expect, test } from 'vitest';
import { length, mm, toMm, ZERO } from '../../src/lengths/length.ts';
import { type ChangeInput, changeAllowance, letOut } from '../../src/sewing/seam-change.ts';
import { fieldsOf, solved } from './outcomes.ts';

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
      const input = { allowance: mm(500), seams, least: ZERO };
      const out = solved(letOut({ ...input, change: length(by) }));
      const taken = solved(letOut({ ...input, change: length(-by) }));
      expect(out.eachEdge).toBe(-taken.eachEdge);
      expect(out.eachEdge * 2 * seams).toBeCloseTo(by, 6);
      expect(out.left + out.eachEdge).toBeCloseTo(mm(500), 6);
    }),
  );
});

test('just as much as the finish leaves is let out, and no more', () => {
  const input = { allowance: mm(15), seams: 4, least: mm(10) };
  expect(toMm(solved(letOut({ ...input, change: mm(40) })).left)).toBe(10);
  expect(letOut({ ...input, change: mm(40.001) })).toMatchObject({
    problems: [{ kind: 'too-long', field: 'change', most: mm(40) }],
  });
});

test('what is left is never under the least, and what would mend it does', () => {
  const part = fc.integer({ min: 1, max: 400_000 });
  const change = fc.integer({ min: -4_000_000, max: 4_000_000 });
  fc.assert(
    fc.property(
      part,
      part,
      change,
      fc.integer({ min: 1, max: 12 }),
      (allowance, least, by, seams) => {
        const input = { allowance: length(allowance), least: length(least), seams };
        const outcome = letOut({ ...input, change: length(by) });
        if (outcome.ok) {
          expect(outcome.value.left).toBeGreaterThanOrEqual(least);
          return;
        }
        const [problem] = outcome.problems;
        const mended =
          problem.kind === 'too-long'
            ? letOut({ ...input, change: length(Math.floor(problem.most)) })
            : problem.kind === 'too-short'
              ? letOut({
                  ...input,
                  change: length(by),
                  allowance: length(Math.ceil(problem.least)),
                })
              : outcome;
        expect(mended.ok).toBe(true);
      },
    ),
  );
});

test('an allowance too small for its finish is named itself, also when taking in', () => {
  const small = { allowance: mm(3), seams: 4, least: mm(12) };
  expect(letOut({ ...small, change: mm(-16) })).toMatchObject({
    problems: [{ kind: 'too-short', field: 'allowance', least: mm(10) }],
  });
  expect(letOut({ ...small, change: mm(16) })).toMatchObject({
    problems: [{ kind: 'too-short', field: 'allowance', least: mm(14) }],
  });
});

test('changes that can’t be name their field', () => {
  const seams = (count: number) =>
    fieldsOf(letOut({ allowance: mm(15), change: mm(1), seams: count, least: ZERO }));
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
  const least = { allowance: mm(10), seams: 4, least: mm(10) };
  expect(letOut({ ...least, change: mm(8) })).toMatchObject({
    problems: [{ kind: 'too-short', field: 'allowance', least: mm(11) }],
  });
});
