import type { RowFrame } from '../frame/frame.ts';
import { makeSheet, type Sheet, type TickRange } from '../graduations/sheet.ts';
import type { TickPattern } from '../graduations/tick-pattern.ts';
import type { Field } from '../picture/field.ts';
import type { RowPitch } from '../pitch/pitch-spectrum.ts';
import { densityAt, distanceAt } from '../pitch/position.ts';
import { type Component, components } from './components.ts';
import { inkOf } from './ink.ts';
import {
  BEYOND,
  COARSE_PITCH_PX,
  ENOUGH_WORDS,
  EVEN,
  EVEN_FEW,
  FEW_WORDS,
  LEAST_PER_TICK,
  LEAST_SEEN,
  LEAST_SEEN_COARSE,
  MOST_PER_TICK,
  MOST_PER_TICK_COARSE,
  MOST_SEEN,
  MOST_WORDS,
  NEIGHBOURHOOD,
  SEEN_PX,
} from './limits.ts';
import type { NumberRow, NumberRows } from './number-row.ts';
import { wipeByFollowing } from './wipe-lines.ts';
import { joinWords, regularity } from './word-joins.ts';
import { type WordLine, wordLines } from './word-lines.ts';

/**
 * Finds numbers beside a row of graduations without knowing how many lead from one to the next:
 * patches of like size in any row, turned or not, joined to words by their gaps. The most, the
 * evenest and the tallest first.
 */
export function wordRows(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  pitch: RowPitch,
  [first, last]: TickRange,
  pattern: TickPattern,
): NumberRows {
  const range: TickRange = [first - BEYOND, last + BEYOND];
  const sheet = wordSheet(work, frame, pitch, range);
  const { ink, ground } = inkOf(
    sheet,
    Math.max(NEIGHBOURHOOD.least, Math.min(NEIGHBOURHOOD.most, 5 * sheet.perTick)),
  );
  wipeByFollowing({ sheet, ink }, pattern, range);
  const { labels, components: parts } = components(ink, sheet.width, sheet.height);
  const rows = [false, true]
    .flatMap((turned) => wordLines(parts, sheet, turned))
    .flatMap((line) => rowOf(line, parts, sheet) ?? [])
    .sort((a, b) => b.prominence - a.prominence)
    .map(({ row }) => row);
  return { sheet, labels, ground, rows };
}

function wordSheet(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  pitch: RowPitch,
  [from, to]: TickRange,
): Sheet {
  const { model } = pitch;
  const pitchPx = 1 / densityAt(model, distanceAt(model, (from + to) / 2));
  const coarse = pitchPx >= COARSE_PITCH_PX;
  const perTick = Math.max(
    LEAST_PER_TICK,
    Math.min(coarse ? MOST_PER_TICK_COARSE : MOST_PER_TICK, Math.round(pitchPx)),
  );
  const seen = Math.max(
    coarse ? LEAST_SEEN_COARSE : LEAST_SEEN,
    Math.min(MOST_SEEN, Math.round(SEEN_PX / perTick)),
  );
  return makeSheet(work, frame, pitch, from, to, perTick, -seen, seen);
}

function rowOf(
  line: WordLine,
  parts: readonly Component[],
  sheet: Sheet,
): { row: NumberRow; prominence: number } | null {
  const { height, middle, turned } = line;
  const cells = joinWords(line, parts, sheet);
  if (cells.length < 2) return null;
  const even = regularity(cells);
  if (!(even > (cells.length < FEW_WORDS ? EVEN_FEW : EVEN))) return null;
  const from = Math.max(0, (cells.length - MOST_WORDS) >> 1);
  const row = {
    cells: cells.slice(from, from + MOST_WORDS),
    height,
    middle,
    turned,
    regularity: even,
    across: sheet.fromAcross + middle / sheet.perTick,
  };
  return {
    row,
    prominence: even * even * Math.sqrt(Math.min(ENOUGH_WORDS, cells.length)) * Math.sqrt(height),
  };
}
