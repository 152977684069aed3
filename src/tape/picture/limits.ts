/** What decides something in this room, by the file it is for, with its unit and reason. */

// field.ts

/** A whole sample and its right and lower neighbours are needed, and no more. */
export const EDGE_PX = 1.001;
/** Grey levels added before the logarithm: black stays finite and its noise small. */
export const BLACK_LEVEL = 10;
/** Levels from one whole grey to the next: means of 2 × 2, 3 × 3 and 4 × 4 bytes each have their own. */
export const GREY_LEVELS = 144;
