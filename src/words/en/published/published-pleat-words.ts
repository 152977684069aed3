import type { PleatQuote } from '../../../sewing/sources/pleats.ts';
import type { Quote } from './published-words.ts';

/** What is published of pleats. */
export const pleatQuotes: Readonly<Record<PleatQuote, Quote>> = {
  'knife-takes': {
    says: 'a knife pleat takes its depth twice, whatever it is',
    source: 'Dress Making, Trade Practical 2, government teaching book, 2024',
  },
  'fitted-level': {
    says: 'at each level, what has to go is shared by as many pleats',
    source: 'A Complete Course in Dressmaking 5, handbook, about 1922',
  },
  'box-takes': {
    says: 'a box or inverted pleat takes its depth four times',
    source: 'Dress Making, Trade Practical 2, government teaching book, 2024',
  },
};
