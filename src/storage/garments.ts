import type { Change } from '../garment/actions/state.ts';
import { type GarmentLimit, overLimit, sizeOf } from '../garment/record/limits.ts';
import { parted, type WithPhotos } from '../garment/record/photos.ts';
import { readRecord } from '../garment/record/read-record.ts';
import type { Garment } from '../garment/record/record.ts';
import { getRecord, putRecord, type StoredRecord, toDisk } from './garment-entries.ts';
import { BIN, PREFIX } from './garment-keys.ts';
import { remember, remembered } from './garment-memory.ts';
import { putPhotos } from './garment-photos.ts';
import type { Store } from './store.ts';

/** A garment and what can be taken back of it: the log lies beside the record, and in no backup. */
export interface Logged {
  record: Garment;
  log: readonly Change[];
}

/**
 * Why a garment could not be read or changed: it was deleted, the browser cleared it, its
 * record can't be read or is of a newer version, what was to be written is more than a garment,
 * a length or a row holds; or the same is on it already, or has been changed, or measured otherwise, meanwhile.
 */
export type GarmentFault =
  | 'gone'
  | 'cleared'
  | 'damaged'
  | 'newer'
  | 'limit'
  | 'length'
  | 'row'
  | 'there'
  | 'changed'
  | 'measured';

export class GarmentError extends Error {
  readonly fault: GarmentFault;
  constructor(fault: GarmentFault) {
    super(`garment ${fault}`);
    this.fault = fault;
  }
}

/**
 * Reads one garment of any version, as one of this, with its log.
 * @throws GarmentError when there is none, or it can't be read
 */
export async function loadGarment(store: Store, id: string): Promise<Logged> {
  return orCleared(store, id, async () => {
    const logged = checked(
      await store.transact('readonly', (kept) => getRecord(kept, PREFIX + id)),
    );
    remember(store, logged.record);
    return logged;
  });
}

/** Reads one garment; undefined when there is none, or it can't be read. */
export async function findGarment(store: Store, id: string): Promise<Garment | undefined> {
  try {
    return (await loadGarment(store, id)).record;
  } catch (error) {
    if (error instanceof GarmentError) return undefined;
    throw error;
  }
}

/**
 * Keeps a new garment, with the photos it brings. One that is there under the same id is not written over.
 * @throws GarmentError when it could not be read again
 */
export async function addGarment(store: Store, garment: WithPhotos): Promise<void> {
  const { record, photos } = parted(garment);
  // It is empty, or all of it was kept once.
  const next = writable(record, record);
  await store.transact('readwrite', async (kept) => {
    const there = await getRecord(kept, PREFIX + next.id);
    if (there.record === undefined) putRecord(kept, PREFIX + next.id, next, []);
    putPhotos(kept, photos);
    await toDisk(kept);
  });
  remember(store, next);
}

/**
 * Changes a garment and its log in one step, with what another tab has kept on it meanwhile.
 * One of an older version is written as one of this. Where `by` gives back what it was handed,
 * nothing is written.
 * @returns what is on the disk now
 * @throws GarmentError when there is no such garment any more, it can't be read, or it would
 *   grow beyond what a garment holds; and what `by` throws. Then nothing is changed.
 */
export function changeGarment(
  store: Store,
  id: string,
  by: (now: Logged) => Logged,
): Promise<Logged> {
  return orCleared(store, id, async () => {
    const changed = await store.transact('readwrite', async (kept) => {
      const before = checked(await getRecord(kept, PREFIX + id));
      const next = by(before);
      if (next === before) return before;
      const record = writable(next.record, before.record);
      putRecord(kept, PREFIX + id, record, next.log, before.log);
      await toDisk(kept);
      return { record, log: next.log };
    });
    remember(store, changed.record);
    return changed;
  });
}

/** An action counts the size of a record without writing it: so much more is let in, in characters. */
const NEAR_ENOUGH = 1000;

/**
 * A garment as it may be written: what would not be read again is refused before, and what has
 * grown beyond the limits.
 * @param before what it was; what was kept once can be changed whatever its size
 * @throws GarmentError
 */
export function writable(garment: Garment, before: Garment): Garment {
  const read = readRecord(garment);
  if (!read.ok) throw new GarmentError('limit');
  const limit = overLimit(garment, sizeOfSettled(garment) - NEAR_ENOUGH);
  if (limit && amountOf(garment, limit) > amountOf(before, limit)) {
    throw new GarmentError('limit');
  }
  return read.value;
}

function amountOf(garment: Garment, limit: GarmentLimit): number {
  return limit === 'size' ? sizeOfSettled(garment) : Object.keys(garment[limit]).length;
}

/** Without what is counted when it is typed, and what every change writes anew. */
function sizeOfSettled({ pending, name, changed, edits, ...settled }: Garment): number {
  return sizeOf(settled);
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

function checked({ record, log }: StoredRecord): Logged {
  if (record === undefined) throw new GarmentError('gone');
  const read = readRecord(record);
  if (read.ok) return { record: read.value, log };
  throw new GarmentError(read.damage.kind === 'newer' ? 'newer' : 'damaged');
}
