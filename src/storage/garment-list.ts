import { promisifyRequest } from 'idb-keyval';
import type { Damage } from '../garment/check.ts';
import { type Listed, listedOf } from '../garment/record/listed.ts';
import { readRecord } from '../garment/record/read-record.ts';
import type { Garment } from '../garment/record/record.ts';
import { ENTRY, readEntry } from './garment-entries.ts';
import { BIN, keysOf, PREFIX, startingWith } from './garment-keys.ts';
import { remembered } from './garment-memory.ts';
import type { Store } from './store.ts';

/** A record that can't be read: set aside, and still to be exported. */
export interface SetAside {
  key: string;
  damage: Damage;
  raw: unknown;
}

/** All that is kept of garments, as a list shows it. */
export interface GarmentList {
  garments: readonly Listed[];
  /** Deleted, and to be had back. */
  deleted: readonly Listed[];
  setAside: readonly SetAside[];
  /** Cleared by the browser since this page read them: they are only in its memory. */
  cleared: readonly Garment[];
  /** Whether a record was read for want of an entry. */
  lacking: boolean;
}

/**
 * Reads what a list shows, the latest changed first: from the entries, and from the records
 * that have none this build can read. An entry without its record is passed over; a damaged
 * record harms no other.
 */
export function loadList(store: Store): Promise<GarmentList> {
  return store.transact('readonly', async (kept) => {
    const [here, bin, entryKeys, entries] = await Promise.all([
      keysOf(kept, PREFIX),
      keysOf(kept, BIN),
      keysOf(kept, ENTRY),
      promisifyRequest<unknown[]>(kept.getAll(startingWith(ENTRY))),
    ]);
    const known = new Map(entryKeys.map((key, i) => [key, readEntry(entries[i])]));
    const setAside: SetAside[] = [];
    let lacking = false;
    const listed = async (keys: readonly string[]) => {
      const all = await Promise.all(
        keys.map(async (key) => {
          const entry = known.get(ENTRY + key);
          if (entry) return entry;
          const read = await listedIn(kept, key, setAside);
          lacking ||= read !== undefined;
          return read;
        }),
      );
      return all.filter((one) => one !== undefined).sort((a, b) => b.changed - a.changed);
    };
    const ids = new Set([...here, ...bin].map((key) => key.slice(key.indexOf(':') + 1)));
    const cleared = remembered(store).filter(({ id }) => !ids.has(id));
    const [garments, deleted] = [await listed(here), await listed(bin)];
    return { garments, deleted, setAside, cleared, lacking };
  });
}

async function listedIn(
  kept: IDBObjectStore,
  key: string,
  setAside: SetAside[],
): Promise<Listed | undefined> {
  const raw = await promisifyRequest<unknown>(kept.get(key));
  const read = readRecord(raw);
  if (read.ok) return listedOf(read.value);
  setAside.push({ key, damage: read.damage, raw });
  return undefined;
}
