/** What decides something in this room, by the file it is for, with its unit and reason. */

// solve.ts

/** Below this a pivot is nothing but rounding. */
export const SMALLEST_PIVOT = 1e-12;

// tone.ts

/** The window's half width, in its sigmas. */
export const REACH = 2.2;
/** Signals are logarithms of grey: a flat one has no phase rather than a perfect one. */
export const NO_INK = 1e-4;
