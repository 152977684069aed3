import { type ExactLength, exactLength, settled } from '../lengths/length.ts';
import type { Problem } from './problem.ts';
import { MOST_HOLES, type StripInput } from './strip.ts';
import { overlapProblems } from './strip-corner-checks.ts';
import { tooMany } from './strip-fit.ts';
import { gapOf } from './strip-overlap.ts';
import { backOf, leastPitch, rowsAcross } from './strip-room.ts';
import { outlineCorners, sidesOf, turnsRound } from './strip-sides.ts';

/** Sides measured by hand may miss where they begin by this part of the way round. Ours, no source. */
const MISSED = 0.005;

/**
 * What is wrong with the corners of a closed outline: places past its length or out of
 * order, corners that don't turn once round, a side without room for its mitres and two
 * holes, sides that don't come back to where they begin, or that cross. Derived here.
 */
export function outlineProblems(input: StripInput): Problem[] {
  const { length, pitch, corners, width, angle } = input;
  if (length / pitch + corners.length >= MOST_HOLES) return [tooMany(length)];
  const placed = corners.flatMap((at, i) => placeProblems(at, corners[i - 1], length));
  const [misplaced] = placed;
  if (misplaced) return [misplaced];
  const turned = outlineCorners(input).length;
  if (!turnsRound(turned, angle)) {
    const needed = 180 - 360 / Math.max(3, turned);
    return [{ kind: 'not-round', field: 'angle', corners: turned, given: angle, needed }];
  }
  const sides = sidesOf(input);
  const back = backOf(Math.max(...rowsAcross(input)), angle);
  const least = Math.max(2 * backOf(width, angle), 2 * back + leastPitch(input));
  const needed = settled(exactLength(least));
  const short = sides.find(({ long }) => long < needed);
  if (short) {
    const room = exactLength(short.long);
    return [{ kind: 'does-not-fit', field: 'corners', room, needed }];
  }
  const gap = exactLength(gapOf({ sides, width, angle, closed: true }));
  if (gap > MISSED * length) return [{ kind: 'gap', field: 'corners', gap }];
  return overlapProblems(input, true);
}

function placeProblems(
  given: StripInput['length'],
  before: number | undefined,
  most: ExactLength,
): Problem[] {
  const field = 'corners';
  if (given < 0 || given > most) {
    return [{ kind: 'outside', field, given, least: exactLength(0), most }];
  }
  if (before === undefined || given > before) return [];
  return [{ kind: given < before ? 'not-in-order' : 'twice', field, given }];
}
