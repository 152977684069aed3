/** What decides something in this room, by the file it is for, with its unit and reason. */

// alignment.ts

/** A number of a whole interval says nothing, and a dot says nothing. */
export const WIDEST = 0.98;
export const NARROWEST = 0.05;
/** As a share of the interval: nearer to the line than this, the middle is on it. */
export const ON_THE_LINE = 0.07;
/** Middles that scatter more than this have nothing to do with the lines. */
export const LEAST_LIKENESS = 0.8;
/** Gaps between a number and its line: digits may touch it, but not stand far off. */
export const LEAST_GAP = -0.04;
export const GREATEST_GAP = 0.3;
/** Middles nearer to the lines than the second (of the interval) that scatter more than the first allows stand neither on them nor beside. */
export const STEADY = 0.9;
export const NEAR_THE_LINE = 0.2;
/** Of the gap at the other side: an edge this much nearer to a line stands at it. */
export const CLEARLY_NEARER = 0.55;
/** Of the other edge's scatter: the edge that scatters less keeps step, where the other is seen to move (likeness). */
export const STEADIER = 0.25;
export const MOVES = 0.985;
/** Numbers that nearly fill their interval may scatter more; nearer to the line than the second their middle is on it. */
export const LEAST_LIKENESS_BETWEEN = 0.55;
export const OVER_THE_LINE = 0.1;

// beside-lines.ts

/** Long lines stand out from the others by at least so many tenths of a graduation. */
export const CLEAR_MARGIN = 2;

// digits-between.ts

/** Digits that follow each other before they begin anew. */
export const DIGITS = 10;
/** A digit to each line, or to every second where its halves have lines too. */
export const EVERY = [1, 2];
/** So many digits, and so many different ones, are no chance. */
export const LEAST_DIGITS = 8;
export const LEAST_DIFFERENT = 5;
/** Of all digits of the row, and against any other way of counting them. */
export const LEAST_SHARE = 0.7;
export const CLEARLY_MORE = 3;
/** How far a digit's middle may stand from its line, in digits. */
export const OFF_LINE = 0.2;

// full-lines.ts

/** Leans tried, in sheet pixels along for each across; what was straightened leans less than the least. */
export const MOST_TRIED = 0.24;
export const LEAN_STEP = 0.01;
export const MOST_LEAN = 0.07;
/** Ink has at least this share of the contrast that the graduations have. */
export const INKED = 0.35;
/** Shares of the way that are inked: on the full lines, and on no others among the numbers. */
export const FULL = 0.7;
export const BARE = 0.25;
/** Less of the way is enough where so many lines show it and on the others there is next to nothing. */
export const ALONE = 0.6;
/** And still less on lines that are surely the longest, too: two signs that know nothing of each other. */
export const ALONE_LONGEST = 0.45;
export const ALONE_BARE = 0.1;
export const ALONE_FEWEST = 6;
/** Of the full lines clear of numbers: another class with fewer shows the digits over it. */
export const TELLING = 0.6;
/** A class of fewer lines clear of all numbers says nothing. */
export const FULL_LINES_FEWEST = 3;
/** Graduations from a line to the bare ground beside it. */
export const GROUND_AWAY = 0.35;

// numbered-line-across.ts

/** A middle nearer than this share of the interval is on its line; nearer than the second, beside it. */
export const ON_ITS_LINE = 0.05;
export const BESIDE_ITS_LINE = 0.3;
/** As shares of the interval: how near to its line a number is, how far it is from the other, how much these scatter. */
export const NEAR = 0.25;
export const FAR = 0.2;
export const SCATTER = 0.05;
/** Both gaps as they must differ for the nearer line to be the number's. */
export const UNEQUAL = 1.6;
/** Of the numbers, at most so many may reach over a line; and so many must speak. */
export const IN_THE_WAY = 0.1;
export const NUMBERED_LINE_ACROSS_FEWEST = 4;

// numbered-line.ts

/** A number's middle this near to a line, in graduations or as a share of the interval, is centred on it. */
export const CENTRED_TICKS = 0.3;
export const CENTRED_SHARE = 0.075;
/** Of the interval: the line beside an edge is sought about so far from it. */
export const BESIDE_SHARE = 0.25;
/** So many numbers tell that middles keep step: they scatter less than this share of an edge's scatter, and of the interval. */
export const FEWEST_IN_STEP = 5;
export const STEADIER_MIDDLE = 0.45;
export const IN_STEP = 0.06;
/** Tenths of a graduation by which a long line is longer; shares of the interval by which a number may be off it, and scatter. */
export const LONG_TENTHS = 6;
export const EXACTLY_OVER = 0.05;
export const EVENLY_OVER = 0.04;

// progression.ts

/** What scales advance per graduation: parts of an inch, halves and fifths, whole and tens. */
export const ADVANCES = [
  1 / 64,
  1 / 32,
  1 / 20,
  1 / 16,
  1 / 12,
  1 / 10,
  1 / 8,
  1 / 5,
  1 / 4,
  1 / 2,
  1,
  2,
  5,
];
/** Two numbers stand this near to where they belong, as the logarithm of their advance. */
export const ADVANCE_ERROR = 0.16;
/** Numbers nearer than this, in graduations, can't tell an advance. */
export const LEAST_APART = 0.8;
export const LARGEST_SPREAD = 0.22;
/** A finer step needs more than this share of a row's words. */
export const FEW_SHARE = 0.3;
export const FINER_STEPS = [1, 2, 5, 10];
/** Of the tolerance: two starts this near are one. */
export const SAME_START = 0.2;
/** What a number may be off its place, in its own unit, where a graduation advances by a whole one or more, and by a part. */
export const OFF_PLACE = 2.8;
export const OFF_PLACE_OF_PART = 0.28;
/** What a number that lost a digit, a digit, and the spread weigh against a number read. */
export const SCORE = { partial: 0.4, digit: 0.02, spread: 2 };
/** So many different numbers: one of them and a stray one that fit another rise are chance. */
export const MANY_FOR_STRAY = 4;
/** Of a step: a value farther from one stands between two. */
export const OFF_STEP = 0.25;

// unit.ts

/** Height of the digits as a share of a number's interval, above which twenty lines to it are half millimetres. */
export const HALVES_DIGITS = 0.2;
/** Short lines longer than this, in graduations, are millimetres; less long ones where the digits' height has this share of the interval. */
export const CM_ZONE = 1.9;
export const CM_ZONE_WITH_DIGITS = 1.3;
export const CM_DIGITS = 0.26;
/**
 * And longer than this where so many different numbers go so far: rules in tenths of an inch have short lines of
 * 0.7 to 1.25 graduations and end at a foot or two. Common practice, no source.
 */
export const CM_ZONE_FAR = 1.5;
export const FAR_NUMBERS = 5;
export const FAR_INCHES = 25;
