import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactLength, length } from '../../../src/lengths/length.ts';
import { facedHem } from '../../../src/sewing/hems/hem-facing.ts';
import { facingAsMade } from '../../../src/sewing/hems/hem-facing-made.ts';
import { solved } from '../outcomes.ts';

const planned = fc.record({
  depth: fc.integer({ min: 160_000, max: 800_000 }).map(length),
  seam: fc.integer({ min: 40_000, max: 120_000 }).map(length),
  turn: fc.integer({ min: 24_000, max: 80_000 }).map(length),
  thickness: fc.integer({ min: 0, max: 8000 }).map(length),
  edgeStitch: fc.integer({ min: 0, max: 40_000 }).map(length),
});
const off = fc.integer({ min: -8000, max: 8000 });

// The other road: a hem planned with what was sewn and turned, as deep as then is left.
test('a facing as made is the plan of a hem with that seam, turning and depth', () => {
  fc.assert(
    fc.property(planned, off, off, off, (input, cut, sewn, turned) => {
      const plan = solved(facedHem(input));
      const [seam, turn] = [length(input.seam + sewn), length(input.turn + turned)];
      const cutDeep = exactLength(plan.cutDeep + cut);
      const stands = facingAsMade(plan, input, { cutDeep, seam, turn });
      const other = { ...input, seam, turn, depth: length(input.depth + cut - sewn - turned) };
      const wanted = solved(facedHem(other));
      expect(wanted.cutDeep).toBeCloseTo(cutDeep, 3);
      expect(stands.depth).toBeCloseTo(other.depth, 3);
      expect(stands.allowance).toBeCloseTo(wanted.allowance, 3);
      expect(stands.stitchUp).toBeCloseTo(wanted.stitchUp, 3);
      expect(stands.stitch).toBeCloseTo(wanted.run.marks[1]?.at ?? 0, 3);
    }),
    { seed: 1310 },
  );
});

test('with nothing made it is the plan', () => {
  fc.assert(
    fc.property(planned, (input) => {
      const plan = solved(facedHem(input));
      const { stitch, depth, ...same } = facingAsMade(plan, input, {});
      expect(plan).toMatchObject(same);
      expect([stitch, depth]).toEqual([plan.run.marks[1]?.at, input.depth]);
    }),
    { seed: 1311 },
  );
});
