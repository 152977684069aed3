import { type ExactLength, exactLength, settled } from '../../lengths/length.ts';
import type { Problem } from '../problem.ts';
import type { StripInput } from './strip.ts';
import { overlapOf } from './strip-overlap.ts';
import { backOf, leastPitch, rowsAcross } from './strip-room.ts';
import { type Side, sidesOf } from './strip-sides.ts';

/**
 * What is wrong with the corners of an open strip.
 *
 * A side has room for its mitres, so that no cut end lies in one, and on each row for
 * two holes; and no two sides lie over each other. Derived here.
 *
 * @param end from a cut end to the first hole
 */
export function cornerProblems(input: StripInput, end: ExactLength): Problem[] {
  const { length, corners, width, angle } = input;
  const back = backOf(Math.max(...rowsAcross(input)), angle);
  const least = settled(
    exactLength(Math.max(backOf(width, angle), end + leastPitch(input) + back)),
  );
  const most = exactLength(length - least);
  if (least > most) {
    const needed = exactLength(2 * least);
    return [{ kind: 'does-not-fit', field: 'length', room: length, needed }];
  }
  const misplaced = placeProblems(corners, least, most);
  if (misplaced.length > 0) return misplaced;
  const sides = sidesOf(input);
  return sideProblems(input, sides.slice(1, -1)) ?? overlapProblems(input, sides, false);
}

/** A side between two corners has room for two mitres, and on each row for two holes. */
export function sideProblems(input: StripInput, sides: readonly Side[]): Problem[] | undefined {
  const { width, angle } = input;
  const back = backOf(Math.max(...rowsAcross(input)), angle);
  const least = Math.max(2 * backOf(width, angle), 2 * back + leastPitch(input));
  const needed = settled(exactLength(least));
  const short = sides.find(({ long }) => long < needed);
  if (!short) return undefined;
  return [{ kind: 'does-not-fit', field: 'corners', room: exactLength(short.long), needed }];
}

/** The first corner that is out of order, or outside where a corner may be. */
export function placeProblems(
  corners: StripInput['corners'],
  least: ExactLength,
  most: ExactLength,
): Problem[] {
  for (const [i, given] of corners.entries()) {
    const before = corners[i - 1] ?? Number.NEGATIVE_INFINITY;
    if (given <= before) {
      return [{ kind: given < before ? 'not-in-order' : 'twice', field: 'corners', given }];
    }
    if (given < least || given > most) {
      return [{ kind: 'outside', field: 'corners', given, least, most }];
    }
  }
  return [];
}

/** Sides that no corner joins must not lie over each other. */
export function overlapProblems(
  { width, angle }: StripInput,
  sides: readonly Side[],
  closed: boolean,
): Problem[] {
  const found = overlapOf({ sides, width, angle, closed });
  if (!found) return [];
  const [side, other] = found;
  return [{ kind: 'crosses-itself', field: 'corners', side, other }];
}
