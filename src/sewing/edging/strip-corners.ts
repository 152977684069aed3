import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import type { Mark, Run } from '../run.ts';
import type { HoleRow, Kept, StripInput } from './strip.ts';
import { nearestSpaces } from './strip-fit.ts';
import { backOf, leastPitch, rowsAcross } from './strip-room.ts';
import { isOutline, type Side, sidesOf } from './strip-sides.ts';

/**
 * Rows of holes along an edge that turns corners. On each row a hole stands in
 * each corner where the margin lines of both sides cross: d/tan(φ/2) from the
 * corner along either edge, at the row's distance d from the edge and an angle φ
 * inside the corner. Each side between is filled with the pitch nearest to the
 * wanted one that is not below the least. Derived here.
 *
 * A closed outline has no cut ends: the hole in the corner its first side begins in
 * is also the last of its last side, and is counted once.
 *
 * @param input with no `cornerProblems`, or no `outlineProblems`
 * @param end from a cut end to the first hole
 */
export function turnedRows(input: StripInput, end: ExactLength): HoleRow[] {
  return rowsAcross(input).map((across, row) => {
    const { kept } = input;
    return turnedRow(input, end, across, kept?.row === row ? kept : undefined);
  });
}

function turnedRow(
  input: StripInput,
  end: ExactLength,
  across: ExactLength,
  kept: Kept | undefined,
): HoleRow {
  const back = backOf(across, input.angle);
  const closed = isOutline(input);
  const sides = sidesOf(input);
  const filled = sides.map((side, i) => {
    const from = side.begins ? back : end;
    const decided = kept?.side === i ? kept.count : undefined;
    return fillSide(input, side, from, side.ends ? back : end, decided);
  });
  const holes = filled.reduce((sum, { spaces }) => sum + spaces, 0);
  let number = 0;
  const runs = filled.map(({ marks, spaces }, i): Run => {
    // The hole in a corner is the last of one side and the first of the next.
    const named = marks.map((mark, at) => {
      const count = closed ? (number + at) % holes : number + at;
      return { ...mark, label: String(count + 1) };
    });
    number += spaces;
    const { begins, long } = sides[i] as Side;
    return { datum: begins ? 'edge-corner' : 'cut-end', length: long as Length, marks: named };
  });
  return {
    runs,
    count: closed ? holes : holes + 1,
    pitches: filled.map(({ pitch }) => pitch),
    across,
    ends: closed ? undefined : { start: end, end },
    middle: undefined,
  };
}

interface Filled {
  spaces: number;
  pitch: ExactLength;
  /** Not yet numbered. */
  marks: Omit<Mark, 'label'>[];
}

function fillSide(
  input: StripInput,
  side: Side,
  start: number,
  stop: number,
  decided: number | undefined,
): Filled {
  const room = exactLength(side.long - start - stop);
  const least = leastPitch(input);
  const nearest = () =>
    nearestSpaces(room, { pitch: input.pitch, least, fit: 'fill', middle: 'any' }) ?? 1;
  const spaces = decided === undefined ? nearest() : Math.max(1, decided - 1);
  const own = room / spaces;
  const marks = Array.from({ length: spaces + 1 }, (_, i) => {
    const inCorner = (i === 0 && side.begins) || (i === spaces && side.ends);
    const at = exactLength(start + i * own);
    return { at, kind: inCorner ? ('corner' as const) : ('hole' as const) };
  });
  return { spaces, pitch: exactLength(own), marks };
}
