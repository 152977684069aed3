import { checkGarment, type Damage } from '../garment/check.ts';
import type { Garment } from '../garment/garment.ts';
import { putEntry } from './garment-entries.ts';
import { remember, remembered } from './garment-memory.ts';
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

/**
 * Why a garment could not be read or changed: it was deleted, the browser cleared it, its
 * record can't be read or is of a newer version, there is no room on it for one more, or
 * what was to be written is more than a record may hold; or what is followed on it is gone,
 * or has another plan by now; or the same is on it already, or has been changed meanwhile.
 */
export type GarmentFault =
  | 'gone'
  | 'cleared'
  | 'damaged'
  | 'newer'
  | 'many'
  | 'limit'
  | 'there'
  | 'changed'
  | 'measured'
  | 'off'
  | 'replanned';

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
  return orCleared(store, id, async () => {
    const garment = checked(await store.load(PREFIX + id));
    remember(store, garment);
    return garment;
  });
}

/** Reads one garment; undefined when there is none, or it can't be read. */
export async function findGarment(store: Store, id: string): Promise<Garment | undefined> {
  try {
    return await loadGarment(store, id);
  } catch (error) {
    if (error instanceof GarmentError) return undefined;
    throw error;
  }
}

/**
 * Keeps a new garment. One that is there under the same id is not written over.
 * @throws GarmentError when it is more than a record may hold
 */
export async function addGarment(store: Store, garment: Garment): Promise<void> {
  const next = writable(garment);
  await store.change(PREFIX + garment.id, (old) => old ?? next, putEntry);
  remember(store, next);
}

/**
 * Changes a garment in one step, with what another tab has kept on it meanwhile.
 * @throws GarmentError when there is no such garment any more, it can't be read, or it
 *   would be more than a record may hold; and what `by` throws. Then nothing is changed.
 */
export function changeGarment(
  store: Store,
  id: string,
  by: (garment: Garment) => Garment,
): Promise<void> {
  return orCleared(store, id, async () => {
    let next: Garment | undefined;
    const change = (old: unknown) => {
      next = writable(by(checked(old)));
      return next;
    };
    await store.change(PREFIX + id, change, putEntry);
    if (next) remember(store, next);
  });
}

/**
 * A garment as it may be written: what would not be read again is refused before.
 * @throws GarmentError
 */
export function writable(garment: Garment): Garment {
  const read = checkGarment(garment);
  if (!read.ok) throw new GarmentError('limit');
  return read.value;
}

/** Does something with a garment, and tells one that was cleared from one that was deleted. */
export async function orCleared<Value>(
  store: Store,
  id: string,
  work: () => Promise<Value>,
): Promise<Value> {
  try {
    return await work();
  } catch (error) {
    const gone = error instanceof GarmentError && error.fault === 'gone';
    if (!gone || !remembered(store).some((one) => one.id === id)) throw error;
    const binned = (await store.load(BIN + id)) !== undefined;
    throw binned ? error : new GarmentError('cleared');
  }
}

function checked(record: unknown): Garment {
  if (record === undefined) throw new GarmentError('gone');
  const read = checkGarment(record);
  if (!read.ok) throw new GarmentError(read.damage.kind === 'newer' ? 'newer' : 'damaged');
  return read.value;
}
