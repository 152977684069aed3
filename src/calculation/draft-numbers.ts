import type { Length } from '../lengths/length.ts';
import { readLengths } from '../lengths/read-lengths.ts';
import { readCount, readNumber } from '../lengths/read-number.ts';
import type { Bench } from './bench.ts';
import type { DraftReader } from './draft.ts';

/** A whole number that is needed. */
export function countOf(read: DraftReader, key: string): number | undefined {
  return read.take(key, readCount(read.text(key)))?.value;
}

/** A number that is needed. */
export function numberOf(read: DraftReader, key: string): number | undefined {
  return read.take(key, readNumber(read.text(key)))?.value;
}

/** A list of lengths; none when it is empty. */
export function lengthsOf(read: DraftReader, key: string, bench: Bench): readonly Length[] {
  return read.take(key, readLengths(read.text(key), bench.unit, bench.decimalMark))?.values ?? [];
}

/** What fields start with: of one length in round numbers of each unit, that of the bench's unit. */
export function roundIn({ unit }: Bench) {
  return (cm: string, mm: string, inches: string): string =>
    unit === 'in' ? inches : unit === 'mm' ? mm : cm;
}
