/** What decides something in this room, by the file it is for, with its unit and reason. */

// copies.ts

/** Long side of the copy rows are sought in, and of the one they are measured in, in px. */
export const SEARCH_PX = 1300;
export const MEASURE_PX = 2000;
/** A smaller picture is doubled, so that its strokes have room. */
export const SMALL_PX = 1100;

// own-lines.ts

/** Graduations by which lines may come out beside their place at the numbers: on one tape it is 0.05. */
export const MOST_ASIDE = 0.25;
/** Graduations from a row between two lengths of tape to the middle of the lines of one. */
export const INTO_OWN_LINES = 1;

// read-rest.ts

/** So many graduations must have room beside what was followed, or there is no more to read. */
export const LEAST_ROOM = 25;
/** Logarithm: the same lines farther on are as far apart, but for a bend. */
export const LIKE_PITCH = 0.15;
/** Of a stretch that was followed anew, as much as this must lie beyond the one that is known. */
export const MOSTLY_NEW = 0.6;
/** Of the way from one number to the next: over a gap lines are foretold no better. */
export const FORETOLD = 0.35;

// read-row.ts

/** Below this a pitch from spectra is chance. */
export const LEAST_SCORE = 0.2;
export const SEEDS = 2;
/** A row with fewer of its lines there is a row of something else. */
export const LEAST_PRESENCE = 0.6;
/** Word readings cost most: so many for one row. */
export const WORD_READINGS = 3;
/** Logarithm: pitches nearer than this are the same. */
export const SAME_PITCH = 0.08;

// read-stretch.ts

/** Lines are thin: where more of the pitch is dark than this, the print is the other way round. */
export const MOST_DUTY = 0.62;
export const SURELY_THIN = 0.45;

// read-tape.ts

/** Below this no printed digit is left. */
export const LEAST_PX = 160;

// look-at.ts

/** Rows sought in a picture. */
export const CANDIDATES = 14;
/** Rows followed: fewer once something was read. */
export const MOST_ROWS = 9;
export const MOST_ROWS_AFTER_ONE = 6;
export const ENOUGH_READ = 3;
/** A candidate this much weaker than the best, after five were tried, is cloth. */
export const WEAK_CANDIDATE = 0.06;
export const WEAK_FROM = 5;
/** Px in the measured copy: rows nearer than this are one. */
export const SAME_ROW_PX = 10;
/** Word readings a picture may cost. */
export const MOST_WORD_READINGS = 11;
/** And as many more round bends. */
export const MOST_BEND_READINGS = 4;
/** Long and short lines of one scale may be found as two rows; they stand less apart than two edges. */
export const SAME_LINES_MM = 5;
/** Three places of a row, px apart along it: rows that agree there are the same. */
export const CHECKED_AT = [-300, 0, 300];
/** Of those, and of rows, as many in one window: what is nearest to the eye is among the first. */
export const WINDOW_WORD_READINGS = 5;
export const WINDOW_BEND_READINGS = 2;
export const WINDOW_ROWS = 4;

/** Of the numbers that name a scale: so many that say otherwise are more than misreadings. */
export const CONTESTED = 0.5;

// look-closer.ts

/** Windows looked at where the whole picture gave nothing. */
export const MOST_WINDOWS = 3;
/** A window with so many numbers of one scale shows most of its tape: no other is looked at. */
export const PLENTY_IN_WINDOW = 8;
/** In a window less is seen that could speak against a scale: so many different numbers must name it. */
export const WINDOW_NUMBERS = 5;
/** A place so near to a scale's lines, in mm, is on its tape. */
export const POINTED_MM = 25;
/** Numbers from here on have two digits. */
export const TENS_FROM = 10;

// round-bends.ts

/** Times as long as its straight part was followed: from so much on, a tape goes on round a bend. */
export const BEND_GROWS = 1.4;
/** Pitches: a row this near to a bend that was followed is part of it. */
export const SAME_BEND = 2;

// windows.ts

/** Of a picture's long side: the windows about a place that the maker pointed at; and the least side in px. */
export const POINTED_SHARES = [0.35, 0.65];
export const POINTED_PX = 500;

/** Side of a window in px at its scale: as large as is looked at without being shrunk. */
export const WINDOW_PX = 1800;
/** Of the strongest row of a picture's windows: one with a weaker row shows no tape. */
export const WINDOW_WEAK = 0.35;
/** What a window loses by the share of it that was looked at before. */
export const WINDOW_AGAIN = 0.7;
