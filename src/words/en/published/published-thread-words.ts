import type { ThreadQuote } from '../../../sewing/sources/thread.ts';
import type { Quote } from './published-words.ts';

const bulletin = 'thread maker’s bulletin on estimating consumption, archived 2008';
const pages = 'teaching pages on textile calculation, 2015';

/** What is published of thread. */
export const threadQuotes: Readonly<Record<ThreadQuote, Quote>> = {
  ratios: {
    says: 'lockstitch 2.5, chainstitch 5.5, zigzag 7, overlock 12 to 18 times the seam',
    source: 'textbook of clothing manufacture, factors tabulated',
  },
  guide: {
    says: 'lockstitch 2.5, single chainstitch 5, zigzag 5.5 times the seam, approximately',
    source: 'thread maker’s guide to stitch types',
  },
  'chain-ratio': { says: 'a chainstitch takes 5 times its seam', source: bulletin },
  'chain-formula': {
    says: 'a chainstitch takes 4 and twice the thickness to a stitch length',
    source: bulletin,
  },
  'lock-formula': {
    says: 'a lockstitch takes 2 and twice the thickness to a stitch length',
    source: pages,
  },
  'single-formula': {
    says: 'a single chainstitch takes 3 and twice the thickness to a stitch length',
    source: pages,
  },
  looper: { says: 'the looper takes 60 % of a chainstitch’s thread', source: bulletin },
  waste: {
    says: '10 to 20 % is lost: one source has 15 to 20, another 10 to 15',
    source: `${bulletin}; teaching page on measuring it`,
  },
  ends: {
    says: '2 to 3 cm at each end of a seam that is trimmed by hand',
    source: 'the same table of factors',
  },
  working: { says: 'a thread of 46 to 61 cm is worked with', source: 'teaching page' },
  ticket: {
    says: 'a ticket number is 3000 over the tex, of the thread before it is dyed',
    source: 'teaching page, 2017',
  },
  'cotton-ticket': {
    says: 'a cotton ticket is 3 × 590.54 over the tex',
    source: 'the same page',
  },
};
