/** What decides something in this room, by the file it is for, with its unit and reason. */

// digit-cell.ts

/** A cell as the network was trained on it, in samples: what is coarser loses the hole of an 8. */
export const CELL_WIDTH = 16;
export const CELL_HEIGHT = 24;
/** The box of the digit within its cell: the rest shows what runs into it from beside. */
export const INK_WIDTH = 14;
export const INK_HEIGHT = 20;
/** Ink is sought this many samples from the edges of a cell, as lines run along them. */
export const INSIDE = 3;
/** Of those samples, from the darkest, and of all, from there to the lightest: ink, and ground. */
export const DARKEST = 0.05;
export const GROUND = 0.8;
/** Less contrast than this, of 255, is noise on an empty cell. */
export const LEAST_CONTRAST = 4;
/** Ink blacker than most, and ground lighter, say nothing more. */
export const DEEPEST = 1.25;
export const LIGHTEST = -0.5;

// network.ts

/** Planes after each convolution, and numbers after the first full layer. */
export const PLANES_1 = 12;
export const PLANES_2 = 24;
export const PLANES_3 = 36;
export const HIDDEN = 48;

// digit-logs.ts

/**
 * So many cells are of a kind that no drawn cell prepares for: whatever the network makes of one
 * cell, no digit is ruled out by it further than this.
 */
export const SLIP = 0.001;
/**
 * A cell is answered where one of the eleven has this share: the least at which no digit of typefaces
 * that were settled on was wrong. Of typefaces kept aside 93 of 100 digits are answered then, and none
 * of 8,379 wrongly; of shapes never seen about 1 in 200 is taken for a digit (a button for a 0, a wedge
 * for a 1): an answer is one sign among others, and decides no number alone.
 */
export const SURE = 0.997;
