import { checkGarment } from '../garment/check.ts';
import { type Listed, listedOf } from '../garment/listed.ts';

/*
 * Beside each garment's record lies an entry: what a list shows of it. A list of hundreds is
 * read from the entries alone. An entry is written in the step that writes its record; where
 * the two differ all the same, the record is right.
 */

/** Raise it when an entry says something else: those written before are made anew. */
const VERSION = 1;

/** Under what an entry is kept: this, and the key of its record. */
export const ENTRY = 'listed:';

/** Reads an entry; undefined when it is none that this build wrote. */
export function readEntry(entry: unknown): Listed | undefined {
  const { version, id, name, changed, edits, count } = Object(entry) as Record<string, unknown>;
  if (version !== VERSION || typeof id !== 'string' || typeof name !== 'string') return undefined;
  if (!isNumber(changed) || !isNumber(edits) || !isNumber(count)) return undefined;
  return { id, name, changed, edits, count };
}

/** Writes a record and its entry; one that can't be read has none, and is read each time. */
export function putRecord(kept: IDBObjectStore, key: string, record: unknown): void {
  kept.put(record, key);
  putEntry(kept, key, record);
}

/** Writes the entry of a record that is written, or takes away that of one that isn't there. */
export function putEntry(kept: IDBObjectStore, key: string, record: unknown): void {
  const read = checkGarment(record);
  if (read.ok) kept.put({ version: VERSION, ...listedOf(read.value) }, ENTRY + key);
  else kept.delete(ENTRY + key);
}

export function deleteRecord(kept: IDBObjectStore, key: string): void {
  kept.delete(key);
  kept.delete(ENTRY + key);
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}
