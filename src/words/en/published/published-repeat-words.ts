import type { RepeatQuote } from '../../../sewing/sources/repeats.ts';
import type { Quote } from './published-words.ts';

/** What is published of cloth with a repeat. */
export const repeatQuotes: Readonly<Record<RepeatQuote, Quote>> = {
  'one-repeat': {
    says: 'buy one full repeat more than the pieces take',
    source: 'a teaching page on buying cloth',
  },
};
