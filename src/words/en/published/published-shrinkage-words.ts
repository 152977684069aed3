import type { ShrinkageQuote } from '../../../sewing/sources/shrinkage.ts';
import type { Quote } from './published-words.ts';

/** What is published of shrinkage. */
export const shrinkageQuotes: Readonly<Record<ShrinkageQuote, Quote>> = {
  readings: {
    says: 'condition, measure, wash and dry, condition, measure again; three samples where that can be',
    source: 'ISO 5077, 2007, a copy of its text',
  },
  washes: {
    says: 'one wash, and more where it goes on shrinking: say how many',
    source: 'scope of ISO 675',
  },
};
