import { inches, mm } from '../../../src/lengths/length.ts';
import { type Laced, lace } from '../../../src/sewing/lacing/lacing.ts';
import type { LacingInput } from '../../../src/sewing/lacing/lacing-input.ts';
import { solved } from '../outcomes.ts';

/** Leather and lace of the bench: 8 mm apart, 5 mm in, 3 mm thick. */
export const BENCH: LacingInput = {
  kind: 'edge',
  holes: 51,
  pitch: mm(8),
  margin: mm(5),
  thickness: mm(3),
  outside: mm(2),
  start: 'end',
  tail: mm(0),
  longest: inches(72),
};

/** What the lacing of the bench comes to, with some of it otherwise. */
export const lacedOf = (set: Partial<LacingInput> = {}): Laced =>
  solved(lace({ ...BENCH, ...set }));
