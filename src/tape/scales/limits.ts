/** What decides something in this room, by the file it is for, with its unit and reason. */

import type { TapeUnit } from '../graduations/tape-unit.ts';

// begun-anew.ts

/** Numbers that some tapes begin anew lie below these: after every ten centimetres, or every foot. */
export const BEGIN_ANEW: Partial<Record<TapeUnit, number>> = { cm: 10, inch: 12 };
/** Of the lines from one number to the next, so many are seen where they go on: a stain hides some. */
export const LINES_BELOW = 0.8;

// crowded.ts

/** How far beyond the lines is looked, in mm: past the farthest place that is still read. */
export const CROWDED_FARTHEST_MM = 7.5;
/** From the end of the lines: their own ends fade there. */
export const CLEAR_MM = 0.4;
/** Sheet pixels to a graduation: enough for a thin stroke and its ground. */
export const CROWDED_PER_TICK = 8;
/** Graduations in one window, and mm across: strokes are longer than a weave is coarse. */
export const CROWDED_WINDOW_TICKS = 10;
export const SLAB_MM = 0.8;
/** Strokes vary by this share of the contrast of the scale's own lines; cloth by less. */
export const LEAST_SHARE = 0.2;
/** Times that strokes in a window must rise and fall. */
export const LEAST_STROKES = 3;
/** A window that the picture's edge cuts must show at least this much of itself. */
export const LEAST_SEEN = 0.4;
/** Places are read a little past the lines that were followed. */
export const PAST_TICKS = 4;

// one-edge.ts

/** Rows whose lines stand less apart than this are lines of one edge. */
export const SAME_LINES_MM = 5;
/** What the one foretells of the other, over a gap, in mm: a fold that hides less can't be seen. */
export const FORETOLD_MM = 3.5;

// question.ts

/** No tape has a larger number: ten metres of millimetres, a hundred of centimetres. */
export const LARGEST = 10_000;

// read-at.ts

/** Farther than this from the lines, a place is not on the tape: it is read askew, or is cloth. */
export const READ_AT_FARTHEST_MM = 6;
/** Numbers stand beside the lines; up to here past their middles it is still the tape. */
export const PAST_NUMBERS_MM = 2;
/** A place nearly as near to a second scale that reads otherwise belongs to neither. */
export const CLEARLY_NEARER = 0.6;
/** Two scales read the same when they differ by less than this. */
export const SAME_MM = 1;
/** A hair before the printed zero is still the zero line's own width. */
export const ZERO_SLACK_TICKS = 0.5;
/** Px by which another row's lines must be nearer: both touch a line where two rows meet. */
export const NEARER_PX = 2;
/** Lines past the ones that were seen, in graduations, at which a place is still said to be beyond them. */
export const PAST_LINES = 3;
/** Rows that turn less than this (cosine of 5°) against each other are edges of one tape. */
export const PARALLEL = 0.996;
/** Of one line's place against its neighbours, from the middle of its printed width (0.1 mm). */
export const LEAST_DOUBT_MM = 0.05;

// readable-stretches.ts

/** So many hidden lines in a row can't make the following slip. */
export const SAFE_GAP = 5;
/** Lines apart from any agreeing number by more than so many printed numbers aren't vouched for. */
export const VOUCHED_NUMBERS = 1;
/** Half a line's width and a little beyond the last one seen. */
export const LAST_LINE = 0.4;
/** Across hidden lines the course of the others may bend by this many graduations; more may be a slip. */
export const MOST_BEND = 0.35;
/** Numbers of as many digits lie to their lines alike within this, in graduations; a line missed is 1. */
export const LIE_ALIKE = 0.6;
/** Of the way to the next number: one read this far off a stretch still vouches for it. */
export const VOUCHES = 0.75;

// scale-of.ts

/** A place followed less well than this doesn't move the lines. */
export const FOLLOWED_QUALITY = 0.4;
/** A jump of nearly half a graduation is a slip, not a bend. */
export const MOST_JUMP = 0.45;
/** Of well followed places, nine in ten lie within the scatter that is stated. */
export const SCATTER_SHARE = 0.9;
/** Graduations: no lines are printed and seen more evenly than this. */
export const LEAST_SCATTER = 0.012;
/**
 * How far slants go astray after they were fitted, in graduations for each graduation across: of
 * places on drawn tapes and up to 5 mm beside them, 97 % then lie within what is stated.
 */
export const SLANT_DOUBT = 0.012;
/** Digit heights from the middle of the numbers to where a scale is outlined. */
export const HALF_DIGITS = 0.6;
/** Of what nine in ten keep within: what one line's place is off by; and that width, in graduations, where none was followed. */
export const PER_LINE = 0.35;
export const UNSEEN_SCATTER = 0.3;
/** Fewer places don't bend a scale; entries of the table that does, at most. */
export const FEWEST_PLACES = 4;
export const LONGEST_TABLE = 2000;

// seam.ts

/** Sheet pixels to a graduation: enough for a thin line and its ground. */
export const SEAM_PER_TICK = 8;
/** The ground between lines is this much of their contrast darker, or lighter, in the gap between two tapes. */
export const SEAM = 0.3;
/** Lines of a tape go on to both sides of the gap: from so far off it, in mm, and as dark as this. */
export const PAST_SEAM_MM = 0.7;
export const LINES_SHARE = 0.4;
/** Graduations in one window: the gap may run at a slant to the lines. */
export const SEAM_WINDOW_TICKS = 16;
