/** What decides something in this room, by the file it is for, with its unit and reason. */

// bow.ts

/** Times the bow is fitted anew: a second look is straighter than the first. */
export const ROUNDS = 2;
/** Px to either side of a row in which its bow is followed. */
export const REACH_PX = 26;
/** Px: on less of a row a bow is chance. */
export const BOW_SHORTEST_ROW_PX = 120;
/** With fewer stretches that hold strokes a cubic follows noise. */
export const BOW_FEWEST_PLACES = 8;
/** Log-grey at the edge of a stroke: less than in the first fit, as the row is known better. */
export const BOW_EDGE = { leastAlong: 0.05, acrossCost: 2 };
/** From one stretch to the next a row moves less than this. */
export const WANDER_PX = 14;
/** A row followed to the strip's border comes back this far. */
export const BORDER_PX = 8;
/** A bow below this is left out, and one above it is no tape. */
export const LEAST_SAG_PX = 1.5;
export const MOST_SAG_PX = 24;
/** A bow stands when this share of the places is this near to it. */
export const BOW_NEAR_PX = 2;
export const LEAST_NEAR = 0.6;
/** Where places stop counting fully; a few rounds of weighing them anew settle the fit. */
export const DOUBT_PX = 1.5;
export const WEIGHINGS = 6;
/** Rows that draw the square and the cubic term to 0, so that a few places can't bend it. */
export const STRAIGHTENERS = [
  [0, 0, 0.3, 0, 0, 1],
  [0, 0, 0, 0.6, 0, 1],
];
/** A place farther from the one before than it wanders still counts this much. */
export const LEAST_LEAN = 0.2;
/** A row is followed in so many stretches, none shorter than this. */
export const STRETCHES = 40;
export const STRETCH_PX = 20;

// candidate-rows.ts

/** Every 3°. */
export const ANGLES = 60;
/** A stroke stands at most some 22° from square on its row: cosine of twice that. */
export const LEAST_SQUARENESS = 0.7;
/** Offsets looked at to either side of a line: a row of graduations is narrow. */
export const SURROUND = { from: 4, to: 9, clear: 12 };
/** Angles and offsets about a chosen line in which no other is looked for. */
export const APART = { angles: 2, offsets: 3 };
/** A square's vote grows with how square its strokes stand: from nothing at the first to 1. */
export const VOTE = { from: 0.6, slope: 2.5 };
/** What the fuller side takes from a line, against the emptier: numbers may fill it. */
export const OTHER_SIDE = 0.3;

// robust-line.ts

/** With fewer stretches that hold strokes a line is chance. */
export const ROBUST_LINE_FEWEST_PLACES = 5;
/** A search is at most some 2° out, after which a row still can't be steeper than this. */
export const STEEPEST = 0.12;
/** Further than this from the line a place belongs to something else. */
export const ROBUST_LINE_NEAR_PX = 3;

// row-fit.ts

/** Reach of each round: wide at first, as the line found by vote is some pixels out. */
export const ROUND_REACHES_PX = [36, 22, 22];
/** On less of a row there is nothing to fit. */
export const ROW_FIT_SHORTEST_ROW_PX = 120;
/** Log-grey difference of two neighbours-but-one on the edge of a stroke. */
export const ROW_FIT_EDGE = { leastAlong: 0.06, acrossCost: 3 };
/** The slant of strokes is taken from edges this near to the row. */
export const SLANT_REACH_PX = 14;
/** An edge is a stroke's when its gradient turns at most this (as a tangent) from the row. */
export const MOST_SLANT = 0.6;
/** With fewer edges the slant is chance. */
export const FEWEST_EDGES = 100;
/** Strokes at the border of the band count this much less than in its middle. */
export const OFF_MIDDLE = 0.4;
/** A row is looked at in so many stretches, none shorter than this. */
export const ROW_STRETCHES = 24;
export const ROW_STRETCH_PX = 24;
/** Below this all edges stand at one place. */
export const NO_SPREAD = 1e-12;

// stroke-cells.ts

/** Side of the squares a picture is looked at in: a stroke or two of a fine scale. */
export const CELL_PX = 8;
/** Squares that weigh less than this are noise. */
export const LEAST_WEIGHT = 0.05;
/** Squared grey that a picture without any print still has. */
export const LEAST_ENERGY = 0.05;

// stroke-places.ts

/** Beyond this an edge is no better proof of a stroke: lettering and glare don't rule. */
export const MOST_ENERGY = 0.3;
/** Half the height of the band that strokes are looked for in. */
export const BAND_REACH = 5;
