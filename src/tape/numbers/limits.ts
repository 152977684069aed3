/** What decides something in this room, by the file it is for, with its unit and reason. */

// cut-apart.ts

/** Ink counts up to this share of an interval away, so that narrow gaps in a number don't. */
export const NEAR_SHARE = 0.08;
/** Emptier than this share between the emptiest and the fullest, a place counts as empty. */
export const EMPTY_SHARE = 0.08;

// ink.ts

/** Rows above and below that count as the same neighbourhood. */
export const NEAR_ROWS = 2;
/** Fewer samples than this don't make a neighbourhood. */
export const LEAST_SAMPLES = 10;
/** Ink is darker than its neighbourhood by this much of its spread, and by this much log-grey. */
export const DARKER_SPREADS = 0.6;
export const DARKER_LOG_GREY = 0.1;

// number-cells.ts

/** Millimetres looked at beside the row: no tape is wider, and a little on its other side. */
export const DEEP_MM = 34;
export const OUTWARD_MM = 3;
/** Most rows of digits taken: two edges, feet or metres, and one for luck. */
export const MOST_ROWS = 4;

// number-row.ts

/** A stroke thinner than this, as a share of the row's height, is a 1 or what is left of a line. */
export const THIN = 0.35;
/** Printed numbers have no more digits. */
export const MOST_DIGITS = 4;

// put-back.ts

/** A gap in a number wider than this share of its height has lost a digit. */
export const LOST_DIGIT = 0.3;
/** Beside a 1, which takes less of its place than other digits, only a wider one has. */
export const LOST_BESIDE_ONE = 0.5;
export const ONE = 0.45;

// stroke-beside.ts

/** How far past the end of a number a digit would begin and end, and how thick it may be, in digit heights. */
export const REACH = 0.9;
export const THICKEST = 0.4;
/** How far to the sides of a number it must be bare, in digit heights: a border goes on there. */
export const ASIDE = 0.3;
/** Shares of the columns that a stroke crosses: of the number's own, and of those at its sides. */
export const CROSSED = 0.6;
export const BARE = 0.3;
/** A stroke has at least this share of the graduations' contrast. */
export const INKED = 0.35;

// wipe-lines.ts

/** Lines this long, in tenths of a graduation, run as far as the pattern was looked at, or on. */
export const UNENDING = 48;

// word-joins.ts

/** Gaps that part numbers, as shares of the digits' height; narrower where numbers nearly touch. */
export const GAPS = [0.42, 0.28, 0.18];
/** One number is a column of its own when turned: its digits may stand as far apart as two plain 1s. */
export const GAPS_TURNED = [0.7];
/** A narrower gap must do better than a wider one by this, or digits would be numbers. */
export const BETTER = 1.15;
/** Longer than this, in digit heights, is no number of four digits. */
export const LONGEST_WORD = 3.6;
/** Graduations per number on scales as they are printed. */
export const INTERVALS = [2, 4, 5, 8, 10, 16, 20, 32];

// word-lines.ts

/** Slopes tried, straight first: a row that isn't printed at a slant is the likelier. */
export const SLOPES = [0, 0.03, -0.03, 0.07, -0.07, 0.12, -0.12];
export const SLANTED_SHARE = 0.93;
/** Patches tried, the tallest first: specks of a cloth's weave are many. */
export const MOST_PATCHES = 450;
export const MOST_LINES = 5;
/** More digits than this don't make a line more likely to be numbers. */
export const ENOUGH_DIGITS = 40;

// word-rows.ts

/** Graduations seen beyond both ends, where a number may stand over the last line. */
export const BEYOND = 4;
/** Pixels to a graduation: as the picture has them, but enough for a line and not too many. */
export const LEAST_PER_TICK = 7;
/** Wider graduations, in picture pixels, are those of a close picture of coarse lines. */
export const COARSE_PITCH_PX = 55;
/** Words of a row that are read: more cost time and settle nothing. */
export const MOST_WORDS = 18;
