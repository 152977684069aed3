import { type ExactLength, exactLength, type Length, length } from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { mapped, type Outcome, type Problem, refused } from '../problem.ts';
import { CORD_CASING_MORE } from '../sources/cords.ts';
import { type Casing, casing } from './casing.ts';

/** A cord in a channel that is turned down for it. */
export interface CordInput {
  /** How thick the cord is. */
  thick: Length;
  /** Round the channel where it is widest. */
  widest: Length;
  /** So much free at each end there, or a cord that is there. */
  how: { by: 'free'; free: Length } | { by: 'there'; there: Length };
  /** Taken by a knot at each end. */
  knot: Length;
  turn: Length;
  /** From the inner fold to the stitch line. */
  edge: Length;
  /** Stands as a frill above the cord: from the fold to a stitch line of its own; nothing where there is none. */
  header: Length;
}

export interface Cord {
  casing: Casing;
  /** From cut end to cut end. */
  cut: Length;
  /** Outside the channel at each end, at its widest, without the knot; less than nothing where it slips in. */
  free: ExactLength;
}

/**
 * A cord round a channel: widest + 2 × free + 2 × knot. Its casing lies flat: D + 1/4 in is published
 * (`sources/cords.ts`), but round a cord it has to be half of what is round that, πD ÷ 2 (derived here):
 * the greater is taken, which is the second above 11.1 mm.
 *
 * Problems: a cord or a channel of nothing, anything less than nothing.
 */
export function cord(input: CordInput): Outcome<Cord> {
  const [first, ...more] = cordProblems(input);
  if (first) return refused(first, ...more);
  const { thick, widest, how, knot, turn, edge, header } = input;
  const around = { width: thick, thick: length(0), ease: roomFor(thick), turn, edge, header };
  return mapped(casing(around), (turned) => {
    const cut = how.by === 'there' ? how.there : length(widest + 2 * how.free + 2 * knot);
    return { casing: turned, cut, free: freeOf(input, cut) };
  });
}

/** How much is free at each end of a cord of a length. */
export function freeOf({ widest, knot }: CordInput, cut: ExactLength): ExactLength {
  return exactLength((cut - widest) / 2 - knot);
}

/** How much wider than the cord its casing lies flat, up to a whole unit. */
function roomFor(thick: Length): Length {
  const round = Math.ceil((Math.PI / 2 - 1) * thick);
  return length(Math.max(CORD_CASING_MORE.value, round));
}

function cordProblems({ thick, widest, how, knot, turn, edge, header }: CordInput): Problem[] {
  return [
    ...mustBePositive('thick', thick),
    ...mustBePositive('widest', widest),
    ...(how.by === 'free'
      ? mustNotBeNegative('free', how.free)
      : mustBePositive('there', how.there)),
    ...mustNotBeNegative('knot', knot),
    ...mustNotBeNegative('turn', turn),
    ...mustNotBeNegative('edge', edge),
    ...mustNotBeNegative('header', header),
  ];
}
