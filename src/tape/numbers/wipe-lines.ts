import type { Sheet, TickRange } from '../graduations/sheet.ts';
import { modulo } from '../graduations/tick-classes.ts';
import type { TickPattern } from '../graduations/tick-pattern.ts';
import {
  BREAK,
  BREAK_MM,
  DRAWN,
  LINE_MM,
  LONGEST_BREAK_PX,
  OUTWARD_LINE_MM,
  UNENDING,
} from './limits.ts';

/** Ink that may be wiped column by column. */
interface Wiped {
  readonly sheet: Sheet;
  readonly ink: Uint8Array;
}

/**
 * Wipes the graduations from the ink of a sheet, in place, each as far as its length in the
 * pattern says, so that numbers are left. `mmPx` is a printed millimetre in sheet pixels.
 */
export function wipeByPattern(
  { sheet, ink }: Wiped,
  pattern: TickPattern,
  [first, last]: TickRange,
  mmPx: number,
): void {
  const { side, subdivisions, lengths, zoneTo, zoneMiddle, zoneFrom } = pattern;
  const halfZone = 10 * (side > 0 ? zoneTo - zoneMiddle : zoneMiddle - zoneFrom);
  const start = Math.round((zoneMiddle - sheet.fromAcross) * sheet.perTick);
  const halfWidth = Math.max(2, Math.round(LINE_MM * mmPx));
  const longestBreak = Math.max(2, BREAK_MM * mmPx);
  for (let tick = first; tick <= last; tick++) {
    const x = Math.round((tick - sheet.fromTick) * sheet.perTick);
    const length = lengths[modulo(tick, subdivisions)] ?? 0;
    const drawn = Math.round(((halfZone + length) / 10) * sheet.perTick + 0.5 * mmPx);
    const inward = length >= UNENDING ? sheet.height : drawn;
    const outward = Math.round(OUTWARD_LINE_MM * mmPx);
    for (const [direction, run] of [[side, inward] as const, [-side, outward] as const]) {
      let missed = 0;
      for (let step = 0, y = start; step < run && inside(y, sheet.height); step++, y += direction) {
        if (inkBetween(ink, sheet, y, x - 1, x + 1)) missed = 0;
        else if (++missed > longestBreak) break;
        wipe(ink, sheet, y, x - halfWidth, x + halfWidth);
      }
    }
  }
}

/**
 * Wipes the graduations from the ink of a sheet, in place, each as far as it can be followed from
 * the common zone, where no pattern of lengths is known. Stops where the ink is no longer a line.
 */
export function wipeByFollowing(
  { sheet, ink }: Wiped,
  pattern: TickPattern,
  [first, last]: TickRange,
): void {
  const { height, perTick, fromTick, fromAcross } = sheet;
  const row = (across: number) => Math.round((across - fromAcross) * perTick);
  const [start, zoneFrom, zoneTo] = [
    row(pattern.zoneMiddle),
    row(pattern.zoneFrom) - 2,
    row(pattern.zoneTo) + 2,
  ];
  const drawn = Math.ceil(DRAWN * pattern.duty * perTick) + 1;
  const halfWidth = Math.max(1, Math.min(Math.round(BREAK * perTick), drawn));
  const longestBreak = Math.max(2, Math.min(LONGEST_BREAK_PX, Math.round(BREAK * perTick)));
  const before = ink.slice();
  for (let tick = first; tick <= last; tick++) {
    const x = Math.round((tick - fromTick) * perTick);
    for (const direction of [1, -1]) {
      let missed = 0;
      for (let y = start; inside(y, height); y += direction) {
        if (inkBetween(before, sheet, y, x - 1, x + 1)) missed = 0;
        else if (++missed > longestBreak) break;
        const across = inkBetween(ink, sheet, y, x - halfWidth - 2, x + halfWidth + 2);
        // A digit or a bar; in the zone itself lines may merge in a blurred picture.
        if (across > 2 * halfWidth + 2 && (y < zoneFrom || y > zoneTo)) break;
        wipe(ink, sheet, y, x - halfWidth, x + halfWidth);
      }
    }
  }
}

function inside(y: number, height: number): boolean {
  return y >= 0 && y < height;
}

/** Pixels of ink in a row of the sheet from x0 to x1. */
function inkBetween(ink: Uint8Array, { width }: Sheet, y: number, x0: number, x1: number): number {
  let count = 0;
  const end = Math.min(width - 1, x1);
  for (let x = Math.max(0, x0); x <= end; x++) count += ink[y * width + x] as number;
  return count;
}

function wipe(ink: Uint8Array, { width }: Sheet, y: number, x0: number, x1: number): void {
  const from = y * width;
  ink.fill(0, from + Math.max(0, x0), from + Math.max(0, Math.min(width, x1 + 1)));
}
