import { type ExactLength, exactLength, settled } from '../lengths/length.ts';
import type { Problem } from './problem.ts';
import { MOST_HOLES, type StripInput } from './strip.ts';
import { tooMany } from './strip-fit.ts';
import { overlapOf } from './strip-overlap.ts';
import { backOf, leastPitch, rowsAcross } from './strip-room.ts';
import { sidesOf } from './strip-sides.ts';

/**
 * What is wrong with the corners of an open strip.
 *
 * A side has room for its mitres, so that no cut end lies in one, and on each row for
 * two holes. At sharp corners the sides before and after a side come together and must
 * not meet: their inner edges, where both go so far, would at d/2cos φ from a side that
 * is d long inside. Sharper than 45° either of them may run into the other's side.
 * Derived here.
 *
 * @param end from a cut end to the first hole
 */
export function cornerProblems(input: StripInput, end: ExactLength): Problem[] {
  const { length, pitch, corners, width, angle } = input;
  // Each corner may round a side up by a hole.
  if (length / pitch + corners.length >= MOST_HOLES) return [tooMany(length)];
  const mitre = backOf(width, angle);
  const back = backOf(Math.max(...rowsAcross(input)), angle);
  const holes = leastPitch(input);
  const least = settled(exactLength(Math.max(mitre, end + holes + back)));
  const most = exactLength(length - least);
  if (least > most) {
    const needed = exactLength(2 * least);
    return [{ kind: 'does-not-fit', field: 'length', room: length, needed }];
  }
  const closing = Math.max(0, Math.cos((angle * Math.PI) / 180));
  const edges = [0, ...corners, length];
  const sideFrom = (i: number) => (edges[i + 1] as number) - (edges[i] as number);
  for (const [i, given] of corners.entries()) {
    const before = corners[i - 1] ?? Number.NEGATIVE_INFINITY;
    if (given <= before) {
      return [{ kind: given < before ? 'not-in-order' : 'twice', field: 'corners', given }];
    }
    if (given < least || given > most) {
      return [{ kind: 'outside', field: 'corners', given, least, most }];
    }
  }
  for (const i of corners.slice(1).keys()) {
    const beside = [sideFrom(i) - mitre, sideFrom(i + 2) - mitre];
    const meet = Math[angle < 45 ? 'max' : 'min'](...beside);
    const mitred = 2 * (mitre + closing * meet);
    const needed = settled(exactLength(Math.max(mitred, 2 * back + holes)));
    const room = exactLength(sideFrom(i + 1));
    if (room < needed) return [{ kind: 'does-not-fit', field: 'corners', room, needed }];
  }
  return overlapProblems(input, false);
}

/** Sides that no corner joins must not lie over each other. */
export function overlapProblems(input: StripInput, closed: boolean): Problem[] {
  const { width, angle } = input;
  const found = overlapOf({ sides: sidesOf(input), width, angle, closed });
  if (!found) return [];
  const [side, other] = found;
  return [{ kind: 'crosses-itself', field: 'corners', side, other }];
}
