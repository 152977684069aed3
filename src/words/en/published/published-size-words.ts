import type { SizeQuote } from '../../../sewing/sources/sizes.ts';
import type { Quote } from './published-words.ts';

/** What is published of stitches, buttons and needles. */
export const sizeQuotes: Readonly<Record<SizeQuote, Quote>> = {
  'shirt-stitches': {
    says: '10 to 14 stitches to the inch on shirts',
    source: 'TM 10-8400-201-23, army manual, table 5-1',
  },
  'trouser-stitches': {
    says: '12 to 16 stitches to the inch on trousers',
    source: 'TM 10-8400-201-23, army manual, table 5-1',
  },
  'needle-sizes': {
    says: 'US 9 to 23 beside metric 65 to 160; below US 19, metric = 60 + 5 × (US − 8)',
    source: 'a teaching page on needle numbers; from US 21, a trade guide',
  },
  'needle-conflict': {
    says: 'metric 80 is US 12 by the rule, US 13 in one trade guide',
    source: 'a trade sewing guide',
  },
  'lines-per-inch': {
    says: '40 button lines to the inch',
    source: 'a reference page on button sizes; a trade table',
  },
};
