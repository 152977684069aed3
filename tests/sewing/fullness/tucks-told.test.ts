import { describe, expect, test } from 'vitest';
import { type Length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import type { TucksInput } from '../../../src/sewing/fullness/tuck-input.ts';
import { tucks } from '../../../src/sewing/fullness/tucks.ts';
import { boundTold } from '../as-told.ts';
import { solved } from '../outcomes.ts';

// Counted on a drawing, no source: 240 mm between the outer stitch lines.

const FRONT: TucksInput = {
  finished: mm(280),
  first: mm(20),
  last: mm(20),
  spread: { by: 'count', count: 5 },
  depth: mm(4),
  step: ZERO,
  lies: 'last',
  seam: ZERO,
};
const at = (set: Partial<TucksInput>) => tucks({ ...FRONT, ...set });
const plan = (set: Partial<TucksInput>) => solved(at(set));
const count = (of: number) => ({ by: 'count', count: of }) as const;

test('marks are numbered through, and the fold lies between its two stitch lines', () => {
  const { marks } = plan({ spread: count(2), finished: mm(100) }).run;
  expect(marks.map(({ at: place, label, kind }) => [toMm(place), label, kind])).toEqual([
    [20, '1', 'stitch'],
    [24, '2', 'fold'],
    [28, '3', 'stitch'],
    [88, '4', 'stitch'],
    [92, '5', 'fold'],
    [96, '6', 'stitch'],
  ]);
});

describe('clear between tucks that grow', () => {
  // 4, 6, 8, 10 and 12 deep, 60 apart: towards the last edge the fourth is the deepest that covers
  // a gap, towards the first the fifth.
  test.each([
    ['last' as const, 50],
    ['first' as const, 48],
  ])('lying to the %s edge', (lies, gap) => {
    const found = plan({ step: mm(2), lies });
    expect([toMm(found.spacing ?? ZERO), toMm(found.gap ?? ZERO)]).toEqual([60, gap]);
  });
});

describe('how many, at the bounds between two counts', () => {
  const spaced = (by: number, fit: 'nearest' | 'no-wider' | 'no-closer') =>
    plan({ spread: { by: 'spacing', spacing: mm(by), fit } }).count;

  test('just whole: as many whichever way', () => {
    expect([spaced(60, 'nearest'), spaced(60, 'no-wider'), spaced(60, 'no-closer')]).toEqual([
      5, 5, 5,
    ]);
  });

  test('four and four fifths, four and a seventh', () => {
    expect([spaced(50, 'nearest'), spaced(50, 'no-wider'), spaced(50, 'no-closer')]).toEqual([
      6, 6, 5,
    ]);
    expect([spaced(58, 'nearest'), spaced(58, 'no-wider'), spaced(58, 'no-closer')]).toEqual([
      5, 6, 5,
    ]);
  });
});

describe('one fewer and one more', () => {
  const beside = (set: Partial<TucksInput>) => plan(set).beside.map((other) => other.count);

  test('both, but a single one, more than 300, and what an edge is too narrow for', () => {
    expect(beside({})).toEqual([4, 6]);
    expect(beside({ spread: count(2) })).toEqual([3]);
    expect(beside({ spread: count(299), finished: mm(4000) })).toEqual([298, 300]);
    expect(beside({ spread: count(300), finished: mm(4000) })).toEqual([299]);
    // Tucks 4, 8, 12, 16 and 20 deep: a sixth of 24 would lie over an edge of 20.
    expect(beside({ step: mm(4) })).toEqual([4]);
  });

  test('none of groups, nor where there is no room for two', () => {
    const groups = { by: 'groups', groups: 2, each: 3, spacing: mm(20) } as const;
    const found = plan({ spread: groups });
    expect(found.beside).toEqual([]);
    expect([toMm(found.spacing ?? ZERO), toMm(found.between ?? ZERO)]).toEqual([20, 160]);
    expect(found.places.map((place) => toMm(place))).toEqual([20, 40, 60, 220, 240, 260]);
    expect(beside({ finished: mm(40), spread: count(1) })).toEqual([]);
    expect(plan({}).between).toBeUndefined();
  });
});

describe('an edge that a tuck lies over', () => {
  test.each([
    ['towards the first edge the first', 'first', { lies: 'first', step: mm(4) }, 4],
    ['towards the last edge the last', 'last', { lies: 'last', step: mm(4) }, 20],
  ] as const)('%s', (_, field, set, least) => {
    const told = (edge: number) => at({ ...set, [field]: edge as Length });
    expect(boundTold(told, mm(1), field, 'least')).toBe(mm(least));
  });

  test('a tuck alone lies over what is left of the width', () => {
    // 100 wide and 80 from the first edge: 20 are left.
    const alone = (depth: number) =>
      at({ finished: mm(100), first: mm(80), last: ZERO, spread: count(1), depth: mm(depth) });
    expect([alone(20).ok, alone(20.1).ok]).toEqual([true, false]);
  });
});
