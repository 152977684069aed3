import type { Sheet } from '../graduations/sheet.ts';
import { modulo } from '../graduations/tick-classes.ts';
import type { TickPattern } from '../graduations/tick-pattern.ts';
import type { NumberRow } from '../numbers/number-row.ts';
import { median } from '../numerics/order.ts';
import {
  ALONE,
  ALONE_BARE,
  ALONE_FEWEST,
  ALONE_LONGEST,
  BARE,
  FULL,
  FULL_LINES_FEWEST,
  GROUND_AWAY,
  INKED,
  LEAN_STEP,
  MOST_LEAN,
  MOST_TRIED,
  TELLING,
} from './limits.ts';

/** Lines that cross the tape through the band of its numbers: one to each number, as boxes have them. */
export interface FullLines {
  /** Which graduation of the fold they are, and of how many. */
  readonly longAt: number;
  readonly fold: number;
  /** How far they have gone aside where the middle of the numbers is, in graduations. */
  readonly aside: number;
}

/**
 * Finds lines followed from their own graduations through the band of the numbers and out of it,
 * by one common lean. Seen beside numbers only: what is centred on its line leaves it no room
 * (measured on photographs: at none of 165 centred rows). Null where there are none, or none surely.
 *
 * @param longest which graduation of the fold is surely the longest by its own length, if one is.
 */
export function fullLines(
  sheet: Sheet,
  pattern: TickPattern,
  fold: number,
  row: NumberRow,
  longest?: number,
): FullLines | null {
  const way = wayThrough(sheet, pattern, row);
  let best: { lean: number; longAt: number; score: number } | null = null;
  for (let lean = -MOST_TRIED; lean <= MOST_TRIED + 1e-9; lean += LEAN_STEP) {
    const found = bestClass(sheet, pattern, fold, row, way, lean, longest);
    if (found && (!best || found.score > best.score)) best = { ...found, lean };
  }
  if (!best || Math.abs(best.lean) > MOST_LEAN) return null;
  const { lean, longAt } = best;
  return { longAt, fold, aside: (lean * (row.middle - way.start)) / sheet.perTick };
}

interface Way {
  /** Row of the sheet that lean is counted from: the middle of the graduations' common zone. */
  readonly start: number;
  /** Rows from the zone through the numbers, and those of them that the numbers stand in. */
  readonly rows: readonly number[];
  readonly among: readonly number[];
}

function wayThrough(sheet: Sheet, pattern: TickPattern, { cells }: NumberRow): Way {
  const rowAt = (across: number) => Math.round((across - sheet.fromAcross) * sheet.perTick);
  const [top, bottom] = [median(cells.map(({ y0 }) => y0)), median(cells.map(({ y1 }) => y1))];
  const start = rowAt(pattern.zoneMiddle);
  const below = (top + bottom) / 2 > start;
  const from = below ? rowAt(pattern.zoneTo) : Math.round(top);
  const to = below ? Math.round(bottom) : rowAt(pattern.zoneFrom);
  const step = Math.max(1, Math.round(sheet.perTick / 6));
  const count = Math.max(0, Math.floor((to - from) / step) + 1);
  const rows = Array.from({ length: count }, (_, i) => from + i * step).filter(
    (y) => y >= 0 && y < sheet.height,
  );
  return { start, rows, among: rows.filter((y) => y >= top && y <= bottom) };
}

/** The class whose lines are inked all the way, where no other is among the numbers. */
function bestClass(
  sheet: Sheet,
  pattern: TickPattern,
  fold: number,
  row: NumberRow,
  way: Way,
  lean: number,
  longest: number | undefined,
): { longAt: number; score: number } | null {
  const classes = Array.from({ length: fold }, () => ({ count: 0, all: 0, among: 0 }));
  const first = Math.ceil(sheet.fromTick);
  const last = Math.floor(sheet.fromTick + (sheet.width - 1) / sheet.perTick);
  for (let tick = first; tick <= last; tick++) {
    const xAt = (y: number) =>
      Math.round((tick - sheet.fromTick) * sheet.perTick + lean * (y - way.start));
    if (isUnderNumber(row, xAt)) continue;
    const seen = classes[modulo(tick, fold)] as (typeof classes)[number];
    seen.count++;
    seen.all += inkedShare(sheet, INKED * pattern.contrast, way.rows, xAt);
    seen.among += inkedShare(sheet, INKED * pattern.contrast, way.among, xAt);
  }
  const shares = classes
    .map(({ count, all, among }, longAt) => ({
      longAt,
      count,
      all: all / count,
      among: among / count,
    }))
    .filter(({ count }) => count >= FULL_LINES_FEWEST)
    .sort((one, other) => other.among - one.among);
  const full = shares[0];
  if (!full || shares.length < 2) return null;
  // Few lines of a class are clear of the numbers where its numbers stand: what is there may be digits.
  const next = shares.slice(1).find(({ count }) => count >= TELLING * full.count);
  const others = next?.among ?? 0;
  const firm = full.all >= FULL && full.among >= FULL && others <= BARE;
  const alone = full.longAt === longest ? ALONE_LONGEST : ALONE;
  if (!firm && !standsAlone(full, others, alone)) return null;
  return { longAt: full.longAt, score: full.all + full.among - others };
}

/** Thin, worn or bent lines are inked on part of their way only: they tell where next to nothing else is there. */
function standsAlone(
  { count, all, among }: { count: number; all: number; among: number },
  others: number,
  least: number,
): boolean {
  return count >= ALONE_FEWEST && all >= least && among >= least && others <= ALONE_BARE;
}

function isUnderNumber({ cells }: NumberRow, xAt: (y: number) => number): boolean {
  return cells.some(({ x0, x1, y0, y1 }) => {
    const [one, other] = [xAt(y0), xAt(y1)];
    return Math.max(one, other) >= x0 - 1 && Math.min(one, other) <= x1 + 1;
  });
}

/** Share of the rows in which a line is darker than the ground at its sides; 0 where there are none. */
function inkedShare(
  { width, values, perTick }: Sheet,
  least: number,
  rows: readonly number[],
  xAt: (y: number) => number,
): number {
  const away = Math.max(2, Math.round(GROUND_AWAY * perTick));
  const inked = rows.filter((y) => {
    const at = y * width + xAt(y);
    const grey = (by: number) => values[at + by] as number;
    const ground = (grey(-away) + grey(away)) / 2;
    const line = (grey(-1) + 2 * grey(0) + grey(1)) / 4;
    return ground - line > least;
  });
  return rows.length > 0 ? inked.length / rows.length : 0;
}
