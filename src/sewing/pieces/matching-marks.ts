import { type ExactLength, exactLength, length, settled } from '../../lengths/length.ts';
import type { Mark, Run } from '../run.ts';
import { type MatchInput, totalOf, weightsOf } from './matching-input.ts';

/** One length of both edges, and how much longer the other one is. */
export interface EasedLength {
  here: ExactLength;
  /** Of the other edge, as it is, or as it is to be notched. */
  other: ExactLength;
  /** Less than nothing where it is shorter. */
  ease: ExactLength;
}

/** The marks of both edges, those that meet of the same number. */
export interface MatchRuns {
  here: Run;
  other: Run;
}

/** Notches and the marks between, on both edges: where one is shorter it is marked evenly, the longer one fuller. */
export function markMatch(
  lengths: readonly EasedLength[],
  input: Pick<MatchInput, 'parts' | 'weights'>,
): MatchRuns {
  return {
    here: runOf(lengths, input, ({ here, ease }) => [here, -ease]),
    other: runOf(lengths, input, ({ other, ease }) => [other, ease]),
  };
}

/** @param edge how long one length of the edge is, and how much of that is eased in */
function runOf(
  lengths: readonly EasedLength[],
  input: Pick<MatchInput, 'parts' | 'weights'>,
  edge: (one: EasedLength) => readonly [ExactLength, number],
) {
  const { parts } = input;
  const weights = weightsOf(input);
  const sums = weights.map((_, i) => weights.slice(0, i + 1).reduce((one, more) => one + more, 0));
  let from = 0;
  const places = lengths.flatMap((one) => {
    const [long, fuller] = edge(one);
    const eased = Math.max(0, fuller);
    const marks = sums.map((share, i) => {
      const last = i === parts - 1;
      const at = last ? long : ((i + 1) * (long - eased)) / parts + share * eased;
      return { at: settled(exactLength(from + at)), kind: last ? 'notch' : 'measure' } as const;
    });
    from += long;
    return marks;
  });
  const marks = places.slice(0, -1).map((place, i): Mark => ({ ...place, label: String(i + 1) }));
  const all = lengths.map((one) => edge(one)[0]);
  return { datum: 'zero' as const, length: length(Math.round(totalOf(all))), marks };
}
