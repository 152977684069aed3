import { type In, type Place, placeIn, type Space } from './space.ts';

/**
 * A place by its x and y, in px; the middle of the first pixel is 0, 0. If nothing else is said
 * in the upright picture: what page and worker tell each other.
 */
export interface Point<S extends Space = 'picture'> extends In<S> {
  readonly x: number;
  readonly y: number;
}

/** The same place, as the reader has it. */
export function placeOfPoint<S extends Space>({ x, y }: Point<S>): Place<S> {
  return placeIn(x, y);
}

/** The same place, as page and worker tell it. */
export function pointOfPlace<S extends Space>([x, y]: Place<S>): Point<S> {
  return { x, y };
}
