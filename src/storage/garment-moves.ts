import { promisifyRequest } from 'idb-keyval';
import type { Garment } from '../garment/garment.ts';
import { deleteRecord, putRecord } from './garment-entries.ts';
import { remember } from './garment-memory.ts';
import { BIN, GarmentError, orCleared, PREFIX, writable } from './garments.ts';
import { recordText } from './record-text.ts';
import type { Store } from './store.ts';

/**
 * Puts a garment in the place of the one with its id, as a restore does; the one that
 * was there goes into the bin in the same step.
 * @param spare an id no garment has, for the one in the bin
 * @throws GarmentError when it is more than a record may hold
 */
export async function replaceGarment(store: Store, garment: Garment, spare: string): Promise<void> {
  const next = writable(garment);
  await store.transact('readwrite', async (kept) => {
    const before = await promisifyRequest<unknown>(kept.get(PREFIX + next.id));
    if (before !== undefined && !same(before, next)) {
      putRecord(kept, BIN + spare, withId(before, spare));
    }
    putRecord(kept, PREFIX + next.id, next);
    await promisifyRequest(kept.transaction);
  });
  remember(store, next);
}

/**
 * Deletes a garment into the bin, or brings it back, in one step: nothing that another
 * tab keeps on it meanwhile falls between. Where another one has its id already, it gets
 * the spare one, and both are there.
 * @param spare an id no garment has
 * @throws GarmentError when there is no such garment any more
 */
export function moveGarment(
  store: Store,
  id: string,
  to: 'bin' | 'here',
  spare: string,
): Promise<void> {
  const [from, into] = to === 'bin' ? [PREFIX, BIN] : [BIN, PREFIX];
  const move = async (kept: IDBObjectStore) => {
    const record = await promisifyRequest<unknown>(kept.get(from + id));
    const inTheWay = await promisifyRequest<unknown>(kept.get(into + id));
    if (record === undefined) throw new GarmentError('gone');
    if (inTheWay === undefined) putRecord(kept, into + id, record);
    else putRecord(kept, into + spare, withId(record, spare));
    deleteRecord(kept, from + id);
    await promisifyRequest(kept.transaction);
  };
  return orCleared(store, id, () => store.transact('readwrite', move));
}

function withId(record: unknown, id: string): unknown {
  return { ...Object(record), id };
}

function same(one: unknown, other: unknown): boolean {
  return recordText(one) === recordText(other);
}
