import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';

/** A hem as far as its folds ask: 1/8000 mm. */
export interface Turned {
  depth: Length;
  /** Nothing for a single turn, as much as the depth for an equal double one. */
  turn: Length;
  thickness: Length;
}

/** What each fold adds to the allowance; less than nothing is less to turn up. */
export interface Folds {
  /** The fold at the inner edge of a hem turned twice; nothing where there is none. */
  first: ExactLength;
  /** The fold at the hem line. */
  last: ExactLength;
  /** Layers lying inside the last fold. */
  inside: 0 | 1;
}

/** Half of what a fold with one layer in it measures across, in thicknesses. */
const ROUND_OVER_ONE = 1.5;

/** How much deeper than its cloth is thick a hem turned twice has to be: both its rounds. */
const BOTH_ROUNDS = 1 + ROUND_OVER_ONE;

/**
 * How a fold round some layers changes the cloth it needs, with every length measured
 * to the outside of the fold.
 *
 * Round a gap g the middle of a cloth τ thick goes half a circle, (π/2)(g + τ), where
 * the measures up to the outside count g + 2τ: −0.43 τ with nothing inside, +0.14 τ
 * over one layer, +0.71 τ over two (geometry, derived here).
 *
 * @param layers of the same cloth that lie inside, 0 or more
 */
export function foldShare(thickness: Length, layers: number): ExactLength {
  return roundOver(exactLength(layers * thickness), thickness);
}

/** The same round any gap, whatever lies in it: (π/2)(g + τ) − (g + 2τ). */
export function roundOver(gap: ExactLength, thickness: ExactLength): ExactLength {
  return exactLength((Math.PI / 2) * (gap + thickness) - (gap + 2 * thickness));
}

/**
 * What the folds of a hem add. The layer turned in lies inside the last fold only where
 * its raw edge comes down as far as the round of that fold, as in an equal double turn.
 */
export function foldsOf({ depth, turn, thickness }: Turned): Folds {
  const inside = turn > 0 && depth - turn < ROUND_OVER_ONE * thickness ? 1 : 0;
  const first = turn > 0 ? foldShare(thickness, 0) : exactLength(0);
  return { first, last: foldShare(thickness, inside), inside };
}

/** The thickest cloth these turns can be folded from: each has room for the rounds in it. */
export function thickestFor(depth: ExactLength, turn: ExactLength): ExactLength {
  return turn > 0 ? exactLength(Math.min(turn, depth / BOTH_ROUNDS)) : depth;
}

/**
 * The depth of the hem that takes all of some cloth, folds and first turn with it; below
 * nothing when the turn alone is more.
 *
 * @param turn the first turn, or 'equal' for one as deep as the hem
 */
export function depthIn(
  cloth: ExactLength,
  turn: Length | 'equal',
  thickness: Length,
): ExactLength {
  const empty = foldShare(thickness, 0);
  const full = foldShare(thickness, 1);
  if (turn === 'equal') return exactLength((cloth - empty - full) / 2);
  if (turn <= 0) return exactLength(cloth - empty);
  const open = cloth - turn - 2 * empty;
  const reaches = open - turn < ROUND_OVER_ONE * thickness;
  return exactLength(reaches ? cloth - turn - empty - full : open);
}
