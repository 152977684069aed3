import type { Length } from '../lengths/length.ts';
import { readLength } from '../lengths/read-length.ts';
import type { Bench } from './bench.ts';
import type { Draft, Fault } from './calculation.ts';

/**
 * Reads one length of a draft, for the first page, which waits for no more than it needs; every
 * other calculation reads its fields by their schema. A fault where it could not be read.
 */
export function readLengthOf(
  draft: Draft,
  field: string,
  { unit, decimalMark }: Bench,
): { ok: true; value: Length } | { ok: false; faults: readonly Fault[] } {
  const read = readLength(draft[field] ?? '', unit, decimalMark);
  return read.ok
    ? read
    : { ok: false, faults: [{ field, why: { of: 'reading', fault: read.fault } }] };
}
