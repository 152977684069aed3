import type { LongLine } from '../graduations/tick-classes.ts';
import type { NumberCell } from '../numbers/number-row.ts';
import {
  CLEARLY_NEARER,
  GREATEST_GAP,
  LEAST_GAP,
  LEAST_LIKENESS,
  LEAST_LIKENESS_BETWEEN,
  MOVES,
  NARROWEST,
  NEAR_THE_LINE,
  ON_THE_LINE,
  OVER_THE_LINE,
  STEADIER,
  STEADY,
  WIDEST,
} from './limits.ts';

/** The long line a number belongs to, counted in long lines from `longAt`. */
export type LineOf = (cell: NumberCell) => number;

/** Where some edge of the numbers stands between long lines. */
export interface MeanOffset {
  /** Mean distance from the nearest long line as a share of the interval, −½ to ½; right is positive. */
  readonly mean: number;
  /** 1 if all stand alike, 0 if anywhere. */
  readonly likeness: number;
}

interface MeanOffsets {
  readonly centre: MeanOffset;
  readonly left: MeanOffset;
  readonly right: MeanOffset;
}

/** Which line numbers label, by where they stand, in the sheet's own left and right. */
export type Alignment = MeanOffsets &
  (
    | {
        /** Over the line; left of it, just before it; or right of it, just after it. */
        readonly kind: 'centred' | 'before' | 'after';
        readonly line: LineOf;
      }
    | {
        /** The picture doesn't tell: the line if they stand before it, and if after it. */
        readonly kind: 'unsure';
        readonly before: LineOf;
        readonly after: LineOf;
      }
  );

type Lines = Pick<LongLine, 'subdivisions' | 'longAt'>;

/** Tells which long line each number belongs to; null if they have nothing to do with the lines. */
export function alignment(cells: readonly NumberCell[], lines: Lines): Alignment | null {
  const { subdivisions, longAt } = lines;
  const useful = cells.filter(({ left, right }) => {
    const share = (right - left) / subdivisions;
    return share < WIDEST && share > NARROWEST;
  });
  if (useful.length < 2) return null;
  const offsets = {
    centre: meanOffsetOf(
      useful.map((cell) => cell.middle),
      lines,
    ),
    left: meanOffsetOf(
      useful.map((cell) => cell.left),
      lines,
    ),
    right: meanOffsetOf(
      useful.map((cell) => cell.right),
      lines,
    ),
  };
  const { centre } = offsets;
  if (centre.likeness < LEAST_LIKENESS) return null;
  const nearest = (tick: number) => Math.round((tick - longAt) / subdivisions);
  if (Math.abs(centre.mean) < ON_THE_LINE) {
    return { ...offsets, kind: 'centred', line: (cell) => nearest(cell.middle) };
  }
  if (centre.likeness < STEADY && Math.abs(centre.mean) < NEAR_THE_LINE) return null;
  return beside(offsets, subdivisions, nearest);
}

/** For numbers that stand between lines: the nearer edge, or the one that keeps step, tells. */
function beside(
  offsets: MeanOffsets,
  subdivisions: number,
  nearest: (tick: number) => number,
): Alignment | null {
  const { left, right } = offsets;
  const toNext = -right.mean;
  const toLast = left.mean;
  const before: LineOf = (cell) => nearest(cell.right + toNext * subdivisions);
  const after: LineOf = (cell) => nearest(cell.left - toLast * subdivisions);
  const isBefore: Alignment = { ...offsets, kind: 'before', line: before };
  const isAfter: Alignment = { ...offsets, kind: 'after', line: after };
  const nextPossible = isGap(toNext);
  const lastPossible = isGap(toLast);
  if (nextPossible && (toLast < 0 || toNext < CLEARLY_NEARER * toLast)) return isBefore;
  if (lastPossible && (toNext < 0 || toLast < CLEARLY_NEARER * toNext)) return isAfter;
  if (!nextPossible || !lastPossible) return null;
  // Numbers of one digit and of two: the edge at the line stays, the other moves.
  if (keepsStep(right, left)) return isBefore;
  if (keepsStep(left, right)) return isAfter;
  return { ...offsets, kind: 'unsure', before, after };
}

function isGap(gap: number): boolean {
  return gap > LEAST_GAP && gap < GREATEST_GAP;
}

function keepsStep(steady: MeanOffset, other: MeanOffset): boolean {
  return 1 - steady.likeness < STEADIER * (1 - other.likeness) && other.likeness < MOVES;
}

/**
 * For numbers that nearly fill their interval: nothing is certain but the two lines each stands
 * between. Always 'unsure'; null if they have nothing to do with the lines.
 */
export function between(cells: readonly NumberCell[], lines: Lines): Alignment | null {
  const { subdivisions, longAt } = lines;
  const centre = meanOffsetOf(
    cells.map((cell) => cell.middle),
    lines,
  );
  if (!(centre.likeness >= LEAST_LIKENESS_BETWEEN)) return null;
  const place = (cell: NumberCell) => (cell.middle - longAt) / subdivisions;
  const onLine = Math.abs(centre.mean) < OVER_THE_LINE;
  return {
    kind: 'unsure',
    before: (cell) => (onLine ? Math.round(place(cell)) : Math.ceil(place(cell))),
    after: (cell) => (onLine ? Math.round(place(cell)) : Math.floor(place(cell))),
    centre,
    left: UNKNOWN,
    right: UNKNOWN,
  };
}

const UNKNOWN: MeanOffset = { mean: 0, likeness: 0 };

/** Mean direction and length of it (directional statistics) of places taken as angles of the interval. */
function meanOffsetOf(ticks: readonly number[], { subdivisions, longAt }: Lines): MeanOffset {
  let [x, y] = [0, 0];
  for (const tick of ticks) {
    const angle = (2 * Math.PI * (tick - longAt)) / subdivisions;
    x += Math.cos(angle);
    y += Math.sin(angle);
  }
  return { mean: Math.atan2(y, x) / (2 * Math.PI), likeness: Math.hypot(x, y) / ticks.length };
}
