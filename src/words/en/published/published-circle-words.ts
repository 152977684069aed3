import type { CircleQuote } from '../../../sewing/sources/circles.ts';
import type { Quote } from './published-words.ts';

/** What is published of circular pieces. */
export const circleQuotes: Readonly<Record<CircleQuote, Quote>> = {
  pi: {
    says: 'π taken as 3.1, which makes the edge 1.3 % too long',
    source: 'a page on bell skirts',
  },
  hang: {
    says: 'it hangs 24 or 48 hours before its hem is levelled',
    source: 'extension circulars on hems, which differ',
  },
};
