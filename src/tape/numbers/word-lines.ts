import type { Sheet } from '../graduations/sheet.ts';
import { median } from '../numerics/order.ts';
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
    const places = placesOf(left, turned);
    const best = bestLine(places, turned);
    if (!best) break;
    const { from, slope } = best;
    const members = membersOf(places, from, slope, turned).map((at) => left[at] as Component);
    if (members.length < 2) break;
    const start = median(members.map((part) => part.middleY - slope * part.middleX));
    const height = median(members.map((part) => heightOf(part, turned)));
    const middle = start + slope * (places.x[from] as number);
    lines.push({ height, middle, start, slope, turned });
    const gone = new Set(members);
    left = left.filter((part) => !gone.has(part));
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

/** Where patches stand and how tall they are, in arrays: every one is compared with every other. */
interface Places {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly height: Float64Array;
  /** Which of them were last found alike. */
  readonly alike: Int32Array;
}

function placesOf(parts: readonly Component[], turned: boolean): Places {
  return {
    x: Float64Array.from(parts, ({ middleX }) => middleX),
    y: Float64Array.from(parts, ({ middleY }) => middleY),
    height: Float64Array.from(parts, (part) => heightOf(part, turned)),
    alike: new Int32Array(parts.length),
  };
}

/** @param places the tallest first */
function bestLine(places: Places, turned: boolean): { from: number; slope: number } | null {
  let best: { from: number; slope: number } | null = null;
  let most = 0;
  for (let from = 0; from < places.height.length; from++) {
    // The tallest come first: none that follows can be worth more than this.
    const worth = Math.sqrt(places.height[from] as number);
    if (ENOUGH_DIGITS * worth <= most) break;
    const alike = findAlike(places, from);
    if (alike * worth <= most) continue;
    for (const slope of SLOPES) {
      const digits = Math.min(ENOUGH_DIGITS, countAlong(places, alike, from, slope, turned));
      const score = digits * worth * (slope ? SLANTED_SHARE : 1);
      if (score > most) [most, best] = [score, { from, slope }];
    }
  }
  return best;
}

/** Those of like size, and not so far off that no slope tried leads there: how many. */
function findAlike({ x, y, height, alike }: Places, from: number): number {
  const [fromX, fromY, tall] = [x[from], y[from], height[from]] as [number, number, number];
  const [other, off] = [OTHER_HEIGHT * tall, OFF_TURNED * tall];
  let count = 0;
  for (let i = 0; i < x.length; i++) {
    if (Math.abs((height[i] as number) - tall) >= other) continue;
    const along = Math.abs((x[i] as number) - fromX);
    if (Math.abs((y[i] as number) - fromY) < STEEPEST * along + off) alike[count++] = i;
  }
  return count;
}

/** How many of the first `count` patches found alike stand along a line of that slope from one of them. */
function countAlong(
  places: Places,
  count: number,
  from: number,
  slope: number,
  turned: boolean,
): number {
  let along = 0;
  for (let i = 0; i < count; i++) {
    if (isAlong(places, places.alike[i] as number, from, slope, turned)) along++;
  }
  return along;
}

function membersOf(places: Places, from: number, slope: number, turned: boolean): number[] {
  const count = findAlike(places, from);
  const alike = Array.from(places.alike.subarray(0, count));
  return alike.filter((at) => isAlong(places, at, from, slope, turned));
}

/** Digits of one turned number stand beside the line, not on it. */
function isAlong(
  { x, y, height }: Places,
  at: number,
  from: number,
  slope: number,
  turned: boolean,
): boolean {
  const off =
    (y[at] as number) - (y[from] as number) - slope * ((x[at] as number) - (x[from] as number));
  return Math.abs(off) < (turned ? OFF_TURNED : OFF_SLOPE) * (height[from] as number);
}
