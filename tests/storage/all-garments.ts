import { promisifyRequest } from 'idb-keyval';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Garment } from '../../src/garment/record/record.ts';
import { BIN, PREFIX } from '../../src/storage/garment-keys.ts';
import type { SetAside } from '../../src/storage/garment-list.ts';
import type { Store } from '../../src/storage/store.ts';

/** Every record of a garment, checked, the latest changed first; read past every entry of a list. */
export async function loadGarments(store: Store) {
  const setAside: SetAside[] = [];
  const good = async (prefix: string): Promise<Garment[]> => {
    const range = IDBKeyRange.bound(prefix, `${prefix}\uffff`);
    const [keys, values] = await store.transact('readonly', (kept) =>
      Promise.all([
        promisifyRequest(kept.getAllKeys(range)),
        promisifyRequest<unknown[]>(kept.getAll(range)),
      ]),
    );
    const found = values.flatMap((raw, i) => {
      const read = readRecord(raw);
      if (read.ok) return [read.value];
      setAside.push({ key: String(keys[i]), damage: read.damage, raw });
      return [];
    });
    return found.sort((a, b) => b.changed - a.changed);
  };
  return { garments: await good(PREFIX), deleted: await good(BIN), setAside };
}
