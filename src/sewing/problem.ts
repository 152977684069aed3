import type { ExactLength, Length } from '../lengths/length.ts';

/**
 * Something the maker's numbers cannot give an answer to.
 *
 * A problem is a value, not an exception: while someone types, most inputs are
 * impossible for a moment. It carries the facts and the field to mend; its
 * sentence is in `words/`, so that arithmetic never holds language.
 *
 * - `too-short`, `too-long`: a length under the least or over the most that works; `too-few`, `too-many`: a count.
 *   With both ends where both are known: what mends the one must not be refused for the other.
 * - `not-over`, `not-under`: a length that must be more, or less, than another one.
 * - `does-not-fit`: what is asked for needs more length than there is.
 * - `ends-too-long`: the two ends together leave nothing (or less) between first and last.
 * - `too-close`: a pitch so small that more than `most` marks would be needed.
 * - `overlap`: items wider than the pitch they are set at.
 * - `bent-and-turned`: a strip can't follow a bend and corners at once.
 * - `crosses-itself`: two sides of a strip, counted from 1, lie over each other.
 * - `not-round`: so many corners of the angle given don't close an outline; each needs another.
 * - `not-as-many`: a list that needs one for each of another, and has more or fewer.
 * - `below-nothing`: shares of which one is less than nothing, or that come to nothing.
 * - `not-hundred`: shares, each as often as there are places for it, that don't come to 100 per cent.
 * - `gap`: an outline's sides don't come back to where they begin.
 * - `not-in-order`: places that have to follow each other and don't.
 * - `fewer-than-sewn`: a count below the number that is already sewn.
 */
export type Problem =
  | { kind: 'not-positive'; field: string; given: Length }
  | { kind: 'negative'; field: string; given: Length }
  | { kind: 'too-short'; field: string; least: ExactLength; most?: ExactLength; given: Length }
  | { kind: 'too-long'; field: string; least?: ExactLength; most: ExactLength; given: Length }
  | { kind: 'not-over'; field: string; over: ExactLength; given: Length }
  | { kind: 'not-under'; field: string; under: ExactLength; given: Length }
  | { kind: 'too-few'; field: string; least: number; most?: number; given: number }
  | { kind: 'too-many'; field: string; least?: number; most: number; given: number }
  | { kind: 'not-whole'; field: string; given: number }
  | { kind: 'does-not-fit'; field: string; room: ExactLength; needed: ExactLength }
  | { kind: 'ends-too-long'; field: string; room: ExactLength; needed: ExactLength }
  | { kind: 'too-close'; field: string; least: ExactLength; most: number }
  | { kind: 'overlap'; field: string; given: Length; pitch: ExactLength }
  | { kind: 'bent-and-turned'; field: string }
  | { kind: 'not-in-order'; field: string; given: Length }
  | { kind: 'fewer-than-sewn'; field: string; sewn: number; given: number }
  | { kind: 'outside'; field: string; given: Length; least: ExactLength; most: ExactLength }
  | { kind: 'out-of-range'; field: string; given: number; least: number; most: number }
  | { kind: 'twice'; field: string; given: Length }
  | { kind: 'crosses-itself'; field: string; side: number; other: number }
  | { kind: 'not-round'; field: string; corners: number; given: number; needed: number }
  | { kind: 'gap'; field: string; gap: ExactLength }
  | { kind: 'not-as-many'; field: string; given: number; needed: number }
  | { kind: 'below-nothing'; field: string; given: number }
  | { kind: 'not-hundred'; field: string; given: number };

/** An answer, or every reason why there is none. */
export type Outcome<Value> =
  | { ok: true; value: Value }
  | { ok: false; problems: readonly [Problem, ...Problem[]] };

/** There is no answer, for these reasons. */
export function refused(
  first: Problem,
  ...more: Problem[]
): { ok: false; problems: readonly [Problem, ...Problem[]] } {
  return { ok: false, problems: [first, ...more] };
}

/** The answer when nothing is wrong, otherwise every reason why there is none. */
export function answerUnless<Value>(
  problems: readonly Problem[],
  answer: () => Outcome<Value>,
): Outcome<Value> {
  const [first, ...more] = problems;
  return first ? refused(first, ...more) : answer();
}

/** The same answer seen another way, or the same reasons why there is none. */
export function mapped<Value, Other>(
  outcome: Outcome<Value>,
  see: (value: Value) => Other,
): Outcome<Other> {
  return outcome.ok ? { ok: true, value: see(outcome.value) } : outcome;
}
