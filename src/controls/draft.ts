import type { ExactLength, Length } from '../lengths/length.ts';
import type { Read } from '../lengths/read-fault.ts';
import { readLength } from '../lengths/read-length.ts';
import { showExact, shownText, showOnTape } from '../lengths/show-length.ts';
import { type Bench, tapeStep } from './bench.ts';
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
  const length = (key: string) => take(key, readLength(text(key), bench.unit))?.value;
  return {
    length,
    maybeLength: (key) => (text(key).trim() === '' ? undefined : length(key)),
    text,
    take,
    faults,
  };
}

/** A length rounded to the tape in hand, as text: "15.4 cm". */
export function onTape(x: ExactLength, bench: Bench): string {
  return shownText(showOnTape(x, tapeStep(bench), bench.unit), bench.decimalMark);
}

/** A length in the bench's unit, to a hundredth of a millimetre or so, as text. */
export function exactly(x: ExactLength, bench: Bench): string {
  const places = bench.unit === 'mm' ? 2 : 3;
  return shownText(showExact(x, bench.unit, places), bench.decimalMark);
}
