import { type ExactLength, exactLength, type Length, length } from '../lengths/length.ts';
import type { Problem } from './problem.ts';
import type { Run } from './run.ts';

/** Spaces that differ by no more are one pitch, and places one place, in 1/8000 mm: what dividing leaves. */
export const NOISE = 0.01;

/** The places of a row that is followed, from the same end, each so much further on. */
export function placesOf({ marks }: Run, offset: Length): ExactLength[] {
  return marks.map(({ at }) => exactLength(at + offset));
}

/** Where the places of another row may lie on this edge, and how many there may be. */
interface Room {
  least: ExactLength;
  most: ExactLength;
  count: number;
}

/** Why the places of another row, in order, can't be those of this one. Problems name `follow`. */
export function placeProblems(
  places: readonly ExactLength[],
  { least, most, count }: Room,
): Problem[] {
  const field = 'follow';
  const given = places.length;
  if (given === 0) return [{ kind: 'too-few', field, least: 1, most: count, given }];
  if (given > count) return [{ kind: 'too-many', field, least: 1, most: count, given }];
  const off = places.find((at) => at < least - NOISE || at > most + NOISE);
  if (off !== undefined) {
    return [{ kind: 'outside', field, given: length(Math.round(off)), least, most }];
  }
  const twice = places.find((at, i) => i > 0 && at - (places[i - 1] ?? at) <= NOISE);
  return twice === undefined ? [] : [{ kind: 'twice', field, given: length(Math.round(twice)) }];
}
