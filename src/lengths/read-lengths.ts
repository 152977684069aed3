import type { Length } from './length.ts';
import type { Read } from './read-fault.ts';
import { readLength } from './read-length.ts';
import type { Taken } from './taken.ts';
import type { Unit } from './unit.ts';

/** Lengths as typed, in the order typed. */
export type ListReading = Read<{ readonly values: readonly Length[]; readonly exact: boolean }>;

/**
 * Reads lengths parted by semicolons: `4; 12.5; 1 5/8 in`. Nothing between two
 * semicolons is nothing; a fault's place counts from the start of the whole text.
 */
export function readLengths(
  typed: string,
  bare: Unit,
  mark?: '.' | ',',
  taken?: Taken,
): ListReading {
  const values: Length[] = [];
  let exact = true;
  let start = 0;
  for (const item of typed.split(';')) {
    const read = readLength(item, bare, mark, taken);
    if (read.ok) {
      values.push(read.value);
      exact &&= read.exact;
    } else if (read.fault.kind !== 'empty') {
      return { ok: false, fault: { ...read.fault, at: start + read.fault.at } };
    }
    start += item.length + 1;
  }
  return { ok: true, values, exact };
}
