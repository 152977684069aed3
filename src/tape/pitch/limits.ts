/** What decides something in this room, by the file it is for, with its unit and reason. */

// bend-walk.ts

/** Graduations from one place to the next. */
export const BEND_STRIDE = 2;
/** Places back from the last one that tell its direction; as many before these tell how that turns. */
export const BEND_MEMORY = 3;
/** Lines are believed from this quality on, and so near to where they are due: graduations along, pitches across, and the logarithm of their pitch. */
export const BEND_LEAST_QUALITY = 0.45;
export const BEND_MOST_PHASE = 0.3;
export const BEND_MOST_ASIDE = 1;
export const BEND_SAME_PITCH = 0.15;
/** Places missed in a row after which the tape is covered, folded or at its end. */
export const BEND_MISSED = 1;
/** Places passed to one side: more than a picture holds. */
export const BEND_MOST_STEPS = 700;
/** Rounds of bringing the start onto its row; pitches within which it is there. */
export const BEND_CENTRINGS = 4;
export const ON_CENTRE = 0.1;

// bent-row.ts

/** Of the widest pitch: lines closer than this are seen at too much of a slant. */
export const FORESHORTENED = 0.4;
/** Pitches by which a place may be off the frame. */
export const BENT_MOST_OFF = 0.35;
/** And its lines' lean: carried on 6 mm beside them that is a third of one. */
export const BENT_MOST_LEAN = 0.05;
/** Fewer places are hardly any. */
export const BENT_FEWEST = 12;
/** Entries of the residual to a place. */
export const BENT_TABLE = 2;

// finer-row.ts

/** How far beside a row finer lines are looked for, in px, and in what steps. */
export const REACH_PX = 54;
export const STEP_PX = 6;
export const HALF_BAND_PX = 3;
/** Lines this clear count; shorter pitches than this can't be followed. */
export const FINER_ROW_LEAST_SCORE = 0.38;
export const SHORTEST_PX = 3.2;
export const LONGEST_PX = 30;
/** Only lines this much closer to each other than those of the row itself are worth another look. */
export const FINER = 0.7;

// local-lines.ts

/** Samples to a pitch along, and rows to one across. */
export const LOCAL_PER_PITCH = 8;
export const LOCAL_ROWS_PER_PITCH = 5;
/** Pitches that a window reaches along and across to each side, and its bell (1 sigma). */
export const LOCAL_LONG = 4;
export const LOCAL_ROWS = 3;
export const LOCAL_SIGMA = 1.8;
/** Pitches between the middles of the bell's two halves: 0.8 sigma to each side. */
export const LOCAL_HALVES = 1.6 * LOCAL_SIGMA;
/** Of the strongest row's tone: where less is left the lines have ended. */
export const LOCAL_LINED = 0.5;
/** Log-grey: what varies less than this is no print. */
export const NO_PRINT = 0.01;

// phase-shear.ts

/** Rows to either side whose phases are compared; a strip must reach this far. */
export const PHASE_REACH = 10;
/** The windows in pitches (1 sigma), how far they reach in sigmas, and pitches between them. */
export const SIGMA_PITCHES = 2.5;
export const REACH_SIGMAS = 2;
export const HOP_PITCHES = 2;
/** Likeness of neighbouring rows under which a place tells nothing. */
export const PHASE_SHEAR_LEAST_LIKENESS = 0.06;
/** With fewer places the lean is chance; graduations off it at which a place counts half. */
export const PHASE_SHEAR_FEWEST_PLACES = 6;
export const PHASE_SHEAR_OUTLIER = 0.08;
/** Rounds of weighing the places anew. */
export const PHASE_SHEAR_ROUNDS = 5;

// phase.ts

/** Px: what a window is fitted to, whatever the model says where it goes astray. */
export const PHASE_SHORTEST_PITCH = 2.5;
export const PHASE_LONGEST_PITCH = 120;
/** A place below this quality doesn't lead the unwrapping. */
export const LEADING_QUALITY = 0.35;
/** Places to either side that must be steady with the one the unwrapping starts from. */
export const NEIGHBOURS = 4;

// pitch-seeds.ts

/** Px: short windows for stretches between fingers or bends, long ones for wide graduations. */
export const WINDOWS = [120, 320] as const;
/** Terms of the trend that is taken out: it keeps to light and shade. */
export const PITCH_SEEDS_TREND_EVERY = 3;
/** Mean square of the log signal under which a window is blank. */
export const PITCH_SEEDS_BLANK = 4e-4;
/** Shifts up to the window over this leave enough of it to compare. */
export const SHIFT_SHARE = 3.2;
/** Between strokes the likeness must first fall below these, then rise to at least this. */
export const DIP_BEFORE_TOP = 0.3;
export const DIP = 0.35;
export const PITCH_SEEDS_LEAST_LIKENESS = 0.4;
/** A second peak of a window is offered too, for less: the first may be half the true pitch. */
export const PEAKS = 2;
export const SECOND_SHARE = 0.6;
/** Of the highest peak: lower ones are numbers or grain. */
export const HIGH_PEAK = 0.55;
/** Logarithms of pitches nearer than this are the same hypothesis. */
export const SAME_PITCH = 0.16;
/** Logarithm by which pitches that support each other may differ, at one place and at the row's two ends; and the window, in px, that counts as one. */
export const SUPPORT = { least: 0.05, along: 0.25, window: 200 };

// pitch-spectrum.ts

/** Px to either side that the bands need. */
export const BAND_REACH = 9;
/** Smoothing (px) hides print and grain between strokes far apart; pitches (px) sought with each. */
export const SEARCHES = [
  { smoothing: 0, longest: 42, shortest: 3.2 },
  { smoothing: 4, longest: 64, shortest: 16 },
  { smoothing: 10, longest: 100, shortest: 40 },
] as const;
/** Below this, best 0.7, no course stands out from noise. */
export const PITCH_SPECTRUM_LEAST_SCORE = 0.12;
/** Widths (pitches) of the phase windows: short while the course is rough, then longer. */
export const FIT_SIGMAS = [2.5, 3.5, 3.5, 3.5];
export const TRACK_SIGMA = 3;

// pitch-tracking.ts

/** Px between graduations that can be resolved, and at most. */
export const PITCH_TRACKING_SHORTEST_PITCH = 2.2;
export const PITCH_TRACKING_LONGEST_PITCH = 150;
/** Widths of the phase windows in pitches, 1 sigma: at the seed, to mend its pitch, to walk. */
export const SEED_SIGMA = 2.5;
export const MENDING_SIGMA = 2;
export const WALK_SIGMA = 2.2;
/** Further apart than this (graduations) two phases could be one graduation out. */
export const AMBIGUOUS = 0.4;
/** Graduations passed from a seed to one side: more than a picture holds. */
export const MOST_STEPS = 1500;
/** Graduations without a clear stroke after which the row has ended. */
export const LONGEST_GAP = 14;
/** A step is believed from this quality on, and within so many graduations of where it was due. */
export const BELIEVED_QUALITY = 0.42;
export const BELIEVED_PHASE = 0.28;
/** Steps that foretell the next one. */
export const MEMORY = 24;
/** With fewer graduations a walk followed noise. */
export const PITCH_TRACKING_FEWEST = 12;
/** Graduations for full confidence in a followed stretch. */
export const LONG_RUN = 40;
/** A step's pitch changes no more than this from the one before. */
export const STEADY = { least: 0.9, most: 1.1 };
/** Steps that make a curve; how firmly it is held straight, more so by fewer steps than this; and how far on its slope is believed, in tens of graduations. */
export const FEWEST_TO_CURVE = 4;
export const LONG_MEMORY = 14;
export const LIGHT_HAND = 0.5;
export const FIRM_HAND = 4;
export const FORESEEN = 1.5;

// position.ts

/** Tracked places of less quality than this have no say in a fit. */
export const FIT_QUALITY = 0.4;
/** With fewer tracked places a fit says more about noise than about the tape. */
export const POSITION_FEWEST = 12;
/** Graduations off the fit at which a place counts half. */
export const FIT_OUTLIER = 0.08;
/** Of the projective density: a residual never makes the lines stand farther apart than this allows. */
export const LEAST_SLOPE = 0.3;
/** The horizon must stay outside the stretch seen: |c·t| < 1 with a margin. */
export const MOST_FORESHORTENING = 0.95;

// refine.ts

/** Another shear is taken up only for this much more sharpness, and kept only for this much. */
export const CLEARLY_SHARPER = 1.04;
export const HARDLY_DULLER = 0.93;
/** A followed row has its model from the walk: fewer rounds settle it. */
export const ROUNDS = 3;
export const ROUNDS_FOLLOWED = 2;
export const FIT_SIGMA = 3.5;

// residual.ts

/** Places followed less well than this say nothing of a bend. */
export const LEAST_QUALITY = 0.45;
/** More graduations off than this is another tape, not a bend. */
export const MOST_PHASE = 3;
/** With fewer tracked places a table says more about noise than about the tape. */
export const RESIDUAL_FEWEST = 12;
/** When nine places in ten are within this many graduations, the model needs no residual. */
export const STRAIGHT_ENOUGH = 0.06;
/** Pitches over which the residual is smoothed: 1 sigma, and where the weight ends. */
export const SMOOTHING_PITCHES = 5;
export const SMOOTHING_REACH = 4;
/** Of the places: nine in ten. */
export const NINE_IN_TEN = 0.9;
/** How firmly the residual is held level where few places tell; fewer, or places all at one spot, tell nothing. */
export const LEVEL_HAND = 0.05;
export const FEWEST_NEAR = 4;
export const NO_SPREAD = 1e-12;
/** Entries of a table at most: a tape bends no finer. */
export const LONGEST_TABLE = 200;

// sharpness.ts

/** Of a graduation: how near to the line a px counts as on it, and where the bare tape is. */
export const ON_LINE = 0.03;
export const OFF_LINE = 0.3;
/** One glaring line must not decide. */
export const MOST_CONTRAST = 0.5;
export const FEWEST_COLUMNS = 5;
/** Px: a taller band shows numbers. */
export const SHARPNESS_REACH_PX = 26;

// shear.ts

/** Log-grey from px to px: less is no edge of a stroke. */
export const LEAST_GRADIENT = 0.05;
/** Of the gradient along: a steeper one across is print or cloth, not a stroke. */
export const MOST_TURNED = 0.9;
/** Lean (px along for each px across) off the fit at which a place counts half. */
export const SHEAR_OUTLIER = 0.12;
/** With fewer edge px, or places along the row, the lean is chance. */
export const FEWEST_PIXELS = 40;
export const SHEAR_FEWEST_PLACES = 4;
/** More than this is no view of a tape anyone would take; less isn't worth a new fit. */
export const MOST_SHEAR = 0.5;
export const LEAST_SHEAR = 0.01;
/** Rows to either side: about a graduation's length of stroke, in pitches, and in px at least and at most. */
export const REACH_PITCHES = 1.2;
export const LEAST_REACH_PX = 12;
export const STROKE_REACH_PX = 40;
/** Lean off the common one at which a place counts half; rounds of weighing anew; and how firmly a change along the row is held to none. */
export const SHEAR_AGREES = 0.06;
export const SHEAR_ROUNDS = 6;
export const SHEAR_HELD = 0.05;
/** Px from a graduation within which its stroke's edges are: at least, as a share of the pitch, and at most. */
export const EDGE = { least: 2.5, share: 0.2, most: 12 };

// spectra.ts

/** Px of the row that one spectrum sees, and px from one to the next. */
export const WINDOW = 256;
export const HOP = 64;
/** A spectrum is sampled at whole multiples of 1/SAMPLES per px: four times finer than its window. */
export const SAMPLES = 1024;
/** Slower than this is the trend, faster than this is single pixels. */
export const LOWEST_BIN = 8;
/** Terms of the trend that is taken out: it keeps to light and shade. */
export const SPECTRA_TREND_EVERY = 4;
/** Strength below which a bin is taken for noise, and what it then counts. */
export const NOISE = 0.3;
export const NOISE_SHARE = 0.3;
/** In units of the signal: keeps a blank window from looking like a pure tone. */
export const SPECTRA_BLANK = 1e-3;
/** How much the frequency changes along the row, from one course tried to the next. */
export const BEND_STEP = 0.025;
/** With fewer windows no course is smooth or not. */
export const FEWEST_WINDOWS = 6;
/** Px between lines below which samples can't tell them. */
export const SHORTEST_SEEN_PX = 2.2;
/** Logarithm of the frequency from one course tried to the next; and the most it changes along the row. */
export const FREQUENCY_STEP = 0.012;
export const MOST_BEND = 0.62;
