import fc from 'fast-check';
import { placesBetween } from '../lengths/arbitrary.ts';

/** Strips from a button to a bolt of cloth, with small and with large lettering. */
export const BENCH_VIEWS = fc
  .record({
    start: placesBetween(-50, 5000),
    pxPerMm: fc.double({ min: -4, max: 1.6, noNaN: true }).map((n) => 10 ** n),
    width: fc.integer({ min: 120, max: 1400 }),
    labelSize: fc.integer({ min: 10, max: 32 }),
    tickGap: fc.integer({ min: 2, max: 8 }),
    edges: fc.constantFrom(['cm', 'in'] as const, ['mm', 'in'] as const, ['in', 'cm'] as const),
    decimalMark: fc.constantFrom(',' as const, '.' as const),
  })
  // The strip is always high enough for its lettering (see tape.css).
  .map((view) => ({ ...view, height: view.labelSize * 5 }));
