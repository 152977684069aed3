import type { Field } from '../picture/field.ts';
import { ANGLES, APART, CELL_PX, LEAST_SQUARENESS, OTHER_SIDE, SURROUND, VOTE } from './limits.ts';
import { type StrokeCell, strokeCells } from './stroke-cells.ts';

/** A straight line in the picture along which a row of graduations may run. */
export interface CandidateRow {
  /** Direction of the row in radians, 0 to π, from the x axis towards y. */
  readonly angle: number;
  /** How far the row passes from the centre, in pixels along (−sin angle, cos angle). */
  readonly offset: number;
  /** Comparable within one picture only. */
  readonly score: number;
  readonly centreX: number;
  readonly centreY: number;
}

/** Votes for lines: one row of `width` offsets, in squares, for each angle. */
interface Votes {
  readonly width: number;
  /** The offset index of a line through the centre. */
  readonly zero: number;
  readonly values: Float32Array;
}

/**
 * The likeliest rows of graduations, the best first: lines through many squares of
 * strokes that stand about square on them (a Hough vote), and with less beside them.
 *
 * @param small a picture about 1300 px long, so that strokes are a few pixels apart.
 * @param want how many at most.
 */
export function candidateRows(small: Field<'search'>, want: number): CandidateRow[] {
  const columns = Math.floor(small.width / CELL_PX);
  const rows = Math.floor(small.height / CELL_PX);
  return rowsAmong(strokeCells(small), columns, rows, want);
}

/** The likeliest rows among squares that are known, of a picture so many squares wide and high. */
export function rowsAmong(
  cells: readonly StrokeCell[],
  columns: number,
  rows: number,
  want: number,
): CandidateRow[] {
  const votes = narrowOnly(lineVotes(cells, columns, rows));
  const found: CandidateRow[] = [];
  while (found.length < want) {
    const best = largest(votes.values);
    if (best === undefined) break;
    const index = Math.floor(best / votes.width);
    const offset = (best % votes.width) - votes.zero;
    found.push({
      angle: (index * Math.PI) / ANGLES,
      offset: offset * CELL_PX,
      score: votes.values[best] as number,
      centreX: (columns * CELL_PX) / 2,
      centreY: (rows * CELL_PX) / 2,
    });
    clearAround(votes, index, offset);
  }
  return found;
}

function lineVotes(cells: readonly StrokeCell[], columns: number, rows: number): Votes {
  const zero = Math.ceil(Math.hypot(columns, rows));
  const width = 2 * zero + 1;
  const values = new Float32Array(ANGLES * width);
  for (let index = 0; index < ANGLES; index++) {
    const angle = (index * Math.PI) / ANGLES;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const [cos2, sin2] = [Math.cos(2 * angle), Math.sin(2 * angle)];
    const start = index * width + zero;
    for (const cell of cells) {
      const squareness = cell.cos2 * cos2 + cell.sin2 * sin2;
      if (squareness < LEAST_SQUARENESS) continue;
      const offset = cos * (cell.y - rows / 2) - sin * (cell.x - columns / 2);
      const below = Math.floor(offset);
      const vote = cell.weight * (squareness - VOTE.from) * VOTE.slope;
      const i = start + below;
      values[i] = (values[i] as number) + vote * (1 - (offset - below));
      values[i + 1] = (values[i + 1] as number) + vote * (offset - below);
    }
  }
  return { width, zero, values };
}

/** Each line less what lies beside it, on the emptier side mostly: numbers may fill the other. */
function narrowOnly(votes: Votes): Votes {
  const { width, zero, values } = votes;
  const at = (i: number) => values[i] as number;
  const narrow = new Float32Array(values.length);
  for (let index = 0; index < ANGLES; index++) {
    for (let r = SURROUND.clear; r < width - SURROUND.clear; r++) {
      const i = index * width + r;
      let before = 0;
      let after = 0;
      for (let k = SURROUND.from; k <= SURROUND.to; k++) {
        before += at(i - k);
        after += at(i + k);
      }
      const line = (at(i - 1) + 2 * at(i) + at(i + 1)) / 4;
      narrow[i] = line - Math.min(before, after) / 6 - (OTHER_SIDE * Math.max(before, after)) / 6;
    }
  }
  return { width, zero, values: narrow };
}

function largest(values: Float32Array): number | undefined {
  let best: number | undefined;
  let most = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (value <= most) continue;
    most = value;
    best = i;
  }
  return best;
}

function clearAround({ width, zero, values }: Votes, index: number, offset: number): void {
  for (let i = index - APART.angles; i <= index + APART.angles; i++) {
    // Past half a turn a line is the same one again, seen from its other side.
    const turned = i < 0 || i >= ANGLES;
    const row = (i + ANGLES) % ANGLES;
    for (let step = -APART.offsets; step <= APART.offsets; step++) {
      const column = (turned ? -(offset + step) : offset + step) + zero;
      if (column >= 0 && column < width) values[row * width + column] = 0;
    }
  }
}
