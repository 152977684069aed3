import { parted, type WithPhotos } from '../garment/record/photos.ts';
import { deleteRecord, getRecord, putRecord, toDisk } from './garment-entries.ts';
import { BIN, PREFIX } from './garment-keys.ts';
import { remember } from './garment-memory.ts';
import { putPhotos } from './garment-photos.ts';
import { GarmentError, orCleared, writable } from './garments.ts';
import { recordText } from './record-text.ts';
import type { Store } from './store.ts';

/**
 * Puts a garment in the place of the one with its id, as a restore does; the one that
 * was there goes into the bin in the same step, with its log.
 * @param spare an id no garment has, for the one in the bin
 * @throws GarmentError when it could not be read again
 */
export async function replaceGarment(
  store: Store,
  garment: WithPhotos,
  spare: string,
): Promise<void> {
  const { record, photos } = parted(garment);
  // As large as it is it was kept once.
  const next = writable(record, record);
  await store.transact('readwrite', async (kept) => {
    const before = await getRecord(kept, PREFIX + next.id);
    const isSame = same(before.record, next);
    if (before.record !== undefined && !isSame) {
      putRecord(kept, BIN + spare, withId(before.record, spare), before.log);
    }
    putRecord(kept, PREFIX + next.id, next, isSame ? before.log : []);
    putPhotos(kept, photos);
    await toDisk(kept);
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
    const { record, log } = await getRecord(kept, from + id);
    const inTheWay = await getRecord(kept, into + id);
    if (record === undefined) throw new GarmentError('gone');
    if (inTheWay.record === undefined) putRecord(kept, into + id, record, log);
    else putRecord(kept, into + spare, withId(record, spare), log);
    deleteRecord(kept, from + id);
    await toDisk(kept);
  };
  return orCleared(store, id, () => store.transact('readwrite', move));
}

function withId(record: unknown, id: string): unknown {
  return { ...Object(record), id };
}

function same(one: unknown, other: unknown): boolean {
  return recordText(one) === recordText(other);
}
