import { downToGraduation, toGraduation, upToGraduation } from './graduation.ts';
import { type ExactLength, type Length, length } from './length.ts';

/** Two edges or folds, the lesser first: what is to stay inside them touches neither. */
export interface Bounds {
  over: ExactLength;
  under: ExactLength;
}

/**
 * The graduation nearest to an exact length of all that lie strictly inside two
 * edges: for what must never be marked on or past a fold. Undefined where the tape
 * has no graduation between them: it is too coarse, and that is to be said.
 *
 * An edge that is itself marked is where its mark is; where the mark and the exact
 * place differ, give the narrower of the two.
 */
export function insideGraduation(
  exact: ExactLength,
  step: Length,
  { over, under }: Bounds,
): Length | undefined {
  const first = downToGraduation(over, step) + step;
  const last = upToGraduation(under, step) - step;
  return first > last
    ? undefined
    : length(Math.min(last, Math.max(first, toGraduation(exact, step))));
}
