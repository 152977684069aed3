/** What decides something in this room, by the file it is for, with its unit and reason. */

// across-shift.ts

/** Px across the tape at which the print is tried. */
export const TRIED = [-3, -1.5, 0, 1.5, 3];
/** Numbers tried: some say as much as all. */
export const MOST = 6;
/** Print less alike than this (correlation) isn't that print. */
export const LEAST_ALIKE = 0.4;

// live.ts

/** Places that the motion is measured at: each takes its time. */
export const MOST_PLACES = 36;
/** Parts of a frame's shorter side: farther on, other numbers may be in sight; a hand at rest sways less. */
export const FAR = 0.08;
export const REST = 0.02;
/** Mm from the lines: the cross is on the tape, or on the edge beside. */
export const ON_TAPE_MM = 12;

// motion.ts

/** Long side of the copies that are compared, in px: a hand moves a few dozen of these a frame. */
export const COPY_PX = 320;
export const PATCH_PX = 8;
export const REACH_PX = 22;
/** Patches with less contrast than this (grey levels) look alike everywhere. */
export const LEAST_CONTRAST = 8;
/** Of two looks at a place, this much must be alike (correlation). */
export const ALIKE = 0.6;
/** Px in the copies within which shifts of neighbouring places are one motion. */
export const ONE_MOTION_PX = 3;
export const FEWEST = 4;

// moved-lines.ts

/** Followed lines beat this steadily. */
export const LEAST_QUALITY = 0.45;
/** Half a graduation off, the next line would be taken for this one. */
export const MOST_SHIFT = 0.3;
/** Lines farther apart than this (px) are thin against their pitch: blurred, by its fifth, they make a tone. */
export const WIDE_PX = 16;
export const SMOOTHING = 5;
/** With fewer lines in sight, or followed, their phase is chance. */
export const FEWEST_LINES = 8;
/** Pitches in one tracking window (1 sigma): a hand bends the tape little from one frame to the next. */
export const WINDOW = 2.5;

// number-patches.ts

/** Half of a number's patch, as a share of the way to the next number: a digit or two, and no lines. */
export const PATCH_SHARE = 0.3;
/** Inches stand farther apart than their digits are large. */
export const PATCH_MM = 3.5;
/** Places from the middle of a patch to its sides. */
export const PATCH_STEPS = 6;
/** Graduations: no patch is cut for numbers farther apart than a centimetre's lines. */
export const WIDEST_STEP = 10;

// same-numbers.ts

/** Numbers that must be seen again, and how much alike, for the lines to be the same lines. */
export const FEWEST_NUMBERS = 2;
export const SAME_NUMBER = 0.55;
/** Another size or turn than when the numbers were read: they are read again. */
export const MOST_SIZE = 1.35;
/** Columns of a patch that hold about one digit, and how much each must be alike. */
export const DIGIT_STEPS = 5;
export const SAME_DIGIT = 0.7;
export const BARE_SHARE = 0.5;
/** Of the numbers in sight, as many must be the same. */
export const SAME_SHARE = 0.6;
