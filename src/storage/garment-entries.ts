import { promisifyRequest } from 'idb-keyval';
import type { Change } from '../garment/actions/state.ts';
import { type Listed, listedOf } from '../garment/record/listed.ts';
import { readRecord } from '../garment/record/read-record.ts';
import { LOG, readLog } from './garment-log.ts';

/*
 * Beside each garment's record lie two others: an entry, what a list shows of it, and its log.
 * A list of hundreds is read from the entries alone. An entry is written in the step that writes
 * its record; where the two differ all the same, the record is right.
 */

/** Raise it when an entry says something else: those written before are made anew. */
const VERSION = 2;

/** Under what an entry is kept: this, and the key of its record. */
export const ENTRY = 'listed:';

/** Reads an entry; undefined when it is none that this build wrote. */
export function readEntry(entry: unknown): Listed | undefined {
  const { version, id, name, ...counts } = Object(entry) as Record<string, unknown>;
  if (version !== VERSION || typeof id !== 'string' || typeof name !== 'string') return undefined;
  const { changed, edits, works, facts } = counts;
  if (!isNumber(changed) || !isNumber(edits) || !isNumber(works) || !isNumber(facts)) {
    return undefined;
  }
  return { id, name, changed, edits, works, facts };
}

/** A record as it is kept, and the log that lies beside it. */
export interface StoredRecord {
  /** Undefined where there is none. */
  record: unknown;
  log: readonly Change[];
}

export async function getRecord(kept: IDBObjectStore, key: string): Promise<StoredRecord> {
  const [record, log] = await Promise.all([
    promisifyRequest<unknown>(kept.get(key)),
    promisifyRequest<unknown>(kept.get(LOG + key)),
  ]);
  return { record, log: readLog(log) };
}

/**
 * Writes a record, its entry and its log; one that can't be read has no entry, and is read each time.
 * @param logBefore the log that was read of it: the same one is not written again
 */
export function putRecord(
  kept: IDBObjectStore,
  key: string,
  record: unknown,
  log: readonly Change[],
  logBefore?: readonly Change[],
): void {
  kept.put(record, key);
  if (log !== logBefore) {
    if (log.length > 0) kept.put(log, LOG + key);
    else kept.delete(LOG + key);
  }
  putEntry(kept, key, record);
}

/** Writes the entry of a record that is written, or takes away that of one that isn't there. */
export function putEntry(kept: IDBObjectStore, key: string, record: unknown): void {
  const read = readRecord(record);
  if (read.ok) kept.put({ version: VERSION, ...listedOf(read.value) }, ENTRY + key);
  else kept.delete(ENTRY + key);
}

/**
 * Ends a step once all of it has been asked for: the disk is waited for alone, and no answer to each
 * of its writes before that.
 */
export function toDisk({ transaction }: IDBObjectStore): Promise<void> {
  transaction.commit();
  return promisifyRequest(transaction);
}

export function deleteRecord(kept: IDBObjectStore, key: string): void {
  for (const beside of ['', ENTRY, LOG]) kept.delete(beside + key);
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}
