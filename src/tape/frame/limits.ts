/** What decides something in this room, by the file it is for, with its unit and reason. */

// frame.ts

/** A bow turns the strokes' foot by a little; each round shrinks what is left several times. */
export const MOST_ROUNDS = 6;
export const CLOSE_ENOUGH_PX = 1e-4;
/** Clear of the border, where a gradient has no neighbour. */
export const BORDER_PX = 2;
/** Steeper than this against an axis, its borders are never met. */
export const LEAST_SLOPE = 1e-9;

// strip.ts

/** Tails of the bell beyond this many sigmas weigh nothing. */
export const TAIL_SIGMAS = 3;
/** Columns drawn before the next are: few enough for what is seen of the picture to stay at hand. Decides nothing. */
export const TILE = 64;
