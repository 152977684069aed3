import { mm, ZERO } from '../../../src/lengths/length.ts';
import type { StripAcross } from '../../../src/sewing/crossing/crossing-holes.ts';

/** A strip of two rows that lies across another, or under one: 20 mm wide, a hole each 8 mm. */
export const STRIP: StripAcross = {
  width: mm(20),
  pitch: mm(8),
  margin: mm(5),
  rows: 'level',
  phase: ZERO,
};
