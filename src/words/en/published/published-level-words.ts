import type { LevelQuote } from '../../../sewing/sources/hem-level.ts';
import type { Quote } from './published-words.ts';

/** What is published of marking a hem from the floor. */
export const levelQuotes: Readonly<Record<LevelQuote, Quote>> = {
  pins: {
    says: 'pins about 3 in apart; another says 1 to 3',
    source: 'two extension circulars on hems',
  },
};
