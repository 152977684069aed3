/** What decides something in this room, by the file it is for, with its unit and reason. */

// digit-cell.ts

/** A cell as the network was trained on it, in samples: what is coarser loses the hole of an 8. */
export const CELL_WIDTH = 16;
export const CELL_HEIGHT = 24;
/** The box of the digit within its cell: the rest shows what runs into it from beside. */
export const INK_WIDTH = 14;
export const INK_HEIGHT = 20;
/** Samples this near to the edge of a cell are ground more often than ink. */
export const FRAME = 2;
/** Of all samples, as many at either end are left out where ink and ground are found. */
export const TAIL = 0.06;
/** Less contrast than this, of 255, is noise on an empty cell. */
export const LEAST_CONTRAST = 4;
/** Ink blacker than most, and ground lighter, say nothing more. */
export const DEEPEST = 1.25;
export const LIGHTEST = -0.5;

// network.ts

/** Planes after the first and the second convolution, and numbers after the first full layer. */
export const PLANES_1 = 8;
export const PLANES_2 = 16;
export const HIDDEN = 32;

// digit-logs.ts

/**
 * So many cells are of a kind that no drawn cell prepares for: whatever the network makes of one
 * cell, no digit is ruled out by it further than this.
 */
export const SLIP = 0.001;
/**
 * A cell is answered where one of the eleven has this share. On typefaces that were not trained on
 * about 2 of 1,000 answers are wrong then, and of shapes never seen (a wedge, a letter) more: an
 * answer is one sign among others, and decides no number alone.
 */
export const SURE = 0.99;
