import { exactLength, ZERO } from '../../lengths/length.ts';
import type { Problem } from '../problem.ts';
import type { StripInput } from './strip.ts';
import { overlapProblems, placeProblems, sideProblems } from './strip-corner-checks.ts';
import { gapOf } from './strip-overlap.ts';
import { outlineCorners, sidesOf, turnsRound } from './strip-sides.ts';

/** Sides measured by hand may miss where they begin by this part of the way round. Ours, no source. */
const MISSED = 0.005;

/**
 * What is wrong with the corners of a closed outline: places past its length or out of
 * order, corners that don't turn once round, a side without room for its mitres and two
 * holes, sides that don't come back to where they begin, or that cross. Derived here.
 */
export function outlineProblems(input: StripInput): Problem[] {
  const { length, corners, width, angle } = input;
  const misplaced = placeProblems(corners, ZERO, length);
  if (misplaced.length > 0) return misplaced;
  const turned = outlineCorners(input).length;
  if (!turnsRound(turned, angle)) {
    const needed = 180 - 360 / Math.max(3, turned);
    return [{ kind: 'not-round', field: 'angle', corners: turned, given: angle, needed }];
  }
  const sides = sidesOf(input);
  const short = sideProblems(input, sides);
  if (short) return short;
  const gap = exactLength(gapOf({ sides, width, angle }));
  if (gap > MISSED * length) return [{ kind: 'gap', field: 'corners', gap }];
  return overlapProblems(input, sides, true);
}
