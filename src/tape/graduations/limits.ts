/** What decides something in this room, by the file it is for, with its unit and reason. */

// detected-lines.ts

/** Sheet pixels to a graduation: enough for a thin line and its ground. */
export const DETECTED_LINES_PER_TICK = 10;
/** A line stands out by at least this share of the usual one. */
export const DETECTED_LINES_LEAST_CONTRAST = 0.35;
/** Looked at beyond the followed stretch, where the last lines are. */
export const BEYOND = 3;
/** One line in a row may be missed; where two are missing the tape may end. */
export const MISSED = 1;
/** Graduations: a shorter run of lines is chance. */
export const SHORTEST_RUN = 4;

// half-lines.ts

/** Sheet pixels to a graduation: a thin line, its ground, and the next one half-way. */
export const HALF_LINES_PER_TICK = 16;
/** So many gaps one after the other must hold a line of their own. */
export const STRETCH = 10;
/** A line half-way shows at least this share of its neighbours' contrast. */
export const LIKE_ITS_NEIGHBOURS = 0.45;
/** Looked at beside the zone that every line crosses, in graduations. */
export const BESIDE = 0.4;
/** Less contrast than this, in log-grey, is no printed line. */
export const HALF_LINES_LEAST_CONTRAST = 0.04;

// own-lean.ts

/** Sheet pixels to a graduation; and how far beyond the zone lines are followed, in graduations. */
export const OWN_LEAN_PER_TICK = 10;
export const OWN_LEAN_REACH = 2;
/** Of the strongest row's tone: where less is left the lines have ended. */
export const OWN_LEAN_LINED = 0.4;
/** Fewer rows tell no lean. */
export const OWN_LEAN_FEWEST_ROWS = 4;

// sheet.ts

/** Below this the phase of the graduations is noise. */
export const TRUSTED_QUALITY = 0.38;
/** A finger or a glare may hide this many graduations without parting the stretch. */
export const HIDDEN_TICKS = 12;
/** Fewer than this say nothing. */
export const LEAST_TICKS = 9;

// tick-classes.ts

/** A line may be interrupted by this many rows of dirt or glare. */
export const LONGEST_BREAK = 3;
/** A single black speck counts no more than this many times the usual contrast. */
export const MOST_CONTRAST = 1.2;
/** Where every line is a long line none can be mistaken for it. */
export const ONLY_CLASS_MARGIN = 9;
/** Of the usual contrast: a class of lines goes on where it shows at least this much. */
export const CLASS_CONTRAST = 0.4;
/** Log-grey: a light speck beside a line counts no more than this. */
export const LIGHTEST = -0.1;

// tick-contrast.ts

/** The row is known this well, in sheet pixels, so that digits further off can't be taken for it. */
export const SEARCHED_ROWS = 22;
/** Less contrast than this, in log-grey, is no printed line. */
export const TICK_CONTRAST_LEAST_CONTRAST = 0.03;

// tick-pattern.ts

/** Sheet pixels to a graduation: enough for a thin line and its ground at both sides. */
export const TICK_PATTERN_PER_TICK = 10;
/** Graduations seen to each side of the row. */
export const SEEN = 9;
/** Long lines seldom run further beyond the short ones than this many graduations. */
export const LONGEST = 5;
/** Room for the folds asked for later, of numbers that are further off. */
export const LONGEST_ASKED = 6;
/** Folds of tapes and rules: halves, quarters, fifths, eighths, tenths, sixteenths, twentieths. */
export const FOLDS = [2, 4, 5, 8, 10, 16, 20];
/** Folds that speak for a unit by themselves: millimetres, and eighths and sixteenths of an inch. */
export const TELLING = [8, 10, 16];
/** Lines longer than this, in tenths of a graduation, run into numbers: their length is chance. */
export const COMPARED_LENGTH = 20;
/** Of the usual contrast: lighter than this beside a line says nothing of how long it is. */
export const LIGHT_FLOOR = -0.2;
/** Of the best fold's score: a smaller fold that explains this much is the true one. */
export const AS_GOOD = 0.93;
/** Of the variance: a fold that explains less is chance. */
export const LEAST_FOLD_SCORE = 0.12;
/** Lines to both sides of a long one are alike when they differ by no more than this: in tenths of a graduation, and as a share of their lengths. */
export const APART_TENTHS = 4;
export const APART_SHARE = 0.35;

// tick-quality.ts

/** A pitch that varies less than this, in log-grey, has no line to measure. */
export const FLAT = 0.05;
/** Of the usual contrast: a line that shows this much is there. */
export const THERE = 0.35;
