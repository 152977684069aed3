import { promisifyRequest } from 'idb-keyval';
import { BIN, PREFIX } from './garments.ts';
import type { Store } from './store.ts';

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
