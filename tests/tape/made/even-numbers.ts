import fc from 'fast-check';

/** Numbers spread evenly from min to max; fast-check's own doubles crowd about 0. */
export function number(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 10_000 }).map((n) => min + ((max - min) * n) / 10_000);
}
