import type { PieceQuote } from '../../../sewing/sources/pieces.ts';
import type { Quote } from './published-words.ts';

/** What is published of pieces and what their edges take. */
export const pieceQuotes: Readonly<Record<PieceQuote, Quote>> = {
  'fitting-allowances': {
    says: 'skirt: lengthwise seams 1 1/2 in, waist 1/2 in, the hem and 1/4 in; bodice: shoulder, underarm and lengthwise seams 1 in, neck and armhole 1/4 in; sleeve: lengthwise seams 1 in, top and bottom 1/4 in',
    source: 'a drafting textbook, 1920s',
  },
};
