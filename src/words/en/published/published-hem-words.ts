import type { HemQuote } from '../../../sewing/sources/hems.ts';
import type { Quote } from './published-words.ts';

/** What is published of hems. */
export const hemQuotes: Readonly<Record<HemQuote, Quote>> = {
  'hem-stitch': {
    says: 'stitch 1/8 in from the inner fold',
    source: 'General Fabric Repair, field manual, 2000, fig. 8-3',
  },
  'hem-depths': {
    says: 'straight and sheer up to 4 in; moderately flared, medium cloth 2 to 3 in; heavy wool or cotton up to 2 in; flared 1 1/2 in; circular 1/4 in or rolled',
    source: 'It’s Fun to Sew a Cotton School Dress, extension bulletin',
  },
  'skirt-depths': {
    says: 'fairly straight 2 1/2 in; gored, 60 to 70 in round, 2 in; very circular rolled, up to 2 in by what can be shrunk out',
    source: 'The Hem of Your Dress or Skirt, extension sheet L-359',
  },
};
