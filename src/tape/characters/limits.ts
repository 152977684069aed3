/** What decides something in this room, by the file it is for, with its unit and reason. */

// own-reads.ts

/** No number of a tape has more digits. */
export const LONGEST_OWN = 4;
/** A page with so many numbers that are sure by themselves, and this share of all, needs no character reader. */
export const FEWEST_SETTLED = 3;
export const SETTLED = 0.75;
/** So many numbers that are sure, and as many times those of the page the other way up, stand upright. */
export const FEWEST_UPRIGHT = 3;
export const UPRIGHT = 3;
/** Of a page's numbers: where as many begin with what is surely no digit, and none with one, it shows lines, letters or cloth. */
export const RUBBISH = 0.4;

// page-drawing.ts

/** Digits are shown as tall as engines are trained on. */
export const DIGIT_PX = 36;
/** Drawn beyond the edges of a number: its outline fades there, and rows may run at a slant. */
export const BESIDE = 3;
export const ABOVE = 6;
/** Ground this near to ink is drawn with it, in sheet pixels, so that outlines stay soft. */
export const NEAR_INK = 2;
/** Ink lighter than this against its ground, in log-grey, isn't drawn blacker than it is. */
export const LEAST_CONTRAST = 0.05;
/** Of the ink's samples, from the darkest: one this far on is ink through and through, and no outline. */
export const TYPICAL_INK = 0.3;

// page.ts

/** Numbers stand well apart, so that none are joined. */
export const GAP_X = 46;
export const GAP_Y = 40;
export const NUMBERS_A_LINE = 10;
export const LEAST_WIDTH = 100;
export const WHITE = 255;
/** Longer than this, in digit heights, is a bar or a run of numbers, not a number. */
export const LONGEST = 5;
/** A character may be reported this far from where it was drawn, in page pixels; the gaps are wider. */
export const NEAR_PX = 14;

// read-cells.ts

/** Pages that the character reader is asked about for a whole picture: past this only digits that are sure by themselves count. */
export const MOST_PAGES = 22;
/**
 * Of those, pages without one digit that is sure by itself: of some hundreds of such pages of photos none gave
 * a number that was seen to count, but print of a kind unlike any that digits were learnt from may come.
 */
export const MOST_BLIND_PAGES = 8;
/** Of those again, pages that show no digit as far as ours can tell. */
export const MOST_RUBBISH_PAGES = 6;

// thin-ones.ts

/** A plain 1 is thinner than this, as a share of its height; no other digit is. */
export const THIN = 0.26;
/** A stroke that is a digit is about as tall as the others, blur taking a little off its ends, and on their row. */
export const SHORTEST = 0.76;
export const TALLEST = 1.1;
export const OFF_ROW = 0.14;
