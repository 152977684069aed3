import type { RowFrame } from '../frame/frame.ts';
import { makeSheet, type Sheet, type TickRange } from '../graduations/sheet.ts';
import type { TickPattern } from '../graduations/tick-pattern.ts';
import { median } from '../numerics/order.ts';
import type { Field } from '../picture/field.ts';
import type { RowPitch } from '../pitch/pitch-spectrum.ts';
import { type Component, components } from './components.ts';
import { cutApart } from './cut-apart.ts';
import { inkOf } from './ink.ts';
import {
  ALIKE,
  DEEP_MM,
  DIGIT_STANDS,
  FEWEST_DIGITS,
  LARGEST_MM,
  LEAST_INK,
  MOST_ROWS,
  NEXT_ROW,
  OUTWARD_MM,
  SMALLEST_MM,
  THIN_STANDS,
  THINNEST_MM,
  WIDEST,
} from './limits.ts';
import { cellOf, type NumberRow, type NumberRows } from './number-row.ts';
import { putBack } from './put-back.ts';
import { gapsOf } from './spaced.ts';
import { wipeByPattern } from './wipe-lines.ts';

/** For each telling pattern, pixels to a graduation and to a printed millimetre: digits come out alike. */
const SCALES: Readonly<Record<number, { readonly perTick: number; readonly mmPx: number }>> = {
  10: { perTick: 8, mmPx: 8 },
  16: { perTick: 12, mmPx: 7.56 },
  8: { perTick: 24, mmPx: 7.56 },
};

/** The scale of a sheet for numbers; throws for a pattern that isn't valid. */
function scaleOf({ subdivisions }: TickPattern) {
  const scale = SCALES[subdivisions];
  if (!scale) throw new Error(`not a pattern of a tape: ${subdivisions} graduations per number`);
  return scale;
}

/** Draws the sheet in which the numbers of a valid pattern are looked for. */
export function numberSheet(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  pitch: RowPitch,
  [first, last]: TickRange,
  pattern: TickPattern,
): Sheet {
  const { perTick, mmPx } = scaleOf(pattern);
  const { side, zoneMiddle, subdivisions } = pattern;
  const deep = (DEEP_MM * mmPx) / perTick;
  const outward = (OUTWARD_MM * mmPx) / perTick;
  const top = zoneMiddle - (side > 0 ? outward : deep);
  const bottom = zoneMiddle + (side > 0 ? deep : outward);
  const [from, to] = [first - 0.5 * subdivisions, last + 0.5 * subdivisions];
  return makeSheet(work, frame, pitch, from, to, perTick, top, bottom);
}

/** Finds rows of numbers on such a sheet, one number to each interval of the pattern; best first. */
export function numberRows(sheet: Sheet, pattern: TickPattern, range: TickRange): NumberRows {
  const { mmPx } = scaleOf(pattern);
  const { ink, ground } = inkOf(sheet, Math.round(7 * mmPx));
  const before = ink.slice();
  wipeByPattern({ sheet, ink }, pattern, range, mmPx);
  const { labels, components: parts } = components(ink, sheet.width, sheet.height);
  const period = Math.round(pattern.subdivisions * sheet.perTick);
  const phase = sheet.fromTick * sheet.perTick;
  let ids = parts.length;
  const rows = digitRows(parts, sheet, mmPx).map(({ digits, height, middle }): NumberRow => {
    const wiped = { width: sheet.width, before, labels };
    const numbers = cutApart(digits, period, phase).map((number) =>
      putBack(number, height, wiped, () => ++ids),
    );
    const gaps = gapsOf(numbers, height, { ...sheet, ground, before });
    const cells = numbers.map(({ parts: whole }, i) => ({
      ...cellOf(whole, sheet),
      gap: gaps[i] === true,
    }));
    const across = sheet.fromAcross + middle / sheet.perTick;
    return { cells, height, middle, turned: false, across };
  });
  return { sheet, labels, ground, rows };
}

interface DigitRow {
  readonly digits: readonly Component[];
  readonly height: number;
  readonly middle: number;
}

/** Patches of like height in a row along the tape: the most and tallest first. */
function digitRows(parts: readonly Component[], sheet: Sheet, mmPx: number): DigitRow[] {
  let left = parts.filter((part) => mayBeDigit(part, sheet, mmPx));
  const rows: DigitRow[] = [];
  while (rows.length < MOST_ROWS) {
    const alike = largestGroup(left);
    if (alike.length < FEWEST_DIGITS) break;
    const height = median(alike.map((part) => part.height));
    const middle = median(alike.map((part) => part.middleY));
    const digits = parts.filter((part) => belongs(part, height, middle, mmPx));
    rows.push({ digits, height, middle });
    left = left.filter((part) => Math.abs(part.middleY - middle) >= NEXT_ROW * height);
  }
  return rows;
}

function mayBeDigit(part: Component, sheet: Sheet, mmPx: number): boolean {
  const { width, height, area } = part;
  const sized = height > SMALLEST_MM * mmPx && height < LARGEST_MM * mmPx;
  const broad = width > THINNEST_MM * mmPx && width < WIDEST * height;
  const shaped = broad && area > LEAST_INK * width * height;
  return sized && shaped && part.y0 > 0 && part.y1 < sheet.height - 1;
}

function largestGroup(parts: readonly Component[]): readonly Component[] {
  let best: readonly Component[] = [];
  let most = 0;
  for (const one of parts) {
    const alike = parts.filter(
      (part) =>
        Math.abs(part.middleY - one.middleY) < ALIKE * one.height &&
        Math.abs(part.height - one.height) < ALIKE * one.height,
    );
    const score = alike.length * Math.sqrt(one.height);
    if (score > most) [most, best] = [score, alike];
  }
  return best;
}

/** Thin strokes (a plain 1, or dirt) count only if they stand exactly like their neighbours. */
function belongs(part: Component, height: number, middle: number, mmPx: number): boolean {
  const thin = part.width <= THINNEST_MM * mmPx;
  const { off, lowest, tallest } = thin ? THIN_STANDS : DIGIT_STANDS;
  return (
    Math.abs(part.middleY - middle) < off * height &&
    part.height > lowest * height &&
    part.height < tallest * height &&
    part.width < WIDEST * part.height &&
    part.width >= 2
  );
}
