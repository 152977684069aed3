import { mm } from '../../../src/lengths/length.ts';
import type { StripInput } from '../../../src/sewing/edging/strip.ts';

/** The strip most tests begin from: forty centimetres, one row each 8 mm, no corner. */
export const A_STRIP: StripInput = {
  length: mm(400),
  width: mm(20),
  pitch: mm(8),
  margin: mm(5),
  hole: mm(2),
  rows: 'one',
  fit: 'split',
  middle: 'any',
  corners: [],
  angle: 90,
};
