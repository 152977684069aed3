import fc from 'fast-check';
import { expect, test } from 'vitest';
import { convexParts } from '../../src/lay/convex-parts.ts';
import { convexSum } from '../../src/lay/convex-sum.ts';
import { left, type Outline, signedArea, tidied } from '../../src/lay/outline.ts';
import { outlines, rectangle, shared } from './lays.ts';

const isConvex = (outline: Outline) =>
  outline.every((corner, i) => {
    const [next, after] = [1, 2].map((k) => outline[(i + k) % outline.length]!);
    return left(corner, next!, after!) >= -1e-9;
  });

test('the parts are convex, and together the outline: by their areas and by a library', () => {
  fc.assert(
    fc.property(outlines(), (outline) => {
      const parts = convexParts(tidied(outline));
      expect(parts.every(isConvex)).toBe(true);
      const area = parts.reduce((sum, part) => sum + signedArea(part), 0);
      expect(area).toBeCloseTo(signedArea(outline), 4);
      for (const part of parts) expect(shared(part, outline)).toBeCloseTo(signedArea(part), 4);
    }),
    { seed: 1, numRuns: 100 },
  );
});

test('a rectangle is one part, an L two', () => {
  expect(convexParts(rectangle(30, 20))).toHaveLength(1);
  const ell: Outline = [
    [0, 0],
    [30, 0],
    [30, 10],
    [10, 10],
    [10, 30],
    [0, 30],
  ];
  expect(convexParts(ell)).toHaveLength(2);
});

test('the sum of two rectangles is the rectangle of their sides', () => {
  expect(tidied(convexSum(rectangle(30, 20), rectangle(5, 7)))).toEqual([
    [0, 0],
    [35, 0],
    [35, 27],
    [0, 27],
  ]);
});

test('the area of a sum of convex outlines: Steiner’s formula for a square and a long strip', () => {
  // Mixed area of rectangles a × b and c × d: ab + cd + ad + bc (a textbook case of Minkowski's).
  const sum = convexSum(rectangle(100, 40), rectangle(3, 200));
  expect(signedArea(sum)).toBeCloseTo(100 * 40 + 3 * 200 + 100 * 200 + 40 * 3, 6);
});

test('corners on a straight edge, doubled ones and the first named again are no corners', () => {
  const square: Outline = [
    [0, 0],
    [5, 0],
    [10, 0],
    [10, 0],
    [10, 10],
    [0, 10],
    [0, 0],
  ];
  expect(tidied(square)).toHaveLength(4);
  expect(signedArea(tidied([...square].reverse()))).toBe(100);
});
