import type { NumberCell } from '../numbers/number-row.ts';
import type { Claim, Doubt, PlacedNumber } from './claim.ts';
import {
  APART,
  DIGIT_HEIGHT,
  DOUBTS_ENOUGH,
  DOUBTS_FARTHEST_MM,
  FARTHEST_HEIGHTS,
  LEAST_FORETOLD,
  MOST_CONTRARY,
  OFTEN,
  ON_A_LINE,
  OUT_OF_PLACE,
  SHORTER,
  SMALL_VALUE,
  THIN,
  THREE,
  THREE_OF_CELLS,
  UNLIKE_HEIGHT,
  WIDEST_DIGIT,
  WIDEST_MORE,
} from './limits.ts';

/**
 * Everything that could make a claim a confident mistake, apart from what other rows say:
 * too few numbers, a digit that all of them gained or lost, numbers out of place.
 */
export function doubtsOf(claim: Claim): Set<Doubt> {
  const doubts = new Set(claim.doubts);
  const { agreeing, contrary, partial, foretold } = claim;
  const distinct = new Set(agreeing.map(({ value }) => value)).size;
  const few = foretold ? LEAST_FORETOLD : DOUBTS_ENOUGH;
  if (distinct < few && !threeAreEnough(claim, distinct)) doubts.add('line');
  if (contrary.length > MOST_CONTRARY * agreeing.length) doubts.add('line');
  if (partial > agreeing.length) doubts.add('line');
  if (!foretold && commonLeadingStroke(agreeing, distinct)) doubts.add('line');
  if (!foretold && commonMiddleStroke(agreeing)) doubts.add('line');
  if (!foretold && digitsLost(claim)) doubts.add('line');
  if (farFromLines(claim)) doubts.add('line');
  if (outOfPlace(claim)) doubts.add('line');
  return doubts;
}

/** Three do when nothing was read otherwise, the lines tell how they are divided, and no digit is suspect. */
function threeAreEnough(claim: Claim, distinct: number): boolean {
  const { contrary, partial, pattern, ticksPerNumber, agreeing, cells } = claim;
  const identified = pattern.valid && pattern.subdivisions === ticksPerNumber;
  const texts = new Set(agreeing.map(({ read }) => read.text.length));
  const small = agreeing.every(({ value }) => value < SMALL_VALUE || claim.unit === 'mm');
  return (
    distinct === THREE &&
    contrary.length === 0 &&
    partial === 0 &&
    identified &&
    (small || texts.size > 1) &&
    cells <= THREE_OF_CELLS
  );
}

/**
 * Numbers that all begin with the same 1, with none of fewer digits to prove it, could be
 * numbers without it beside a row of strokes.
 */
function commonLeadingStroke(agreeing: readonly PlacedNumber[], distinct: number): boolean {
  const texts = agreeing.map(({ read }) => read.text);
  const [text = ''] = texts;
  const alike = texts.every((other) => other.length === text.length && other[0] === '1');
  if (!alike || text.length < 2) return false;
  if (distinct <= THREE) return true;
  const suspect = agreeing.filter(({ read }) => suspectFirst(read.cell));
  return suspect.length > 0.5 * agreeing.length;
}

function suspectFirst(cell: NumberCell): boolean {
  const parts = [...cell.components].sort((one, other) => one.x0 - other.x0);
  const [first, second] = parts;
  if (!first || !second) return false;
  const others = parts.slice(1);
  const height = Math.max(...others.map((part) => part.height));
  if (first.width > THIN * height) return false;
  const taller = first.height / height - 1;
  if (taller > UNLIKE_HEIGHT || taller < -SHORTER) return true;
  if (Math.abs(first.middleY - second.middleY) > UNLIKE_HEIGHT * height) return true;
  const apart = second.x0 - first.x1 > APART * height;
  return apart && isOnLine(cell, (first.x0 + first.x1) / 2);
}

/**
 * Numbers that all have a 1 between their other digits, with a thin stroke there that stands on a
 * graduation: some tapes print a number on both sides of its line, which then reads as that 1.
 */
function commonMiddleStroke(agreeing: readonly PlacedNumber[]): boolean {
  const alike = agreeing.every(({ read }) => /^.+1.+$/.test(read.text));
  const suspect = agreeing.filter(({ read }) => suspectMiddle(read.cell));
  return alike && suspect.length > 0.5 * agreeing.length;
}

function suspectMiddle(cell: NumberCell): boolean {
  const parts = [...cell.components].sort((one, other) => one.x0 - other.x0);
  const height = Math.max(...parts.map((part) => part.height));
  return parts
    .slice(1, -1)
    .some((part) => part.width < THIN * height && isOnLine(cell, (part.x0 + part.x1) / 2));
}

/** Whether a place of a number's sheet, in its pixels, is that of a graduation. */
function isOnLine(cell: NumberCell, x: number): boolean {
  const perPx = (cell.right - cell.left) / Math.max(1, cell.x1 - cell.x0);
  const tick = cell.left + (x - cell.x0) * perPx;
  return Math.abs(tick - Math.round(tick)) < ON_A_LINE;
}

/** Numbers with more patches, or wider, than the digits read: all of them may have lost the same one. */
function digitsLost({ agreeing, turned = false }: Claim): boolean {
  const suspect = agreeing.filter(({ value, read }) => {
    // Not the text: numbers counted in tens have theirs cut short.
    const digitsRead = String(value).length;
    const { components, x0, x1, y0, y1 } = read.cell;
    // Turned across the tape, a digit is as wide on the sheet as it is tall.
    const heights = components.map((part) => (turned ? part.width : part.height));
    const tallest = Math.max(...heights);
    const digits = heights.filter((height) => height > DIGIT_HEIGHT * tallest).length;
    if (digits > digitsRead) return true;
    const widest = (WIDEST_DIGIT + WIDEST_MORE * (digitsRead - 1)) * tallest;
    return digits !== digitsRead && (turned ? y1 - y0 : x1 - x0) + 1 > widest;
  });
  return suspect.length > OFTEN * agreeing.length;
}

/** Numbers far across the tape may be those of its other edge, or of another tape. */
function farFromLines({ across, pattern, digitShare, ticksPerNumber, mmPerTick }: Claim): boolean {
  const height = digitShare * ticksPerNumber;
  const edge = across > pattern.zoneMiddle ? pattern.zoneTo : pattern.zoneFrom;
  const gap = Math.abs(across - edge) - height / 2;
  return gap > FARTHEST_HEIGHTS * height && gap * mmPerTick > DOUBTS_FARTHEST_MM;
}

/** Numbers of one scale keep their distance from their lines; a slipped line or a second row shows here. */
function outOfPlace(claim: Claim): boolean {
  const { agreeing, ticksPerNumber, step, direction, anchorTick, anchorValue } = claim;
  const perTick = step / ticksPerNumber;
  const off = agreeing.map(
    ({ tick, value }) => tick - (anchorTick + (direction * (value - anchorValue)) / perTick),
  );
  const sorted = [...off].sort((one, other) => one - other);
  const middle = sorted[sorted.length >> 1] ?? 0;
  return off.some((ticks) => Math.abs(ticks - middle) > OUT_OF_PLACE * ticksPerNumber);
}
