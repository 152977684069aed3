import type { BindingQuote } from '../../../sewing/sources/binding.ts';
import type { Quote } from './published-words.ts';

/** What is published of bindings and piping. */
export const bindingQuotes: Readonly<Record<BindingQuote, Quote>> = {
  band: {
    says: 'a band takes twice its depth and a quarter inch turned in at each edge',
    source: 'Clothing for Women, textbook, 1916',
  },
  'cord-times': {
    says: 'a strip round a cord is eight times as wide as the cord',
    source: 'teaching page, 2012',
  },
  'cord-plus': {
    says: 'or at least an inch and a half wider than the cord',
    source: 'another teaching page',
  },
};
