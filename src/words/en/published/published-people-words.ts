import type { PeopleQuote } from '../../../sewing/sources/people.ts';
import type { Quote } from './published-words.ts';

/** What is published of people's measures. */
export const peopleQuotes: Readonly<Record<PeopleQuote, Quote>> = {
  'grown-ups': {
    says: 'Of 1,986 women and 4,082 men one in a hundred is past it',
    source: 'an army’s survey of its grown-ups, 2012',
  },
  'neck-base': {
    says: 'In none of 6,068 people does the head pass round the base of the neck: a close neckline needs an opening, or stretches',
    source: 'an army’s survey of its grown-ups, 2012',
  },
};
