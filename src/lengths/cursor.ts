import { NOUGHT, type Rational } from './rational.ts';
import type { ReadFault, ReadFaultKind } from './read-fault.ts';
import type { Taken } from './taken.ts';
import { type Token, tokens } from './tokens.ts';

/** A place in the pieces of a typed text, and the first fault met on the way there. */
export interface Cursor {
  readonly typed: string;
  /** The mark chosen for decimals, where one is known. */
  readonly mark: string | undefined;
  readonly pieces: readonly Token[];
  /** Numbers taken from elsewhere, which their letters stand for. */
  readonly taken: Taken | undefined;
  next: number;
  fault: ReadFault | undefined;
}

export function startOf(typed: string, mark: string | undefined, taken: Taken | undefined): Cursor {
  return { typed, mark, pieces: tokens(typed), taken, next: 0, fault: undefined };
}

/** The piece to come, or one further on; past the last there is only the end. */
export function peek(at: Cursor, ahead = 0): Token {
  return at.pieces[at.next + ahead] ?? (at.pieces[at.pieces.length - 1] as Token);
}

export function take(at: Cursor): Token {
  const token = peek(at);
  at.next += 1;
  return token;
}

/**
 * Notes why the text can't be read, from one piece to another. Only the first
 * fault counts: what follows it is read from nothing and never seen.
 */
export function fail(at: Cursor, kind: ReadFaultKind, from: Token, to = from): Rational {
  const text = at.typed.slice(from.at, to.at + to.text.length);
  at.fault ??= { kind, at: from.at, text };
  return NOUGHT;
}

/** The piece taken last. */
export function last(at: Cursor): Token {
  return peek(at, -1);
}
