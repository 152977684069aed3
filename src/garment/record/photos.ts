import type { Garment } from './record.ts';
import { isObject } from './sound-values.ts';

/** The most that a photo at a step takes, in bytes. */
export const MOST_PHOTO = 200_000;

/** A photo as it is kept: a small JPEG as text, which a page can show as it is. */
export type Jpeg = string;

/** In a backup a garment has its photos with it, by their ids. */
export type WithPhotos = Garment & { photos?: Readonly<Record<string, Jpeg>> };

const JPEG = /^data:image\/jpeg;base64,[\w+/]+=*$/;

/** Whether something that was read is a photo as one is kept here, and no larger. */
export function isJpeg(read: unknown): read is Jpeg {
  // Base64 takes four letters for three bytes.
  return typeof read === 'string' && read.length <= (MOST_PHOTO * 4) / 3 + 40 && JPEG.test(read);
}

/** The ids of the photos of a garment. */
export function photoIds({ notes }: Pick<Garment, 'notes'>): string[] {
  return Object.values(notes ?? {}).flatMap((note) =>
    isObject(note) && typeof note.photo === 'string' ? note.photo : [],
  );
}

/** A garment that may have its photos with it, and these; what is none of its photos is left out. */
export function parted(garment: WithPhotos): { record: Garment; photos: [string, Jpeg][] } {
  const { photos, ...record } = garment;
  const ids = new Set(photoIds(record));
  const all = isObject(photos) ? Object.entries(photos) : [];
  return { record, photos: all.filter(([id, photo]) => ids.has(id) && isJpeg(photo)) };
}
