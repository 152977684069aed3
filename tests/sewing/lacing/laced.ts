import fc from 'fast-check';
import { inches, type Length, mm } from '../../../src/lengths/length.ts';
import { type Laced, lace } from '../../../src/sewing/lacing/lacing.ts';
import type { LacingInput } from '../../../src/sewing/lacing/lacing-input.ts';
import type { LacingKind } from '../../../src/sewing/lacing/lacing-kinds.ts';
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

/** Every way of lacing. */
export const KINDS: readonly LacingKind[] = [
  'edge',
  'outside',
  'running',
  'saddle',
  'cross',
  'single-loop',
  'double-loop',
];

const whole = (least: number, most: number) =>
  fc.integer({ min: least * 8000, max: most * 8000 }).map((units) => units as Length);

/** Lacings of every kind on leather that is laced by hand. */
export const anyLacing: fc.Arbitrary<LacingInput> = fc.record({
  kind: fc.constantFrom(...KINDS),
  holes: fc.integer({ min: 2, max: 300 }),
  pitch: whole(2, 30),
  margin: whole(1, 15),
  thickness: whole(1, 4),
  lace: fc.option(whole(1, 8), { nil: undefined }),
  outside: whole(0, 5),
  start: fc.constantFrom('end' as const, 'middle' as const),
  tail: whole(0, 200),
  // No kind’s four repeats are longer: shorter pieces are refused.
  longest: whole(1500, 3000),
});
