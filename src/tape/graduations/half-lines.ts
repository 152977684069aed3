import type { RowFrame } from '../frame/frame.ts';
import { median } from '../numerics/order.ts';
import type { Field } from '../picture/field.ts';
import type { RowPitch } from '../pitch/pitch-spectrum.ts';
import {
  BESIDE,
  HALF_LINES_LEAST_CONTRAST,
  HALF_LINES_PER_TICK,
  LIKE_ITS_NEIGHBOURS,
  STRETCH,
} from './limits.ts';
import { makeSheet, type TickRange } from './sheet.ts';

/**
 * Whether some stretch of a row has lines half-way between its graduations too: rules often have
 * half millimetres in the first centimetres only, and there the row was followed by its whole ones.
 */
export function hasHalfLines(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  pitch: RowPitch,
  [from, to]: TickRange,
  zone: { readonly zoneFrom: number; readonly zoneTo: number },
): boolean {
  const [low, high] = [zone.zoneFrom - BESIDE, zone.zoneTo + BESIDE];
  const sheet = makeSheet(work, frame, pitch, from - 0.5, to + 0.5, HALF_LINES_PER_TICK, low, high);
  const halves = Array.from({ length: to - from }, (_, gap) => {
    const [whole, half, next] = [gap + 0.5, gap + 1, gap + 1.5].map((tick) =>
      darker(sheet, tick * HALF_LINES_PER_TICK),
    ) as [number, number, number];
    return half > HALF_LINES_LEAST_CONTRAST && half > (LIKE_ITS_NEIGHBOURS * (whole + next)) / 2;
  });
  let run = 0;
  return halves.some((is) => {
    run = is ? run + 1 : 0;
    return run >= STRETCH;
  });
}

/** How much darker a column is than the ground a quarter to both sides, in the rows where it is darkest. */
function darker({ width, height, values }: Field, at: number): number {
  const aside = HALF_LINES_PER_TICK / 4;
  const column = (x: number, y: number) => values[y * width + Math.round(x)] ?? Number.NaN;
  const rows = Array.from(
    { length: height },
    (_, y) => (column(at - aside, y) + column(at + aside, y)) / 2 - column(at, y),
  ).filter((value) => !Number.isNaN(value));
  // A shorter line is missing from the rows on the numbers' side.
  const best = rows.sort((one, other) => other - one).slice(0, Math.ceil(rows.length / 2));
  return median(best) || 0;
}
