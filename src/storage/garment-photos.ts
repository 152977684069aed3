import { promisifyRequest } from 'idb-keyval';
import { isJpeg, type Jpeg, parted, photoIds, type WithPhotos } from '../garment/record/photos.ts';
import type { Garment } from '../garment/record/record.ts';
import { BIN, keysOf, PREFIX } from './garment-keys.ts';
import { LOG } from './garment-log.ts';
import type { Store } from './store.ts';

/** Under what a photo is kept, beside the garments: this, and its id, which no other has. */
const PHOTO = 'photo:';

/** A photo that nothing names is kept so long, in ms: what took it off may be taken back. */
const KEPT_FOR = 24 * 3_600_000;

interface KeptPhoto {
  jpeg: Jpeg;
  /** In ms since 1970. */
  when: number;
}

/** Reads a photo; undefined where it isn't on this phone. */
export async function loadPhoto(store: Store, id: string): Promise<Jpeg | undefined> {
  const { jpeg } = Object(await store.load(PHOTO + id)) as Partial<KeptPhoto>;
  return isJpeg(jpeg) ? jpeg : undefined;
}

export function keepPhoto(store: Store, id: string, jpeg: Jpeg, when: number): Promise<void> {
  return store.change(PHOTO + id, (): KeptPhoto => ({ jpeg, when }));
}

/** Writes photos that came with a garment; one that is there is the same. */
export function putPhotos(kept: IDBObjectStore, photos: readonly [string, Jpeg][]): void {
  for (const [id, jpeg] of photos) kept.put({ jpeg, when: 0 } satisfies KeptPhoto, PHOTO + id);
}

/** A garment with its photos, as far as they are on this phone: for a backup. */
export async function withPhotos(store: Store, garment: Garment): Promise<WithPhotos> {
  const { record, photos } = parted(garment);
  const found = new Map(photos);
  for (const id of photoIds(record)) {
    const jpeg = await loadPhoto(store, id);
    if (jpeg !== undefined) found.set(id, jpeg);
  }
  return found.size > 0 ? { ...record, photos: Object.fromEntries(found) } : record;
}

/** Deletes photos that no garment names any more, nor anything that can be taken back. */
export async function sweepPhotos(store: Store, now: number): Promise<void> {
  await store.transact('readwrite', async (kept) => {
    const wanted = new Set<string>();
    for (const prefix of [PREFIX, BIN, LOG]) {
      for (const key of await keysOf(kept, prefix)) {
        const text = JSON.stringify((await promisifyRequest<unknown>(kept.get(key))) ?? '');
        for (const [, id = ''] of text.matchAll(/"photo":"([^"]+)"/g)) wanted.add(id);
      }
    }
    for (const key of await keysOf(kept, PHOTO)) {
      const { when = 0 } = Object(await promisifyRequest(kept.get(key))) as Partial<KeptPhoto>;
      if (!wanted.has(key.slice(PHOTO.length)) && now - when > KEPT_FOR) kept.delete(key);
    }
    await promisifyRequest(kept.transaction);
  });
}
