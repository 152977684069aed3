import { type ExactLength, exactLength, type Length, length } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive } from '../length-checks.ts';
import type { Problem } from '../problem.ts';
import { aloneProblems, type Edges, pairedOf } from './matching-pairs.ts';

/** The most lengths an edge is given in, from notch to notch. */
export const MOST_SEGMENTS = 8;
/** The most parts each of them is divided in. */
const MOST_PARTS = 24;

export interface MatchInput extends Edges {
  /** The edge that keeps its length, from notch to notch in order. */
  here: readonly Length[];
  /** The edge that is eased onto it: as many lengths, or its whole length, to be notched to suit; of any other number only all together counts, until it is said which notches meet none. */
  other: readonly Length[];
  /** What part of the difference each length that pairs takes: one number each, of any size; by its length where there are none. */
  shares: readonly number[];
  /** So many parts each length is divided in, so that the ease in it is spread as it is meant. */
  parts: number;
  /** What part of its ease each of them takes: one number each; all the same where there are none. */
  weights: readonly number[];
}

/** What is wrong with two edges that are to be matched, by the fields of the calculation. */
export function matchProblems(input: MatchInput): Problem[] {
  const { here, other, shares, parts, weights } = input;
  const edges = [
    ...mustBeCount('here', here.length, 1, MOST_SEGMENTS),
    ...mustBeCount('other', other.length, 1, MOST_SEGMENTS),
    ...here.flatMap((one) => mustBePositive('here', one)).slice(0, 1),
    ...other.flatMap((one) => mustBePositive('other', one)).slice(0, 1),
    ...mustBeCount('parts', parts, 1, MOST_PARTS),
  ];
  const alone = edges.length > 0 ? edges : aloneProblems(input);
  if (alone.length > 0) return alone;
  const paired = pairedOf(input);
  return [
    ...(paired ? shareProblems('shares', shares, paired.here.length) : []),
    ...shareProblems('weights', weights, parts),
  ];
}

/** Both edges each as one length, without a mark. */
export function wholesOf({ here, other }: MatchInput): MatchInput {
  const whole = (edge: readonly Length[]) => [length(totalOf(edge))];
  return { here: whole(here), other: whole(other), alone: [], shares: [], parts: 1, weights: [] };
}

function shareProblems(field: string, shares: readonly number[], needed: number): Problem[] {
  if (shares.length === 0) return [];
  const less = shares.find((one) => one < 0);
  if (less !== undefined) return [{ kind: 'below-nothing', field, given: less }];
  const none = shares.every((one) => one === 0);
  return [
    ...asMany(field, shares.length, needed),
    ...(none ? [{ kind: 'below-nothing', field, given: 0 } as const] : []),
  ];
}

function asMany(field: string, given: number, needed: number): Problem[] {
  return given === needed ? [] : [{ kind: 'not-as-many', field, given, needed }];
}

/** All lengths together. */
export function totalOf(lengths: readonly ExactLength[]): ExactLength {
  return exactLength(lengths.reduce<number>((sum, one) => sum + one, 0));
}

/** What part of its ease each part of a length takes: together 1. */
export function weightsOf({ parts, weights }: Pick<MatchInput, 'parts' | 'weights'>): number[] {
  const all = weights.length > 0 ? weights : Array.from({ length: parts }, () => 1);
  const sum = all.reduce((one, other) => one + other, 0);
  return all.map((one) => one / sum);
}
