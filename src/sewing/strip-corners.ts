import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import type { Problem } from './problem.ts';
import type { Mark, Run } from './run.ts';
import { type HoleRow, MOST_HOLES, type StripInput } from './strip.ts';

/** Sharper or blunter corners are not edged in one strip. Ours, no source. */
const SHARPEST = 20;
const BLUNTEST = 160;

type Turned = { ok: true; rows: HoleRow[] } | { ok: false; problem: Problem };

/**
 * Rows of holes along an edge that turns corners. On each row a hole stands in
 * each corner where the margin lines of both sides cross: d/tan(φ/2) from the
 * corner along either edge, at the row's distance d from the edge and an angle φ
 * inside the corner. Each side between is filled with the pitch nearest to the
 * wanted one. Derived here.
 *
 * @param end from a cut end to the first hole
 */
export function turnedRows(input: StripInput, end: ExactLength): Turned {
  const problem = cornerProblem(input);
  if (problem) return { ok: false, problem };
  const { width, margin, rows } = input;
  const lines = rows === 'one' ? [margin] : [margin, width - margin];
  const found: HoleRow[] = [];
  for (const across of lines) {
    const row = turnedRow(input, end, across);
    if (!row.ok) return row;
    found.push(row.row);
  }
  return { ok: true, rows: found };
}

function cornerProblem({ length, corners, angle }: StripInput): Problem | undefined {
  if (!(angle >= SHARPEST && angle <= BLUNTEST)) {
    return { kind: 'out-of-range', field: 'angle', given: angle, least: SHARPEST, most: BLUNTEST };
  }
  for (const [i, at] of corners.entries()) {
    if (at <= 0 || at >= length) {
      const range = { least: exactLength(0), most: length };
      return { kind: 'outside', field: 'corners', given: at, ...range };
    }
    if (at <= (corners[i - 1] ?? 0)) return { kind: 'not-in-order', field: 'corners', given: at };
  }
  return undefined;
}

function turnedRow(
  { length, pitch, corners, angle }: StripInput,
  end: ExactLength,
  across: number,
): { ok: true; row: HoleRow } | { ok: false; problem: Problem } {
  const back = across / Math.tan((angle * Math.PI) / 360);
  const edges = [0, ...corners, length];
  const runs: Run[] = [];
  const pitches: ExactLength[] = [];
  let number = 0;
  for (const [side, from] of edges.slice(0, -1).entries()) {
    const to = edges[side + 1] as number;
    const isFirst = side === 0;
    const isLast = side === edges.length - 2;
    const start = isFirst ? end : back;
    const room = to - from - start - (isLast ? end : back);
    const spaces = Math.max(1, Math.round(room / pitch));
    if (room / spaces < pitch / 2) {
      const needed = exactLength(to - from - room + pitch / 2);
      const given = exactLength(to - from);
      return {
        ok: false,
        problem: { kind: 'does-not-fit', field: 'corners', room: given, needed },
      };
    }
    if (number + spaces > MOST_HOLES) {
      const least = exactLength(length / (MOST_HOLES - 1));
      return { ok: false, problem: { kind: 'too-close', field: 'pitch', least, most: MOST_HOLES } };
    }
    // The hole in a corner is the last of one side and the first of the next.
    if (!isFirst) number -= 1;
    const own = room / spaces;
    const marks = Array.from({ length: spaces + 1 }, (_, i): Mark => {
      const inCorner = (i === 0 && !isFirst) || (i === spaces && !isLast);
      const at = exactLength(start + i * own);
      return { at, label: String(number + i + 1), kind: inCorner ? 'corner' : 'hole' };
    });
    number += spaces + 1;
    runs.push({ datum: isFirst ? 'cut-end' : 'edge-corner', length: (to - from) as Length, marks });
    pitches.push(exactLength(own));
  }
  const row = { runs, count: number, pitches, across: exactLength(across), middle: undefined };
  return { ok: true, row };
}
