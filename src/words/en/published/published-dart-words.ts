import type { DartQuote } from '../../../sewing/sources/darts.ts';
import type { Quote } from './published-words.ts';

/** What is published of darts. */
export const dartQuotes: Readonly<Record<DartQuote, Quote>> = {
  control: {
    says: 'what darts take is the larger measure less the smaller',
    source: 'a textbook of patterns, 1985',
  },
  legs: {
    says: 'both legs are equal; of several darts the middle one is drawn first, the others as long',
    source: 'Dress Making, Trade Theory, government teaching book, 2024',
  },
  short: {
    says: 'a dart ends 3/4 to 1 in before the fullest part',
    source: 'a teaching page on darts',
  },
  cluster: {
    says: 'several side by side end 1 1/2 in below it',
    source: 'Dress Making, Trade Theory, government teaching book, 2024',
  },
};
