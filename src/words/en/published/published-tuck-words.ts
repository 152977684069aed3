import type { TuckQuote } from '../../../sewing/sources/tucks.ts';
import type { Quote } from './published-words.ts';

/** What is published of tucks. */
export const tuckQuotes: Readonly<Record<TuckQuote, Quote>> = {
  takes: {
    says: 'a tuck takes its depth twice',
    source: 'Home and School Sewing, handbook',
  },
  'tucks-worked': {
    says: 'one tuck more than gaps, and gaps are rounded up',
    source: 'Dress Making, Trade Practical 2, government teaching book, 2024',
  },
  groups: {
    says: 'groups stand as far apart as one is wide',
    source: 'Home and School Sewing, handbook',
  },
  card: {
    says: 'a card notched for one tuck and its space is moved from tuck to tuck',
    source: 'three handbooks of needlework',
  },
};
