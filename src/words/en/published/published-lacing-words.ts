import type { LacingQuote } from '../../../sewing/sources/lacing.ts';
import type { Quote } from './published-words.ts';

/** What is published of lace. */
export const lacingQuotes: Readonly<Record<LacingQuote, Quote>> = {
  running: {
    says: 'running stitch: 1½ times the edge; an edge of 18 in takes 27 in',
    source: 'Lacing Leather, extension sheet L-382; three teaching pages agree',
  },
  whip: {
    says: 'whip stitch: 2½ times the edge in one source, 3½ in another',
    source: 'Lacing Leather, extension sheet L-382 (2½); a trade page on lace (3½)',
  },
  cross: {
    says: 'cross stitch: 5 to 6 times the edge',
    source: 'a teaching page on lacing',
  },
  'single-loop': {
    says: 'single loop: 6½ times the edge',
    source: 'a trade page on lace',
  },
  'double-loop': {
    says: 'double loop: 8½ times the edge',
    source: 'a trade page on lace',
  },
  saddle: {
    says: 'saddle stitch with two needles: about 2½, 3 or 4 times the seam',
    source: 'three teaching pages: 2½, 3 and 4',
  },
  comfortable: {
    says: 'no more than 2 yd of lace at a time',
    source: 'Handicraft, handbook; a trade catalogue agrees',
  },
  'even-holes': {
    says: 'lacing in and out that starts and ends outside needs an even count: of nine slits the last was left unused',
    source: 'a teaching page on a drawstring pouch, 2020',
  },
};
