import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import type { Mark, Run } from './run.ts';
import type { HoleRow, StripInput } from './strip.ts';
import { backOf, leastPitch, rowsAcross } from './strip-room.ts';

/**
 * Rows of holes along an edge that turns corners. On each row a hole stands in
 * each corner where the margin lines of both sides cross: d/tan(φ/2) from the
 * corner along either edge, at the row's distance d from the edge and an angle φ
 * inside the corner. Each side between is filled with the pitch nearest to the
 * wanted one that is not below the least. Derived here.
 *
 * @param input with no `cornerProblems`
 * @param end from a cut end to the first hole
 */
export function turnedRows(input: StripInput, end: ExactLength): HoleRow[] {
  return rowsAcross(input).map((across) => turnedRow(input, end, across));
}

function turnedRow(input: StripInput, end: ExactLength, across: ExactLength): HoleRow {
  const { length, pitch, corners, angle } = input;
  const least = leastPitch(input);
  const back = backOf(across, angle);
  const edges = [0, ...corners, length];
  const runs: Run[] = [];
  const pitches: ExactLength[] = [];
  let number = 1;
  for (const [side, from] of edges.slice(0, -1).entries()) {
    const to = edges[side + 1] as number;
    const isFirst = side === 0;
    const isLast = side === corners.length;
    const start = isFirst ? end : back;
    const room = to - from - start - (isLast ? end : back);
    const near = Math.max(1, Math.round(room / pitch));
    const spaces = near > 1 && room / near < least ? near - 1 : near;
    const own = room / spaces;
    const before = number;
    const marks = Array.from({ length: spaces + 1 }, (_, i): Mark => {
      const inCorner = (i === 0 && !isFirst) || (i === spaces && !isLast);
      const at = exactLength(start + i * own);
      return { at, label: String(before + i), kind: inCorner ? 'corner' : 'hole' };
    });
    // The hole in a corner is the last of one side and the first of the next.
    number += spaces;
    runs.push({ datum: isFirst ? 'cut-end' : 'edge-corner', length: (to - from) as Length, marks });
    pitches.push(exactLength(own));
  }
  return { runs, count: number, pitches, across, ends: { start: end, end }, middle: undefined };
}
