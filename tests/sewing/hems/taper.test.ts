import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LONGEST, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { type TaperInput, trueTaper } from '../../../src/sewing/hems/taper.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const leg: TaperInput = {
  atHem: mm(200),
  above: mm(210),
  apart: mm(40),
  depth: mm(40),
  turn: mm(10),
};

test('a tapered allowance is the mirror of what it lies on (derived here)', () => {
  const cut = solved(trueTaper(leg));
  expect(toMm(cut.atDepth)).toBe(210);
  expect(toMm(cut.eachSide)).toBe(5);
  // Turned back from the inner fold: as wide as the piece 30 mm above the hem line.
  expect(toMm(cut.atRawEdge)).toBe(207.5);
  expect(toMm(solved(trueTaper({ ...leg, above: mm(200) })).eachSide)).toBe(0);
});

test('a shallower hem lies on what is lower down, wherever the width was read', () => {
  const shallow = solved(trueTaper({ ...leg, depth: mm(20) }));
  expect(toMm(shallow.atDepth)).toBe(205);
  expect(toMm(shallow.atRawEdge)).toBe(202.5);
});

/** Across a piece at a height above its hem line, by its own two sides. */
function across({ atHem, above, apart }: TaperInput, height: number): number {
  const [left, right] = [-atHem / 2, atHem / 2];
  const lean = (above - atHem) / 2 / apart;
  return right + lean * height - (left - lean * height);
}

test('folded at the hem line and again at the depth, the edges lie on the piece’s own', () => {
  const width = fc.integer({ min: 400_000, max: 4_000_000 });
  const deep = fc.integer({ min: 8000, max: 800_000 });
  fc.assert(
    fc.property(width, width, deep, deep, fc.nat(800_000), (atHem, above, apart, depth, turn) => {
      fc.pre(turn <= depth);
      const input = { atHem, above, apart, depth, turn } as unknown as TaperInput;
      const outcome = trueTaper(input);
      if (!outcome.ok) {
        expect(across(input, depth)).toBeLessThanOrEqual(0);
        return;
      }
      expect(outcome.value.atDepth).toBeCloseTo(across(input, depth), 3);
      expect(outcome.value.atRawEdge).toBeCloseTo(across(input, depth - turn), 3);
      expect(2 * outcome.value.eachSide + atHem).toBeCloseTo(outcome.value.atDepth, 3);
    }),
  );
});

test('a taper that can’t be names its field', () => {
  expect(fieldsOf(trueTaper({ ...leg, depth: ZERO, turn: ZERO }))).toEqual(['depth']);
  expect(fieldsOf(trueTaper({ ...leg, apart: ZERO }))).toEqual(['apart']);
  expect(fieldsOf(trueTaper({ ...leg, atHem: ZERO, above: mm(-1) }))).toEqual(['atHem', 'above']);
  expect(fieldsOf(trueTaper({ ...leg, turn: mm(41) }))).toEqual(['turn']);
  expect(fieldsOf(trueTaper({ ...leg, turn: mm(-1) }))).toEqual(['turn']);
  // Narrowed by 50 in 10, it would come to nothing at 40: it must be over 150 there.
  const steep = { ...leg, apart: mm(10), above: mm(150) };
  expect(trueTaper(steep)).toMatchObject({
    problems: [{ kind: 'not-over', field: 'above', over: mm(150) }],
  });
  expect(trueTaper({ ...steep, above: mm(151) }).ok).toBe(true);
  const wide = trueTaper({ ...leg, apart: mm(1), above: LONGEST });
  expect(wide).toMatchObject({ problems: [{ kind: 'too-long', field: 'above' }] });
});

test('just at a limit a taper can still be', () => {
  expect(trueTaper({ ...leg, turn: leg.depth }).ok).toBe(true);
  // Widening over all measure in a long hem: what is said to be the most is taken.
  const long = { ...leg, apart: mm(10), depth: mm(400) };
  const wide = trueTaper({ ...long, above: mm(400_000) });
  const [problem] = wide.ok ? [] : wide.problems;
  if (problem?.kind !== 'too-long') throw new Error(JSON.stringify(wide));
  expect(trueTaper({ ...long, above: length(Math.floor(problem.most)) }).ok).toBe(true);
  expect(trueTaper({ ...long, above: length(Math.ceil(problem.most) + 1) }).ok).toBe(false);
});

test('a hem of nothing is told before its turning, which is deeper', () => {
  expect(fieldsOf(trueTaper({ ...leg, depth: ZERO }))).toEqual(['depth']);
});
