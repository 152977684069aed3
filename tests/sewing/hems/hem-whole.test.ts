import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, length, mm, toInches, ZERO } from '../../../src/lengths/length.ts';
import { hem } from '../../../src/sewing/hems/hem.ts';
import { curvedHem } from '../../../src/sewing/hems/hem-curve.ts';
import { hemOfWhole, problemsOfWhole } from '../../../src/sewing/hems/hem-whole.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const rest = { thickness: ZERO, edgeStitch: ZERO };

// US Army FM 10-16, fig. 8-3 (1 1/2 in allow a turn of 1/2 in and a hem of 1 in); Theta Johnson, It's Fun
// to Sew a Cotton School Dress (2 3/4 in: 2 1/2 finished and a turn of 1/4); 1/2 in: 1/4 and 1/4.
test.each([
  [1.5, 0.5, 1],
  [2.75, 0.25, 2.5],
  [0.5, 'equal', 0.25],
  [3, 0.25, 2.75],
  [3, 0, 3],
] as const)('%d in for the hem with a turn of %s in is %d in deep', (whole, turn, depth) => {
  const first = turn === 'equal' ? turn : inches(turn);
  const input = solved(hemOfWhole({ ...rest, whole: inches(whole), turn: first }));
  expect(toInches(input.depth)).toBe(depth);
  expect(toInches(solved(hem(input)).allowance)).toBe(whole);
});

test('a hem of all there is takes all there is, whatever the cloth', () => {
  const units = fc.integer({ min: 1, max: 800_000 }).map(length);
  const thick = fc.nat(16_000).map(length);
  fc.assert(
    fc.property(units, units, thick, fc.boolean(), (whole, first, thickness, equal) => {
      const turn = equal ? ('equal' as const) : first;
      const outcome = hemOfWhole({ ...rest, whole, turn, thickness });
      if (!outcome.ok) {
        expect(['depth', 'turn', 'thickness']).toContain(outcome.problems[0].field);
        return;
      }
      const { allowance } = solved(hem(outcome.value));
      expect(whole - allowance).toBeGreaterThan(-1e-6);
      expect(whole - allowance).toBeLessThan(2);
    }),
    { seed: 1212 },
  );
});

test('what can’t be is said of all there is', () => {
  const whole = mm(30);
  expect(hemOfWhole({ ...rest, whole, turn: mm(20) })).toMatchObject({
    problems: [{ kind: 'too-long', field: 'turn', most: mm(15) }],
  });
  expect(hemOfWhole({ ...rest, whole, turn: mm(30) })).toMatchObject({
    problems: [{ kind: 'not-over', field: 'depth', over: mm(30), given: whole }],
  });
  expect(hemOfWhole({ ...rest, whole, turn: mm(7), finished: mm(20) })).toMatchObject({
    problems: [{ kind: 'too-long', field: 'depth', most: mm(27), given: whole }],
  });
  expect(hemOfWhole({ ...rest, whole, turn: 'equal', left: mm(20) })).toMatchObject({
    problems: [{ kind: 'too-long', field: 'depth', most: mm(20), given: whole }],
  });
  expect(fieldsOf(hemOfWhole({ ...rest, whole: ZERO, turn: mm(7) }))).toEqual(['depth']);
  expect(fieldsOf(hemOfWhole({ ...rest, whole, turn: mm(7), thickness: mm(8) }))).toEqual([
    'thickness',
  ]);
});

test('a curve too tight for the hem is said of all there is, too', () => {
  // A radius of 425, and a turn of 7 with it.
  const curve = { by: 'rise', chord: mm(400), rise: mm(50), inward: false } as const;
  const input = { ...rest, depth: mm(430), turn: mm(7) };
  const tight = curvedHem(input.depth, curve, 0);
  expect(problemsOfWhole(tight.ok ? [] : tight.problems, input, mm(437))).toEqual([
    { kind: 'not-under', field: 'depth', under: mm(432), given: mm(437) },
  ]);
});

test('of a first turn of 7 in 30 cloth may be just so thick', () => {
  const thick = { ...rest, whole: mm(30), turn: mm(7) };
  expect(hemOfWhole({ ...thick, thickness: mm(8) })).toMatchObject({
    problems: [{ kind: 'too-long', field: 'thickness', most: mm(7) }],
  });
  expect(hemOfWhole({ ...thick, thickness: mm(7) }).ok).toBe(true);
});

// A raw edge 3 mm short of the hem line of cloth of 2 mm: just where the round of the last fold begins.
test('what a hem takes, its first turn just clear of the round, is as deep a hem again', () => {
  const input = { ...rest, depth: mm(10), turn: mm(7), thickness: mm(2) };
  const whole = length(Math.ceil(solved(hem(input)).allowance));
  expect(solved(hemOfWhole({ ...rest, whole, turn: mm(7), thickness: mm(2) })).depth).toBe(mm(10));
});
