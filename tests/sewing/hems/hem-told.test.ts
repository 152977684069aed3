import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STEP } from '../../../src/lengths/graduation.ts';
import { type Length, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { hem } from '../../../src/sewing/hems/hem.ts';
import type { HemInput } from '../../../src/sewing/hems/hem-input.ts';
import { stitchUpOnTape } from '../../../src/sewing/hems/hem-tape.ts';
import { hemOfWhole, type WholeHem } from '../../../src/sewing/hems/hem-whole.ts';
import type { Outcome, Problem } from '../../../src/sewing/problem.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const PLAIN: HemInput = { depth: mm(20), turn: mm(7), thickness: ZERO, edgeStitch: ZERO };
const at = (set: Partial<HemInput>) => hem({ ...PLAIN, ...set });

/** The value that would do, of what a refusal names; one unit inside where it is itself out. */
function mended(problem: Problem): number {
  if ('least' in problem) return Math.ceil(Number(problem.least) - 1e-6);
  if ('over' in problem) return Math.floor(Number(problem.over) + 1e-6) + 1;
  if ('most' in problem) return Math.floor(Number(problem.most) + 1e-6);
  if ('under' in problem) return Math.ceil(Number(problem.under) - 1e-6) - 1;
  throw new Error(JSON.stringify(problem));
}

const problemsOf = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.problems);

const units = (min: number, max: number) => fc.integer({ min, max }).map(length);

describe('what a refusal says will do does', () => {
  test('law: of a hem and the cloth there is, one mending of a field is enough for it, and a few make a hem', () => {
    const hems = fc.record({
      depth: units(8000, 160_000),
      part: fc.constantFrom(0, 0.3, 0.6, 0.9, 1),
      thickness: units(0, 24_000),
      edgeStitch: units(0, 16_000),
      left: units(8000, 320_000),
    });
    fc.assert(
      fc.property(hems, ({ part, ...rest }) => {
        let input: HemInput = { ...rest, turn: length(Math.floor(rest.depth * part)) };
        const seen: string[] = [];
        while (seen.length < 12) {
          const outcome = hem(input);
          if (outcome.ok) return;
          const [problem] = outcome.problems;
          expect(problem.field).not.toBe(seen.at(-1));
          seen.push(problem.field);
          const equal = input.turn === input.depth && problem.field === 'depth';
          const value = length(mended(problem));
          input = { ...input, [problem.field]: value, ...(equal ? { turn: value } : {}) };
        }
        throw new Error(seen.join(', '));
      }),
      { numRuns: 300, seed: 1240 },
    );
  });

  test('left: the hem that is asked for, where none smaller can be folded of this cloth', () => {
    const thick = { thickness: mm(6) };
    const refused = at({ ...thick, left: mm(8) });
    const { allowance } = solved(at(thick));
    expect(refused).toMatchObject({ problems: [{ kind: 'too-short', field: 'left' }] });
    const [told] = problemsOf(refused);
    expect(told && 'least' in told ? Number(told.least) : 0).toBeCloseTo(allowance, 3);
    expect(at({ ...thick, left: length(Math.ceil(allowance)) }).ok).toBe(true);
  });

  test('a turn that alone is more than half of what is left, then a hem of the rest', () => {
    expect(at({ depth: mm(30), turn: mm(16), left: mm(30) })).toMatchObject({
      problems: [{ kind: 'too-long', field: 'turn', most: mm(15), given: mm(16) }],
    });
    expect(at({ depth: mm(30), turn: mm(15), left: mm(30) })).toMatchObject({
      problems: [{ kind: 'too-long', field: 'depth', most: mm(15), given: mm(30) }],
    });
    expect(at({ depth: mm(30), turn: mm(30), left: mm(30) })).toMatchObject({
      problems: [{ kind: 'too-long', field: 'depth', most: mm(15), given: mm(30) }],
    });
    expect(at({ depth: mm(30), turn: mm(7), left: mm(30) })).toMatchObject({
      problems: [{ kind: 'too-long', field: 'depth', most: mm(23), given: mm(30) }],
    });
  });

  test('stitched less far from the inner edge than the hem is deep, or than its last fold leaves', () => {
    const told = (thickness: number) => (edgeStitch: number) =>
      at({ edgeStitch: length(edgeStitch), thickness: mm(thickness) });
    expect(boundTold(told(0), mm(25), 'edgeStitch', 'under')).toBe(mm(20));
    // Of cloth of 4 the fold takes 1.72 less, half of it on this side.
    const thick = boundTold(told(4), mm(25), 'edgeStitch', 'under');
    expect(thick / mm(1)).toBeCloseTo(20 + 2 * (Math.PI / 2 - 2), 6);
  });
});

describe('a hem of all there is', () => {
  const REST = { thickness: mm(1), edgeStitch: ZERO };
  const whole =
    (turn: WholeHem['turn'], set: Partial<WholeHem> = {}) =>
    (of: number) =>
      hemOfWhole({ ...REST, turn, whole: length(of), ...set });

  // A fold with nothing in it takes π/2 − 2 of a thickness, less than nothing; round a layer π − 3 (derived here).
  const FOLD = Math.PI / 2 - 2;
  const ROUND = Math.PI - 3;
  test('more than a turn of 10 with what both folds take', () => {
    const over = (10 + FOLD + ROUND) * mm(1);
    const [told] = problemsOf(whole(mm(10))(mm(0.01)));
    expect(told).toMatchObject({ kind: 'not-over', field: 'depth', given: mm(0.01) });
    expect(told && 'over' in told ? Number(told.over) : 0).toBeCloseTo(over, 3);
    const at = whole(mm(10));
    // So much more that the hem is a unit deep: then its turn is what is too long.
    expect(fieldsOf(at(Math.ceil(over) + 1))).toEqual(['turn']);
    expect(fieldsOf(at(Math.floor(over) - 1))).toEqual(['depth']);
  });

  test('a single turn has one fold, a double one two, one of them round a layer where it is equal', () => {
    const depthOf = (turn: WholeHem['turn']) => toMm(solved(whole(turn)(mm(30))).depth);
    expect(depthOf(ZERO)).toBeCloseTo(30 - FOLD, 3);
    expect(depthOf(mm(10))).toBeCloseTo(20 - 2 * FOLD, 3);
    expect(depthOf('equal')).toBeCloseTo((30 - FOLD - ROUND) / 2, 3);
  });

  test('nothing at all, and a turn of less than nothing, are told together', () => {
    const refused = hemOfWhole({ ...REST, whole: ZERO, turn: length(-1), thickness: length(-1) });
    expect(fieldsOf(refused)).toEqual(['depth', 'turn', 'thickness']);
  });

  test('a finished length is told with what is turned under it', () => {
    const at = whole(mm(10), { finished: mm(15) });
    const most = mm(15 + 10) + 2 * FOLD * mm(1);
    const refused = at(mm(40));
    const [told] = problemsOf(refused);
    expect(told).toMatchObject({ kind: 'too-long', field: 'depth', given: mm(40) });
    expect(told && 'most' in told ? Number(told.most) : 0).toBeCloseTo(most, 3);
    expect([at(Math.floor(most)).ok, at(Math.ceil(most) + 1).ok]).toEqual([true, false]);
  });

  test('the thickest cloth it can be folded of, of which the hem is a little shallower', () => {
    const at = (turn: WholeHem['turn']) => (thickness: number) =>
      whole(turn, { thickness: length(thickness) })(mm(10));
    // A double turn of τ is deep (10 − (FOLD + ROUND) τ) ÷ 2, which is to be 2.5 τ; a single one τ.
    const equal = boundTold(at('equal'), mm(5), 'thickness', 'most');
    expect(equal / mm(1)).toBeCloseTo(10 / (5 + FOLD + ROUND), 3);
    const single = boundTold(at(ZERO), mm(25), 'thickness', 'most');
    expect(single / mm(1)).toBeCloseTo(10 / (1 + FOLD), 3);
  });

  test('law: the same of all there is to turn up', () => {
    const cases = fc.record({
      of: units(8000, 320_000),
      turn: fc.oneof(units(0, 80_000), fc.constant('equal' as const)),
      thickness: units(0, 1000),
      edgeStitch: units(0, 16_000),
    });
    fc.assert(
      fc.property(cases, ({ of, ...rest }) => {
        let input: WholeHem = { ...rest, whole: of };
        const seen: string[] = [];
        while (seen.length < 12) {
          const outcome: Outcome<HemInput> = hemOfWhole(input);
          if (outcome.ok) return;
          const [problem] = outcome.problems;
          expect(problem.field).not.toBe(seen.at(-1));
          seen.push(problem.field);
          const key = problem.field === 'depth' ? 'whole' : problem.field;
          // All there is comes to a whole depth, which may be a unit less.
          const more = 'over' in problem ? 1 : 0;
          input = { ...input, [key]: length(mended(problem) + more) };
        }
        throw new Error(seen.join(', '));
      }),
      { numRuns: 300, seed: 1241 },
    );
  });
});

describe('stitched up, on a tape', () => {
  test('lines that a tape of millimetres draws nearer together: 27 less 8 is 19, so 18', () => {
    const input = { ...PLAIN, depth: mm(19.8), turn: mm(7.6), edgeStitch: mm(0.4) };
    expect(toMm(stitchUpOnTape(solved(hem(input)), input.depth, STEP['1mm']) ?? ZERO)).toBe(18);
  });

  test('half of what the folds take is in it: of cloth of 4 two folds take 3.43', () => {
    // Hem line at 8 + 20 − 2.58 = 25.4, on the tape 25; the first fold at 8 − 0.86 = 7.1: 7.
    // Flat 18, and 1.72 more for half of both folds: 19.7, so that 19 is inside.
    const input = { ...PLAIN, depth: mm(20), turn: mm(8), thickness: mm(4), edgeStitch: mm(0.1) };
    const made = solved(hem(input));
    expect(toMm(made.folds.first)).toBeCloseTo(4 * (Math.PI / 2 - 2), 4);
    expect(toMm(stitchUpOnTape(made, input.depth, STEP['1mm']) ?? ZERO)).toBe(19);
  });
});

describe('cloth that is there', () => {
  const told = (set: Partial<HemInput>) => {
    const [problem] = problemsOf(at({ depth: mm(40), ...set }));
    return problem && [problem.kind, problem.field];
  };
  const deep = ['too-long', 'depth'];

  test('thick cloth that a hem as deep as its turn could not be made of', () => {
    // 30 less 7 leaves 28.6 deep, whose turn 6.5 fits in; twice 15.9 would have room for 6.4.
    expect(told({ left: mm(30), thickness: mm(6.5) })).toEqual(deep);
    // Turned once, cloth may be as thick as the hem is deep.
    expect(told({ left: mm(10), turn: ZERO, thickness: mm(6) })).toEqual(deep);
  });

  test('a turn of more than half of it, which is told even where the hem beside it would be too shallow', () => {
    // Half is 10.5, with room for 4.2 of thickness; beside a turn of 15 there were 8, with room for 3.2.
    const turn = (of: number) =>
      at({ depth: mm(40), left: mm(20), turn: of as Length, thickness: mm(3.5) });
    expect(boundTold(turn, mm(15), 'turn', 'most') / mm(1)).toBeCloseTo(10.5, 1);
    expect(told({ left: mm(20), turn: mm(15), thickness: mm(5) })).toEqual(['too-short', 'left']);
  });

  test('a turn of just half, or as deep as the hem, is not what is too much', () => {
    expect(told({ left: mm(20), turn: mm(10) })).toEqual(deep);
    expect(told({ left: mm(20), turn: mm(40) })).toEqual(deep);
  });
});
