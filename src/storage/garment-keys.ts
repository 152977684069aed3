import { promisifyRequest } from 'idb-keyval';
import { BIN, PREFIX } from './garments.ts';
import type { Store } from './store.ts';

/** The keys of all that is kept of garments, also of what is deleted or can't be read. */
export async function garmentKeys(store: Store): Promise<string[]> {
  const keys = await store.transact('readonly', (kept) =>
    Promise.all(
      [PREFIX, BIN].map((prefix) =>
        promisifyRequest(kept.getAllKeys(IDBKeyRange.bound(prefix, `${prefix}\uffff`))),
      ),
    ),
  );
  return keys.flat().map(String);
}
