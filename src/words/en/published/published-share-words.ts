import type { ShareQuote } from '../../../sewing/sources/shares.ts';
import type { Quote } from './published-words.ts';

/** What is published of sharing a difference of girths. */
export const shareQuotes: Readonly<Record<ShareQuote, Quote>> = {
  'hip-to-waist': {
    says: 'from hip to waist each of 4 side edges takes 13 %, each of 2 front darts 8 %, each of 2 back darts 16 %; rounded one by one its 8 in come out 1/4 in short',
    source: 'a teaching page on skirt darts',
  },
};
