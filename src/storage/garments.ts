import { promisifyRequest } from 'idb-keyval';
import { checkGarment, type Damage } from '../garment/check.ts';
import type { Garment } from '../garment/garment.ts';
import type { Store } from './store.ts';

const PREFIX = 'garment:';
const BIN = 'deleted:';

/** A record that can't be read: set aside, and still to be exported. */
export interface SetAside {
  key: string;
  damage: Damage;
  raw: unknown;
}

/** All that is kept of garments. */
export interface Garments {
  garments: readonly Garment[];
  /** Deleted, and to be had back. */
  deleted: readonly Garment[];
  setAside: readonly SetAside[];
}

/** Reads every garment, checked; the latest changed first. A damaged record harms no other. */
export async function loadGarments(store: Store): Promise<Garments> {
  const [here, bin] = await Promise.all([loadAll(store, PREFIX), loadAll(store, BIN)]);
  const setAside: SetAside[] = [];
  const good = (records: readonly [string, unknown][]) =>
    records
      .flatMap(([key, raw]) => {
        const checked = checkGarment(raw);
        if (checked.ok) return [checked.value];
        setAside.push({ key, damage: checked.damage, raw });
        return [];
      })
      .sort((a, b) => b.changed - a.changed);
  return { garments: good(here), deleted: good(bin), setAside };
}

/** Why a garment could not be changed: it is gone, or its record can't be read. */
export class GarmentError extends Error {
  readonly fault: 'gone' | 'damaged';
  constructor(fault: 'gone' | 'damaged') {
    super(`garment ${fault}`);
    this.fault = fault;
  }
}

/** Keeps a new garment. One that is there under the same id is not written over. */
export function addGarment(store: Store, garment: Garment): Promise<void> {
  return store.change(PREFIX + garment.id, (old) => old ?? garment);
}

/**
 * Changes a garment in one step, with what another tab has kept on it meanwhile.
 * @throws GarmentError when there is no such garment any more, or it can't be read
 */
export function changeGarment(
  store: Store,
  id: string,
  by: (garment: Garment) => Garment,
): Promise<void> {
  return store.change(PREFIX + id, (old) => {
    if (old === undefined) throw new GarmentError('gone');
    const checked = checkGarment(old);
    if (!checked.ok) throw new GarmentError('damaged');
    return by(checked.value);
  });
}

/** Puts a garment in the place of the one with its id, as a restore does. */
export function replaceGarment(store: Store, garment: Garment): Promise<void> {
  return store.change(PREFIX + garment.id, () => garment);
}

/**
 * Deletes a garment into the bin, or brings it back, in one step: nothing that another
 * tab keeps on it meanwhile falls between.
 * @throws GarmentError when there is no such garment any more
 */
export function moveGarment(store: Store, id: string, to: 'bin' | 'here'): Promise<void> {
  const [from, into] = to === 'bin' ? [PREFIX + id, BIN + id] : [BIN + id, PREFIX + id];
  return store.transact('readwrite', async (kept) => {
    const record = await promisifyRequest<unknown>(kept.get(from));
    const inTheWay = await promisifyRequest<unknown>(kept.get(into));
    if (record === undefined) throw new GarmentError('gone');
    kept.put(to === 'here' ? (inTheWay ?? record) : record, into);
    kept.delete(from);
    await promisifyRequest(kept.transaction);
  });
}

/** Keys and values that belong together: read in one transaction. */
function loadAll(store: Store, prefix: string): Promise<[string, unknown][]> {
  const range = IDBKeyRange.bound(prefix, `${prefix}\uffff`);
  return store.transact('readonly', async (kept) => {
    const [keys, values] = await Promise.all([
      promisifyRequest(kept.getAllKeys(range)),
      promisifyRequest<unknown[]>(kept.getAll(range)),
    ]);
    return keys.map((key, i) => [String(key), values[i]]);
  });
}
