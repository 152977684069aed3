import { promisifyRequest } from 'idb-keyval';
import { listedOf } from '../garment/record/listed.ts';
import { readRecord } from '../garment/record/read-record.ts';
import { ENTRY, putEntry, readEntry } from './garment-entries.ts';
import { garmentKeys, keysOf } from './garment-keys.ts';
import { remember } from './garment-memory.ts';
import type { Store } from './store.ts';

/** Records that are compared in one step: a press is answered between two. */
const AT_ONCE = 3;

/** Stores whose entries this page has compared: other pages of this build write theirs rightly. */
const compared = new WeakSet<Store>();

/**
 * Compares every entry with its record, once on a page, and mends those that differ: an older
 * build changed the record, or something harmed the entry. The page stays free between two steps.
 * @param lacking that a record was found without an entry since: then it is done again
 * @returns whether a list read before may show something else now
 */
export async function mendList(store: Store, lacking: boolean): Promise<boolean> {
  if (compared.has(store) && !lacking) return false;
  compared.add(store);
  const entries = await store.transact('readonly', (kept) => keysOf(kept, ENTRY));
  const named = entries.map((key) => key.slice(ENTRY.length));
  const all = [...new Set([...(await garmentKeys(store)), ...named])];
  let differed = false;
  for (let i = 0; i < all.length; i += AT_ONCE) {
    const some = all.slice(i, i + AT_ONCE);
    const wrong = await differing(store, some);
    if (wrong.length === 0) continue;
    differed = true;
    await store.transact('readwrite', async (kept) => {
      for (const key of wrong) putEntry(kept, key, await promisifyRequest<unknown>(kept.get(key)));
      await promisifyRequest(kept.transaction);
    });
  }
  return differed;
}

/** Which of the records have an entry that says something else, or none, or are only an entry. */
async function differing(store: Store, keys: readonly string[]): Promise<string[]> {
  const read = await store.transact('readonly', (kept) =>
    Promise.all(
      keys.map((key) =>
        Promise.all([
          promisifyRequest<unknown>(kept.get(key)),
          promisifyRequest<unknown>(kept.get(ENTRY + key)),
        ]),
      ),
    ),
  );
  return keys.filter((_, i) => {
    const [record, entry] = read[i] ?? [];
    const checked = readRecord(record);
    // One that can't be read has no entry, and needs none.
    if (!checked.ok) return entry !== undefined;
    remember(store, checked.value);
    return JSON.stringify(readEntry(entry)) !== JSON.stringify(listedOf(checked.value));
  });
}
