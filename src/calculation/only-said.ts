import type { Line } from './calculation.ts';

/** What is said only where it applies. */
type Perhaps<Said> = Said | false | undefined;

/** Of all that might be said, what is. */
export function onlySaid<Said>(all: readonly Perhaps<Said>[]): Said[] {
  return all.flatMap((one) => (one ? [one] : []));
}

/** Of all lines there might be, those with a value. */
export function linesSaid(
  all: readonly (readonly [label: string, value: Perhaps<string>])[],
): Line[] {
  return all.flatMap(([label, value]) => (value ? [{ label, value }] : []));
}
