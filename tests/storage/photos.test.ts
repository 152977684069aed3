import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import type { WithPhotos } from '../../src/garment/record/photos.ts';
import { replaceGarment } from '../../src/storage/garment-moves.ts';
import { keepPhoto, loadPhoto, sweepPhotos, withPhotos } from '../../src/storage/garment-photos.ts';
import { addGarment, changeGarment, loadGarment } from '../../src/storage/garments.ts';
import { openStore } from '../../src/storage/store.ts';
import { garmentOf } from '../garment/trial/garments.ts';

const jpeg = (letter: string) => `data:image/jpeg;base64,${letter.repeat(40)}`;
const DAY = 24 * 3_600_000;
/** Invented, with a photo at a step. */
const withNotes = (photo: string) => ({ ...garmentOf({}), notes: { 'w||x': { photo } } });

test('a photo lies beside the garment, goes into the backup with it, and comes back', async () => {
  const store = openStore('photos-1');
  await addGarment(store, withNotes('p'));
  await keepPhoto(store, 'p', jpeg('A'), 1);
  const { record } = await loadGarment(store, 'g');
  expect(record).not.toHaveProperty('photos');
  const written = await withPhotos(store, record);
  expect(written.photos).toEqual({ p: jpeg('A') });
  const other = openStore('photos-2');
  await addGarment(other, written);
  expect(await loadPhoto(other, 'p')).toBe(jpeg('A'));
  expect((await loadGarment(other, 'g')).record).toEqual(record);
  const third = openStore('photos-3');
  await addGarment(third, garmentOf({}));
  await replaceGarment(third, written, 'spare');
  expect(await loadPhoto(third, 'p')).toBe(jpeg('A'));
});

test('what a backup holds that is no photo of the garment is not kept', async () => {
  const store = openStore('photos-4');
  const photos = { p: 'javascript:alert(1)', q: jpeg('B') };
  await addGarment(store, { ...withNotes('p'), photos } as WithPhotos);
  expect(await loadPhoto(store, 'p')).toBeUndefined();
  expect(await loadPhoto(store, 'q')).toBeUndefined();
});

test('a photo that was taken off stays a day, and as long as it can be taken back', async () => {
  const store = openStore('photos-5');
  await addGarment(store, withNotes('p'));
  for (const id of ['p', 'old', 'logged']) await keepPhoto(store, id, jpeg('C'), 1);
  await keepPhoto(store, 'new', jpeg('D'), DAY);
  const before = { photo: 'logged' };
  const edits = [{ slot: ['notes', 'w||y'], before, after: undefined }];
  await changeGarment(store, 'g', ({ record }) => ({
    record: { ...record, edits: record.edits + 1 },
    log: [{ id: 1, what: 'note', edits, press: false }],
  }));
  await sweepPhotos(store, DAY + 2);
  const there = async (id: string) => (await loadPhoto(store, id)) !== undefined;
  expect(await Promise.all(['p', 'logged', 'new', 'old'].map(there))).toEqual([
    true,
    true,
    true,
    false,
  ]);
});
