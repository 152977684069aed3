import { type RowFrame, toImage } from '../frame/frame.ts';
import { sampleColumns } from '../frame/strip.ts';
import type { Field } from '../picture/field.ts';
import { logOf } from '../picture/field.ts';
import { alongRow, type Place } from '../picture/space.ts';
import type { PhasePoint } from '../pitch/phase.ts';
import type { RowPitch } from '../pitch/pitch-spectrum.ts';
import { densityAt, distanceAt, graduationAt } from '../pitch/position.ts';
import { HIDDEN_TICKS, LEAST_TICKS, TRUSTED_QUALITY } from './limits.ts';

/**
 * The tape beside one row of graduations, redrawn so that every graduation is equally wide.
 * Its samples are log-grey, turned over where the print is lighter than its ground, so that
 * ink is always the lower value; NaN where the picture ends.
 */
export interface Sheet extends Field<'sheet'> {
  /** Pixels to a graduation. */
  readonly perTick: number;
  /** The graduation at the left edge; a fraction where the sheet begins between two. */
  readonly fromTick: number;
  /** Where the upper edge runs beside the row, in graduations; negative above it. */
  readonly fromAcross: number;
  /** From a place on the sheet to one in the copy that is measured. */
  toMeasuring(x: number, y: number): Place<'measuring'>;
}

/** A stretch of a row, from one whole graduation to another. */
export type TickRange = readonly [from: number, to: number];

/**
 * Draws the sheet of the graduations `fromTick` to `toTick` at `perTick` pixels each, from
 * `fromAcross` to `toAcross` graduations beside the row. Across the tape the scale follows the
 * square root of the local pitch, so that digits keep their shape along a tape seen at a slant.
 */
export function makeSheet(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  pitch: RowPitch,
  fromTick: number,
  toTick: number,
  perTick: number,
  fromAcross: number,
  toAcross: number,
): Sheet {
  const { model, centre, ink } = pitch;
  const width = Math.max(1, Math.round((toTick - fromTick) * perTick));
  const height = Math.round((toAcross - fromAcross) * perTick);
  const middlePitch = 1 / densityAt(model, distanceAt(model, (fromTick + toTick) / 2));
  const along = new Float32Array(width);
  const across = new Float32Array(width);
  const starts = new Float64Array(width);
  for (let x = 0; x < width; x++) {
    const distance = distanceAt(model, fromTick + x / perTick);
    along[x] = distance + centre;
    across[x] = Math.sqrt(middlePitch / densityAt(model, distance)) / perTick;
    starts[x] = fromAcross * perTick * (across[x] as number);
  }
  const columns = { u: along, v: starts, step: across };
  const values = sampleColumns(logOf(work), frame, columns, height);
  if (ink < 0) for (let at = 0; at < values.length; at++) values[at] = -(values[at] as number);
  const toMeasuring = (x: number, y: number): Place<'measuring'> => {
    const column = Math.max(0, Math.min(width - 1, x | 0));
    const beside = (fromAcross * perTick + y) * (across[column] as number);
    return toImage(frame, alongRow(along[column] as number), beside);
  };
  return { width, height, values, perTick, fromTick, fromAcross, toMeasuring };
}

/** The longest stretch of graduations whose phase was followed; null if it is too short to use. */
export function trustedRange({
  track,
  model,
}: Pick<RowPitch, 'track' | 'model'>): TickRange | null {
  let from = 0;
  let to = -1;
  for (let start = 0; start < track.length; start++) {
    if (!trusted(track[start])) continue;
    let end = start;
    let at = start;
    while (at + 1 < track.length && at - end < HIDDEN_TICKS) {
      at++;
      if (trusted(track[at])) end = at;
    }
    if (end - start > to - from) [from, to] = [start, end];
    start = at;
  }
  const first = track[from];
  const last = track[to];
  if (!first || !last || to - from < LEAST_TICKS) return null;
  return [Math.ceil(graduationAt(model, first.t) - 1), Math.floor(graduationAt(model, last.t) + 1)];
}

function trusted(point: PhasePoint | undefined): boolean {
  return point !== undefined && point.quality >= TRUSTED_QUALITY;
}
