import { expect, test } from 'vitest';
import { stylesOf } from '../../src/drawing/figure.ts';
import { hemSection } from '../../src/drawing/hem-figure.ts';

const LABELS = { depth: 'depth', turn: 'turn' };

test('the heights of a hem section are to scale', () => {
  const figure = hemSection({ depth: 20, turn: 7, stitchUp: 18, labels: LABELS });
  const heights = (style: string) =>
    figure.flatMap((shape) =>
      'line' in shape && shape.line === style ? shape.points.map(({ y }) => y) : [],
    );
  expect(Math.min(...heights('fold'))).toBe(-20);
  expect(Math.max(...heights('fold'))).toBe(0);
  expect(heights('stitch')).toEqual([-18, -18]);
  expect(heights('cloth').at(-1)).toBe(-13);
  expect(stylesOf(figure)).toEqual(['cloth', 'fold', 'stitch', 'measure']);
});

test('a single turn has no inner fold and no label for one', () => {
  const figure = hemSection({ depth: 20, turn: 0, stitchUp: 20, labels: LABELS });
  expect(figure.filter((shape) => 'label' in shape)).toHaveLength(1);
});

test('a faced hem is two pieces of cloth, seamed at the lower edge', () => {
  const figure = hemSection({ depth: 40, turn: 7, stitchUp: 38, seam: 10, labels: LABELS });
  const cloths = figure.flatMap((shape) =>
    'line' in shape && shape.line === 'cloth' ? [shape.points.map(({ y }) => y)] : [],
  );
  // The piece down to the edge and up by its seam; the facing from there up to its turned edge.
  expect(cloths).toEqual([
    [-68, 0, 0, -10],
    [-10, 0, 0, -40, -40, -33],
  ]);
});
