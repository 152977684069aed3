import { CALCULATION_NAMES } from './calculation-names.ts';

/** What is asked of bias strips. */
export const biasWords = {
  title: CALCULATION_NAMES.bias,
  labels: {
    from: 'Cut',
    want: 'Asked',
    tube: 'Asked',
    width: 'Strip cut wide',
    need: 'Strip needed, long',
    cloth: 'Cloth wide',
    long: 'Piece, along the selvedge',
    shortest: 'Shortest strip used',
    sideShort: 'Piece, shorter side',
    seam: 'Join, each edge',
  },
  from: {
    strips: 'Strips, joined',
    round: 'In one, from a tube',
    single: 'One strip from a square',
  },
  long: { round: 'Piece, longer side', single: 'Side of the square' },
  want: { need: 'How much cloth', have: 'How much strip' },
};
