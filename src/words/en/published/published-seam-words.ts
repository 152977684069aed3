import type { SeamQuote } from '../../../sewing/sources/seams.ts';
import type { Quote } from './published-words.ts';

/** What is published of seams and clips. */
export const seamQuotes: Readonly<Record<SeamQuote, Quote>> = {
  french: {
    says: 'first row 3/8 in, trim to 1/8 in, second row 1/4 in: 5/8 in in all',
    source: 'a teaching page on French seams',
  },
  'french-wide': {
    says: 'first row 3/8 in, trim to 1/8 in, second row 3/8 in: 3/4 in in all',
    source: 'French Seam, extension sheet',
  },
  felled: {
    says: 'on 5/8 in, trim the under layer to 1/8 in, turn the upper one under by 3/8 in, stitch 1/4 in from the seam',
    source: 'a teaching page on seam finishes',
  },
  'felled-trim': {
    says: 'trim the under layer to 1/8 to 1/4 in, edge-stitch about 1/8 in from the fold',
    source: 'two trade and teaching pages',
  },
  'mock-french': {
    says: 'each allowance pressed in half to the middle and edge-stitched',
    source: 'a teaching page on seam finishes',
  },
  bound: {
    says: 'bias strip = allowance + 1/4 in, stitched 1/8 in from the edge',
    source: 'a reference page on seams',
  },
  graded: {
    says: 'the outermost layer widest, left at 1/4 in; the next about 1/8 in',
    source: 'Apparel: Design, Textiles & Construction, textbook, 2012; a teaching page',
  },
  trimmed: {
    says: 'an enclosed seam is trimmed to 1/8 to 1/4 in',
    source: 'Apparel: Design, Textiles & Construction, textbook, 2012',
  },
  clips: {
    says: 'clip a curve every 1/4 to 1/2 in, the sharper the closer',
    source: 'Apparel: Design, Textiles & Construction, textbook, 2012',
  },
  'clip-short': {
    says: 'stop about 1/8 in short of the stitching',
    source: 'a teaching page on clipping',
  },
};
