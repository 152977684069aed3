import type { Box, DrawingLayout } from '../../src/drawing/dimension-layout.ts';

/** What is wrong with where labels stand, measured on the boxes themselves. */
export function faultsOf({ width, height, dimensions }: DrawingLayout): string[] {
  const labels = dimensions.map(({ label, dimension }) => ({ ...label, text: dimension.text }));
  const outside = labels
    .filter((one) => !isInside(one, { width, height }))
    .map(({ text }) => `${text} leaves the drawing`);
  const over = labels.flatMap((one, i) =>
    labels
      .slice(i + 1)
      .filter((other) => overlap(one, other))
      .map((other) => `${one.text} lies on ${other.text}`),
  );
  return [...outside, ...over];
}

/** Rounding of a sum of boxes, in px. */
const HAIR = 1e-6;

function isInside(one: Box, { width, height }: { width: number; height: number }): boolean {
  return (
    one.x >= -HAIR &&
    one.y >= -HAIR &&
    one.x + one.width <= width + HAIR &&
    one.y + one.height <= height + HAIR
  );
}

/** Whether two boxes share more than an edge. */
export function overlap(one: Box, other: Box): boolean {
  return (
    Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x) > HAIR &&
    Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y) > HAIR
  );
}
