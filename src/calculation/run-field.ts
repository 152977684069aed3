import { exactLength, type Length, length } from '../lengths/length.ts';
import type { Read } from '../lengths/read-fault.ts';
import { readLengths } from '../lengths/read-lengths.ts';
import { placeOfLetter } from '../lengths/taken.ts';
import type { Run } from '../sewing/run.ts';
import type { About, FieldSpec, Reading } from './field-spec.ts';

/** A run of marks that is followed: taken from elsewhere, or its places typed as a list. */
export function maybeRun(hint: string, about: About = {}): FieldSpec<Run | undefined> {
  return { kind: 'lengths', takesRun: true, read: readRun, none: undefined, hint, ...about };
}

/** Places parted by semicolons, or by commas with a space behind: `1.2; 8.3` and `1.2, 8.3` alike. */
function readRun(typed: string, { unit, decimalMark, taken, runs }: Reading): Read<{ value: Run }> {
  const text = typed.trim();
  const run = text.length === 1 ? runs?.get(placeOfLetter(text)) : undefined;
  if (run) return { ok: true, value: run };
  const read = readLengths(typed.replace(/,(?=\s)/g, ';'), unit, decimalMark, taken);
  if (!read.ok) return read;
  if (read.values.length > 0) return { ok: true, value: runThrough(read.values) };
  return { ok: false, fault: { kind: 'empty', at: 0, text: '' } };
}

/** A list of places has no order of its own: a run is in the order they lie in. */
function runThrough(places: readonly Length[]): Run {
  const sorted = [...places].sort((a, b) => a - b);
  return {
    datum: 'zero',
    length: length(Math.max(0, sorted.at(-1) ?? 0)),
    marks: sorted.map((at, i) => ({ at: exactLength(at), label: String(i + 1), kind: 'measure' })),
  };
}
