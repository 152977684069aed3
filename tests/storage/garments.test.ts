import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { newGarment, renamed } from '../../src/garment/record/new-garment.ts';
import { moveGarment, replaceGarment } from '../../src/storage/garment-moves.ts';
import { addGarment, changeGarment, GarmentError } from '../../src/storage/garments.ts';
import { openStore } from '../../src/storage/store.ts';
import { loadGarments } from './all-garments.ts';
import { recording, withWork } from './coats.ts';

let names = 0;
const fresh = () => `garments-${names++}`;
test('a garment is kept, changed, deleted and brought back', async () => {
  const store = openStore(fresh());
  await addGarment(store, newGarment('g', 'Coat', 1));
  await changeGarment(
    store,
    'g',
    recording((garment) => renamed(garment, 'Cloak', 2)),
  );
  expect((await loadGarments(store)).garments).toMatchObject([{ name: 'Cloak' }]);
  await moveGarment(store, 'g', 'bin', 'spare');
  expect(await loadGarments(store)).toMatchObject({ garments: [], deleted: [{ name: 'Cloak' }] });
  await moveGarment(store, 'g', 'here', 'other spare');
  expect(await loadGarments(store)).toMatchObject({ garments: [{ name: 'Cloak' }], deleted: [] });
});

test('two tabs keeping 1,000 works at once lose none, each of them its own', async () => {
  const name = fresh();
  const tabs = [openStore(name), openStore(name)] as const;
  const coats = ['g0', 'g1', 'g2', 'g3'];
  for (const id of coats) await addGarment(tabs[0], newGarment(id, id, 0));
  // Neighbours are of different tabs and on the same garment: they meet.
  const on = (i: number) => coats[Math.floor(i / 2) % coats.length] ?? '';
  const keep = (i: number) =>
    changeGarment(
      tabs[i % 2 === 0 ? 0 : 1],
      on(i),
      recording((garment) => withWork(garment, `k${i}`, i)),
    );
  // In bursts: a change that waits for hundreds of others would be called slow.
  for (let i = 0; i < 1000; i += 20) {
    await Promise.all(Array.from({ length: 20 }, (_, j) => keep(i + j)));
  }
  const { garments } = await loadGarments(tabs[0]);
  const there = garments.flatMap(({ id, works }) =>
    Object.keys(works).map((one) => `${id} ${one}`),
  );
  const asked = Array.from({ length: 1000 }, (_, i) => `${on(i)} k${i}`);
  expect(there.sort()).toEqual(asked.sort());
  // Each is counted once: making each garment, and what was kept on it.
  expect(garments.map(({ edits }) => edits)).toEqual([251, 251, 251, 251]);
});

test('a record that can’t be read is set aside and harms no other; nothing is written over it', async () => {
  const store = openStore(fresh());
  await addGarment(store, newGarment('good', 'Coat', 1));
  await store.change('garment:bad', () => ({ version: 1, name: 7 }));
  const { garments, setAside } = await loadGarments(store);
  expect(garments).toMatchObject([{ id: 'good' }]);
  expect(setAside).toMatchObject([{ key: 'garment:bad', raw: { name: 7 } }]);
  await expect(changeGarment(store, 'bad', (garment) => garment)).rejects.toThrow(GarmentError);
  await addGarment(store, newGarment('bad', 'New', 2));
  expect(await store.load('garment:bad')).toEqual({ version: 1, name: 7 });
});

test('a garment that is gone can’t be changed by another tab', async () => {
  const store = openStore(fresh());
  await expect(changeGarment(store, 'g', (garment) => garment)).rejects.toMatchObject({
    fault: 'gone',
  });
  await expect(moveGarment(store, 'g', 'bin', 'spare')).rejects.toMatchObject({ fault: 'gone' });
});

test('what one tab keeps while another deletes and brings back is not lost', async () => {
  const name = fresh();
  const tabs = [openStore(name), openStore(name)] as const;
  await addGarment(tabs[0], newGarment('g', 'Coat', 0));
  const confirmed: string[] = [];
  const keep = async (id: string) => {
    for (;;) {
      try {
        await changeGarment(
          tabs[1],
          'g',
          recording((garment) => withWork(garment, id, 1)),
        );
        confirmed.push(id);
        return;
      } catch (error) {
        // It lies in the bin just now: said, and tried again.
        expect(error).toMatchObject({ fault: 'gone' });
      }
    }
  };
  for (let i = 0; i < 40; i++) {
    const kept = keep(`during ${i}`);
    await moveGarment(tabs[0], 'g', 'bin', 'spare');
    await moveGarment(tabs[0], 'g', 'here', 'spare');
    await kept;
  }
  const { garments, deleted } = await loadGarments(tabs[0]);
  expect(deleted).toEqual([]);
  expect(Object.keys(garments[0]?.works ?? {})).toEqual(confirmed);
});

test('bringing back a garment whose place is taken loses neither', async () => {
  const store = openStore(fresh());
  await addGarment(store, newGarment('g', 'Coat', 1));
  await moveGarment(store, 'g', 'bin', 'spare');
  await replaceGarment(store, newGarment('g', 'Coat from the backup', 2), 'spare');
  await moveGarment(store, 'g', 'here', 'other spare');
  expect(await loadGarments(store)).toMatchObject({
    garments: [
      { id: 'g', name: 'Coat from the backup' },
      { id: 'other spare', name: 'Coat' },
    ],
    deleted: [],
  });
});

test('a restore puts one garment in the place of its own and leaves the rest', async () => {
  const store = openStore(fresh());
  await addGarment(store, newGarment('a', 'Coat', 1));
  await addGarment(store, newGarment('b', 'Hat', 2));
  await replaceGarment(store, newGarment('a', 'Coat from the backup', 3), 'spare');
  const { garments } = await loadGarments(store);
  expect(garments.map(({ name }) => name)).toEqual(['Coat from the backup', 'Hat']);
});
