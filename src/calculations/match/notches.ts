import type { ExactLength } from '../../lengths/length.ts';
import { placesOf } from '../../sewing/pieces/matching.ts';
import type { Matched } from './read.ts';

/** The marks of a sleeve and its armhole that are front and back notch: the first one, and the last. */
export interface SleeveNotches {
  /** By their places among the marks. */
  first: number;
  last: number;
  /** The single one, of the front, comes first. */
  front: boolean;
  /** The two edges are given from other sides, so that a single notch would meet a double one. */
  mixed: boolean;
}

/** Undefined where no sleeve is set in, or it has fewer than two notches. */
export function sleeveNotches({ asked, plan }: Matched): SleeveNotches | undefined {
  const { use, parts, hereFrom, otherFrom } = asked;
  const notches = plan.lengths.length - 1;
  if (use !== 'sleeve' || notches < 2) return undefined;
  const front = hereFrom !== 'back';
  return {
    first: parts - 1,
    last: notches * parts - 1,
    front,
    mixed: front === (otherFrom === 'back'),
  };
}

/** The notches of an edge that meet none of the other's: none, where lengths don't pair, does. */
export function notchesAlone(
  { asked, plan }: { asked: Pick<Matched['asked'], 'here' | 'other'>; plan: Matched['plan'] },
  edge: 'here' | 'other',
): { notch: number; at: ExactLength }[] {
  return placesOf(asked[edge])
    .slice(0, -1)
    .map((at, i) => ({ notch: i + 1, at }))
    .filter(({ notch }) => plan.fewer !== undefined || plan.pairs?.left[edge].includes(notch));
}
