import type { Sheet } from '../graduations/sheet.ts';
import { median } from '../numerics/solve.ts';
import type { Component } from './components.ts';
import {
  ENOUGH_DIGITS,
  LARGEST_PX,
  MOST_LINES,
  MOST_PATCHES,
  OFF_SLOPE,
  OFF_TURNED,
  OTHER_HEIGHT,
  SHAPED,
  SLANTED_SHARE,
  SLOPES,
  SMALLEST_PX,
  STEEPEST,
} from './limits.ts';

/** A line that patches of like size stand along. */
export interface WordLine {
  /** Height of the digits as they are read, in sheet pixels. */
  readonly height: number;
  /** Where the line runs at the patch that it was found from. */
  readonly middle: number;
  /** Where it crosses the left edge of the sheet, and its slope: rows may run at a slant. */
  readonly start: number;
  readonly slope: number;
  /** Digits are turned by a quarter against the line. */
  readonly turned: boolean;
}

/** Height and width of a patch as it is read. */
export function heightOf({ width, height }: Component, turned: boolean): number {
  return turned ? width : height;
}

export function widthOf({ width, height }: Component, turned: boolean): number {
  return turned ? height : width;
}

/** Finds lines of patches that may be digits: the most and tallest first. */
export function wordLines(parts: readonly Component[], sheet: Sheet, turned: boolean): WordLine[] {
  let left = parts
    .filter((part) => mayBeDigit(part, sheet, turned))
    .sort((a, b) => heightOf(b, turned) - heightOf(a, turned))
    .slice(0, MOST_PATCHES);
  const lines: WordLine[] = [];
  while (lines.length < MOST_LINES) {
    const best = bestLine(left, turned);
    if (!best) break;
    const { from, slope } = best;
    const members = left.filter((part) => isNear(part, from, slope, turned));
    if (members.length < 2) break;
    const start = median(members.map((part) => part.middleY - slope * part.middleX));
    const height = median(members.map((part) => heightOf(part, turned)));
    lines.push({ height, middle: start + slope * from.middleX, start, slope, turned });
    left = left.filter((part) => !members.includes(part));
  }
  return lines;
}

function mayBeDigit(part: Component, sheet: Sheet, turned: boolean): boolean {
  const { width, height, area, x0, x1, y0, y1 } = part;
  const tall = heightOf(part, turned);
  const wide = widthOf(part, turned);
  const broad = wide > SHAPED.thinnest * tall && wide < SHAPED.widest * tall;
  const shaped = broad && area > SHAPED.ink * width * height;
  const whole = y0 > 0 && y1 < sheet.height - 1 && x0 > 0 && x1 < sheet.width - 1;
  return tall >= SMALLEST_PX && tall < LARGEST_PX && shaped && whole;
}

/** @param parts the tallest first */
function bestLine(
  parts: readonly Component[],
  turned: boolean,
): { from: Component; slope: number } | null {
  let best: { from: Component; slope: number } | null = null;
  let most = 0;
  for (const from of parts) {
    // The tallest come first: none that follows can be worth more than this.
    const worth = Math.sqrt(heightOf(from, turned));
    if (ENOUGH_DIGITS * worth <= most) break;
    const alike = parts.filter((part) => isAlike(part, from, turned));
    if (alike.length * worth <= most) continue;
    const counts = countAlong(alike, from, turned);
    SLOPES.forEach((slope, index) => {
      const digits = Math.min(ENOUGH_DIGITS, counts[index] as number);
      const score = digits * worth * (slope ? SLANTED_SHARE : 1);
      if (score > most) [most, best] = [score, { from, slope }];
    });
  }
  return best;
}

/** For each slope, how many patches of like size stand along a line of that slope from one of them. */
function countAlong(alike: readonly Component[], from: Component, turned: boolean): number[] {
  const counts = SLOPES.map(() => 0);
  for (const part of alike) {
    for (let index = 0; index < SLOPES.length; index++) {
      if (isAlong(part, from, SLOPES[index] as number, turned)) counts[index]!++;
    }
  }
  return counts;
}

function isNear(part: Component, from: Component, slope: number, turned: boolean): boolean {
  return isAlike(part, from, turned) && isAlong(part, from, slope, turned);
}

/** Of like size, and not so far off that no slope tried leads there. */
function isAlike(part: Component, from: Component, turned: boolean): boolean {
  const height = heightOf(from, turned);
  if (Math.abs(heightOf(part, turned) - height) >= OTHER_HEIGHT * height) return false;
  const along = Math.abs(part.middleX - from.middleX);
  return Math.abs(part.middleY - from.middleY) < STEEPEST * along + OFF_TURNED * height;
}

/** Digits of one turned number stand beside the line, not on it. */
function isAlong(part: Component, from: Component, slope: number, turned: boolean): boolean {
  const off = part.middleY - from.middleY - slope * (part.middleX - from.middleX);
  return Math.abs(off) < (turned ? OFF_TURNED : OFF_SLOPE) * heightOf(from, turned);
}
