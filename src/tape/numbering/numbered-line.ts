import { type LongLine, modulo } from '../graduations/tick-classes.ts';
import type { NumberCell } from '../numbers/number-row.ts';
import { median } from '../numerics/order.ts';
import { alignment } from './alignment.ts';
import { type LinesBeside, longLines, type NumberedLine } from './beside-lines.ts';
import { isNumbered } from './digits-between.ts';
import { type FoundProgression, placeOf } from './found-progression.ts';
import {
  BESIDE_SHARE,
  CENTRED_SHARE,
  CENTRED_TICKS,
  CLEAR_MARGIN,
  EVENLY_OVER,
  EXACTLY_OVER,
  FEWEST_IN_STEP,
  IN_STEP,
  LONG_TENTHS,
  STEADIER_MIDDLE,
} from './limits.ts';
import { numberedLineAcross } from './numbered-line-across.ts';

export function numberedLine(found: FoundProgression, beside: LinesBeside): NumberedLine {
  const { pattern, ticksPerNumber, beforeDigits, between } = beside;
  const { row, turns, progression: rise } = found;
  // Numbers by tens of centimetres stand on lines that are long every ten or fifty graduations.
  const fold = ticksPerNumber === 100 || ticksPerNumber === 50 ? 10 : ticksPerNumber;
  const lines = longLines(pattern, fold, row.across > pattern.zoneMiddle ? 1 : -1, beforeDigits);
  const identified = fold > 1 && lines.margin >= CLEAR_MARGIN;
  if (row.turned) return numberedLineAcross(found, beside, fold, lines, identified);
  const nearest = (tick: number) =>
    identified ? lines.longAt + fold * Math.round((tick - lines.longAt) / fold) : Math.round(tick);
  const centre = placeOf(found, ({ middle }) => middle);
  const off = centre - nearest(centre);
  if (Math.abs(off) < Math.max(CENTRED_TICKS, CENTRED_SHARE * fold)) {
    const tick = nearest(centre);
    const counted =
      between !== undefined &&
      between.direction === Math.sign(rise.perTick) &&
      10 * between.every === fold &&
      isNumbered(tick, between);
    const proven =
      identified ||
      counted ||
      fold <= 2 ||
      (middlesKeepStep(found, fold) && !isLongElsewhere(lines, tick)) ||
      (!lines.cut && onLongLine(lines, tick, off, found));
    return { tick, placing: 'centred', doubtful: !proven, counted };
  }
  const left = nearest(placeOf(found, (cell) => cell.left) - BESIDE_SHARE * fold);
  const right = nearest(placeOf(found, (cell) => cell.right) + BESIDE_SHARE * fold);
  const upsideDown = turns === 2;
  const cells = rise.agreeing.map(({ cell }) => cell);
  const aligned = identified ? alignment(cells, lines) : null;
  if (aligned?.kind === 'before' || aligned?.kind === 'after') {
    const before = aligned.kind === 'before';
    const placing = before !== upsideDown ? 'before' : 'after';
    // No scale seen has its numbers on the high side of their lines: the next line is asked about.
    if (before !== rise.perTick > 0)
      return { tick: before ? left : right, placing: 'unsure', doubtful: true, counted: false };
    const doubtful = placing === 'after' || ticksPerNumber === 100;
    return { tick: before ? right : left, placing, doubtful, counted: false };
  }
  return { tick: upsideDown ? left : right, placing: 'unsure', doubtful: true, counted: false };
}

/** How unevenly some edge of the agreeing numbers stands, in graduations (root mean square). */
function unevenness(
  { progression: rise }: FoundProgression,
  edge: (cell: NumberCell) => number,
): number {
  const places = rise.agreeing.map(
    ({ cell, value }) => edge(cell) - (value - rise.offset) / rise.perTick,
  );
  const middle = median(places);
  return Math.sqrt(places.reduce((sum, place) => sum + (place - middle) ** 2, 0) / places.length);
}

/** Numbers of one and of two digits whose middles keep step, and not an edge: they are centred on something. */
function middlesKeepStep(found: FoundProgression, fold: number): boolean {
  const middle = unevenness(found, (cell) => cell.middle);
  const edge = Math.min(
    unevenness(found, (cell) => cell.left),
    unevenness(found, (cell) => cell.right),
  );
  const enough = found.progression.agreeing.length >= FEWEST_IN_STEP;
  return enough && middle < STEADIER_MIDDLE * edge && middle < IN_STEP * fold;
}

/**
 * A longest line stands neither where the numbers are centred nor half a number away, where digits may cut
 * the one and leave the other: what they are centred on is no line of theirs, but a place before it.
 */
function isLongElsewhere({ lengths }: LongLine, tick: number): boolean {
  const fold = lengths.length;
  const top = Math.max(...lengths);
  return (
    top >= LONG_TENTHS &&
    lengths.some((length, at) => length >= top - 1 && modulo(2 * (at - tick), fold) !== 0)
  );
}

/** The long and the half line are of one length, and end before the digits: numbers exactly over one of the two name it. */
function onLongLine(
  { lengths }: LongLine,
  tick: number,
  off: number,
  found: FoundProgression,
): boolean {
  const fold = lengths.length;
  const length = lengths[modulo(tick, fold)] ?? 0;
  const top = Math.max(...lengths);
  const longest = lengths.filter((one) => one >= top - 1).length;
  const spread = unevenness(found, (cell) => cell.middle);
  return (
    length >= LONG_TENTHS &&
    length >= top - 1 &&
    longest <= 2 &&
    Math.abs(off) < EXACTLY_OVER * fold &&
    spread < EVENLY_OVER * fold
  );
}
