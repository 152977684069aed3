import { type ExactLength, exactLength, type Length, settled } from '../lengths/length.ts';
import type { Problem } from './problem.ts';
import type { Mark, Run } from './run.ts';
import { type HoleRow, MOST_HOLES, type StripInput } from './strip.ts';
import { backOf, JUST_OVER, rowsAcross, touchingPitch } from './strip-room.ts';

type Turned = { ok: true; rows: HoleRow[] } | { ok: false; problem: Problem };

/**
 * Rows of holes along an edge that turns corners. On each row a hole stands in
 * each corner where the margin lines of both sides cross: d/tan(φ/2) from the
 * corner along either edge, at the row's distance d from the edge and an angle φ
 * inside the corner. Each side between is filled with the pitch nearest to the
 * wanted one at which no holes touch. Derived here.
 *
 * @param end from a cut end to the first hole
 */
export function turnedRows(input: StripInput, end: ExactLength): Turned {
  const problem = cornerProblem(input, end);
  if (problem) return { ok: false, problem };
  const found: HoleRow[] = [];
  for (const across of rowsAcross(input)) {
    const row = turnedRow(input, end, across);
    if (!row.ok) return row;
    found.push(row.row);
  }
  return { ok: true, rows: found };
}

function cornerProblem(input: StripInput, end: number): Problem | undefined {
  const { length, corners, width, angle } = input;
  const innermost = Math.max(...rowsAcross(input));
  // A cut end must not lie in a mitre, and the side needs room for its holes.
  const reach = Math.max(backOf(width, angle), end + leastSide(input) + backOf(innermost, angle));
  const least = settled(exactLength(reach));
  const most = exactLength(length - least);
  if (least > most) {
    const needed = exactLength(2 * least);
    return { kind: 'does-not-fit', field: 'length', room: length, needed };
  }
  for (const [i, given] of corners.entries()) {
    if (given === corners[i - 1]) return { kind: 'twice', field: 'corners', given };
    if (given < (corners[i - 1] ?? 0)) return { kind: 'not-in-order', field: 'corners', given };
    if (given < least || given > most) {
      return { kind: 'outside', field: 'corners', given, least, most };
    }
  }
  return sidesProblem(input);
}

/**
 * A side between two corners is as long as its two mitres; and at sharp corners so
 * long that the sides before and after it, which come together, do not meet. Their
 * inner edges, l and k long, would at d/2cos φ from a side d long inside; leaning over
 * by more than a right angle, a side's end comes W·cot 2φ nearer. Derived here.
 */
function sidesProblem({ length, corners, width, angle }: StripInput): Problem | undefined {
  const mitre = backOf(width, angle);
  const turn = (angle * Math.PI) / 180;
  const nearer = width * Math.max(0, 1 / Math.tan(2 * turn));
  const edges = [0, ...corners, length];
  const sides = edges.slice(1).map((to, i) => to - (edges[i] as number));
  for (const [i, side] of sides.slice(1, -1).entries()) {
    const beside = [sides[i] as number, sides[i + 2] as number].map((long) => long - mitre);
    const meet = Math.min(Math.max(...beside), Math.min(...beside) + nearer);
    const needed = settled(exactLength(2 * (mitre + Math.max(0, Math.cos(turn)) * meet)));
    if (side < needed) {
      return { kind: 'does-not-fit', field: 'corners', room: exactLength(side), needed };
    }
  }
  return undefined;
}

/** The least there may be from the first hole of a side to its last. */
function leastSide(input: StripInput): number {
  return Math.max(input.pitch / 2, touchingPitch(input) + JUST_OVER);
}

function turnedRow(
  input: StripInput,
  end: ExactLength,
  across: ExactLength,
): { ok: true; row: HoleRow } | { ok: false; problem: Problem } {
  const { length, pitch, corners, angle } = input;
  const touching = touchingPitch(input);
  const back = backOf(across, angle);
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
    const near = Math.max(1, Math.round(room / pitch));
    const spaces = near > 1 && room / near <= touching ? near - 1 : near;
    if (room / spaces < pitch / 2 || room / spaces <= touching) {
      const needed = exactLength(to - from - room + leastSide(input));
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
  const ends = { start: end, end };
  return { ok: true, row: { runs, count: number, pitches, across, ends, middle: undefined } };
}
