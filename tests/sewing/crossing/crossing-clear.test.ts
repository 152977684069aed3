import { expect, test } from 'vitest';
import { type Length, mm } from '../../../src/lengths/length.ts';
import { fewestClashes } from '../../../src/sewing/crossing/crossing-clear.ts';
import type { Crossed } from '../../../src/sewing/crossing/crossing-holes.ts';
import { STRIP } from '../edging/strip-across.ts';

const ONE: Crossed = {
  lower: STRIP,
  upper: { ...STRIP, rows: 'one' },
  angle: 90,
  hole: mm(2),
};

// A hole each 40: what is left between the places where it clashes, read off a line.
test.each([
  [
    'the last is widest',
    [
      [4, 10],
      [13, 20],
    ],
    [20, 40],
  ],
  [
    'the first is widest',
    [
      [15, 20],
      [30, 36],
    ],
    [0, 15],
  ],
  [
    'the one between is widest',
    [
      [4, 10],
      [35, 38],
    ],
    [10, 35],
  ],
  [
    'the second is wider',
    [
      [0, 10],
      [15, 20],
    ],
    [20, 40],
  ],
  [
    'of two as wide, the first',
    [
      [10, 20],
      [30, 40],
    ],
    [0, 10],
  ],
])('of several clear ranges of shifts the widest: %s', (_, clashing, [from, to]) => {
  const ranges = [clashing.map(([a = 0, b = 0]) => [mm(a), mm(b)] as const)];
  const found = fewestClashes(ONE, ranges, mm(40), mm(1));
  expect(found).toEqual({ clashes: 0, from: mm(from as number), to: mm(to as number) });
});

test('one as wide as asked will do, one less wide will not', () => {
  const ranges = [[[mm(0), mm(30)] as const]];
  expect(fewestClashes(ONE, ranges, mm(40), mm(10))?.clashes).toBe(0);
  expect(fewestClashes(ONE, ranges, mm(40), (mm(10) + 1) as Length)?.clashes).toBe(1);
  expect(fewestClashes(ONE, ranges, mm(40), mm(31))).toBeUndefined();
});

test('a narrow range without a clash is before a wide one with', () => {
  const ranges = [[[mm(1), mm(40)] as const]];
  const found = fewestClashes(ONE, ranges, mm(40), mm(0.5));
  expect(found).toEqual({ clashes: 0, from: 0, to: mm(1) });
});
