import type { GatherQuote } from '../../../sewing/sources/gathers.ts';
import type { Quote } from './published-words.ts';

/** What is published of gathers. */
export const gatherQuotes: Readonly<Record<GatherQuote, Quote>> = {
  frill: {
    says: 'a frill takes its finished edge times its fullness',
    source: 'Dress Making, Trade Practical 2, government teaching book, 2024',
  },
  'own-sample': {
    says: 'mark an inch on the flat strip, gather it, count the old inches in a new one',
    source: 'a teaching page on gathers, 2017',
  },
  ruffle: {
    says: 'a ruffle cut straight takes 1 1/3 to 1 1/2 times its edge',
    source: 'Clothing for Women, handbook, 1916',
  },
  'bias-ruffle': {
    says: 'cut on the bias 1 1/4 to 1 1/3 times',
    source: 'the same',
  },
  span: {
    says: '1 1/2 to 3 times, by cloth and taste',
    source: 'teaching pages',
  },
  rows: {
    says: 'two rows, the second 6 mm from the first, inside the allowance',
    source: 'Textiles and Garment Construction, Form Three, school book, 2022',
  },
  tiers: {
    says: 'the first tier takes 1 to 1 1/2 times the waist or yoke, each next 1 1/2 to 2 times the one above',
    source: 'Dress Making, Trade Theory, government teaching book, 2024',
  },
  'tier-depths': {
    says: 'depths come to the length of the skirt, 6 1/4 + 6 3/4 + 7 1/4 + 8 3/4 = 29 in',
    source: 'the same',
  },
};
