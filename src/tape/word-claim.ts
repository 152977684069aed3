import { alignment } from './alignment.ts';
import type { Claimed, Doubt, Placing } from './claim.ts';
import { type DigitsBetween, isNumbered } from './digits-between.ts';
import type { FoundProgression } from './found-progression.ts';
import type { NumberCell, NumberRead, NumberRows } from './number-row.ts';
import { placedOn } from './placed.ts';
import { median } from './solve.ts';
import { type LongLine, modulo, type Side, seenUpTo } from './tick-classes.ts';
import { type TickPattern, tenthsBeforeDigits } from './tick-pattern.ts';
import { unitOf } from './unit.ts';
import { lostDigits } from './vote.ts';

/**
 * A progression of numbers made into a claim: its unit, and which line each number labels.
 *
 * @param between the digits on the lines between, where there are any: they tell the line as well.
 */
export function wordClaim(
  { sheet }: NumberRows,
  found: FoundProgression,
  foreign: boolean,
  pattern: TickPattern,
  between?: DigitsBetween,
): Claimed {
  const { row, progression: rise } = found;
  const ticksPerNumber = Math.round(rise.subdivisions);
  if (Math.abs(rise.subdivisions - ticksPerNumber) > 0.01)
    return { ok: false, why: 'unit-unknown' };
  const digitShare = row.height / sheet.perTick / ticksPerNumber;
  const unit = unitOf(
    ticksPerNumber,
    rise.step,
    ticksPerNumber === 100 ? 1 : digitShare,
    pattern.zoneTo - pattern.zoneFrom,
  );
  if (!unit) return { ok: false, why: 'unit-unknown' };
  const beforeDigits = tenthsBeforeDigits(found.row.across, digitShare * ticksPerNumber, pattern);
  const label = labelled(found, ticksPerNumber, pattern, beforeDigits, between);
  const doubts = new Set<Doubt>();
  if (label.doubtful || (foreign && !label.counted)) doubts.add('line');
  if (!patternAgrees(found, ticksPerNumber, label.placing, pattern)) doubts.add('line');
  if (!unit.sure) doubts.add('unit');
  const agreeing = rise.agreeing.map((read) => placedOn(sheet, read, 1));
  const contrary = contraryOf(found).map((read) => placedOn(sheet, read, 1));
  const firstValue = rise.agreeing[0]?.value ?? 0;
  return {
    ok: true,
    claim: {
      unit: unit.unit,
      mmPerTick: unit.mmPerNumber / ticksPerNumber,
      step: rise.step,
      ticksPerNumber,
      anchorTick: label.tick,
      anchorValue: firstValue,
      direction: rise.perTick > 0 ? 1 : -1,
      placing: label.placing,
      agreeing,
      contrary,
      partial: rise.partial,
      second: rise.second,
      cells: row.cells.length,
      digitShare,
      across: row.across,
      pattern,
      counted: label.counted,
      doubts,
    },
  };
}

function contraryOf({ reads, progression: rise }: FoundProgression): NumberRead[] {
  const agreeing = new Set(rise.agreeing.map(({ cell }) => cell));
  const says = ({ middle }: NumberCell) =>
    Math.round((rise.perTick * middle + rise.offset) / rise.step) * rise.step;
  return reads.filter(
    ({ cell, text }) => !agreeing.has(cell) && !lostDigits(text, String(says(cell))),
  );
}

interface Label {
  /** The graduation of the first agreeing number's value. */
  readonly tick: number;
  readonly placing: Placing;
  readonly doubtful: boolean;
  /** Digits on the lines between say so too. */
  readonly counted: boolean;
}

/** Long lines stand out from the others by at least so many tenths of a graduation. */
const CLEAR_MARGIN = 2;
/** A number turned across whose middle is nearer than this share of the interval belongs to that line. */
const BESIDE_ITS_LINE = 0.3;

function labelled(
  found: FoundProgression,
  ticksPerNumber: number,
  pattern: TickPattern,
  beforeDigits: number,
  between: DigitsBetween | undefined,
): Label {
  const { row, turns, progression: rise } = found;
  // Numbers by tens of centimetres stand on lines that are long every ten or fifty graduations.
  const fold = ticksPerNumber === 100 || ticksPerNumber === 50 ? 10 : ticksPerNumber;
  const lines = longLines(pattern, fold, row.across > pattern.zoneMiddle ? 1 : -1, beforeDigits);
  const told = fold > 1 && lines.margin >= CLEAR_MARGIN;
  const nearest = (tick: number) =>
    told ? lines.longAt + fold * Math.round((tick - lines.longAt) / fold) : Math.round(tick);
  const firstValue = rise.agreeing[0]?.value ?? 0;
  const placeOf = (edge: (cell: NumberCell) => number) =>
    median(
      rise.agreeing.map(({ cell, value }) => edge(cell) - (value - firstValue) / rise.perTick),
    );
  const centre = placeOf(({ middle }) => middle);
  const off = centre - nearest(centre);
  const tens = ticksPerNumber === 100;
  if (row.turned) {
    // Turned across the tape a number is as wide as its digits are tall: beside one line it is far from the next.
    const doubtful = Math.abs(off) > (told ? BESIDE_ITS_LINE * fold : Math.max(0.35, 0.09 * fold));
    return { tick: nearest(centre), placing: 'centred', doubtful, counted: false };
  }
  if (Math.abs(off) < Math.max(0.3, 0.075 * fold)) {
    const tick = nearest(centre);
    const counted =
      between !== undefined && 10 * between.every === fold && isNumbered(tick, between);
    const proven =
      told ||
      counted ||
      fold <= 2 ||
      middlesKeepStep(found, fold) ||
      (!lines.cut && onLongLine(lines, tick, off, found));
    return { tick, placing: 'centred', doubtful: !proven, counted };
  }
  const left = placeOf((cell) => cell.left);
  const right = placeOf((cell) => cell.right);
  const cells = rise.agreeing.map(({ cell }) => cell);
  const aligned = told ? alignment(cells, lines) : null;
  const upsideDown = turns === 2;
  if (aligned && (aligned.kind === 'before' || aligned.kind === 'after')) {
    const before = aligned.kind === 'before';
    const tick = before ? nearest(right + 0.25 * fold) : nearest(left - 0.25 * fold);
    const placing = before !== upsideDown ? 'before' : 'after';
    return { tick, placing, doubtful: placing === 'after' || tens, counted: false };
  }
  const tick = upsideDown ? nearest(left - 0.25 * fold) : nearest(right + 0.25 * fold);
  return { tick, placing: 'unsure', doubtful: true, counted: false };
}

/** On the side of the digits, ink where they stand is theirs: over a short line it would look like a long one. */
function longLines(
  pattern: TickPattern,
  fold: number,
  side: Side,
  beforeDigits: number,
): LongLine & { readonly cut: boolean } {
  const whole = pattern.classes(fold, side);
  const near = seenUpTo(whole, beforeDigits);
  const far = pattern.classes(fold, side === 1 ? -1 : 1);
  if (far.margin > near.margin + CLEAR_MARGIN) return { ...far, cut: false };
  return { ...near, cut: Math.max(...whole.lengths) >= beforeDigits };
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
  return found.progression.agreeing.length >= 5 && middle < 0.45 * edge && middle < 0.06 * fold;
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
    length >= 6 &&
    length >= top - 1 &&
    longest <= 2 &&
    Math.abs(off) < 0.05 * fold &&
    spread < 0.04 * fold
  );
}

/** Few numbers, or numbers beside their lines, need a pattern of lines that says the same. */
function patternAgrees(
  { row, progression: rise }: FoundProgression,
  ticksPerNumber: number,
  placing: Placing,
  { subdivisions }: TickPattern,
): boolean {
  const fold = ticksPerNumber === 100 || ticksPerNumber === 50 ? 10 : ticksPerNumber;
  const told =
    subdivisions >= 5 ? fold % subdivisions === 0 || subdivisions % fold === 0 : fold <= 4;
  if (!told && (rise.distinct < 5 || placing !== 'centred')) return false;
  return rise.distinct >= 4 || row.cells.length <= 6;
}
