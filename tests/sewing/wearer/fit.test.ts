import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, type Length, mm, toInches, toMm, ZERO } from '../../../src/lengths/length.ts';
import {
  clearance,
  inEachDart,
  onEachEdge,
  type PiecesInput,
  piecesGirth,
  wantedGirth,
} from '../../../src/sewing/wearer/fit.ts';
import { boundTold } from '../as-told.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const flat = (pieces: number, set: Partial<PiecesInput> = {}): PiecesInput => ({
  ...{ pieces: mm(pieces), allowances: ZERO, taken: ZERO },
  ...set,
});
const girth = (input: PiecesInput) => toMm(solved(piecesGirth(input)).girth);

// Published rows are named; the rest is worked by hand.
describe('worked by hand', () => {
  test('8.1 a bust of 36 in and 2 in of ease is finished 38 in round', () => {
    const input = { body: inches(36), ease: inches(2) };
    expect(toInches(solved(wantedGirth(input)))).toBe(38);
  });

  test('8.8 2 in of ease stands 8.1 mm from the body all round', () => {
    expect(toMm(clearance(inches(2))).toFixed(1)).toBe('8.1');
    expect(toInches(clearance(inches(2))).toFixed(2)).toBe('0.32');
  });

  test('four panels of 29 with 1.5 on each of eight edges, lapped 4, are 100 round', () => {
    const input = flat(1160, { allowances: mm(120), taken: mm(40) });
    expect(girth(input)).toBe(1000);
  });

  test('31: 3 mm further out on both edges of four seams is 24 mm, further in as much less', () => {
    expect(girth(flat(1000, { seams: 4, edge: mm(3) }))).toBe(1024);
    expect(girth(flat(1000, { seams: 4, edge: mm(-3) }))).toBe(976);
    expect(toMm(solved(onEachEdge(mm(24), 4)))).toBe(3);
  });

  test('15.2 four side edges of 1 in, two darts of 5/8 and two of 1 1/4 take 7 3/4 in of 37', () => {
    // The printed worked example, its shares rounded: 37 in at the hip, 29 at the waist.
    const taken = inches(4 * 1 + 2 * 0.625 + 2 * 1.25);
    expect(toInches(solved(piecesGirth({ ...flat(0), pieces: inches(37), taken })).girth)).toBe(
      29.25,
    );
    expect(toInches(solved(inEachDart(inches(0.25), 2)))).toBe(0.125);
  });

  test('what is wrong names its field', () => {
    expect(fieldsOf(wantedGirth({ body: ZERO, ease: ZERO }))).toEqual(['body']);
    expect(fieldsOf(wantedGirth({ body: mm(900), ease: mm(-900) }))).toEqual(['ease']);
    expect(fieldsOf(piecesGirth(flat(0)))).toEqual(['pieces']);
    expect(fieldsOf(piecesGirth(flat(100, { allowances: mm(-1) })))).toEqual(['allowances']);
    expect(fieldsOf(piecesGirth(flat(100, { allowances: mm(60), taken: mm(40) })))).toEqual([
      'pieces',
    ]);
    expect(fieldsOf(piecesGirth(flat(100, { seams: 0.5, darts: 0.5 })))).toEqual([
      'seams',
      'darts',
    ]);
    expect(fieldsOf(onEachEdge(mm(1), 0))).toEqual(['seams']);
    expect(fieldsOf(inEachDart(mm(1), 101))).toEqual(['darts']);
  });
});

test('something has to be left, to a unit', () => {
  const ease = (of: number) => wantedGirth({ body: mm(900), ease: of as Length });
  expect(boundTold(ease, mm(-950), 'ease', 'over')).toBe(mm(-900));
  // Allowances of 60, lapped by 40, four edges of 5 let out.
  const pieces = (of: number) =>
    piecesGirth({
      ...flat(of / mm(1), { allowances: mm(60), taken: mm(40) }),
      seams: 2,
      edge: mm(5),
    });
  expect(boundTold(pieces, mm(50), 'pieces', 'over')).toBe(mm(80));
});

const some = fc.integer({ min: 1, max: 24 });

// There and back: sewn further out by what it lacks, nothing is lacking.
test('what a girth lacks, shared out over its seams or its darts, is then there', () => {
  fc.assert(
    fc.property(typed(300, 3000), typed(0, 200), some, (pieces, lacks, count) => {
      const wide = flat(toMm(pieces));
      const edge = solved(onEachEdge(lacks, count));
      const dart = solved(inEachDart(lacks, count));
      const out = { seams: count, edge: edge as typeof pieces };
      const less = { darts: count, dart: dart as typeof pieces };
      for (const change of [out, less]) {
        const got = solved(piecesGirth({ ...wide, ...change })).girth;
        expect(got - pieces - lacks).toBeCloseTo(0, 4);
      }
    }),
    { seed: 1512 },
  );
});

test('what is an allowance and what is taken up count alike, and twice all is twice the girth', () => {
  fc.assert(
    fc.property(typed(500, 3000), typed(0, 200), typed(0, 200), (pieces, one, other) => {
      const input = { ...flat(0), pieces, allowances: one, taken: other };
      const turned = { ...input, allowances: other, taken: one };
      expect(girth(input)).toBe(girth(turned));
      const twice = { ...flat(0), pieces: mm(2 * toMm(pieces)), allowances: mm(2 * toMm(one)) };
      expect(girth(twice)).toBeCloseTo(2 * girth({ ...input, taken: ZERO }), 3);
    }),
    { seed: 1513 },
  );
});
