import type { ElasticQuote } from '../../../sewing/sources/elastic.ts';
import type { Quote } from './published-words.ts';

/** What is published of elastic and its casing. */
export const elasticQuotes: Readonly<Record<ElasticQuote, Quote>> = {
  'waist-less': {
    says: 'at a waist 2 in less than the body, snug 2 to 4 in less',
    source: 'two trade pages',
  },
  'casing-judged': {
    says: '1/8 in wider than the elastic',
    source: 'judging standards, 2023',
  },
  'casing-school': {
    says: '2 mm wider, after a first turn of 5 mm',
    source: 'a school course',
  },
  'casing-sheet': {
    says: '1/4 in wider, stitched 1/8 in from the fold',
    source: 'a sewing guideline sheet',
  },
  opening: {
    says: 'leave 1/8 in more open than the elastic is wide',
    source: 'a teaching page on casings',
  },
  patch: {
    says: 'butted ends lie on a patch as wide as the elastic and twice as long',
    source: 'the same page',
  },
};
