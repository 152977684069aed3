import type { CordQuote } from '../../../sewing/sources/cords.ts';
import type { Quote } from './published-words.ts';

/** What is published of cords and their casings. */
export const cordQuotes: Readonly<Record<CordQuote, Quote>> = {
  casing: {
    says: 'a casing is 1/4 in wider than its cord is thick',
    source: 'judging standards, 2023',
  },
  'child-us': {
    says: 'at a child’s waist or lower edge each end at most 3 in (75 mm) at the widest, sizes 2T to 16, nothing tied at it, stitched at the middle back; none at hood or neck, sizes 2T to 12',
    source: 'ASTM F1816-18, as laboratories give it',
  },
  'child-eu': {
    says: 'at a child’s waist each end at most 14 cm at the widest and 28 cm drawn in, to 14 years, no knots at it, none at the back; none at hood or neck to 7 years or 134 cm, no free ends there to 14',
    source: 'EN 14682:2007, as a laboratory and an authority give it; there is an edition of 2014',
  },
};
