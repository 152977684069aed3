import { type TickPattern, tenthsBeforeDigits } from '../graduations/tick-pattern.ts';
import type { Placing } from '../numbering/beside-lines.ts';
import type { DigitsBetween } from '../numbering/digits-between.ts';
import type { FoundProgression } from '../numbering/found-progression.ts';
import { numberedLine } from '../numbering/numbered-line.ts';
import { unitOf } from '../numbering/unit.ts';
import { lostDigits } from '../numbering/vote.ts';
import type { NumberCell, NumberRead, NumberRows } from '../numbers/number-row.ts';
import { hasStrokeBeside } from '../numbers/stroke-beside.ts';
import type { Claimed, Doubt } from './claim.ts';
import {
  NUMBERS_ALONE,
  NUMBERS_WITH_LINES,
  OFTEN_CUT,
  PLAIN_FOLD,
  SHORT_ROW_OF_WORDS,
  TELLING_PATTERN,
  WHOLE_TICKS,
} from './limits.ts';
import { placedOn } from './placed-number.ts';

/**
 * A progression of numbers made into a claim: its unit, and which line each number labels.
 *
 * @param between the digits on the lines between, where there are any: they tell the line as well.
 */
export function wordClaim(
  words: NumberRows,
  found: FoundProgression,
  foreign: boolean,
  pattern: TickPattern,
  between?: DigitsBetween,
): Claimed {
  const { sheet } = words;
  const { row, progression: rise } = found;
  const ticksPerNumber = Math.round(rise.subdivisions);
  if (Math.abs(rise.subdivisions - ticksPerNumber) > WHOLE_TICKS)
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
  const numbered = numberedLine(found, { sheet, pattern, ticksPerNumber, beforeDigits, between });
  const doubts = new Set<Doubt>();
  if (numbered.doubtful || (foreign && !numbered.counted)) doubts.add('line');
  if (!patternAgrees(found, ticksPerNumber, numbered.placing, pattern)) doubts.add('line');
  if (row.turned && oftenCut(words, found, pattern)) doubts.add('line');
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
      anchorTick: numbered.tick,
      anchorValue: firstValue,
      direction: rise.perTick > 0 ? 1 : -1,
      placing: numbered.placing,
      agreeing,
      contrary,
      partial: rise.partial,
      second: rise.second,
      cells: row.cells.length,
      digitShare,
      across: row.across,
      turned: row.turned,
      pattern,
      counted: numbered.counted,
      doubts,
    },
  };
}

function oftenCut(
  words: NumberRows,
  { progression: rise }: FoundProgression,
  { contrast }: TickPattern,
): boolean {
  const cut = rise.agreeing.filter(({ cell }) => hasStrokeBeside(words, cell, contrast));
  return cut.length > OFTEN_CUT * rise.agreeing.length;
}

function contraryOf({ reads, progression: rise }: FoundProgression): NumberRead[] {
  const agreeing = new Set(rise.agreeing.map(({ cell }) => cell));
  const says = ({ middle }: NumberCell) =>
    Math.round((rise.perTick * middle + rise.offset) / rise.step) * rise.step;
  return reads.filter(
    ({ cell, text }) => !agreeing.has(cell) && !lostDigits(text, String(says(cell))),
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
  const identified =
    subdivisions >= TELLING_PATTERN
      ? fold % subdivisions === 0 || subdivisions % fold === 0
      : fold <= PLAIN_FOLD;
  if (!identified && (rise.distinct < NUMBERS_ALONE || placing !== 'centred')) return false;
  return rise.distinct >= NUMBERS_WITH_LINES || row.cells.length <= SHORT_ROW_OF_WORDS;
}
