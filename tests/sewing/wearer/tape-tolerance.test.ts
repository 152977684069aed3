import { expect, test } from 'vitest';
import { tapeTolerance } from '../../../src/sewing/wearer/tape-tolerance.ts';

test.each([
  // Directive 2014/32/EU, Annex X (MI-008), Table 1: 0.3 + 0.2 L and 0.6 + 0.4 L mm, worked by
  // hand with L rounded up to whole metres.
  [300, 0.5, 1],
  [1000, 0.5, 1],
  [1010, 0.7, 1.4],
  [1500, 0.7, 1.4],
  [5000, 1.3, 2.6],
  [10_000, 2.3, 4.6],
])('a new tape may be off at %d mm by %d or %d mm', (mm, two, three) => {
  expect(tapeTolerance(mm)).toEqual({ II: two, III: three });
});

test('a tape is off by something even at its first mark', () => {
  expect(tapeTolerance(0)).toEqual(tapeTolerance(1));
});
