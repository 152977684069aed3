import type { BiasQuote } from '../../../sewing/sources/bias.ts';
import type { Quote } from './published-words.ts';

/** What is published of bias strips. */
export const biasQuotes: Readonly<Record<BiasQuote, Quote>> = {
  third: {
    says: 'a quick rule allows one third more along the selvedge: always too narrow',
    source: 'A Sewing Course for Teachers, handbook',
  },
  area: {
    says: 'by area: length times width, and the two corners, over the width of the cloth',
    source: 'Dress Making, Trade Practical 2, government teaching book, 2024',
  },
  square: {
    says: 'in one: the cloth’s area over the strip’s width, whole rounds left out of account',
    source: 'quilting pages',
  },
  table: {
    says: 'a table of widths along the selvedge has the same to an eighth, but for three of 22',
    source: 'Clothing for Women, textbook, 1916',
  },
  join: {
    says: 'ends are cut on the grain and shifted until the sewing lines meet',
    source: 'The New Dressmaker, handbook, 1921',
  },
};
