import type { RowFrame } from '../frame/frame.ts';
import { bandSignal, type Strip, smoothed, strip } from '../frame/strip.ts';
import type { Field } from '../picture/field.ts';
import { logOf } from '../picture/field.ts';
import { type AlongRow, alongRow } from '../picture/space.ts';
import type { Graduated } from './along.ts';
import {
  BAND_REACH,
  FIT_SIGMAS,
  PITCH_SPECTRUM_LEAST_SCORE,
  SEARCHES,
  TRACK_SIGMA,
  WINDOW,
} from './limits.ts';
import { type PhasePoint, phaseTrack } from './phase.ts';
import { fitProjective, type PositionModel } from './position.ts';
import { bestCourse, type Course, spectraOf } from './spectra.ts';

/** Rows of a strip that are averaged into one signal: from v to v, both in. */
export type Band = readonly [low: number, high: number];

/** The graduations found along a row. */
export interface RowPitch extends Graduated<'measuring'> {
  readonly track: readonly PhasePoint<'measuring'>[];
  readonly band: Band;
  /** Px by which the signal is smoothed (1 sigma): 0 unless the strokes are far apart. */
  readonly smoothing: number;
  /** Darkness along the row, one value per px from u = `from` to `to`. */
  readonly signal: Float32Array;
  readonly from: AlongRow<'measuring'>;
  readonly to: AlongRow<'measuring'>;
  /** 1 when whole graduations are dark, −1 when they are light. */
  readonly ink: 1 | -1;
  /** How clearly the pitch stands out: at best 0.7 by spectra, 1 when followed. */
  readonly score: number;
  /** Given when the row was followed from a seed and counts only from u to u. */
  readonly followed?: Followed;
}

export interface Followed {
  readonly from: AlongRow<'measuring'>;
  readonly to: AlongRow<'measuring'>;
  /** Px between graduations at the seed. */
  readonly pitch: number;
  /** Graduations passed. */
  readonly count: number;
  /** Given round a bend, where the residual is as fine as it was walked: how far its lines lean off the frame at most. */
  readonly leanOff?: number;
}

/** A row found in the small picture can be some px off: the strokes are sought on both sides too. */
export const BANDS: readonly Band[] = [
  [-8, -2],
  [-3, 3],
  [2, 8],
];

interface Found extends Course {
  readonly band: Band;
  readonly smoothing: number;
  readonly signal: Float32Array;
}

/**
 * The pitch of a row from spectra of its stretches: the smooth course of frequency that most of
 * them agree on, then made exact by its phase. Null when the row is shorter than 256 px or shows
 * no pitch.
 */
export function pitchBySpectra(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
): RowPitch | null {
  const along = strip(logOf(work), frame, BAND_REACH);
  const { from, to, width } = along;
  if (width < WINDOW) return null;
  const centre = alongRow<'measuring'>((from + to) / 2);
  // Smoothing leaves noise that can score by a hair more than a clear row: when the best has no
  // phase to follow, the next best is tried.
  for (const { band, smoothing, signal, score, frequency, bend } of coursesOf(along)) {
    // The integral of f0/(1 + g·t)² is f0·t/(1 + g·t).
    const rough = { a: frequency, b: 0, c: bend / ((to - from) / 2) };
    const model = settled(signal, from, centre, rough);
    if (!model) continue;
    const track = phaseTrack(signal, from, centre, model, TRACK_SIGMA);
    return { model, centre, track, band, smoothing, signal, from, to, ink: 1, score };
  }
  return null;
}

/** The best course of each search in each band, the clearest first. */
function coursesOf(along: Strip<'measuring'>): Found[] {
  const found: Found[] = [];
  for (const band of BANDS) {
    const plain = bandSignal(along, band[0], band[1]);
    for (const { smoothing, longest, shortest } of SEARCHES) {
      const signal = smoothing ? smoothed(plain, smoothing) : plain;
      const course = bestCourse(
        spectraOf(signal),
        along.width,
        1 / longest,
        1 / shortest,
        PITCH_SPECTRUM_LEAST_SCORE,
      );
      if (course && course.score >= PITCH_SPECTRUM_LEAST_SCORE)
        found.push({ ...course, band, smoothing, signal });
    }
  }
  return found.sort((one, other) => other.score - one.score);
}

function settled(
  signal: Float32Array,
  from: AlongRow<'measuring'>,
  centre: AlongRow<'measuring'>,
  rough: PositionModel<'measuring'>,
): PositionModel<'measuring'> | null {
  let model: PositionModel<'measuring'> | null = rough;
  for (const sigma of FIT_SIGMAS) {
    model = fitProjective(phaseTrack(signal, from, centre, model, sigma), model);
    if (!model) return null;
  }
  return model;
}
