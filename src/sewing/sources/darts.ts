import { inches, type Length } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-dart-words.ts`. */
export type DartQuote = 'control' | 'legs' | 'short' | 'cluster';

/**
 * A dart's legs are equal; of several the middle one is drawn first and the others as long.
 *
 * Reference: National Instructional Media Institute (Government of India), CITS Dress Making, Trade
 * Theory, 2024, page 199.
 */
export const LEGS_DIFFER: Quoted<0, DartQuote> = { value: 0, quote: 'legs', grade: 'manual' };

/** What darts take is the larger measure less the smaller. Reference: A. P. Margolis, Make Your Own Dress Patterns, 1985, ch. 2. */
export const CONTROL: Quoted<'difference', DartQuote> = {
  value: 'difference',
  quote: 'control',
  grade: 'manual',
};

/** How far a dart ends before the fullest part, at its least. Reference: sewingconnection.com, darts. */
export const SHORT_OF: Quoted<Length, DartQuote> = {
  value: inches(3 / 4),
  quote: 'short',
  grade: 'page',
};

/**
 * The same at its most, of several darts side by side: 1 in and 1/2 in below it.
 *
 * Reference: as for the legs.
 */
export const CLUSTER_SHORT_OF: Quoted<Length, DartQuote> = {
  value: inches(3 / 2),
  quote: 'cluster',
  grade: 'manual',
};
