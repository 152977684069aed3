import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactLength, length, mm, toMm } from '../../../src/lengths/length.ts';
import { hem } from '../../../src/sewing/hems/hem.ts';
import { hemAsPressed } from '../../../src/sewing/hems/hem-made.ts';
import { solved } from '../outcomes.ts';

const parts = fc.record({
  depth: fc.integer({ min: 100_000, max: 400_000 }).map(length),
  turn: fc.integer({ min: 16_000, max: 80_000 }).map(length),
  thickness: fc.integer({ min: 0, max: 8000 }).map(length),
  edgeStitch: fc.integer({ min: 0, max: 40_000 }).map(length),
});
const off = fc.integer({ min: -8000, max: 8000 });

test('lines pressed just where planned are the hem as planned', () => {
  fc.assert(
    fc.property(parts, (input) => {
      const plan = solved(hem(input));
      const { firstPress, hemLine } = plan;
      const pressed = hemAsPressed(plan, input.depth, { firstPress, hemLine }, 'depth');
      const { depth, stitch, ...lines } = pressed;
      expect(plan).toMatchObject(lines);
      expect(depth).toBe(input.depth);
      expect(plan.run.marks.at(-1)?.at).toBe(stitch);
    }),
    { seed: 1305 },
  );
});

// A line lies in the middle of its fold, so that a hem pressed elsewhere is another hem's plan.
test('a first turn pressed elsewhere is the hem of that turn, as deep as wanted', () => {
  fc.assert(
    fc.property(parts, off, (input, by) => {
      const other = { ...input, turn: length(input.turn + by) };
      const [plan, wanted] = [solved(hem(input)), solved(hem(other))];
      // Over a layer that comes down into its round the last fold is another one.
      fc.pre(plan.folds.inside === wanted.folds.inside);
      const { firstPress } = wanted;
      const pressed = hemAsPressed(plan, input.depth, { firstPress }, 'depth');
      for (const key of ['allowance', 'hemLine', 'stitchUp'] as const) {
        expect(pressed[key]).toBeCloseTo(wanted[key], 3);
      }
      expect(pressed.depth).toBe(input.depth);
    }),
    { seed: 1306 },
  );
});

test('a hem line pressed elsewhere is a hem of another depth, by both lines or all there is', () => {
  fc.assert(
    fc.property(parts, off, (input, by) => {
      const other = { ...input, depth: length(input.depth + by) };
      const [plan, wanted] = [solved(hem(input)), solved(hem(other))];
      fc.pre(plan.folds.inside === wanted.folds.inside);
      const keeps = fc.sample(fc.constantFrom('depth', 'hem-line'), { numRuns: 1, seed: by })[0];
      const made = { firstPress: plan.firstPress, hemLine: wanted.hemLine };
      const pressed = hemAsPressed(plan, input.depth, made, keeps ?? 'depth');
      expect(pressed.depth).toBeCloseTo(other.depth, 3);
      expect(pressed.stitchUp).toBeCloseTo(wanted.stitchUp, 3);
      expect(pressed.foldTo.second).toBeCloseTo(wanted.foldTo.second, 3);
    }),
    { seed: 1307 },
  );
});

test('a hem that takes all there is keeps its hem line, whatever its first turn came to', () => {
  const input = { depth: mm(30), turn: mm(10), thickness: mm(1), edgeStitch: mm(2) };
  const plan = solved(hem(input));
  const firstPress = exactLength((plan.firstPress ?? 0) + mm(3));
  const pressed = hemAsPressed(plan, input.depth, { firstPress }, 'hem-line');
  expect(pressed.hemLine).toBe(plan.hemLine);
  expect(pressed.depth).toBe(mm(27));
});

test('a line that isn’t pressed yet lies where it is planned from', () => {
  const input = { depth: mm(20), turn: mm(7), thickness: length(0), edgeStitch: mm(2) };
  const twice = solved(hem(input));
  const lower = hemAsPressed(twice, input.depth, { hemLine: exactLength(mm(29)) }, 'depth');
  expect([lower.depth, lower.stitchUp, lower.allowance].map(toMm)).toEqual([22, 20, 29]);
  const once = solved(hem({ ...input, turn: length(0) }));
  const made = { firstPress: exactLength(mm(3)), hemLine: exactLength(mm(21)) };
  expect(toMm(hemAsPressed(once, input.depth, made, 'depth').depth)).toBe(21);
});

// Both lines 2 further from the raw edge: the hem as deep as planned, folded to the same line.
test('what it is folded to lies twice as far from the first fold as the hem is deep', () => {
  const input = { depth: mm(20), turn: mm(7), thickness: length(0), edgeStitch: mm(2) };
  const plan = solved(hem(input));
  const made = { firstPress: exactLength(mm(9)), hemLine: exactLength(mm(30)) };
  const { depth, foldTo } = hemAsPressed(plan, input.depth, made, 'depth');
  expect([toMm(depth), toMm(foldTo.second)]).toEqual([21, 42]);
});
