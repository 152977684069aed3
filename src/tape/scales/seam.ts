import type { Claim } from '../claims/claim.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import { makeSheet, type Sheet } from '../graduations/sheet.ts';
import { median } from '../numerics/order.ts';
import type { Field } from '../picture/field.ts';
import { LINES_SHARE, PAST_SEAM_MM, SEAM, SEAM_PER_TICK, SEAM_WINDOW_TICKS } from './limits.ts';

/** A stretch of a row where it runs along such a gap, in graduations, and how far beside the row that lies. */
export interface Seam {
  readonly from: number;
  readonly to: number;
  readonly across: number;
}

/**
 * Where two lengths of tape meet and their lines happen to stand in line, they look like one row
 * of longer lines, with numbers on either side; the ground between them doesn't. Given are the
 * stretches with such a gap between the outer end of the lines and the numbers.
 */
export function seamsOf(work: Field<'measuring'>, row: FollowedRow, claim: Claim): Seam[] {
  const { frame, pitch, range, pattern } = row;
  const { zoneFrom, zoneTo, contrast } = pattern;
  const half = (claim.digitShare * claim.ticksPerNumber) / 2;
  const below = claim.across > pattern.zoneMiddle;
  const [low, high] = below
    ? [zoneFrom, Math.max(zoneTo, claim.across - half)]
    : [Math.min(zoneFrom, claim.across + half), zoneTo];
  const sheet = makeSheet(work, frame, pitch, range[0], range[1], SEAM_PER_TICK, low, high);
  const past = Math.ceil((PAST_SEAM_MM / claim.mmPerTick) * SEAM_PER_TICK);
  const seams: Seam[] = [];
  for (let from = 0; from < range[1] - range[0]; from += SEAM_WINDOW_TICKS >> 1) {
    const y = seamIn(sheet, from, past, contrast);
    const at = range[0] + from;
    if (y !== undefined)
      seams.push({ from: at, to: at + SEAM_WINDOW_TICKS, across: low + (y + 0.5) / SEAM_PER_TICK });
  }
  return seams;
}

/** The row of the sheet that is a gap with lines to both its sides, in a window of it. */
function seamIn(sheet: Sheet, from: number, past: number, contrast: number): number | undefined {
  const level = (part: number) =>
    Array.from({ length: sheet.height }, (_, y) => along(sheet, y, from + part));
  const [lines, ground] = [level(0), level(0.5)];
  const isLined = (y: number) =>
    (ground[y] as number) - (lines[y] as number) > LINES_SHARE * contrast;
  for (const sign of [1, -1]) {
    const grey = ground.map((one) => sign * one);
    for (let y = past; y < grey.length - past; y++) {
      const least = (grey[y] as number) + SEAM * contrast;
      const before = Math.max(...grey.slice(0, y));
      const after = Math.max(...grey.slice(y + 1));
      if (before > least && after > least && isLined(y - past) && isLined(y + past)) return y;
    }
  }
  return undefined;
}

/** The median of one row of a sheet at the same part of every graduation in a window from `tick` on. */
function along({ values, width }: Sheet, y: number, tick: number): number {
  const greys: number[] = [];
  const end = Math.min(width, (tick + SEAM_WINDOW_TICKS) * SEAM_PER_TICK);
  for (let x = tick * SEAM_PER_TICK; x < end; x += SEAM_PER_TICK)
    greys.push(values[y * width + x] as number);
  return median(greys.filter((grey) => !Number.isNaN(grey)));
}
