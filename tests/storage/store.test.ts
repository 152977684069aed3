import 'fake-indexeddb/auto';
import { promisifyRequest } from 'idb-keyval';
import { afterEach, expect, test, vi } from 'vitest';
import { openStore, StoreError } from '../../src/storage/store.ts';

let names = 0;
const fresh = () => `test-${names++}`;

afterEach(() => {
  vi.restoreAllMocks();
  vi.useRealTimers();
});

const faultOf = (work: Promise<unknown>) =>
  work.then(
    () => 'none',
    (error: unknown) => (error instanceof StoreError ? error.fault : String(error)),
  );

test('what is kept is there, also for another page', async () => {
  const name = fresh();
  await openStore(name).change('settings', () => ({ hand: 'left' }));
  expect(await openStore(name).load('settings')).toEqual({ hand: 'left' });
  expect(await openStore(name).load('nothing')).toBeUndefined();
});

test('two pages changing the same thing at once lose nothing', async () => {
  const name = fresh();
  const pages = [openStore(name), openStore(name)];
  const more = (old: unknown) => (typeof old === 'number' ? old : 0) + 1;
  await Promise.all(Array.from({ length: 200 }, (_, i) => pages[i % 2]?.change('count', more)));
  expect(await pages[0]?.load('count')).toBe(200);
});

test('a change is on the disk before it is called done', async () => {
  const asked = vi.spyOn(IDBDatabase.prototype, 'transaction');
  await openStore(fresh()).change('a', () => 1);
  expect(asked).toHaveBeenCalledWith('bench', 'readwrite', { durability: 'strict' });
});

test('a browser that refuses storage is named so, and can be asked again', async () => {
  const refuse = vi.spyOn(indexedDB, 'open').mockImplementation(() => {
    throw new DOMException('no', 'SecurityError');
  });
  const store = openStore(fresh());
  expect(await faultOf(store.load('a'))).toBe('refused');
  refuse.mockRestore();
  expect(await faultOf(store.change('a', () => 1))).toBe('none');
});

test('a full disk is named so, and what was kept is still there', async () => {
  const store = openStore(fresh());
  await store.change('a', () => 1);
  const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('full', 'QuotaExceededError');
  });
  expect(await faultOf(store.change('a', () => 2))).toBe('full');
  put.mockRestore();
  expect(await store.load('a')).toBe(1);
});

test('a store that a newer version of the app has changed is named so', async () => {
  const name = fresh();
  const later = indexedDB.open(name, 2);
  await new Promise((done) => {
    later.onsuccess = done;
  });
  later.result.close();
  expect(await faultOf(openStore(name).load('a'))).toBe('outdated');
  expect(await faultOf(openStore(name).change('a', () => 1))).toBe('outdated');
});

test('a store that never answers is named slow', async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  vi.spyOn(indexedDB, 'open').mockImplementation(() => ({}) as IDBOpenDBRequest);
  const waited = faultOf(openStore(fresh()).load('a'));
  await vi.advanceTimersByTimeAsync(5000);
  expect(await waited).toBe('slow');
});

test('what is named slow is not kept later all the same', async () => {
  const store = openStore(fresh());
  await store.change('a', () => 1);
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  let slow = true;
  const waited = faultOf(
    store.transact('readwrite', async (kept) => {
      kept.put(2, 'a');
      while (slow) await promisifyRequest(kept.get('a'));
    }),
  );
  await vi.advanceTimersByTimeAsync(5000);
  expect(await waited).toBe('slow');
  slow = false;
  vi.useRealTimers();
  expect(await store.load('a')).toBe(1);
});

test('nor when the store answers only after that', async () => {
  const name = fresh();
  await openStore(name).change('a', () => 1);
  const db = await promisifyRequest(indexedDB.open(name));
  const asked: { result?: IDBDatabase; onsuccess?: () => void } = {};
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  vi.spyOn(indexedDB, 'open').mockReturnValueOnce(asked as unknown as IDBOpenDBRequest);
  const store = openStore(name);
  const waited = faultOf(store.change('a', () => 2));
  await vi.advanceTimersByTimeAsync(5000);
  expect(await waited).toBe('slow');
  vi.useRealTimers();
  asked.result = db;
  asked.onsuccess?.();
  expect(await store.load('a')).toBe(1);
});

test('a disk that is full only when the change is written down is named full too', async () => {
  const store = openStore(fresh());
  await store.change('a', () => 1);
  const { put } = IDBObjectStore.prototype;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    ...given
  ) {
    const request = put.apply(this, given);
    // As a browser gives a transaction up; there is no public way to make it.
    Reflect.get(this.transaction, '_abort').call(this.transaction, 'QuotaExceededError');
    return request;
  });
  expect(await faultOf(store.change('a', () => 2))).toBe('full');
  vi.restoreAllMocks();
  expect(await store.load('a')).toBe(1);
});

test('a change that fails by itself is handed on as it is, and changes nothing', async () => {
  const store = openStore(fresh());
  await store.change('a', () => 1);
  const bug = new TypeError('a bug');
  const failing = () => {
    throw bug;
  };
  await expect(store.change('a', failing)).rejects.toBe(bug);
  expect(await store.load('a')).toBe(1);
});

test('undefined takes away', async () => {
  const store = openStore(fresh());
  await store.change('a', () => 1);
  await store.change('a', () => undefined);
  expect(await store.load('a')).toBeUndefined();
  expect(await store.transact('readonly', async (kept) => kept.transaction.mode)).toBe('readonly');
});

test('when the browser clears the site’s data meanwhile, the store opens anew', async () => {
  const name = fresh();
  const store = openStore(name);
  await store.change('a', () => 1);
  const cleared = indexedDB.deleteDatabase(name);
  await new Promise((done) => {
    cleared.onsuccess = done;
  });
  expect(await store.load('a')).toBeUndefined();
  await store.change('a', () => 2);
  expect(await store.load('a')).toBe(2);
});

test('an answer in time leaves no clock running', async () => {
  const cleared = vi.spyOn(globalThis, 'clearTimeout');
  const set = vi.spyOn(globalThis, 'setTimeout');
  await openStore(fresh()).load('a');
  const limits = set.mock.results.filter((_, i) => set.mock.calls[i]?.[1] === 4000);
  expect(limits).toHaveLength(1);
  expect(cleared).toHaveBeenCalledWith(limits[0]?.value);
});
