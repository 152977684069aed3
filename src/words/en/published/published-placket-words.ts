import type { PlacketQuote } from '../../../sewing/sources/plackets.ts';
import type { Quote } from './published-words.ts';

/** What is published of plackets and zips. */
export const placketQuotes: Readonly<Record<PlacketQuote, Quote>> = {
  'lap-strip': {
    says: 'continuous lap: a strip 2 in wide, a little longer than twice the opening',
    source: 'a sewing book of 1944, quoted on a page',
  },
  'two-strips': {
    says: 'lap 3 in wide and facing 2 in, both 1 in longer than the opening',
    source: 'a sewing book of 1944, quoted on a page',
  },
  'zip-seam': {
    says: 'a zip’s seam is at least 5/8 in; a narrower one is extended with a strip or tape',
    source: 'extension circular on zips, 1973',
  },
  'zip-left': {
    says: 'a 24 in zip in a 23 in opening: the last inch is left unstitched from outside',
    source: 'extension circular 352',
  },
  'zip-pairs': {
    says: 'zips are sold in pairs of inches and whole centimetres, the nearest of each',
    source: 'a trade’s sewing guide',
  },
  'side-split': {
    says: 'a dress’s side placket lies one third above the waist and two thirds below, stitched 1/4 in from the centre',
    source: 'an older instruction, quoted on a page',
  },
};
