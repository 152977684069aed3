import { UNITS_PER_INCH, UNITS_PER_MM } from './length.ts';

/** Every unit a length can be typed in. A line is a button line, 1/40 in. */
export type Unit = 'mm' | 'cm' | 'm' | 'in' | 'ft' | 'yd' | 'line';

/** The units a maker works in: a bare number takes one of these, and answers are shown in it. */
export type BenchUnit = 'mm' | 'cm' | 'in';

/** The same; the first is what a new bench has. */
export const BENCH_UNITS = ['cm', 'in', 'mm'] as const satisfies readonly BenchUnit[];

/** A bench's unit as an address or a record holds it; undefined when it is none. */
export function benchUnit(written: string | undefined): BenchUnit | undefined {
  return BENCH_UNITS.find((known) => known === written);
}

/**
 * Units of 1/8000 mm in each unit of measure.
 *
 * Source for yard and inch: NBS Circular 572, addendum of 22 Jan 1960; for the
 * button line, 40 to the inch: trade tables (sizes.com, workroombuttons.com).
 */
export const UNITS_PER: Readonly<Record<Unit, number>> = {
  mm: UNITS_PER_MM,
  cm: 10 * UNITS_PER_MM,
  m: 1000 * UNITS_PER_MM,
  in: UNITS_PER_INCH,
  ft: 12 * UNITS_PER_INCH,
  yd: 36 * UNITS_PER_INCH,
  line: UNITS_PER_INCH / 40,
};
