declare const SPACE: unique symbol;
declare const SCALING: unique symbol;
declare const ALONG: unique symbol;
declare const CENTRED: unique symbol;

/**
 * The pixels that coordinates are counted in. Those of one can't be taken for those of another:
 * it doesn't compile. A function that takes two things of one space infers it from the first
 * (`NoInfer`), or it would be inferred to be either.
 *
 * - `picture`: the upright picture as it was given, and what the page shows
 * - `enlarged`: the same at twice its size, where it is small
 * - `search`: the copy some 1300 px long in which rows are sought
 * - `measuring`: the copy of at most some 4000 px in which they are measured
 * - `motion`: the copy some 320 px long in which the hand's motion is seen
 * - `sheet`: the tape redrawn so that every graduation is equally wide
 */
export type Space = 'picture' | 'enlarged' | 'search' | 'measuring' | 'motion' | 'sheet';

/** What lies in the pixels of a space. */
export interface In<S extends Space> {
  readonly [SPACE]?: S;
}

/** A place in the pixels of a space; the middle of the first pixel is 0, 0. */
export type Place<S extends Space> = readonly [x: number, y: number] & { readonly [SPACE]: S };

/** Px along a row from the origin of its frame, in the pixels that the frame lies in. */
export type AlongRow<S extends Space> = number & { readonly [ALONG]: S };

/** Px along a row from its own centre: not px from the origin of its frame, from which that centre lies so far. */
export type FromCentre<S extends Space> = number & { readonly [CENTRED]: S };

/** Px of one space to a px of another. */
export type Scaling<From extends Space, To extends Space> = number & {
  readonly [SCALING]: (from: From) => To;
};

/** A place of two numbers that were worked out in the pixels of that space. */
export function placeIn<S extends Space>(x: number, y: number): Place<S> {
  return [x, y] as unknown as Place<S>;
}

/** A distance along a row, worked out in the pixels of that space. */
export function alongRow<S extends Space>(u: number): AlongRow<S> {
  return u as AlongRow<S>;
}

/** A distance from a row's centre, worked out in the pixels of that space. */
export function centred<S extends Space>(t: number): FromCentre<S> {
  return t as FromCentre<S>;
}

/** The scaling from one space to another, from px of the second to one of the first. */
export function scalingOf<From extends Space, To extends Space>(px: number): Scaling<From, To> {
  return px as Scaling<From, To>;
}

/** A place in the pixels of another space; a pixel's middle is whole in both. */
export function scaledPlace<From extends Space, To extends Space>(
  [x, y]: Place<From>,
  scaling: Scaling<From, To>,
): Place<To> {
  const scaled = (at: number) => (at + 0.5) * scaling - 0.5;
  return placeIn(scaled(x), scaled(y));
}

/** A distance along a row in the pixels of another space. */
export function scaledAlong<From extends Space, To extends Space>(
  u: AlongRow<From>,
  scaling: Scaling<From, To>,
): AlongRow<To> {
  return alongRow(u * scaling);
}
