import { describe, expect, test } from 'vitest';
import {
  exactLength,
  inches,
  type Length,
  mm,
  toInches,
  ZERO,
} from '../../../src/lengths/length.ts';
import { letOut } from '../../../src/sewing/seams/seam-change.ts';
import { finishSeam, USUAL_ROWS } from '../../../src/sewing/seams/seam-finish.ts';
import type { Finish, FinishInput } from '../../../src/sewing/seams/seam-rows.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const at = (finish: Finish, set: Partial<FinishInput> = {}) =>
  finishSeam({ finish, given: inches(5 / 8), ...USUAL_ROWS, ...set });

// The rows are quoted in seam.test.ts; what must be left beside them is added up here.
describe('the least allowance is what is told, and a unit less is refused', () => {
  test.each<[Finish, Partial<FinishInput>, 'least' | 'over', number]>([
    ['plain', {}, 'least', 1 / 8],
    ['felled', {}, 'over', 3 / 8],
    ['mock-french', {}, 'least', 1 / 2],
    ['bound', {}, 'least', 1 / 4],
    ['graded', {}, 'least', 1 / 4],
  ])('%s', (finish, set, name, least) => {
    const told = (given: number) => at(finish, { ...set, given: given as Length });
    expect(toInches(boundTold(told, 8, 'given', name) as Length)).toBe(least);
  });

  test('a French seam takes its two rows, and says by how much it is over', () => {
    expect(at('french', { given: mm(1) }).ok).toBe(true);
    expect(fieldsOf(at('french', { given: ZERO }))).toEqual(['given']);
    const first = (trim: number) => at('french', { trim: trim as Length });
    expect(toInches(boundTold(first, inches(1), 'trim', 'under') as Length)).toBe(3 / 8);
    const second = (row: number) => at('french', { second: row as Length });
    expect(toInches(boundTold(second, 8, 'second', 'over') as Length)).toBe(1 / 8);
  });
});

describe('topstitching', () => {
  test('catches the allowance that lies under it, and is no seam itself', () => {
    const top = (row: number) => at('plain', { top: row as Length });
    expect(toInches(boundTold(top, inches(1), 'top', 'under') as Length)).toBe(5 / 8);
    expect(boundTold(top, 0, 'top', 'over')).toBe(0);
  });

  test('a second row lies beyond the first, or beyond the seam', () => {
    const second = (top: Length | undefined) => (row: number) =>
      at('plain', { top, topSecond: row as Length });
    expect(boundTold(second(mm(6)), mm(2), 'topSecond', 'over')).toBe(mm(6));
    expect(boundTold(second(undefined), 0, 'topSecond', 'over')).toBe(0);
    expect(toInches(boundTold(second(mm(6)), inches(1), 'topSecond', 'under') as Length)).toBe(
      5 / 8,
    );
  });

  test('is asked only once the seam itself can be', () => {
    expect(fieldsOf(at('plain', { given: mm(1), top: mm(5) }))).toEqual(['given']);
  });
});

test('a strip is told only of a bound seam, and what fits only of one that is felled too wide', () => {
  const finishes = ['plain', 'french', 'felled', 'mock-french', 'bound', 'graded'] as const;
  expect(finishes.filter((one) => solved(at(one)).strip !== undefined)).toEqual(['bound']);
  const wide = { turn: inches(3 / 8) };
  expect(finishes.filter((one) => solved(at(one, wide)).turnAtMost !== undefined)).toEqual([
    'felled',
  ]);
  const half = solved(at('felled', { turn: inches(5 / 16) }));
  expect(half.turnAtMost).toBeUndefined();
});

// A felled seam needs more than its rows take: 15 less 9 is 6 on each edge of four seams.
test('let out, a felled seam keeps more than its rows take', () => {
  const felled = { at: exactLength(mm(9)), more: true };
  const change = (of: number) =>
    letOut({ allowance: mm(15), change: of as Length, seams: 4, least: felled });
  expect(boundTold(change, mm(60), 'change', 'under')).toBe(mm(48));
});

test('rows of another finish are not asked about', () => {
  const trim = { trim: inches(1), second: mm(1) };
  expect((['plain', 'felled', 'bound'] as const).map((finish) => at(finish, trim).ok)).toEqual([
    ...[true, true, true],
  ]);
});
