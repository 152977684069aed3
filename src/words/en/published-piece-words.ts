import type { PieceQuote } from '../../sewing/sources/pieces.ts';
import type { Quote } from './published-words.ts';

/** What is published of pieces and what their edges take. */
export const pieceQuotes: Readonly<Record<PieceQuote, Quote>> = {
  'patch-pocket': {
    says: 'a patch pocket takes 1 3/8 in at the top, a hem of 1 in and 3/8 in to turn, and 3/8 in at every other edge',
    source: 'A Complete Course in Dressmaking, vol. 2, about 1922',
  },
  'fitting-allowances': {
    says: 'skirt: lengthwise seams 1 1/2 in, waist 1/2 in, the hem and 1/4 in; bodice: shoulder, underarm and lengthwise seams 1 in, neck and armhole 1/4 in; sleeve: lengthwise seams 1 in, top and bottom 1/4 in',
    source: 'a drafting textbook, 1920s',
  },
};
