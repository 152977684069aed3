import { type Length, UNITS_PER_INCH, ZERO } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-match-words.ts`. */
export type MatchQuote =
  | 'cap-textbook'
  | 'cap-draft'
  | 'cap-factory'
  | 'cap-gathers'
  | 'cap-none'
  | 'notches';

type Ease = readonly [least: Length, most: Length];
const inch = (parts: number) => (UNITS_PER_INCH * parts) as Length;

/**
 * How much longer a sleeve head is than its armhole, least and most; textbooks against factories.
 *
 * Reference: en.paperblog.com 419520, which quotes both.
 */
const CAP_TEXTBOOK: Quoted<Ease, MatchQuote> = {
  value: [inch(1), inch(1.5)],
  quote: 'cap-textbook',
  grade: 'page',
};
const CAP_FACTORY: Quoted<Ease, MatchQuote> = {
  value: [inch(1 / 2), inch(1 / 2)],
  quote: 'cap-factory',
  grade: 'page',
};

/**
 * The average of a drafting textbook.
 *
 * Reference: designloft.blogspot.com, March 2008, which quotes it.
 */
const CAP_DRAFT: Quoted<Ease, MatchQuote> = {
  value: [inch(1.5), inch(1.5)],
  quote: 'cap-draft',
  grade: 'page',
};

/**
 * The least, and where it begins to gather.
 *
 * Reference: sewandso.wordpress.com, 6 November 2014.
 */
const CAP_GATHERS: Quoted<Ease, MatchQuote> = {
  value: [inch(1 / 2), inch(1)],
  quote: 'cap-gathers',
  grade: 'page',
};

/**
 * None at all.
 *
 * Reference: fashion-incubator.com.
 */
const CAP_NONE: Quoted<Ease, MatchQuote> = {
  value: [ZERO, ZERO],
  quote: 'cap-none',
  grade: 'page',
};

/**
 * Notches: one on the front, two on the back, on sleeve and armhole.
 *
 * Reference: L. McConnell, Sleeves, Routledge, doi 10.4324/9781003022619-12.
 */
export const NOTCHES: Quoted<{ front: number; back: number }, MatchQuote> = {
  value: { front: 1, back: 2 },
  quote: 'notches',
  grade: 'manual',
};

/** Every published figure of a sleeve head's ease: they conflict, and none rules. */
export const CAP_EASE = [CAP_TEXTBOOK, CAP_DRAFT, CAP_FACTORY, CAP_GATHERS, CAP_NONE] as const;
