import { UNITS_PER_MM } from '../lengths/length.ts';
import { readLength } from '../lengths/read-length.ts';

/** Where a measure lies, in 1/8000 mm: only when it says its unit itself. */
export function placeOf(typed: string): number | undefined {
  const [one, other] = [readLength(typed, 'mm'), readLength(typed, 'in')];
  return one.ok && other.ok && one.value === other.value ? one.value : undefined;
}

/** A place as text with its unit, exact to 1/8000 mm. */
export function inMm(units: number): string {
  return `${Math.round(units) / UNITS_PER_MM} mm`;
}

/**
 * A measure with its unit written, so that a bench set to another one never reads
 * another place. What can't be read, or whose unit is not known, stays as it is.
 */
export function withItsUnit(typed: string, unit: 'mm' | 'cm' | 'in' | undefined): string {
  if (placeOf(typed) !== undefined || unit === undefined) return typed;
  const reading = readLength(typed, unit);
  if (!reading.ok) return typed;
  const written = `${typed.trim()} ${unit}`;
  return placeOf(written) === reading.value ? written : inMm(reading.value);
}
