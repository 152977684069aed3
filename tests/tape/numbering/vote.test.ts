import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lostDigits, vote } from '../../../src/tape/numbering/vote.ts';
import { lineOf, readAt, readsOn } from '../made/read-numbers.ts';

describe('the vote', () => {
  test('finds the offset that most numbers say', () => {
    expect(vote(readsOn([12, 13, 14, 99, 16]), lineOf, 1)).toEqual({
      offset: 12,
      agreeing: 4,
      partial: 0,
      digits: 8,
      second: 1,
      score: 4,
      total: 5,
    });
  });

  test('of values that fall to the right, too', () => {
    expect(vote(readsOn([30, 29, 28]), lineOf, -1)).toMatchObject({ offset: 30, agreeing: 3 });
  });

  test('a number that lost a digit supports by half and opposes nothing', () => {
    // 108 to 112 with two leading digits lost: the two don't make a second offset.
    const found = vote(readsOn([108, 9, 10, 111, 112]), lineOf, 1);
    expect(found).toMatchObject({ offset: 108, agreeing: 3, partial: 2, second: 0, score: 4 });
  });

  test('an offset that others agree on is told', () => {
    const found = vote(readsOn([5, 6, 7, 1, 2]), lineOf, 1);
    expect(found).toMatchObject({ offset: 5, agreeing: 3, second: 2 });
  });

  test('below zero nothing is printed, so that no digit was lost from it', () => {
    const found = vote(readsOn([3, 2, 1, 0, 1, 2]), lineOf, -1);
    expect(found).toMatchObject({ offset: 3, agreeing: 4, partial: 0, second: 1 });
  });

  test('of nothing is nothing', () => {
    expect(vote([], lineOf, 1)).toBeNull();
  });

  test('is for the truth as long as more than half are read rightly', () => {
    const rows = fc.record({
      right: fc.integer({ min: 4, max: 12 }),
      wrong: fc.array(fc.integer({ min: 500, max: 9999 }), { maxLength: 3 }),
      offset: fc.integer({ min: 20, max: 150 }),
      direction: fc.constantFrom(1 as const, -1 as const),
    });
    fc.assert(
      fc.property(rows, ({ right, wrong, offset, direction }) => {
        const reads = [
          ...wrong.map((value, line) => readAt(line, value)),
          ...Array.from({ length: right }, (_, i) =>
            readAt(wrong.length + i, direction * (wrong.length + i) + offset),
          ),
        ];
        const found = vote(reads, lineOf, direction)!;
        expect(found.offset).toBe(offset);
        expect(found.agreeing).toBe(right);
        expect(found.partial + found.agreeing).toBeLessThanOrEqual(found.total);
      }),
    );
  });
});

test.each([
  ['10', '110', true],
  ['11', '110', true],
  ['1', '112', true],
  ['2', '13', false],
  ['12', '12', false],
  ['01', '110', false],
])('%s left of %s: %s', (short, full, lost) => {
  expect(lostDigits(short, full)).toBe(lost);
});

test('whatever is struck out of a number, the rest is left of it', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^\d{1,5}$/), fc.array(fc.boolean()), (full, struck) => {
      const left = [...full].filter((_, i) => !struck[i]).join('');
      expect(lostDigits(left, full)).toBe(left.length < full.length);
    }),
  );
});
