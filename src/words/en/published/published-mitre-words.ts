import type { MitreQuote } from '../../../sewing/sources/mitres.ts';
import type { Quote } from './published-words.ts';

/** What is published of a mitre. */
export const mitreQuotes: Readonly<Record<MitreQuote, Quote>> = {
  'mitre-trim': {
    says: 'trim 1/4 in outside the diagonal crease',
    source: 'Hand Sewing Lessons and Handicraft for Girls, school textbooks',
  },
};
