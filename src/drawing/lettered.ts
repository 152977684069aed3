import { boundsOf, type Figure } from './figure.ts';

/** Lettering: how high it is, and how wide a letter is on average at the most, in mm. */
export interface Lettering {
  high: number;
  wide: number;
}

/** The least rectangle round a figure and its labels, each of which begins at its point. */
export function letteredBounds(figure: Figure, { high, wide }: Lettering) {
  return boundsOf([
    ...figure,
    ...figure.flatMap((shape) =>
      'label' in shape
        ? [{ ...shape, at: { x: shape.at.x + shape.label.length * wide, y: shape.at.y - high } }]
        : [],
    ),
  ]);
}
