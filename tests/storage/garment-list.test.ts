import 'fake-indexeddb/auto';
import { expect, test, vi } from 'vitest';
import { listedOf } from '../../src/garment/record/listed.ts';
import { newGarment, renamed } from '../../src/garment/record/new-garment.ts';
import { loadList } from '../../src/storage/garment-list.ts';
import { mendList } from '../../src/storage/garment-mend.ts';
import { moveGarment, replaceGarment } from '../../src/storage/garment-moves.ts';
import { addGarment, changeGarment } from '../../src/storage/garments.ts';
import { openStore, type Store } from '../../src/storage/store.ts';
import { loadGarments } from './all-garments.ts';
import { recording, withWork } from './coats.ts';

let names = 0;
const fresh = () => openStore(`list-${names++}`);
const coat = withWork(newGarment('coat', 'Coat', 1), 'k', 5);
const hat = newGarment('hat', 'Hat', 9);

/** What the records say, read past every entry. */
async function truth(store: Store) {
  const { garments, deleted, setAside } = await loadGarments(store);
  return {
    garments: garments.map(listedOf),
    deleted: deleted.map(listedOf),
    setAside,
    cleared: [],
    lacking: false,
  };
}

/** How many records are read while something is done, by key. */
async function recordsRead(work: () => Promise<unknown>): Promise<string[]> {
  const { get } = IDBObjectStore.prototype;
  const asked: string[] = [];
  const spy = vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementation(function (
    this: IDBObjectStore,
    key,
  ) {
    asked.push(String(key));
    return get.call(this, key);
  });
  await work();
  spy.mockRestore();
  return asked;
}

async function withTwo(): Promise<Store> {
  const store = fresh();
  await addGarment(store, coat);
  await addGarment(store, hat);
  return store;
}

/** Puts something in the place of a record or an entry, as another build or a fault would. */
const put = (store: Store, key: string, value: unknown) => store.change(key, () => value);

test('a list shows what the records say after every kind of change, and reads none of them', async () => {
  const store = await withTwo();
  await changeGarment(
    store,
    'coat',
    recording((garment) => renamed(garment, 'Cloak', 11)),
  );
  await moveGarment(store, 'hat', 'bin', 'spare');
  await replaceGarment(store, { ...coat, name: 'Coat from the backup' }, 'spare 2');
  await addGarment(store, newGarment('hat', 'New hat', 12));
  await moveGarment(store, 'hat', 'here', 'spare 3');
  await changeGarment(
    store,
    'coat',
    recording((garment) => withWork(garment, 'k2', 13)),
  );
  const read = await recordsRead(() => loadList(store));
  expect(read).toEqual([]);
  expect(await loadList(store)).toEqual(await truth(store));
  expect(await mendList(store, false)).toBe(false);
});

test('an entry is in the same step as its record: where that fails, neither is changed', async () => {
  const store = await withTwo();
  const { put: really } = IDBObjectStore.prototype;
  const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    ...given
  ) {
    if (String(given[1]).startsWith('listed:')) throw new DOMException('', 'QuotaExceededError');
    return really.apply(this, given);
  });
  await expect(
    changeGarment(
      store,
      'coat',
      recording((garment) => renamed(garment, 'Cloak', 11)),
    ),
  ).rejects.toMatchObject({ fault: 'full' });
  spy.mockRestore();
  expect(await store.load('garment:coat')).toMatchObject({ name: 'Coat' });
  expect((await loadList(store)).garments).toMatchObject([{ name: 'Hat' }, { name: 'Coat' }]);
});

test('a list without any entries, as an older build left it, is read from the records', async () => {
  const store = fresh();
  await put(store, 'garment:coat', coat);
  await put(store, 'deleted:hat', hat);
  expect(await loadList(store)).toEqual({ ...(await truth(store)), lacking: true });
  expect(await mendList(store, false)).toBe(true);
  expect(await recordsRead(() => loadList(store))).toEqual([]);
  expect(await loadList(store)).toEqual(await truth(store));
});

test('an entry that is missing, damaged or of another build is made anew from its record', async () => {
  for (const harmed of [undefined, 7, null, { version: 1, id: 'coat' }, { version: 0 }]) {
    const store = await withTwo();
    await put(store, 'listed:garment:coat', harmed);
    expect(await loadList(store)).toEqual({ ...(await truth(store)), lacking: true });
    expect(await recordsRead(() => loadList(store))).toEqual(['garment:coat']);
    expect(await mendList(store, false)).toBe(true);
    expect(await recordsRead(() => loadList(store))).toEqual([]);
    expect(await store.load('garment:coat')).toEqual(coat);
  }
});

test('a record that comes without an entry after the comparing gets one, once it was seen', async () => {
  const store = await withTwo();
  expect(await mendList(store, false)).toBe(false);
  await put(store, 'garment:cape', newGarment('cape', 'Cape', 3));
  const { lacking } = await loadList(store);
  expect(lacking).toBe(true);
  expect(await mendList(store, lacking)).toBe(true);
  expect(await recordsRead(() => loadList(store))).toEqual([]);
  expect(await loadList(store)).toEqual(await truth(store));
});

test('where an older build has changed a record and not its entry, the record is right', async () => {
  const store = await withTwo();
  await put(store, 'garment:coat', renamed(coat, 'Cloak', 11));
  expect(await mendList(store, false)).toBe(true);
  expect(await loadList(store)).toEqual(await truth(store));
  expect((await loadList(store)).garments[0]).toMatchObject({ name: 'Cloak', works: 1, edits: 3 });
});

test('an entry whose record is gone is not shown, and is taken away', async () => {
  const store = await withTwo();
  await put(store, 'garment:coat', undefined);
  expect((await loadList(store)).garments).toMatchObject([{ id: 'hat' }]);
  expect(await mendList(store, false)).toBe(true);
  expect(await store.load('listed:garment:coat')).toBeUndefined();
});

test('a record that can’t be read is set aside whatever its entry says, and stays as it is', async () => {
  const store = await withTwo();
  const harmed = { ...coat, works: 'nothing' };
  await put(store, 'garment:coat', harmed);
  await mendList(store, false);
  const { garments, setAside } = await loadList(store);
  expect(garments).toMatchObject([{ id: 'hat' }]);
  expect(setAside).toMatchObject([{ key: 'garment:coat', raw: harmed }]);
  expect(await store.load('garment:coat')).toEqual(harmed);
  expect(await mendList(store, false)).toBe(false);
});

test('a disk too full for entries still gives the list', async () => {
  const store = fresh();
  await put(store, 'garment:coat', coat);
  const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('', 'QuotaExceededError');
  });
  await expect(mendList(store, false)).rejects.toMatchObject({ fault: 'full' });
  expect((await loadList(store)).garments).toMatchObject([{ id: 'coat' }]);
  spy.mockRestore();
});

test('mending while another tab changes the same garments loses no change', async () => {
  const name = `list-${names++}`;
  const tabs = [openStore(name), openStore(name)] as const;
  for (let i = 0; i < 20; i++) await put(tabs[0], `garment:g${i}`, newGarment(`g${i}`, 'Old', 1));
  const changing = Promise.all(
    Array.from({ length: 20 }, (_, i) =>
      changeGarment(
        tabs[1],
        `g${i}`,
        recording((garment) => renamed(garment, `New ${i}`, 2)),
      ),
    ),
  );
  await mendList(tabs[0], false);
  await changing;
  expect(await loadList(tabs[0])).toEqual(await truth(tabs[0]));
  expect((await loadList(tabs[0])).garments.every((one) => one.name.startsWith('New'))).toBe(true);
});
