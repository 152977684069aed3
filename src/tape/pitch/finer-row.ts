import { originAside, type RowFrame } from '../frame/frame.ts';
import { bandSignal, type Strip, strip } from '../frame/strip.ts';
import type { Field } from '../picture/field.ts';
import { logOf } from '../picture/field.ts';
import {
  FINER,
  FINER_ROW_LEAST_SCORE,
  HALF_BAND_PX,
  LONGEST_PX,
  REACH_PX,
  SHORTEST_PX,
  STEP_PX,
  WINDOW,
} from './limits.ts';
import { pitchBySpectra, type RowPitch } from './pitch-spectrum.ts';
import { bestCourse, spectraOf } from './spectra.ts';

/** A frame moved across its row, and the pitch found there. */
export interface FinerRow {
  readonly frame: RowFrame<'measuring'>;
  readonly pitch: RowPitch;
}

/**
 * Where the digits of a tape are bolder than its lines, the row found is that of the digits: the
 * lines run beside it. Gives the clearest rows of finer pitch to either side, at most one a side.
 */
export function finerRows(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  pitchPx: number,
): FinerRow[] {
  const along = strip(logOf(work), frame, REACH_PX + HALF_BAND_PX);
  if (along.width < WINDOW) return [];
  const longest = Math.min(LONGEST_PX, FINER * pitchPx);
  if (longest <= SHORTEST_PX) return [];
  return [1, -1].flatMap((side) => {
    const shift = clearestShift(along, side, longest);
    if (shift === undefined) return [];
    const moved = { ...frame, origin: originAside(frame, shift) };
    const pitch = pitchBySpectra(work, moved);
    return pitch ? [{ frame: moved, pitch }] : [];
  });
}

function clearestShift(along: Strip, side: number, longest: number): number | undefined {
  let best: { shift: number; score: number } | undefined;
  for (let away = STEP_PX; away <= REACH_PX; away += STEP_PX) {
    const shift = side * away;
    const signal = bandSignal(along, shift - HALF_BAND_PX, shift + HALF_BAND_PX);
    const least = best?.score ?? FINER_ROW_LEAST_SCORE;
    const course = bestCourse(spectraOf(signal), along.width, 1 / longest, 1 / SHORTEST_PX, least);
    if (course && course.score > least) best = { shift, score: course.score };
  }
  return best?.shift;
}
