import type { BandQuote } from '../../../sewing/sources/bands.ts';
import type { Quote } from './published-words.ts';

/** What is published of waistbands. */
export const bandQuotes: Readonly<Record<BandQuote, Quote>> = {
  wide: {
    says: 'a waistband is 4 to 5 cm wide when sewn, cut twice that with its seams',
    source: 'a school’s sewing course',
  },
  underlap: {
    says: 'it runs 5 to 8 cm under its other end',
    source: 'a school’s sewing course',
  },
};
