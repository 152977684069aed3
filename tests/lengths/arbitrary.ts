import fc from 'fast-check';
import { exactLength, type Length, length, UNITS_PER_MM } from '../../src/lengths/length.ts';

/** Lengths as they come to be, typed or marked: a whole number of units, bounds in millimetres. */
function lengthsBetween(leastMm: number, mostMm: number): fc.Arbitrary<Length> {
  return fc
    .integer({ min: leastMm * UNITS_PER_MM, max: mostMm * UNITS_PER_MM })
    .map((units) => length(units));
}

/** Places as a calculation gives them: lengths, and lengths divided by a count. */
export function placesBetween(leastMm: number, mostMm: number) {
  return fc
    .tuple(lengthsBetween(leastMm, mostMm), fc.integer({ min: 1, max: 12 }))
    .map(([whole, count]) => exactLength(whole / count));
}
