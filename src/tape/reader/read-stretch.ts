import type { ReadRows } from '../characters/read-cells.ts';
import type { Claim, Claimed } from '../claims/claim.ts';
import type { ClaimOfRow } from '../claims/claimed-row.ts';
import { strictNumbers } from '../claims/strict-numbers.ts';
import { wordNumbers } from '../claims/word-numbers.ts';
import type { RowFrame } from '../frame/frame.ts';
import { linesSeen, runAround } from '../graduations/detected-lines.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import { hasHalfLines } from '../graduations/half-lines.ts';
import type { TickRange } from '../graduations/sheet.ts';
import { tickPattern } from '../graduations/tick-pattern.ts';
import { numberRows, numberSheet } from '../numbers/number-cells.ts';
import { wordRows } from '../numbers/word-rows.ts';
import type { Field } from '../picture/field.ts';
import type { RowPitch } from '../pitch/pitch-spectrum.ts';
import { halfOn } from '../pitch/refine.ts';
import { MOST_DUTY, SURELY_THIN } from './limits.ts';

/** A followed stretch as dark print and, where that isn't sure, as light; the likelier first. */
export function polarities(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  dark: RowPitch,
  range: TickRange,
): FollowedRow[] {
  const rows: FollowedRow[] = [];
  const add = (pitch: RowPitch) => {
    const pattern = tickPattern(work, frame, pitch, range);
    if (pattern && pattern.duty <= MOST_DUTY) rows.push({ frame, pitch, range, pattern });
  };
  add(dark);
  const sure = rows[0]?.pattern;
  if (!sure?.valid || sure.duty >= SURELY_THIN) add(halfOn(dark));
  return rows.sort(
    (one, other) =>
      Number(other.pattern.valid) - Number(one.pattern.valid) ||
      one.pattern.duty - other.pattern.duty,
  );
}

/** Reads numbers by a pattern of lines that is a tape's. */
export function readStrictly(
  work: Field<'measuring'>,
  { frame, pitch, range, pattern }: FollowedRow,
  readRows: ReadRows,
): Promise<Claimed> {
  const sheet = numberSheet(work, frame, pitch, range, pattern);
  return strictNumbers(numberRows(sheet, pattern, range), pattern, readRows);
}

/** Reads numbers whatever the pattern of the lines. */
export function readFreely(
  work: Field<'measuring'>,
  { frame, pitch, range, pattern }: FollowedRow,
  readRows: ReadRows,
): Promise<Claimed> {
  return wordNumbers(wordRows(work, frame, pitch, range, pattern), pattern, readRows);
}

/** A row with what its numbers claim, and what only the picture can add to that. */
export function claimed(work: Field<'measuring'>, row: FollowedRow, claim: Claim): ClaimOfRow {
  const [number] = claim.agreeing;
  // Only inches are asked where their tape begins.
  const lines = number && claim.unit === 'inch' && runAround(linesSeen(work, row), number.tick);
  return { row: lines ? { ...row, lines } : row, claim: byHalves(work, row, claim) };
}

/** Half millimetres leave no doubt what numbers in tens count, though only the first centimetres have them. */
function byHalves(
  work: Field<'measuring'>,
  { frame, pitch, range, pattern }: FollowedRow,
  claim: Claim,
): Claim {
  const { unit, step, ticksPerNumber, doubts } = claim;
  const tens = unit === 'mm' && step === 10 && ticksPerNumber === 10;
  if (!tens || !doubts.has('unit') || !hasHalfLines(work, frame, pitch, range, pattern))
    return claim;
  return { ...claim, doubts: new Set([...doubts].filter((doubt) => doubt !== 'unit')) };
}
