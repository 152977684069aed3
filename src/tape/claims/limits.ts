/** What decides something in this room, by the file it is for, with its unit and reason. */

// claim.ts

/** Lines to a number, at most, that may have passed over finer ones: eighths of an inch, fifths of a centimetre. */
export const SPARSE_INCH = 8;
export const SPARSE_CM = 5;

// comparisons.ts

/** Rows farther apart than this are not on one tape. */
export const ONE_TAPE_MM = 45;
export const COMPARISONS_PARALLEL = 0.08;
/** At a slant the two edges of a wide rule look turned against each other by up to this (sine). */
export const COMPARISONS_CONVERGING = 0.16;
/** A row goes on so many graduations past where it was followed. */
export const COMPARISONS_END_TICKS = 2;
/** Rows nearer than this many graduations read the same lines. */
export const SAME_LINES_TICKS = 9;
/** Places at which two rows are compared, as shares of the second one's length. */
export const COMPARED_AT = [0.1, 0.3, 0.5, 0.7, 0.9];
/** A row is compared as far past its ends as this share of its length: farther its course is a guess. */
export const PAST_ROW = 0.3;

// doubts.ts

/** So many numbers that agree, and are different, name a scale by themselves. */
export const DOUBTS_ENOUGH = 4;
/** Fewer do where it was known what they should say. */
export const LEAST_FORETOLD = 2;
/** How far a number may stand from its place, as a share of the way to the next. */
export const OUT_OF_PLACE = 0.25;
/** A first digit this thin, as a share of the digits' height, may be a line or a fold. */
export const THIN = 0.3;
/** Nearer to a graduation than this, in graduations, a thin stroke may be that graduation. */
export const ON_A_LINE = 0.18;
/** A stroke this much taller than the other digits, or as much off their row, isn't one of them. */
export const UNLIKE_HEIGHT = 0.14;
/** Nor one this much shorter: blur takes more off the ends of a thin stroke than off a round digit. */
export const SHORTER = 0.24;
/** A stroke farther from the next digit than this, as a share of the height, stands by itself. */
export const APART = 0.3;
/** Of the tallest patch of a number, a patch as tall as this is a digit. */
export const DIGIT_HEIGHT = 0.7;
/** Patches and widths speak for a lost digit when they do in more than this share of the numbers. */
export const OFTEN = 0.4;
/** Widths of a number of one digit, and of each more, as shares of the height, at the most. */
export const WIDEST_DIGIT = 0.95;
export const WIDEST_MORE = 0.85;
/** Digits printed farther from the lines than this many of their heights label other lines. */
export const FARTHEST_HEIGHTS = 3;
export const DOUBTS_FARTHEST_MM = 11;
/** Numbers that were read otherwise, as a share of those that agree, above which the line is in doubt. */
export const MOST_CONTRARY = 0.45;
/** Numbers that may be enough where nothing speaks against them, of so many places for one; and below which value a lost digit would show. */
export const THREE = 3;
export const THREE_OF_CELLS = 6;
export const SMALL_VALUE = 100;

// join-claims.ts

/** Readings of the same lines that differ by less are one reading, made twice. */
export const SAME_READING_MM = 0.6;
/** So many graduations beyond what is known are worth being read by themselves. */
export const WORTH_TICKS = 12;
/** Of the way to the next number: nearer than this two readings are of one number. */
export const SAME_NUMBER = 0.3;

// other-edge.ts

/** Two edges of one tape show a millimetre equally large, up to this share when it is seen at a slant. */
export const OTHER_EDGE_SAME_SIZE = 0.06;
/** Nearer than this the lines are the row's own; farther they are on another tape, mm. */
export const NEAREST_MM = 7;
export const OTHER_EDGE_FARTHEST_MM = 45;
export const OTHER_EDGE_PARALLEL = 0.08;
/** A pattern of lines is believed when it was seen so many times over. */
export const LEAST_PATTERNS = 2;

// reconcile.ts

/** Two scales of one tape show a millimetre equally large, up to this share. */
export const RECONCILE_SAME_SIZE = 0.025;
/** At a steep slant the nearer edge is larger; units differ by far more than this. */
export const LIKE_SIZE = 0.1;
export const OTHER_SIZE = 0.12;
/** Coarse lines are only a few apart from one edge of a tape to the other. */
export const OTHER_EDGE_MM = 10;
/** Values that differ by less are one; by more, two. */
export const SAME_MM = 0.8;
/** Some tapes begin anew on every foot. */
export const INCHES_TO_A_FOOT = 12;
/** What was followed may be two lines too long or too short; of lines seen one by one, the first may be cut off. */
export const RECONCILE_END_TICKS = 2;
export const END_LINES = 1;
/** Lines that lean more than this (tangent) aren't those of a tape seen from above: the row may run across it. */
export const MOST_LEAN = 0.22;
/** And more than this whatever the numbers: 20° from square. */
export const MOST_LEAN_BORNE = 0.36;
/** Graduations: where the band that all lines cross is narrower, no lines show how they lean; then no more than this at an end. */
export const SHOWS_LEAN = 0.5;
export const MOST_LEAN_UNSHOWN = 0.3;
/** So many numbers of its own, each read by itself, are not by mistake on a row's lines: they are two tapes. */
export const MANY_NUMBERS = 8;
/** Fewer numbers that agree say nothing against another row. */
export const FEWEST_TO_SAY = 3;
/** Off a whole count of numbered intervals by less than this, it is a whole count. */
export const WHOLE_NUMBERS = 0.1;

// shared-print.ts

/** Two numbers nearer than this share of a digit's height, in px, are the same print. */
export const SAME_PRINT = 0.7;
/** A row this much nearer to the numbers is the one they label. */
export const CLEARLY_NEARER = 0.67;
/** A sure claim needn't have read all of the numbers to stand for them. */
export const SHARED_PRINT_ENOUGH = 0.6;

// strict-numbers.ts

/** Rows of numbers tried, nearest to the graduations first. */
export const ROWS_TRIED = 3;
/** With so many numbers agreeing, the other way up needs no look. */
export const STRICT_NUMBERS_PLENTY = 4;
/** Of so many, a few may all have the same digit misread alike. */
export const MANY = 20;
/** So wide, as a share of the interval, that the half line can't have been taken for the long one. */
export const WIDE = 0.45;
/** Of the gap to the next line: nearer than this, numbers are its that they stand after. */
export const CLOSE = 0.4;
/** Long lines stand out from the others by at least so many tenths of a graduation. */
export const CLEAR_MARGIN = 2;
/** Fewer numbers that agree are few: two do only if they are all of a short row and have so many digits between them. */
export const STRICT_NUMBERS_FEWEST = 3;
export const SHORT_ROW = 4;
export const TWO_HAVE_DIGITS = 3;
/** A row passed over, at least this high against the one read, may be the scale's own. */
export const LIKE_HEIGHT = 0.6;
/** Of a row's numbers, as many as this leave nothing to be looked for in other rows. */
export const NEARLY_ALL = 0.8;
/** Values that fall as they are read need so many numbers more. */
export const CLEARLY_MORE = 3;
/** Times that the numbers which agree outnumber the next best count; fewer times where they are many. */
export const OUTVOTES = 6;
export const OUTVOTES_MANY = 4;

// tilt.ts

/** Graduations that a row may stand off a straight tape's, where its crowding still tells the tilt. */
export const MOST_BENT = 0.5;
export const MOST_BOWED = 1.5;
/** Of the long side: the focal length of a phone that sees 60° of it. */
export const FOCAL = 0.87;

// word-claim.ts

/** Of the numbers, so many with a stroke beside them have all lost a digit. */
export const OFTEN_CUT = 0.4;
/** Graduations to a number are whole, up to this much of rounding. */
export const WHOLE_TICKS = 0.01;
/** A pattern of at least so many lines tells how they are divided; with fewer, only folds up to the second are believed. */
export const TELLING_PATTERN = 5;
export const PLAIN_FOLD = 4;
/** Different numbers that speak without the lines, and with them; with fewer only in a row of so few. */
export const NUMBERS_ALONE = 5;
export const NUMBERS_WITH_LINES = 4;
export const SHORT_ROW_OF_WORDS = 6;

// word-numbers.ts

/** Rows read on one page: along the tape, and turned across it. */
export const ROWS_ALONG = 4;
export const ROWS_ACROSS = 2;
/** With so many agreeing, no other orientation is tried. */
export const WORD_NUMBERS_PLENTY = 5;
/** Of a row's words, as many as this that rise evenly settle which way up they are. */
export const MOST_OF_ROW = 0.75;
/** Of the way to the lines: a row this much nearer to them is theirs. */
export const NEARER = 0.7;
/** Fewer different numbers are few; three by chance have fewer digits between them than this. */
export const WORD_NUMBERS_FEWEST = 3;
export const MORE_THAN_CHANCE = 4;
export const DIGITS_OF_THREE = 5;
/** Two of fewer digits may be anything. */
export const DIGITS_OF_TWO = 4;
/** Nor may two of so many, even where their lines may be divided otherwise. */
export const DIGITS_UNPROVEN = 6;
/** Of the way from one number to the next: two farther from the lines may be another tape's. */
export const PAIR_BESIDE = 1.25;
/** Of a row's words, as many must be of one progression, and so many times those that rise otherwise. */
export const MOSTLY = 0.55;
export const WORDS_OUTVOTE = 3;
/** Digits of another row are like these within so much of their height, and regular from so many on (1 is perfectly). */
export const LIKE_DIGITS = { least: 0.7, most: 1.5 };
export const REGULAR_ROW = 4;
export const REGULAR = 0.9;
