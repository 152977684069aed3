/** What decides something in this room, by the file it is for, with its unit and reason. */

// finger.ts

/**
 * Px of the screen by which a finger misses what it aims at (1 sigma). A bare fingertip does worse,
 * but it sets the place through a lens that shows this as 5 px. A judgement, not a measurement.
 */
export const FINGER_SCREEN_PX = 1;
/** A phone shows a photo's long side on about so many px; a small picture isn't shown smaller. */
export const SCREEN_PX = 400;

// line-length.ts

/** Px from one look along a line to the next. */
export const LINE_LENGTH_STEP_PX = 2;
/** A line may lean a little from the direction asked about. */
export const DRIFT_PX = 0.75;
/** Of its contrast at the place asked about: with less than this, twice in a row, it has ended. */
export const STILL_SEEN = 0.4;

// line-profile.ts

/** Quarter pixels keep the middle of a thin line to a tenth of a pixel. */
export const STEPS_PER_PX = 4;

// lines-ink.ts

/** How far round the place lines are looked at, across and along them, as a multiple of the reach. */
export const LOOKED_ACROSS = 2.5;
export const LOOKED_ALONG = 2;
/** Px from one profile to the next, each the mean of two px to both sides. */
export const LINES_INK_STEP_PX = 3;
export const AVERAGED_PX = 2;
/** Where the grey leans less than this to one side, lines and gaps look the same. */
export const LEAST_LEAN = 0.35;

// snap.ts

/** What a finger covers, as a share of the picture's long side, and never less than this. */
export const FINGER_SHARE = 1 / 90;
export const LEAST_FINGER_PX = 9;
/** Grey levels a line must stand out by to be one; and as a share of the best one near by. */
export const LEAST_CONTRAST = 10;
export const LEAST_SHARE = 0.5;
/** Lines nearer to each other than this merge in the picture. */
export const LEAST_APART_PX = 3;
/** The ground beside a line is no farther from its middle than this. */
export const MOST_SIDE_PX = 8;
/** A line this long, as a share of the one under the finger, may have been meant as well: only long ones have numbers. */
export const RIVAL_LENGTH = 0.8;
/** In squared sigmas of the finger: e⁻⁴, 2 %, are left for the line farther away. */
export const CLEARLY_NEARER = 8;
/** A line is followed so far to either end, as a multiple of the reach. */
export const LONGEST = 4;
/** A finger whose line is uncertain has missed it by more than most do: the mean square of a bell's outer third. */
export const MISSED = 1.6;
/** How well the middle of a line is found, in px (1 sigma). */
export const LINE_PX = 0.4;
/** Of how far a line is followed to one side: longer than this it goes on at both, and is no graduation. */
export const ENDLESS = 1.9;
/** From 0 to 1: how much more grey changes one way than the other, or no way is across. */
export const LEAST_DIRECTION = 0.25;

// touch-fit.ts

/**
 * What perspective may make of a scale, 1 sigma: c times the distance of the outer touches. At a
 * tilt of 30° from as far as the tape is long it is sin 30°, taken as 2 sigma. Derived here.
 */
export const CROWDING = 0.24;
/** Things are moved by so many sigmas to see what comes of it: a scale doesn't follow evenly. */
export const MOVED = 2;
/** By how much of the touches' distance a lens bends a scale between them in its middle (1 sigma). */
export const LENS = 0.003;

// touch-lines.ts

/** Lines that beat as steadily as this are those of the scale. */
export const FOLLOWED_QUALITY = 0.5;
/** A followed line that a touch says is another one: the touch is right, the following wrong. */
export const TOUCH_AGREES_TICKS = 0.35;
/** Sigmas by which a touch may miss the line that was meant: it stands on another one then. */
export const MOST_MISSED = 2.5;
/** Where lines run beside the touched places, in mm: a finger touches their ends as well as their middles. */
export const BANDS_MM = [
  [-3.5, -1],
  [-1.2, 1.2],
  [1, 3.5],
] as const;
/** Px: a band is never thinner or farther than this, whatever the picture's size. */
export const LEAST_BAND_PX = 3;
export const FARTHEST_BAND_PX = 90;
/** Pitches in one tracking window (1 sigma), and from one place to the next that owes it nothing. */
export const WINDOW = 2.5;
export const APART = 5;
/** A band is halved to see its lines lean; a half has at least these px. */
export const LEAST_HALF_PX = 4;
/** How well a lean is seen at the best. */
export const LEAST_LEAN_DOUBT = 0.03;
/** Px between lines, and lines between the outer touches: with less they can't be followed. */
export const LEAST_PITCH_PX = 3;
export const FEWEST_LINES = 6;
/** Times that a scale is fitted to the lines it followed. */
export const ROUNDS = 3;

// touch.ts

/** Fingers nearer than this touch the same line. */
export const SAME_PLACE_PX = 6;
/** A touch farther from the line through the outer two than this share of their distance isn't on their row. */
export const IN_LINE = 0.08;
/** How far lines lean in a picture where that can't be seen (1 sigma): a tape at 45° seen at 30° leans 0.2. */
export const UNSEEN_LEAN = 0.12;
/** Beyond the touches a reading holds for this share of their distance. */
export const BEYOND = 0.35;
/** Places along a scale at which its spread is noted. */
export const SPREAD_STEPS = 40;
/** Mm to either side of the touches where a scale by touch is outlined: a tape's lines are about as long. */
export const BAND_MM = 4;
