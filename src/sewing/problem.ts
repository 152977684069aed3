import type { ExactLength, Length } from '../lengths/length.ts';

/**
 * Something the maker's numbers cannot give an answer to.
 *
 * A problem is a value, not an exception: while someone types, most inputs are
 * impossible for a moment. It carries the facts and the field to mend; its
 * sentence is in `words/`, so that arithmetic never holds language.
 */
export type Problem =
  | { kind: 'not-positive'; field: string; given: Length }
  | { kind: 'negative'; field: string; given: Length }
  | { kind: 'too-few'; field: string; least: number; given: number }
  | { kind: 'too-many'; field: string; most: number; given: number }
  | { kind: 'not-whole'; field: string; given: number }
  | { kind: 'does-not-fit'; field: string; room: ExactLength; needed: ExactLength }
  | { kind: 'outside'; field: string; given: Length; least: ExactLength; most: ExactLength }
  | { kind: 'out-of-range'; field: string; given: number; least: number; most: number }
  | { kind: 'twice'; field: string; given: Length };

/** An answer, or every reason why there is none. */
export type Outcome<Value> =
  | { ok: true; value: Value }
  | { ok: false; problems: readonly [Problem, ...Problem[]] };
