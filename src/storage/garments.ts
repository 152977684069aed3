import { promisifyRequest } from 'idb-keyval';
import { checkGarment, type Damage } from '../garment/check.ts';
import type { Garment } from '../garment/garment.ts';
import { putEntry } from './garment-entries.ts';
import type { Store } from './store.ts';

/** Under what a garment is kept, and under what once it is deleted. */
export const PREFIX = 'garment:';
export const BIN = 'deleted:';

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
        const read = checkGarment(raw);
        if (read.ok) return [read.value];
        setAside.push({ key, damage: read.damage, raw });
        return [];
      })
      .sort((a, b) => b.changed - a.changed);
  return { garments: good(here), deleted: good(bin), setAside };
}

export type GarmentFault = 'gone' | 'damaged' | 'many' | 'off' | 'replanned';

/**
 * Why a garment could not be changed: it is gone, it can't be read, it is full; or what is
 * followed on it is gone, or has another plan by now.
 */
export class GarmentError extends Error {
  readonly fault: GarmentFault;
  constructor(fault: GarmentFault) {
    super(`garment ${fault}`);
    this.fault = fault;
  }
}

/**
 * Reads one garment, checked.
 * @throws GarmentError when there is none, or it can't be read
 */
export async function loadGarment(store: Store, id: string): Promise<Garment> {
  return checked(await store.load(PREFIX + id));
}

/** Keeps a new garment. One that is there under the same id is not written over. */
export function addGarment(store: Store, garment: Garment): Promise<void> {
  return store.change(PREFIX + garment.id, (old) => old ?? garment, putEntry);
}

/**
 * Changes a garment in one step, with what another tab has kept on it meanwhile.
 * @throws GarmentError when there is no such garment any more, or it can't be read; and
 *   what `by` throws
 */
export function changeGarment(
  store: Store,
  id: string,
  by: (garment: Garment) => Garment,
): Promise<void> {
  return store.change(PREFIX + id, (old) => by(checked(old)), putEntry);
}

function checked(record: unknown): Garment {
  if (record === undefined) throw new GarmentError('gone');
  const read = checkGarment(record);
  if (!read.ok) throw new GarmentError('damaged');
  return read.value;
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
