/** A place in the upright picture, in its pixels; the middle of the first pixel is 0, 0. */
export interface Point {
  readonly x: number;
  readonly y: number;
}
