import { promisifyRequest } from 'idb-keyval';
import { checkGarment } from '../garment/check.ts';
import {
  ENTRY,
  type Listed,
  listedOf,
  putEntry,
  readEntry,
  sameListed,
} from './garment-entries.ts';
import { BIN, PREFIX, type SetAside } from './garments.ts';
import type { Store } from './store.ts';

/** All garments, as a list shows them. */
export interface GarmentList {
  garments: readonly Listed[];
  /** Deleted, and to be had back. */
  deleted: readonly Listed[];
  setAside: readonly SetAside[];
}

/**
 * Reads what a list shows, the latest changed first: from the entries, and from the records
 * that have none this build can read. An entry without its record is passed over.
 */
export function loadList(store: Store): Promise<GarmentList> {
  return store.transact('readonly', async (kept) => {
    const [here, bin, entryKeys, entries] = await Promise.all([
      keysOf(kept, PREFIX),
      keysOf(kept, BIN),
      keysOf(kept, ENTRY),
      promisifyRequest<unknown[]>(kept.getAll(rangeOf(ENTRY))),
    ]);
    const known = new Map(entryKeys.map((key, i) => [key, readEntry(entries[i])]));
    const setAside: SetAside[] = [];
    const listed = async (keys: readonly string[]) => {
      const all = await Promise.all(
        keys.map((key) => known.get(ENTRY + key) ?? readRecord(kept, key, setAside)),
      );
      return all.filter((one) => one !== undefined).sort((a, b) => b.changed - a.changed);
    };
    return { garments: await listed(here), deleted: await listed(bin), setAside };
  });
}

async function readRecord(
  kept: IDBObjectStore,
  key: string,
  setAside: SetAside[],
): Promise<Listed | undefined> {
  const raw = await promisifyRequest<unknown>(kept.get(key));
  const read = checkGarment(raw);
  if (read.ok) return listedOf(read.value);
  setAside.push({ key, damage: read.damage, raw });
  return undefined;
}

/** Records that are compared in one step: a press is answered between two. */
const AT_ONCE = 3;

/**
 * Compares every entry with its record and mends those that differ: an older build changed the
 * record, or something harmed the entry. Leaves the page free between two steps.
 * @returns whether a list read before may show something else now
 */
export async function mendList(store: Store): Promise<boolean> {
  const [records, entries] = await store.transact('readonly', (kept) =>
    Promise.all([
      Promise.all([keysOf(kept, PREFIX), keysOf(kept, BIN)]).then((both) => both.flat()),
      keysOf(kept, ENTRY),
    ]),
  );
  const all = [...new Set([...records, ...entries.map((key) => key.slice(ENTRY.length))])];
  let differed = false;
  for (let i = 0; i < all.length; i += AT_ONCE) {
    const some = all.slice(i, i + AT_ONCE);
    const wrong = await store.transact('readonly', (kept) => differing(kept, some));
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
async function differing(kept: IDBObjectStore, keys: readonly string[]): Promise<string[]> {
  const wrong = await Promise.all(
    keys.map(async (key) => {
      const [record, entry] = await Promise.all([
        promisifyRequest<unknown>(kept.get(key)),
        promisifyRequest<unknown>(kept.get(ENTRY + key)),
      ]);
      const read = checkGarment(record);
      // One that can't be read has no entry, and needs none.
      if (!read.ok) return entry === undefined ? [] : [key];
      return sameListed(readEntry(entry), listedOf(read.value)) ? [] : [key];
    }),
  );
  return wrong.flat();
}

async function keysOf(kept: IDBObjectStore, prefix: string): Promise<string[]> {
  return (await promisifyRequest(kept.getAllKeys(rangeOf(prefix)))).map(String);
}

function rangeOf(prefix: string): IDBKeyRange {
  return IDBKeyRange.bound(prefix, `${prefix}\uffff`);
}
