import { bandSignal, type Strip } from '../frame/strip.ts';
import { alongRow } from '../picture/space.ts';
import { fromCentre } from './along.ts';
import {
  FEWEST_COLUMNS,
  LEAST_REACH_PX,
  MOST_CONTRAST,
  OFF_LINE,
  ON_LINE,
  REACH_PITCHES,
  SHARPNESS_REACH_PX,
} from './limits.ts';
import type { RowPitch } from './pitch-spectrum.ts';
import { densityAt, graduationAt } from './position.ts';
import { middlePitch } from './shear.ts';

/** Rows to either side over which the lines are averaged. */
export const sharpnessReach = (pitch: RowPitch) =>
  Math.round(
    Math.max(LEAST_REACH_PX, Math.min(SHARPNESS_REACH_PX, REACH_PITCHES * middlePitch(pitch))),
  );

/**
 * How strongly the lines stand out when rows are averaged over a tall band, in units of the log
 * signal: highest when the frame leans as the strokes do. 0 when no line is seen.
 */
export function sharpness(strip: Strip<'measuring'>, pitch: RowPitch): number {
  const columns = lineColumns(strip, pitch);
  const reach = Math.min(strip.reach, sharpnessReach(pitch));
  let best = 0;
  for (const [low, high] of [
    [-reach, 0],
    [-(reach >> 1), reach >> 1],
    [0, reach],
  ] as const) {
    best = Math.max(best, meanContrast(bandSignal(strip, low, high), columns));
  }
  return best;
}

interface LineColumn {
  readonly at: number;
  /** Px to the bare tape on both sides. */
  readonly aside: number;
}

function lineColumns(
  strip: Strip<'measuring'>,
  { model, centre, followed }: RowPitch,
): LineColumn[] {
  const columns: LineColumn[] = [];
  for (let at = 2; at < strip.width - 2; at++) {
    const u = alongRow<'measuring'>(at + strip.from);
    if (followed && (u < followed.from || u > followed.to)) continue;
    const k = graduationAt(model, fromCentre({ centre }, u));
    const pitch = 1 / Math.abs(densityAt(model, fromCentre({ centre }, u)));
    if (Math.abs(k - Math.round(k)) * pitch > Math.max(1, ON_LINE * pitch)) continue;
    const aside = Math.max(2, Math.round(OFF_LINE * pitch));
    if (at - aside >= 0 && at + aside < strip.width) columns.push({ at, aside });
  }
  return columns;
}

function meanContrast(signal: Float32Array, columns: readonly LineColumn[]): number {
  if (columns.length <= FEWEST_COLUMNS) return 0;
  let sum = 0;
  for (const { at, aside } of columns) {
    const bare = ((signal[at - aside] as number) + (signal[at + aside] as number)) / 2;
    const contrast = (signal[at] as number) - bare;
    sum += Math.max(-MOST_CONTRAST, Math.min(MOST_CONTRAST, contrast));
  }
  return Math.abs(sum / columns.length);
}
