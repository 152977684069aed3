import { type ExactLength, exactLength, type Length, ZERO } from '../lengths/length.ts';
import { placeProblems } from './followed-places.ts';
import { mustBeCount, mustBePositive, mustBePositiveIfGiven } from './length-checks.ts';
import { answerUnless, type Outcome, type Problem } from './problem.ts';
import type { Mark, Run } from './run.ts';

/** The most parts an edge is divided into. */
const MOST_PARTS = 500;

export interface PartsInput {
  length: Length;
  /** Two or more. */
  parts: number;
  /** Closed, as a waist or a hem: the end is the beginning, which then carries a mark too. */
  round: boolean;
  /** The edge it is sewn to, when that is divided as well. */
  other?: Length | undefined;
}

/** One edge divided. */
export interface DividedEdge {
  part: ExactLength;
  /** A mark at the end of each part, labelled by how much of the edge lies before it. */
  run: Run;
}

export interface EqualParts {
  edge: DividedEdge;
  other: DividedEdge | undefined;
  /** How much longer each part of the other edge is; less than nothing when shorter. */
  longer: ExactLength | undefined;
}

/**
 * Marks that divide an edge evenly, and the edge it meets by the same fractions:
 * part = length ÷ parts, mark i at i × length ÷ parts, so that both edges agree at
 * every mark and each part takes the same share of their difference (derived here).
 *
 * Problems: a length of nothing, fewer than two parts, more than 500, no whole number.
 */
export function equalParts(input: PartsInput): Outcome<EqualParts> {
  return answerUnless(partsProblems(input), () => {
    const { length, other, parts } = input;
    return {
      ok: true,
      value: {
        edge: divided(length, input),
        other: other === undefined ? undefined : divided(other, input),
        longer: other === undefined ? undefined : exactLength((other - length) / parts),
      },
    };
  });
}

/** Marks that lie where those of another edge do, and on the edge it meets by the same fractions. */
export interface FollowedMarks {
  edge: Run;
  other: Run | undefined;
}

/**
 * Marks carried over from another edge: place for place on this one, and on the edge it meets at
 * place × its length ÷ this length, so that the difference is shared as evenly between marks as
 * their distances allow (derived here).
 *
 * Problems: a length of nothing, no marks or more than 500, one off the edge or twice.
 */
export function followedMarks(
  { length, other }: Pick<PartsInput, 'length' | 'other'>,
  follow: readonly ExactLength[],
): Outcome<FollowedMarks> {
  const room = { least: ZERO, most: length, count: MOST_PARTS };
  const problems = [...edgeProblems({ length, other }), ...placeProblems(follow, room)];
  const at = (long: Length, share: number): Run => ({
    datum: 'zero',
    length: long,
    marks: follow.map((place, i) => ({
      at: exactLength(place * share),
      label: String(i + 1),
      kind: 'measure',
    })),
  });
  return answerUnless(problems, () => ({
    ok: true,
    value: {
      edge: at(length, 1),
      other: other === undefined ? undefined : at(other, other / length),
    },
  }));
}

function divided(length: Length, { parts, round }: PartsInput): DividedEdge {
  const marks = Array.from({ length: parts }, (_, i): Mark => {
    const at = exactLength((i * length) / parts);
    return { at, label: fraction(i, parts), kind: 'measure' };
  });
  const run: Run = { datum: 'zero', length, marks: round ? marks : marks.slice(1) };
  return { part: exactLength(length / parts), run };
}

/** How much of the edge lies before a mark, in lowest terms; the beginning is 0. */
function fraction(over: number, under: number): string {
  if (over === 0) return '0';
  const shared = greatestShared(over, under);
  return `${over / shared}/${under / shared}`;
}

function greatestShared(a: number, b: number): number {
  return b === 0 ? a : greatestShared(b, a % b);
}

function partsProblems({ parts, ...edges }: PartsInput): Problem[] {
  return [...edgeProblems(edges), ...mustBeCount('count', parts, 2, MOST_PARTS)];
}

function edgeProblems({ length, other }: Pick<PartsInput, 'length' | 'other'>): Problem[] {
  return [...mustBePositive('length', length), ...mustBePositiveIfGiven('other', other)];
}
