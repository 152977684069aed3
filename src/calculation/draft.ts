import type { Length } from '../lengths/length.ts';
import type { Read } from '../lengths/read-fault.ts';
import { readLength } from '../lengths/read-length.ts';
import type { Bench } from './bench.ts';
import type { Draft, Fault } from './calculation.ts';

/** Reads the fields of a draft, and collects what could not be read. */
export interface DraftReader {
  /** A length that is needed; undefined when it could not be read, which is then a fault. */
  length(key: string): Length | undefined;
  /** A length that may be left out; undefined when empty or unreadable. */
  maybeLength(key: string): Length | undefined;
  /** What was typed, as typed. */
  text(key: string): string;
  /** What was read of a field, or undefined with its fault noted. */
  take<Found>(key: string, read: Read<Found>): Found | undefined;
  readonly faults: readonly Fault[];
}

export function readDraft(draft: Draft, bench: Bench): DraftReader {
  const faults: Fault[] = [];
  const text = (key: string) => draft[key] ?? '';
  const take = <Found>(key: string, read: Read<Found>): Found | undefined => {
    if (read.ok) return read;
    faults.push({ field: key, why: { of: 'reading', fault: read.fault } });
    return undefined;
  };
  const length = (key: string) =>
    take(key, readLength(text(key), bench.unit, bench.decimalMark))?.value;
  return {
    length,
    maybeLength: (key) => (text(key).trim() === '' ? undefined : length(key)),
    text,
    take,
    faults,
  };
}
