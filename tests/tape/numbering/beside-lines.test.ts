import { describe, expect, test } from 'vitest';
import { type LongLine, type Side, seenUpTo } from '../../../src/tape/graduations/tick-classes.ts';
import { longLines } from '../../../src/tape/numbering/beside-lines.ts';
import { madePattern } from '../made/made-rows.ts';

/** A pattern whose lines are so long on the side of the numbers and on the other. */
function patternOf(numbers: readonly number[], other: readonly number[]) {
  const line = (lengths: readonly number[]): LongLine =>
    seenUpTo({ subdivisions: lengths.length, longAt: 0, lengths, margin: 0 }, 99);
  const classes = (_: number, side: Side) => line(side === 1 ? numbers : other);
  return { ...madePattern(numbers.length), classes };
}

describe('the longest of the lines beside numbers', () => {
  // Numbers begin 0.5 graduations beyond the lines' common zone, and the longer lines run into them.
  const hidden = [20, 0, 6, 0, 14, 0, 6, 0];

  test('is that of the other side, where only there one is clearly longer', () => {
    const found = longLines(patternOf(hidden, [8, 0, 1, 0, 3, 0, 1, 0]), 8, 1, 5);
    expect(found).toMatchObject({ longAt: 0, margin: 5, cut: false });
  });

  test('isn’t one that is short on the side of the numbers, whatever strays on the other', () => {
    const found = longLines(patternOf(hidden, [0, 1, 0, 0, 0, 2, 0, 7]), 8, 1, 5);
    expect(found).toMatchObject({ margin: 0, cut: true });
  });

  test('is on the other side, too, where the numbers’ side shows no line longer', () => {
    const found = longLines(patternOf(Array(8).fill(0), [0, 1, 0, 0, 0, 2, 0, 7]), 8, 1, 5);
    expect(found).toMatchObject({ longAt: 7, margin: 5 });
  });
});
