import type { MatchQuote } from '../../../sewing/sources/matching.ts';
import type { Quote } from './published-words.ts';

/** What is published of a sleeve head and its notches. */
export const matchQuotes: Readonly<Record<MatchQuote, Quote>> = {
  'cap-textbook': {
    says: 'a sleeve head has 1 to 1 1/2 in of ease in textbooks',
    source: 'a page on sleeves that quotes them',
  },
  'cap-draft': {
    says: '1 1/2 in on average',
    source: 'a drafting textbook, quoted on a teaching page, 2008',
  },
  'cap-factory': {
    says: '1/2 in in factories, and of knits',
    source: 'a page on sleeves',
  },
  'cap-gathers': {
    says: 'at least 1/2 in; from 1 in it gathers',
    source: 'a page on sewing, 2014',
  },
  'cap-none': {
    says: 'none at all is right',
    source: 'a trade page',
  },
  notches: {
    says: 'one notch on the front, two on the back; a single one never meets a double one',
    source: 'Sleeves, chapter of a textbook',
  },
};
