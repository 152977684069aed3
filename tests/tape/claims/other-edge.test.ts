import { describe, expect, test } from 'vitest';
import { millimetresByOtherEdge, tenthsByOtherEdge } from '../../../src/tape/claims/other-edge.ts';
import { madePattern, madeRow } from '../made/made-rows.ts';

const MM_PX = 10;
const row = madeRow({ y: 200, pitchPx: MM_PX });

/** Lines along the other edge, so many px below, with so many to their pattern. */
function edge(
  parts: number,
  mm: number,
  change: { y?: number; angle?: number; count?: number } = {},
) {
  const made = madeRow({ y: 340, pitchPx: mm * MM_PX, count: 63, ...change });
  return { ...made, pattern: madePattern(parts) };
}

describe('millimetres are known by the inches along the other edge', () => {
  // The inch is 25.4 mm exactly (NIST SP 811, appendix B.6).
  test.each([
    [8, 3.175],
    [10, 2.54],
    [16, 1.5875],
    // Sixteenths whose half inches are as long as their inches.
    [8, 1.5875],
  ])('in a pattern of %i, each %f mm', (parts, mm) => {
    expect(millimetresByOtherEdge(row, [row, edge(parts, mm)])).toBe(true);
  });

  test('a fifteenth more or less settles nothing, nor does another pattern', () => {
    expect(millimetresByOtherEdge(row, [edge(16, 1.5875 * 1.07)])).toBe(false);
    expect(millimetresByOtherEdge(row, [edge(16, 1.5875 / 1.07)])).toBe(false);
    expect(millimetresByOtherEdge(row, [edge(16, 3.175)])).toBe(false);
    const unsure = { ...edge(16, 1.5875), pattern: madePattern(16, false) };
    expect(millimetresByOtherEdge(row, [unsure])).toBe(false);
  });

  test('tenths of an inch taken for millimetres find no such edge', () => {
    const tenths = madeRow({ y: 200, pitchPx: 25.4 });
    for (const [parts, mm] of [
      [8, 3.175],
      [8, 1.5875],
      [10, 1],
      [10, 2.54],
      [16, 1.5875],
    ] as const) {
      expect(millimetresByOtherEdge(tenths, [edge(parts, mm)])).toBe(false);
    }
  });

  test('lines at a slant, of the very row, of another tape, or too few', () => {
    expect(millimetresByOtherEdge(row, [edge(16, 1.5875, { angle: 0.1 })])).toBe(false);
    expect(millimetresByOtherEdge(row, [edge(16, 1.5875, { y: 230 })])).toBe(false);
    expect(millimetresByOtherEdge(row, [edge(16, 1.5875, { y: 700 })])).toBe(false);
    expect(millimetresByOtherEdge(row, [edge(16, 1.5875, { count: 20 })])).toBe(false);
  });
});

test('tenths of an inch are known by the millimetres along the other edge', () => {
  const tenths = madeRow({ y: 200, pitchPx: 2.54 * MM_PX, count: 40 });
  expect(tenthsByOtherEdge(tenths, [edge(10, 1)])).toBe(true);
  expect(tenthsByOtherEdge(tenths, [edge(10, 1.07)])).toBe(false);
  expect(tenthsByOtherEdge(tenths, [edge(16, 1)])).toBe(false);
  expect(tenthsByOtherEdge(row, [edge(10, 1)])).toBe(false);
  expect(tenthsByOtherEdge(row, [edge(10, 2.54)])).toBe(false);
});
