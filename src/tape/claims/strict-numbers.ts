import type { ReadRows } from '../characters/read-cells.ts';
import { mmPerUnit, type TapeUnit } from '../graduations/tape-unit.ts';
import { seenUpTo } from '../graduations/tick-classes.ts';
import { type TickPattern, tenthsBeforeDigits } from '../graduations/tick-pattern.ts';
import { type Alignment, alignment, between, type LineOf } from '../numbering/alignment.ts';
import type { Placing } from '../numbering/beside-lines.ts';
import { sureCentimetres } from '../numbering/unit.ts';
import { type Direction, lostDigits, type Vote, vote } from '../numbering/vote.ts';
import {
  looksLikeNumbers,
  type NumberRead,
  type NumberRow,
  type NumberRows,
} from '../numbers/number-row.ts';
import type { Claimed, Doubt, NoClaim } from './claim.ts';
import { laterReason } from './claim.ts';
import {
  CLEAR_MARGIN,
  CLEARLY_MORE,
  CLOSE,
  LIKE_HEIGHT,
  MANY,
  NEARLY_ALL,
  OUTVOTES,
  OUTVOTES_MANY,
  ROWS_TRIED,
  SHORT_ROW,
  STRICT_NUMBERS_FEWEST,
  STRICT_NUMBERS_PLENTY,
  TWO_HAVE_DIGITS,
  WIDE,
} from './limits.ts';
import { placedOn } from './placed-number.ts';

/** One row read in one orientation: the offset it votes for. */
interface Counted {
  readonly vote: Vote;
  readonly direction: Direction;
  /** 1, or 10 when numbers count in tens of what the long lines count. */
  readonly step: 1 | 10;
  readonly reads: readonly NumberRead[];
  readonly line: LineOf;
}

interface Candidate extends Counted {
  readonly row: NumberRow;
  readonly placing: Placing;
  /** Read against the scale's direction, and so close after their lines that they are before them as it counts. */
  readonly against: boolean;
  readonly foreign: boolean;
}

/**
 * Reads the numbers of a scale whose pattern of lines is that of a tape: one number to each long
 * line, so that all of them must agree on one offset.
 */
export async function strictNumbers(
  numbers: NumberRows,
  pattern: TickPattern,
  readRows: ReadRows,
): Promise<Claimed> {
  let best: Candidate | undefined;
  let why: NoClaim = 'no-numbers';
  let passed: NumberRow | undefined;
  for (const row of nearestFirst(numbers, pattern)) {
    const sure = alignment(row.cells, pattern);
    const placed = sure ?? between(row.cells, pattern);
    if (!placed) continue;
    for (const flip of [false, true]) {
      const reads = (await readRows(numbers, [row], flip ? 2 : 0)).get(row) ?? [];
      const counted = bestCount(reads, placed, flip, pattern);
      if (!counted) continue;
      if (!isClear(counted.vote, row, sure !== null)) {
        why = laterReason(
          why,
          counted.vote.agreeing < STRICT_NUMBERS_FEWEST ? 'few-numbers' : 'numbers-disagree',
        );
        continue;
      }
      const settled = placed.kind === 'unsure' ? placeAgain(counted, pattern, flip) : undefined;
      const found = settled ?? {
        ...counted,
        placing: placingOf(placed, flip),
        against: isAgainst(placed, flip, counted.direction),
      };
      if (best && found.vote.agreeing <= best.vote.agreeing) continue;
      const foreign = passed !== undefined && passed.height > LIKE_HEIGHT * row.height;
      best = { ...found, row, foreign };
      const { agreeing } = best.vote;
      if (agreeing >= STRICT_NUMBERS_PLENTY && agreeing >= NEARLY_ALL * row.cells.length)
        return claimOf(best, numbers, pattern);
    }
    if (best) return claimOf(best, numbers, pattern);
    if (row.cells.length >= STRICT_NUMBERS_FEWEST && sure && looksLikeNumbers(row)) passed = row;
  }
  return best ? claimOf(best, numbers, pattern) : { ok: false, why };
}

function nearestFirst({ rows, sheet }: NumberRows, pattern: TickPattern): NumberRow[] {
  const zone = (pattern.zoneMiddle - sheet.fromAcross) * sheet.perTick;
  return rows
    .slice(0, ROWS_TRIED)
    .filter(({ cells }) => cells.length >= 2)
    .sort((one, other) => Math.abs(one.middle - zone) - Math.abs(other.middle - zone));
}

/** Custom says a number stands before its line, in the direction it is read. */
function lineOf(placed: Alignment, flip: boolean): LineOf {
  if (placed.kind !== 'unsure') return placed.line;
  return flip ? placed.after : placed.before;
}

function bestCount(
  reads: readonly NumberRead[],
  placed: Alignment,
  flip: boolean,
  { subdivisions }: TickPattern,
): Counted | undefined {
  const ahead: Direction = flip ? -1 : 1;
  const back: Direction = flip ? 1 : -1;
  const count = (some: readonly NumberRead[], direction: Direction, step: 1 | 10) => {
    const line = lineOf(placed, direction === ahead ? flip : !flip);
    const voted = vote(some, line, direction);
    return voted && { vote: voted, direction, step, reads: some, line };
  };
  let best = count(reads, ahead, 1);
  const reverse = count(reads, back, 1);
  // Digits are read forwards: values that fall in that direction need more to speak for them.
  if (reverse && (!best || reverse.vote.agreeing >= best.vote.agreeing + CLEARLY_MORE))
    best = reverse;
  if (subdivisions !== 10) return best ?? undefined;
  const tens = reads.flatMap(asTens);
  for (const direction of best?.direction === back ? [back, ahead] : [ahead, back]) {
    const counted = count(tens, direction, 10);
    if (!counted || counted.vote.agreeing < STRICT_NUMBERS_FEWEST) continue;
    if (counted.vote.agreeing <= (best?.vote.agreeing ?? 0) + 1) continue;
    const total = Math.max(counted.vote.total, Math.min(reads.length, counted.vote.agreeing + 1));
    best = { ...counted, vote: { ...counted.vote, total } };
  }
  return best ?? undefined;
}

/** 10, 20, 30 on every tenth line: the same scale counted in tens. */
function asTens(read: NumberRead): NumberRead[] {
  if (read.value === 0 || read.value % 10 !== 0) return [];
  return [{ ...read, value: read.value / 10, text: read.text.slice(0, -1) }];
}

/** Numbers agree clearly: most of them, and next to none on anything else. */
function isClear(found: Vote, row: NumberRow, aligned: boolean): boolean {
  const { agreeing, partial, total, second, digits } = found;
  if (agreeing < 2 || agreeing + partial < 0.5 * total) return false;
  const outvoted = agreeing >= MANY ? OUTVOTES_MANY : OUTVOTES;
  if (second >= 2 && second * outvoted > agreeing) return false;
  if (agreeing >= STRICT_NUMBERS_FEWEST) return true;
  return (
    aligned && row.cells.length <= SHORT_ROW && agreeing === total && digits >= TWO_HAVE_DIGITS
  );
}

/** Cells that lost a digit blur where all of them stand: those surely read may tell. */
function placeAgain(
  counted: Counted,
  pattern: TickPattern,
  flip: boolean,
): Omit<Candidate, 'row' | 'foreign'> | undefined {
  const { reads, line, direction, vote: voted } = counted;
  const sure = reads.filter((read) => read.value === direction * line(read.cell) + voted.offset);
  if (sure.length < STRICT_NUMBERS_FEWEST) return undefined;
  const again = alignment(
    sure.map(({ cell }) => cell),
    pattern,
  );
  if (!again || again.kind === 'unsure') return undefined;
  if (again.kind !== 'centred' && (again.kind === 'before') === flip) return undefined;
  const second = vote(reads, again.line, direction);
  if (
    !second ||
    second.agreeing < voted.agreeing ||
    second.second * OUTVOTES_MANY > second.agreeing
  )
    return undefined;
  const total = Math.max(second.total, voted.total);
  return {
    ...counted,
    vote: { ...second, total },
    line: again.line,
    placing: placingOf(again, flip),
    against: isAgainst(again, flip, direction),
  };
}

/** Custom puts numbers before their line; on some scales as it counts, though they are read the other way. */
function isAgainst({ kind, left, right }: Alignment, flip: boolean, direction: Direction): boolean {
  if (kind !== (flip ? 'before' : 'after') || direction === (flip ? -1 : 1)) return false;
  const [toLast, toNext] = flip ? [-right.mean, left.mean] : [left.mean, -right.mean];
  const [from, to] = [Math.max(0, toLast), toNext > 0 ? toNext : toNext + 1];
  return 1 - from - to > WIDE && from < CLOSE * to;
}

function placingOf({ kind }: Alignment, flip: boolean): Placing {
  if (kind !== 'before' && kind !== 'after') return kind;
  return (kind === 'before') !== flip ? 'before' : 'after';
}

function claimOf(found: Candidate, { sheet }: NumberRows, pattern: TickPattern): Claimed {
  const { row, direction, step, reads, line, vote: voted, placing, against, foreign } = found;
  const { subdivisions, longAt } = pattern;
  const says = (read: NumberRead) => direction * line(read.cell) + voted.offset;
  const agrees = (read: NumberRead) => read.value === says(read);
  const digitShare = row.height / sheet.perTick / subdivisions;
  const unit: TapeUnit = subdivisions !== 10 ? 'inch' : step === 10 ? 'mm' : 'cm';
  const doubts = new Set<Doubt>();
  // No scale seen has its numbers after their lines as it counts: the next line is asked about.
  const after = placing === 'after' && !against;
  if (after || placing === 'unsure' || foreign) doubts.add('line');
  if (placing === 'centred' && isLongByDigits(row, row.height / sheet.perTick, pattern))
    doubts.add('line');
  const zoneTicks = pattern.zoneTo - pattern.zoneFrom;
  if (unit === 'cm' && !sureCentimetres(digitShare, zoneTicks)) doubts.add('unit');
  // Ten lines from 10 to 20: millimetres on a rule, centimetres on a stake.
  if (unit === 'mm') doubts.add('unit');
  return {
    ok: true,
    claim: {
      unit,
      mmPerTick: subdivisions === 10 ? 1 : mmPerUnit.inch / subdivisions,
      step,
      ticksPerNumber: subdivisions,
      anchorTick: longAt,
      anchorValue: step * (voted.offset - (after ? 1 : 0)),
      direction,
      placing,
      agreeing: reads.filter(agrees).map((read) => placedOn(sheet, read, step)),
      contrary: reads
        .filter((read) => !agrees(read) && !lostDigits(read.text, String(says(read))))
        .map((read) => placedOn(sheet, read, step)),
      partial: voted.partial,
      second: voted.second,
      cells: row.cells.length,
      digitShare,
      across: row.across,
      pattern,
      doubts,
    },
  };
}

/**
 * Whether the line that numbers are centred on looks long only by their own ink: wide numbers
 * before their line stand over the half line.
 */
function isLongByDigits({ across }: NumberRow, height: number, pattern: TickPattern): boolean {
  if (across > pattern.zoneMiddle !== pattern.side > 0) return false;
  return seenUpTo(pattern, tenthsBeforeDigits(across, height, pattern)).margin < CLEAR_MARGIN;
}
