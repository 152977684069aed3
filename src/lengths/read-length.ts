import { type Length, LONGEST, length } from './length.ts';
import { nearest } from './rational.ts';
import type { Read } from './read-fault.ts';
import { readSum } from './sum.ts';
import type { Taken } from './taken.ts';
import type { Unit } from './unit.ts';

/**
 * A length as typed. `exact` is false when it is not a whole number of 1/8000 mm
 * (a third of an inch, say) and had to be rounded to the nearest.
 */
export type Reading = Read<{ readonly value: Length; readonly exact: boolean }>;

/**
 * Reads a length as a person types it: `12.5`, `1 5/8 in`, `5' 3 1/2"`,
 * `12 3/8 in + 1.5 cm - 2 × 5/8 in`. Never guesses: what has two meanings is a fault.
 *
 * The sum is exact; only its result is rounded, once, to the nearest 1/8000 mm,
 * midway to the even one. A length below zero is read as such, and is for the
 * calculation to refuse.
 *
 * @param bare the unit of a number without one; a bare factor (`2 × 5/8 in`) has none.
 * @param mark the mark chosen for decimals: the other one may group thousands, and is asked about
 * @param taken numbers taken from elsewhere, each where its letter stands
 */
export function readLength(typed: string, bare: Unit, mark?: '.' | ',', taken?: Taken): Reading {
  const sum = readSum(typed, bare, mark, taken);
  if (!sum.ok) return sum;
  const units = Number(nearest(sum.value));
  if (Math.abs(units) > LONGEST) {
    const text = typed.trim();
    return { ok: false, fault: { kind: 'too-long', at: typed.indexOf(text), text } };
  }
  return { ok: true, value: length(units), exact: sum.value.over % sum.value.under === 0n };
}
