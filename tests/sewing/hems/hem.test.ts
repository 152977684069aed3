import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, mm, toInches, toMm, ZERO } from '../../../src/lengths/length.ts';
import { hem, hemClass } from '../../../src/sewing/hems/hem.ts';
import type { HemInput } from '../../../src/sewing/hems/hem-input.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const plain: HemInput = { depth: mm(20), turn: ZERO, thickness: ZERO, edgeStitch: ZERO };

// US Army FM 10-16, General Fabric Repair, fig. 8-3: turn-under 1/2 in, hem 1 in, allowance
// 1 1/2 in; folded to lines 1 in from the raw edge and 2 in from the fold; stitched 1/8 in in.
test('the canvas hem of the manual', () => {
  const canvas = solved(
    hem({ ...plain, depth: inches(1), turn: inches(0.5), edgeStitch: inches(1 / 8) }),
  );
  expect(toInches(canvas.allowance)).toBe(1.5);
  expect(canvas.foldTo).toEqual({ first: inches(1), second: inches(2) });
  expect(toInches(canvas.firstPress ?? ZERO)).toBe(0.5);
  expect(toInches(canvas.hemLine)).toBe(1.5);
  expect(toInches(canvas.stitchUp)).toBe(7 / 8);
  expect(canvas.run.marks.map(({ at }) => toInches(at))).toEqual([0.5, 1.5, 2.375]);
});

// Theta Johnson, It's Fun to Sew a Cotton School Dress: 1/4 + 1/4 → 1/2; 2 1/2 finished → 2 3/4.
// A Complete Course in Dressmaking, vol. 2 p. 6: 1/16 + 1/8 → 3/16.
// emilyhallman.com 2016/09/22 (a blog): 3/8 + 3/8 → 3/4.
test.each([
  [1 / 4, 1 / 4, 1 / 2],
  [2.5, 1 / 4, 2.75],
  [1 / 8, 1 / 16, 3 / 16],
  [3 / 8, 3 / 8, 3 / 4],
])('published: depth %d and turn %d in take %d in', (depth, turn, allowance) => {
  const { allowance: taken } = solved(hem({ ...plain, depth: inches(depth), turn: inches(turn) }));
  expect(toInches(taken)).toBe(allowance);
});

// moodlehub.ca, garment hems: rolled up to 3 mm, narrow up to 1.5 cm, deep over 2 cm.
test.each([
  [3, 'rolled'],
  [4, 'narrow'],
  [15, 'narrow'],
  [16, 'ordinary'],
  [20, 'ordinary'],
  [21, 'deep'],
])('a hem %d mm deep is %s', (depth, called) => {
  expect(hemClass(mm(depth))).toBe(called);
});

test('the lines are in order and their distances make the hem', () => {
  const lengths = fc.integer({ min: 1, max: 200_000 });
  fc.assert(
    fc.property(lengths, lengths, lengths, fc.nat(40_000), (depth, turn, stitch, thickness) => {
      fc.pre(turn <= depth && thickness <= turn && thickness * 2.5 <= depth);
      // Clear of the round of the last fold, which takes up to 0.43 of a thickness (derived here).
      fc.pre(stitch < depth - 0.215 * thickness);
      const input = { depth, turn, thickness, edgeStitch: stitch } as unknown as HemInput;
      const { allowance, firstPress, hemLine, foldTo, folds, run } = solved(hem(input));
      expect(allowance).toBeCloseTo(depth + turn + folds.first + folds.last, 6);
      // Each press line is in the middle of its fold.
      expect(hemLine - (firstPress ?? 0)).toBeCloseTo(depth + (folds.first + folds.last) / 2, 6);
      expect(allowance - hemLine).toBeCloseTo(folds.last / 2, 6);
      // A fold lies midway between the edge and the line that edge is laid on.
      expect(foldTo.first ?? 0).toBeCloseTo(2 * (firstPress ?? 0), 6);
      expect(foldTo.second).toBeCloseTo(2 * depth + folds.last, 6);
      const places = run.marks.map(({ at }) => at);
      expect([...places].sort((a, b) => a - b)).toEqual(places);
      expect(places.at(-1)).toBeLessThanOrEqual(run.length);
    }),
    { seed: 1201 },
  );
});

// Found by random input: 57.88 of 63.3 units deep, in cloth as thick as its turn, was stitched below its hem line.
test('stitching in the round of the last fold is refused, with what is still clear of it', () => {
  const thick = { ...plain, depth: mm(8), turn: mm(3), thickness: mm(3) };
  const refused = hem({ ...thick, edgeStitch: mm(7.4) });
  const problem = refused.ok ? undefined : refused.problems[0];
  // A fold with nothing inside takes (π/2 − 2) τ, half of it on each side: 0.644 mm here.
  expect(problem).toMatchObject({ kind: 'not-under', field: 'edgeStitch' });
  expect(problem?.kind === 'not-under' && toMm(problem.under)).toBeCloseTo(
    8 - (2 - Math.PI / 2) * 1.5,
    3,
  );
  const { run, hemLine } = solved(hem({ ...thick, edgeStitch: mm(7.3) }));
  expect(run.marks.at(-1)?.at).toBeGreaterThan(hemLine);
});

test('the cut length is the finished length and the allowance', () => {
  const cut = solved(hem({ ...plain, turn: mm(7), finished: mm(600) })).cutLength;
  expect(toMm(cut ?? ZERO)).toBe(627);
  // What a waist or another hem takes at the other end belongs in it.
  const both = { turn: mm(7), finished: mm(600), otherEnd: mm(15) };
  expect(toMm(solved(hem({ ...plain, ...both })).cutLength ?? ZERO)).toBe(642);
  expect(fieldsOf(hem({ ...plain, ...both, otherEnd: mm(-1) }))).toEqual(['otherEnd']);
});

test('a hem that can’t be names its field', () => {
  expect(fieldsOf(hem({ ...plain, depth: ZERO }))).toEqual(['depth']);
  expect(fieldsOf(hem({ ...plain, turn: mm(25) }))).toEqual(['turn']);
  expect(fieldsOf(hem({ ...plain, edgeStitch: mm(20) }))).toEqual(['edgeStitch']);
  expect(fieldsOf(hem({ ...plain, finished: mm(15) }))).toEqual(['depth']);
  expect(fieldsOf(hem({ ...plain, thickness: mm(-1) }))).toEqual(['thickness']);
});

test('a hem takes no more cloth than there is, and what would do is said', () => {
  const left = mm(40);
  expect(hem({ ...plain, depth: mm(33), turn: mm(7), left }).ok).toBe(true);
  expect(hem({ ...plain, depth: mm(34), turn: mm(7), left })).toMatchObject({
    problems: [{ kind: 'too-long', field: 'depth', most: mm(33) }],
  });
  // Turned twice, equally: half of it.
  expect(hem({ ...plain, depth: mm(21), turn: mm(21), left })).toMatchObject({
    problems: [{ kind: 'too-long', field: 'depth', most: mm(20) }],
  });
  // So much turning that no depth over it would do.
  expect(hem({ ...plain, depth: mm(50), turn: mm(25), left })).toMatchObject({
    problems: [{ kind: 'too-long', field: 'turn', most: mm(20) }],
  });
  // Thicker than any hem of what there is could be folded from.
  const felt = { ...plain, depth: mm(100), turn: mm(10), thickness: mm(10), left: mm(20) };
  expect(fieldsOf(hem(felt))).toEqual(['left']);
  // Thicker than the first turn is deep.
  expect(fieldsOf(hem({ ...plain, turn: mm(2), thickness: mm(3) }))).toEqual(['thickness']);
});

test('the mend for too little cloth is one, and just so much', () => {
  const lengths = fc.integer({ min: 8000, max: 800_000 });
  fc.assert(
    fc.property(lengths, fc.nat(800_000), fc.nat(20_000), lengths, (depth, turn, thick, left) => {
      fc.pre(turn < depth);
      let input = { ...plain, depth, turn, thickness: thick, left } as unknown as HemInput;
      for (let mends = 0; mends < 3; mends += 1) {
        const outcome = hem(input);
        if (outcome.ok) {
          expect(outcome.value.allowance).toBeLessThanOrEqual((input.left ?? 0) + 1e-6);
          return;
        }
        const [problem] = outcome.problems;
        if (problem.kind === 'not-positive') return; // so thin a strip has no room for any hem
        if (problem.kind === 'too-long') {
          input = { ...input, [problem.field]: Math.floor(problem.most) };
        } else if (problem.kind === 'too-short') {
          input = { ...input, [problem.field]: Math.ceil(problem.least) };
        }
      }
      throw new Error(`not mended: ${JSON.stringify(input)}`);
    }),
    { seed: 1202 },
  );
});

test('just at a limit a hem can still be', () => {
  expect(hem({ ...plain, finished: plain.depth }).ok).toBe(true);
  expect(hem({ ...plain, turn: plain.depth, left: mm(40) }).ok).toBe(true);
});

test('turned once, it is folded to a line twice as far in as it is deep', () => {
  expect(solved(hem(plain)).foldTo).toEqual({ first: undefined, second: mm(40) });
});
