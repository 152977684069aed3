import type { FacingQuote } from '../../../sewing/sources/facings.ts';
import type { Quote } from './published-words.ts';

/** What is published of a facing. */
export const facingQuotes: Readonly<Record<FacingQuote, Quote>> = {
  'facing-seam': {
    says: 'a facing is joined by a seam of 3/8 in, its free edge turned under narrowly',
    source: 'an older dressmaking text on skirts, about 1911',
  },
};
