import fc from 'fast-check';
import { exactLength, UNITS_PER_MM } from '../../src/lengths/length.ts';

/** Strips from a button to a bolt of cloth, with small and with large lettering. */
export const BENCH_VIEWS = fc
  .record({
    start: fc
      .double({ min: -50, max: 5000, noNaN: true })
      .map((n) => exactLength(n * UNITS_PER_MM)),
    pxPerMm: fc.double({ min: -4, max: 1.6, noNaN: true }).map((n) => 10 ** n),
    width: fc.integer({ min: 120, max: 1400 }),
    labelSize: fc.integer({ min: 10, max: 32 }),
    tickGap: fc.integer({ min: 2, max: 8 }),
    edges: fc.constantFrom(['cm', 'in'] as const, ['mm', 'in'] as const, ['in', 'cm'] as const),
    decimalMark: fc.constantFrom(',' as const, '.' as const),
  })
  // The strip is always high enough for its lettering (see tape.css).
  .map((view) => ({ ...view, height: view.labelSize * 5 }));
