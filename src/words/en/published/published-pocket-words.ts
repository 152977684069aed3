import type { PocketQuote } from '../../../sewing/sources/pockets.ts';
import type { Quote } from './published-words.ts';

/** What is published of pockets. */
export const pocketQuotes: Readonly<Record<PocketQuote, Quote>> = {
  'two-thirds': {
    says: 'two thirds of what the pocket leaves lie towards the centre front',
    source: 'a teaching page on patch pockets',
  },
  'patch-top': {
    says: 'above a patch pocket 1 3/8 in: 1 in of hem and a 3/8 in seam; 3/8 in at its other edges',
    source: 'A Complete Course in Dressmaking 2, about 1922',
  },
  'corner-trim': {
    says: 'corners are trimmed to within 1/4 in of the finished corner',
    source: 'A Complete Course in Dressmaking 2, about 1922',
  },
  'in-seam': {
    says: 'in a seam it opens 5 to 6 1/2 in, from 3 to 6 in below the waist',
    source: 'a teaching page on pockets',
  },
  'slash-facing': {
    says: 'the facing of a slashed pocket is 3 in wide and reaches 1/2 in beyond each end',
    source: 'The New Dressmaker, 1921',
  },
  'hand-level': {
    says: 'high enough to put the hand in without leaning',
    source: 'A Complete Course in Dressmaking 2, about 1922',
  },
};
