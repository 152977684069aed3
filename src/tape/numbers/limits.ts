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
/** Fewer patches of like height are no row of digits. */
export const FEWEST_DIGITS = 3;
/** Digit heights from the middle of a row at which another may begin. */
export const NEXT_ROW = 0.6;
/** Height of printed digits in mm, and the width below which a patch is a plain 1, or dirt. */
export const SMALLEST_MM = 1.7;
export const LARGEST_MM = 12;
export const THINNEST_MM = 0.35;
/** Digit heights: wider than this no patch is a digit. Ink fills at least this share of a digit's box. */
export const WIDEST = 2.6;
export const LEAST_INK = 0.12;
/** Of its height: patches that differ by less, in height and in place, are of one row. */
export const ALIKE = 0.25;
/** What stands in a row: how far off its middle, and how tall, against the row's height; exactly so where it is thin. */
export const DIGIT_STANDS = { off: 0.3, lowest: 0.7, tallest: 1.4 };
export const THIN_STANDS = { off: 0.14, lowest: 0.84, tallest: 1.2 };

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
/** Px of ink for each px of a number's height: less is no stroke. */
export const LEAST_STROKE = 0.7;

// spaced.ts

/** So many numbers of a row, and this share of those with several digits, must show like gaps for its digits to be printed apart. */
export const SPACED_FEWEST = 4;
export const SPACED_SHARE = 0.7;
/** A gap wider than this share of the digits' height has room for a thin digit and what parts it from others. */
export const SPACED_WIDEST = 0.72;
/** Of the thinnest digit's darkest column: a gap with none as dark as this holds no trace of a digit. */
export const FAINT = 0.2;

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
/** Half the width of a line that is wiped, how far it may be broken, and how far it goes on at its other side, in mm. */
export const LINE_MM = 0.34;
export const BREAK_MM = 0.35;
export const OUTWARD_LINE_MM = 4;
/** The same where no pattern is known: of the dark part of a pitch, of a graduation, and at most in sheet pixels. */
export const DRAWN = 0.7;
export const BREAK = 0.3;
export const LONGEST_BREAK_PX = 4;

// word-joins.ts

/**
 * Gaps that part numbers, as shares of the digits' height; narrower where numbers nearly touch, and wider,
 * after all others, where a number's digits are spaced.
 */
export const GAPS = [0.42, 0.28, 0.18, 0.7];
/** One number is a column of its own when turned: its digits may stand as far apart as two plain 1s. */
export const GAPS_TURNED = [0.7];
/** Another gap must do better than those before it by this, or digits would be numbers. */
export const BETTER = 1.15;
/** Longer than this, in digit heights, is no number of four digits. */
export const LONGEST_WORD = 3.6;
/** Graduations per number on scales as they are printed. */
export const INTERVALS = [2, 4, 5, 8, 10, 16, 20, 32];
/** Digit heights by which a digit may stand off its line: less where it is thinner than the first, more where its number is turned. */
export const THIN_WIDTH = 0.3;
export const OFF_LINE = 0.32;
export const OFF_LINE_THIN = 0.16;
export const OFF_LINE_TURNED = 2;
/** What may be a digit of a line, in digit heights: how tall and how wide; and the share of its box that ink fills. */
export const JOINED = { lowest: 0.74, tallest: 1.3, thinnest: 0.08, widest: 1.4, ink: 0.12 };
/** Digit heights: digits of one number are no farther off each other across. */
export const BESIDE_EACH_OTHER = 0.3;

// word-lines.ts

/** Slopes tried, straight first: a row that isn't printed at a slant is the likelier. */
export const SLOPES = [0, 0.03, -0.03, 0.07, -0.07, 0.12, -0.12];
export const SLANTED_SHARE = 0.93;
/** Patches tried, the tallest first: specks of a cloth's weave are many. */
export const MOST_PATCHES = 450;
export const MOST_LINES = 5;
/** More digits than this don't make a line more likely to be numbers. */
export const ENOUGH_DIGITS = 40;
/** What may be a digit before any line is known: how wide against its height, and the share of its box that ink fills. */
export const SHAPED = { thinnest: 0.22, widest: 1.25, ink: 0.14 };
/** Sheet pixels: smaller patches are specks, taller ones are no digits. */
export const SMALLEST_PX = 7;
export const LARGEST_PX = 130;
/** Of their height: patches that differ by as much are of different lines. */
export const OTHER_HEIGHT = 0.22;
/** No slope tried leads farther off along a line than this; digit heights off a line, upright and turned. */
export const STEEPEST = 0.14;
export const OFF_SLOPE = 0.26;
export const OFF_TURNED = 1.4;

// word-rows.ts

/** Graduations seen beyond both ends, where a number may stand over the last line. */
export const BEYOND = 4;
/** Pixels to a graduation: as the picture has them, but enough for a line and not too many. */
export const LEAST_PER_TICK = 7;
/** Wider graduations, in picture pixels, are those of a close picture of coarse lines. */
export const COARSE_PITCH_PX = 55;
/** Words of a row that are read: more cost time and settle nothing. */
export const MOST_WORDS = 18;
/** How evenly words must stand, 1 being perfectly: more so where they are fewer than this. */
export const EVEN = 0.6;
export const EVEN_FEW = 0.85;
export const FEW_WORDS = 4;
/** Sheet pixels within which ink is darker than its neighbourhood. */
export const NEIGHBOURHOOD = { least: 26, most: 90 };
/** The most pixels to a graduation; and graduations seen to either side of the row, for so many pixels. */
export const MOST_PER_TICK = 26;
export const MOST_PER_TICK_COARSE = 40;
export const LEAST_SEEN = 14;
export const LEAST_SEEN_COARSE = 9;
export const MOST_SEEN = 46;
export const SEEN_PX = 330;
/** More words than this don't make a row likelier. */
export const ENOUGH_WORDS = 16;
