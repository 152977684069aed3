import { expect, test } from 'vitest';
import { boundsOf, stylesOf } from '../../src/drawing/figure.ts';
import { hemSection, mitreFlat } from '../../src/drawing/hem-figure.ts';

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

test('a mitre’s seam meets the corner where the fold lines meet', () => {
  const plan = { bottom: 40, side: 15, angle: 90, alongBottom: 30, upSide: 80, trim: 6.35 };
  const figure = mitreFlat(plan);
  const seam = figure.find((shape) => 'line' in shape && shape.line === 'stitch');
  expect(seam && 'points' in seam ? seam.points[1] : undefined).toEqual({ x: 15, y: -40 });
  const { width, height } = boundsOf(figure);
  expect(width).toBeGreaterThan(30);
  expect(height).toBeGreaterThan(80);
});
