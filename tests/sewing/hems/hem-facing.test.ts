import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, type Length, mm, toInches, toMm, ZERO } from '../../../src/lengths/length.ts';
import { curvedHem } from '../../../src/sewing/hems/hem-curve.ts';
import { type FacingInput, facedHem, facingLength } from '../../../src/sewing/hems/hem-facing.ts';
import { FACING_SEAM } from '../../../src/sewing/sources/facings.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const faced: FacingInput = {
  depth: mm(40),
  turn: mm(7),
  edgeStitch: mm(2),
  thickness: ZERO,
  seam: mm(10),
  finished: mm(600),
};

// An older Butterick text on skirts (fashion-design-drawing.com, Skirts, part 5): the facing is
// joined by a seam of 3/8 in, which is all that the piece gives.
test('a faced hem takes only its seam of the piece', () => {
  const old = solved(facedHem({ ...faced, depth: inches(2), seam: FACING_SEAM.value }));
  expect(toInches(old.allowance)).toBe(3 / 8);
});

test('the facing is cut by its seam, its depth and its turning (common practice, no source)', () => {
  const { cutDeep, cutLength, stitchUp, run } = solved(facedHem(faced));
  expect(toMm(cutDeep)).toBe(57);
  expect(toMm(cutLength ?? ZERO)).toBe(610);
  expect(toMm(stitchUp)).toBe(38);
  expect(run.marks.map(({ at }) => toMm(at))).toEqual([10, 48]);
  expect(toMm(run.length)).toBe(48);
});

test('seamed, turned in and turned under, the facing comes out as deep as wanted', () => {
  const part = fc.integer({ min: 1, max: 800_000 });
  fc.assert(
    fc.property(part, part, part, part, (depth, turn, seam, edgeStitch) => {
      const input = { depth, turn, seam, edgeStitch, thickness: ZERO } as unknown as FacingInput;
      const outcome = facedHem(input);
      expect(outcome.ok).toBe(turn <= depth && seam <= depth && edgeStitch < depth);
      if (!outcome.ok) return;
      const { cutDeep, run, stitchUp } = outcome.value;
      expect(cutDeep - seam - turn).toBe(depth);
      expect(run.marks[1]?.at).toBe(seam + stitchUp);
    }),
  );
});

test('a bias strip gives the difference of two arcs, half as much as a hem turned up', () => {
  fc.assert(
    fc.property(fc.integer({ min: 41, max: 4000 }), (radius) => {
      const { gives } = solved(facedHem({ ...faced, radius: mm(radius) }));
      const arc = (r: number) => 0.7 * r;
      expect((gives ?? 0) * arc(radius)).toBeCloseTo(arc(radius) - arc(radius - 40), 9);
      const rise = radius * (1 - Math.cos(0.7));
      const chord = mm(2 * radius * Math.sin(0.7));
      const curve = { by: 'rise', chord, rise: mm(rise), inward: false } as const;
      const { fullness } = solved(curvedHem(mm(40), curve, 0));
      expect((gives ?? 0) / fullness).toBeCloseTo(0.5, 3);
    }),
  );
  expect(solved(facedHem(faced)).gives).toBeUndefined();
});

test('a facing that can’t be names its field', () => {
  expect(fieldsOf(facedHem({ ...faced, seam: ZERO }))).toEqual(['seam']);
  expect(fieldsOf(facedHem({ ...faced, seam: mm(41) }))).toEqual(['seam']);
  expect(fieldsOf(facedHem({ ...faced, left: mm(9) }))).toEqual(['seam']);
  expect(fieldsOf(facedHem({ ...faced, left: ZERO }))).toEqual(['left']);
  expect(facedHem({ ...faced, left: mm(10) }).ok).toBe(true);
  expect(fieldsOf(facedHem({ ...faced, radius: mm(40) }))).toEqual(['depth']);
  expect(fieldsOf(facedHem({ ...faced, radius: ZERO }))).toEqual(['radius']);
  expect(fieldsOf(facedHem({ ...faced, turn: mm(41) }))).toEqual(['turn']);
  expect(fieldsOf(facedHem({ ...faced, finished: mm(30) }))).toEqual(['depth']);
});

// At the seam piece and facing each turn back round nothing, and so does the free edge; with every
// measure to the outside each fold is 0.43 τ less (derived by hand), shared where the seam lies in it.
test('felt of 2 mm: the piece gives 0.43 mm less, the facing is cut 1.29 mm less deep', () => {
  const { allowance, cutDeep, cutLength, run } = solved(facedHem({ ...faced, thickness: mm(2) }));
  expect(toMm(allowance)).toBeCloseTo(10 - 0.429, 3);
  expect(toMm(cutDeep)).toBeCloseTo(57 - 0.429 - 0.858, 2);
  expect(toMm(cutLength ?? ZERO)).toBeCloseTo(610 - 0.429, 3);
  expect(run.marks.map(({ at }) => Number(toMm(at).toFixed(2)))).toEqual([10, 47.57]);
});

test('what the other end takes is in the cut length', () => {
  const { cutLength } = solved(facedHem({ ...faced, otherEnd: mm(15) }));
  expect(toMm(cutLength ?? ZERO)).toBe(625);
});

test('piece and facing of any thickness fold to the measures wanted, drawn and measured back', () => {
  const tenths = fc.integer({ min: 1, max: 60 }).map((n) => n / 10);
  fc.assert(
    fc.property(tenths, (thick) => {
      const input = { ...faced, turn: mm(10), thickness: mm(thick) };
      const { cutDeep, allowance } = solved(facedHem(input));
      // Each fold: half a circle of the middle of the cloth, its outside a thickness past its legs.
      const half = (Math.PI / 4) * thick;
      const legs = { seam: 40 - thick - thick, turn: 10 - thick };
      const facing = 10 + half + legs.seam + 2 * half + legs.turn;
      expect(toMm(cutDeep)).toBeCloseTo(facing, 3);
      expect(toMm(allowance)).toBeCloseTo(10 + half - thick, 3);
    }),
    { seed: 1206 },
  );
});

// Found by random input: a seam of a few units on thick cloth took less than nothing of the piece.
test('a seam or a stitching in the round of the fold at the hem line is refused', () => {
  const thick = { ...faced, depth: mm(20), turn: mm(5), thickness: mm(5) };
  // A fold with nothing inside takes (π/2 − 2) τ, half of it on each side: 1.073 mm here.
  const round = (2 - Math.PI / 2) * 2.5;
  expect(fieldsOf(facedHem({ ...thick, seam: mm(round - 0.01) }))).toEqual(['seam']);
  expect(fieldsOf(facedHem({ ...thick, edgeStitch: mm(20 - round + 0.01) }))).toEqual([
    'edgeStitch',
  ]);
  const { allowance, run } = solved(
    facedHem({ ...thick, seam: mm(round + 0.01), edgeStitch: mm(20 - round - 0.01) }),
  );
  expect(allowance).toBeGreaterThan(0);
  expect(run.marks[1]?.at).toBeGreaterThan(run.marks[0]?.at ?? ZERO);
});

test('a facing is cut as long as its edge, and a seam at either end', () => {
  expect(solved(facingLength(mm(500), mm(15)))).toBe(mm(530));
  expect(fieldsOf(facingLength(ZERO, mm(-1)))).toEqual(['edge', 'seam']);
});

test('a free edge that isn’t turned under has no fold', () => {
  const thick = { ...faced, thickness: mm(1) };
  expect(solved(facedHem({ ...thick, turn: ZERO })).folds.first).toBe(0);
  expect(solved(facedHem(thick)).folds.first).toBeLessThan(0);
});

test('a seam as wide as the hem is deep, or as the cloth there is', () => {
  const seam = (left: Length | undefined) => (of: number) =>
    facedHem({ ...faced, seam: of as Length, left });
  expect(boundTold(seam(undefined), mm(50), 'seam', 'most')).toBe(mm(40));
  expect(boundTold(seam(mm(60)), mm(50), 'seam', 'most')).toBe(mm(40));
  expect(boundTold(seam(mm(30)), mm(50), 'seam', 'most')).toBe(mm(30));
});
