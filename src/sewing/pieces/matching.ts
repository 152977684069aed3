import { type ExactLength, exactLength, type Length, settled } from '../../lengths/length.ts';
import { answerUnless, mapped, type Outcome, type Problem, refused } from '../problem.ts';
import { type MatchInput, matchProblems, totalOf, weightsOf, wholesOf } from './matching-input.ts';
import { type EasedLength, type MatchRuns, markMatch } from './matching-marks.ts';
import { fewerOf, type Paired, pairedOf } from './matching-pairs.ts';

/** One length of both edges, from notch to notch. */
export interface MatchedLength extends EasedLength {
  here: Length;
  /** The most of it in any of its parts, beside the shorter edge there: 0.05 is 5 %. */
  fullest: number;
}

export interface Match {
  /** The edge with fewer lengths, where they don't pair and it isn't said what meets: each edge is then one length, without a notch or mark. */
  fewer: 'here' | 'other' | undefined;
  /** What meets, where it is known. */
  pairs: Paired | undefined;
  /** Between notches that meet. */
  lengths: readonly MatchedLength[];
  /** All together. */
  ease: ExactLength;
  /** The same beside the shorter edge; less than nothing where the other is that. */
  part: number;
  /** Where each notch of the other edge would lie if the difference were shared as it is meant; its end is no notch. */
  notches: readonly ExactLength[];
  /** How far each notch of the other edge is to be moved for that, towards its end; undefined where it has none yet, or none pairs. */
  moves: readonly ExactLength[] | undefined;
  /** Notches and the marks between them, mark to mark; none at either end. */
  runs: MatchRuns;
}

/**
 * Two edges matched from notch to notch. The ease of length i is bᵢ − aᵢ; in all E = Σb − Σa. Shared as
 * it is meant, length i of the other edge is aᵢ + shareᵢ × E, and its notches lie at the sums of those.
 * Parts: the shorter edge is marked evenly, the longer at that and its share of the ease (derived here).
 *
 * Cap ease = head − armhole, never less than nothing: row 8.9 of a teaching page on sleeves.
 *
 * Where one edge has more notches, those that are said to meet none are sewn past: the lengths at both
 * their sides count as one.
 *
 * Problems: no lengths, more than 8, one of nothing, notches left over that aren't as many as one edge
 * has more or aren't on it, shares that are not one for each or come to nothing, a share that leaves
 * nothing of a length.
 */
export function match(input: MatchInput): Outcome<Match> {
  return answerUnless(matchProblems(input), () => {
    const pairs = pairedOf(input);
    const edges = pairs ? { ...input, here: pairs.here, other: pairs.other } : wholesOf(input);
    return mapped(matchPaired(edges), (plan): Match => {
      if (pairs) return { ...plan, fewer: undefined, pairs };
      return { ...plan, fewer: fewerOf(input), pairs, moves: undefined };
    });
  });
}

/** Edges whose lengths pair. */
function matchPaired(input: MatchInput): Outcome<Omit<Match, 'fewer' | 'pairs'>> {
  const { here, other } = input;
  const whole = other.length === 1 && here.length > 1;
  const difference = totalOf(other) - totalOf(here);
  const planned = here.map((one, i) => settled(exactLength(one + shareOf(input, i) * difference)));
  const problem = usedUp(input, planned);
  if (problem) return refused(problem);
  const lengths = here.map((one, i) => matched(input, one, whole ? planned[i] : other[i]));
  const ends = placesOf(planned);
  const now = placesOf(other);
  return {
    ok: true,
    value: {
      lengths,
      ease: exactLength(difference),
      part: partOf(exactLength(difference), totalOf(here)),
      notches: ends.slice(0, -1),
      moves: whole
        ? undefined
        : now.slice(0, -1).map((at, i) => settled(exactLength((ends[i] ?? at) - at))),
      runs: markMatch(lengths, input),
    },
  };
}

/** Ease beside the shorter edge. */
export function partOf(ease: ExactLength, here: ExactLength): number {
  const shorter = Math.min(here, here + ease);
  return shorter > 0 ? ease / shorter : Math.sign(ease);
}

/** Where each length ends, from the start. */
export function placesOf(lengths: readonly ExactLength[]): ExactLength[] {
  return lengths.map((_, i) => settled(totalOf(lengths.slice(0, i + 1))));
}

function matched(input: MatchInput, here: Length, there: ExactLength | undefined): MatchedLength {
  const other = there ?? here;
  const ease = exactLength(other - here);
  const most = Math.max(...weightsOf(input));
  return { here, other, ease, fullest: Math.abs(partOf(ease, here)) * most * input.parts };
}

function shareOf({ here, shares }: MatchInput, i: number): number {
  const all: readonly number[] = shares.length > 0 ? shares : here;
  const sum = all.reduce((one, other) => one + other, 0);
  return (all[i] ?? 0) / sum;
}

/** A share of what the other edge is shorter by, that is more than there is of a length: by their lengths none is. */
function usedUp({ here }: MatchInput, planned: readonly ExactLength[]): Problem | undefined {
  const i = planned.findIndex((one) => one <= 0);
  const [room, left] = [here[i], planned[i]];
  if (room === undefined || left === undefined) return undefined;
  return { kind: 'does-not-fit', field: 'shares', room, needed: exactLength(room - left) };
}
