import { promisifyRequest } from 'idb-keyval';
import type { Store } from './store.ts';

/** Under what a garment is kept, and under what once it is deleted. */
export const PREFIX = 'garment:';
export const BIN = 'deleted:';

/** The keys of all that is kept of garments, also of what is deleted or can't be read. */
export async function garmentKeys(store: Store): Promise<string[]> {
  const keys = await store.transact('readonly', (kept) =>
    Promise.all([PREFIX, BIN].map((prefix) => keysOf(kept, prefix))),
  );
  return keys.flat();
}

/** The keys that start so, in order. */
export async function keysOf(kept: IDBObjectStore, prefix: string): Promise<string[]> {
  return (await promisifyRequest(kept.getAllKeys(startingWith(prefix)))).map(String);
}

export function startingWith(prefix: string): IDBKeyRange {
  return IDBKeyRange.bound(prefix, `${prefix}\uffff`);
}
