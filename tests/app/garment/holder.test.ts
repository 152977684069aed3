import 'fake-indexeddb/auto';
import { expect, test, vi } from 'vitest';
import { type Holder, holderOf } from '../../../src/app/garment/holder.ts';
import type { Action } from '../../../src/garment/actions/act.ts';
import { nextOf } from '../../../src/garment/next/next.ts';
import type { Garment } from '../../../src/garment/record/record.ts';
import { addGarment, loadGarment } from '../../../src/storage/garments.ts';
import { openStore, type Store, StoreError } from '../../../src/storage/store.ts';
import { backOne } from '../../garment/trial/back-one.ts';
import { garmentOf, typed } from '../../garment/trial/garments.ts';

/** Invented: three hooks on an edge of 11 cm, and a hem. */
const JACKET = garmentOf({
  works: {
    hooks: {
      name: 'Hooks',
      calculation: 'closures',
      rank: 1,
      fields: {
        opening: typed('11'),
        count: typed('3'),
        top: typed('1'),
        bottom: typed('1'),
        by: typed('count'),
        ends: typed('given'),
      },
    },
  },
});
const HOOKS = 'hooks||marks';
const opening = { work: 'hooks', field: 'opening' };

/** Parts are fetched, and the store writes, on a machine that may be busy. */
const until = (holds: () => void) => vi.waitFor(holds, { timeout: 20_000 });

let stores = 0;
async function jacket(): Promise<{ name: string; store: Store }> {
  const name = `holder-${stores++}`;
  const store = openStore(name);
  await addGarment(store, { ...JACKET, edits: 1 });
  return { name, store };
}

async function held(store: Store): Promise<Holder> {
  const holder = holderOf(store, 'g');
  await until(() => expect(holder.state()).toBeDefined());
  return holder;
}

const make = (id: string): Action => ({ do: 'make', home: HOOKS, id, tape: 8000, now: 5 });
const lastBack = (holder: Holder): Action => {
  const state = holder.state();
  if (!state) throw new Error('not read yet');
  return backOne(state, 9);
};
const kept = (holder: Holder) => until(() => expect(holder.waiting()).toBe(0));
const onDisk = async (store: Store): Promise<Garment> => (await loadGarment(store, 'g')).record;

test('what is done is there at once, and on the disk in order', async () => {
  const { store } = await jacket();
  const holder = await held(store);
  holder.act(make('a'));
  holder.act(make('b'));
  expect(Object.keys(holder.state()?.record.facts ?? {})).toEqual(['a', 'b']);
  expect(holder.waiting()).toBe(2);
  await kept(holder);
  expect(await onDisk(store)).toEqual(holder.state()?.record);
  expect((await loadGarment(store, 'g')).log.length).toBe(2);

  // A press is on its way to the disk at once, before it is painted: a crash takes no more than that.
  const transact = vi.spyOn(store, 'transact');
  holder.act(make('c'));
  expect(transact).toHaveBeenCalledTimes(1);
  await kept(holder);
  expect(Object.keys((await onDisk(store)).facts)).toEqual(['a', 'b', 'c']);

  // A key that is typed writes the record and its entry, no log anew, and waits for the disk alone.
  const puts = vi.spyOn(IDBObjectStore.prototype, 'put');
  const ends = vi.spyOn(IDBTransaction.prototype, 'commit');
  holder.act({ do: 'type', place: opening, parts: typed('12'), now: 6 });
  await kept(holder);
  expect(puts.mock.calls.map(([, key]) => key)).toEqual(['garment:g', 'listed:garment:g']);
  expect(ends).toHaveBeenCalledTimes(1);
  for (const spy of [puts, ends]) spy.mockRestore();
  expect((await loadGarment(store, 'g')).log.length).toBe(3);
});

test('a store that is slow to answer is asked again, without a press', async () => {
  const { store } = await jacket();
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  const asked = vi.spyOn(store, 'transact');
  for (let i = 0; i < 2; i++) asked.mockRejectedValueOnce(new StoreError('slow'));
  const holder = holderOf(store, 'g');
  await vi.waitFor(() => expect(holder.failed()).toMatchObject({ fault: 'slow' }));
  expect(holder.state()).toBeUndefined();
  // While it stays so, the same is not said again.
  const told = vi.fn();
  holder.listen(told);
  vi.runOnlyPendingTimers();
  await vi.waitFor(() => expect(vi.getTimerCount()).toBe(1));
  expect(asked).toHaveBeenCalledTimes(2);
  expect(told).not.toHaveBeenCalled();
  vi.runOnlyPendingTimers();
  vi.useRealTimers();
  await until(() => expect(holder.state()?.record.name).toBe(JACKET.name));
  expect(holder.failed()).toBeUndefined();
});

test('two tabs: what both did is there, and a number of before stores nothing', async () => {
  const { name, store } = await jacket();
  const [here, there] = [await held(store), await held(openStore(name))];
  here.act({ do: 'choose', place: opening, parts: typed('13'), now: 6 });
  await kept(here);
  // The other tab has not heard of it: its key shows the first hook where it still is, and it holds.
  there.act({ ...make('x'), shown: 80_000 } as Action);
  await kept(there);
  expect(there.state()?.record).toEqual(await onDisk(store));
  expect(Object.keys((await onDisk(store)).facts)).toEqual(['x']);
  // Its second one has moved meanwhile, from 5.5 to 6.5.
  here.look();
  await until(() => expect(here.state()?.record.facts).toHaveProperty('x'));
  here.act({ do: 'choose', place: opening, parts: typed('11'), now: 7 });
  await kept(here);
  there.act({ ...make('y'), shown: 6.5 * 80_000 } as Action);
  await kept(there);
  expect(there.refused()).toMatchObject({ why: 'stale' });
  expect(Object.keys((await onDisk(store)).facts)).toEqual(['x']);
  expect(nextOf(there.state()?.answer as never)).toMatchObject({ value: 5.5 * 80_000 });
});

test('what the store can’t take is held, said, and kept once it can', async () => {
  const { store } = await jacket();
  let full = false;
  const sick: Store = {
    ...store,
    transact: (mode, work) =>
      full && mode === 'readwrite'
        ? Promise.reject(new StoreError('full'))
        : store.transact(mode, work),
  };
  const holder = await held(sick);
  full = true;
  holder.act(make('a'));
  await until(() => expect(holder.trouble()?.fault).toBe('full'));
  expect(holder.waiting()).toBe(1);
  expect(holder.state()?.record.facts).toHaveProperty('a');
  full = false;
  holder.again();
  await kept(holder);
  expect((await onDisk(store)).facts).toHaveProperty('a');
});

test('what was slow, and kept all the same, is not done again', async () => {
  const { store } = await jacket();
  let slow = false;
  const sluggish: Store = {
    ...store,
    async transact(mode, work) {
      const done = await store.transact(mode, work);
      if (!slow || mode === 'readonly') return done;
      slow = false;
      throw new StoreError('slow');
    },
  };
  const holder = await held(sluggish);
  const slowly = async (action: Action) => {
    slow = true;
    holder.act(action);
    await until(() => expect(holder.trouble()?.fault).toBe('slow'));
    holder.again();
    await kept(holder);
    expect(holder.refused()).toBeUndefined();
    expect(holder.state()?.record).toEqual(await onDisk(store));
    return Object.keys((await onDisk(store)).facts);
  };
  expect(await slowly(make('a'))).toEqual(['a']);
  expect(await slowly(make('b'))).toEqual(['a', 'b']);
  expect(await slowly(lastBack(holder))).toEqual(['a']);
});

test('two tabs: back one takes back what that tab has made last, not what the other has', async () => {
  const { name, store } = await jacket();
  const [here, there] = [await held(store), await held(openStore(name))];
  there.act(make('a'));
  await kept(there);
  here.look();
  await until(() => expect(here.state()?.record.facts).toHaveProperty('a'));
  // Neither has heard of the other.
  here.act(make('b'));
  there.act(lastBack(there));
  await kept(here);
  await kept(there);
  const { facts, begun } = await onDisk(store);
  expect(Object.keys(facts)).toEqual(['b']);
  // The row is begun while one mark of it is made.
  expect(Object.keys(begun)).toEqual([HOOKS]);
  expect(there.refused()).toBeUndefined();
  here.look();
  await until(() => expect(here.state()?.record.facts).toEqual(facts));
});

test('two tabs: what both do in the same millisecond is there, or refused in words', async () => {
  const { name, store } = await jacket();
  const [here, there] = [await held(store), await held(openStore(name))];
  here.act(make('a'));
  there.act({ do: 'choose', place: opening, parts: typed('13'), now: 5 });
  await kept(here);
  await kept(there);
  const { facts, works, edits } = await onDisk(store);
  expect(Object.keys(facts)).toEqual(['a']);
  expect(works).toMatchObject({ hooks: { fields: { opening: typed('13') } } });
  expect(edits).toBe(3);
});

test('two tabs: a press that is refused is not made behind its refusal, whatever the disk holds by then', async () => {
  const { name, store } = await jacket();
  const there = await held(openStore(name));
  there.act({ do: 'type', place: opening, parts: typed('13'), now: 6 });
  await kept(there);
  const here = await held(store);
  // It is settled there, and not heard of here, where the press comes upon what is still pending.
  there.act({ do: 'settle', now: 7 });
  await kept(there);
  here.act(make('a'));
  expect(here.refused()).toMatchObject({ why: 'stale' });
  await kept(here);
  expect(here.refused()).toMatchObject({ why: 'stale' });
  expect((await onDisk(store)).facts).toEqual({});
  expect(here.state()?.record.facts).toEqual({});
  expect(here.state()?.record.works).toMatchObject({ hooks: { fields: { opening: typed('13') } } });
});

test('what was read before a press was kept does not take the press off the screen again', async () => {
  const { store } = await jacket();
  let letGo: (() => void) | undefined;
  let holds = false;
  let reads = 0;
  const slow: Store = {
    ...store,
    async transact(mode, work) {
      const read = await store.transact(mode, work);
      if (mode === 'readonly') reads += 1;
      if (holds && mode === 'readonly') {
        holds = false;
        await new Promise<void>((free) => {
          letGo = free;
        });
      }
      return read;
    },
  };
  const holder = await held(slow);
  holds = true;
  holder.look();
  await until(() => expect(letGo).toBeDefined());
  holder.act(make('a'));
  await kept(holder);
  const seen: string[][] = [];
  const deaf = holder.listen(() => seen.push(Object.keys(holder.state()?.record.facts ?? {})));
  const before = reads;
  letGo?.();
  // It is read anew, or what was read is shown.
  await until(() => expect(reads - before + seen.length).toBeGreaterThan(0));
  holder.act(make('b'));
  await kept(holder);
  deaf();
  expect(seen.length).toBeGreaterThan(0);
  expect(seen.every((facts) => facts.includes('a'))).toBe(true);
});

test('what is being typed is on the disk too, and settles there with the next press', async () => {
  const { name, store } = await jacket();
  const holder = await held(store);
  for (const text of ['6', '63', '63.']) {
    holder.act({ do: 'type', place: opening, parts: typed(text), now: 6 });
  }
  await kept(holder);
  expect((await onDisk(store)).pending).toEqual({ place: opening, parts: typed('63.') });
  // The tab is killed; the next one has the same still pending.
  const next = await held(openStore(name));
  expect(next.state()?.record.pending).toEqual({ place: opening, parts: typed('63.') });
  next.act({ do: 'settle', now: 7 });
  await kept(next);
  expect((await onDisk(store)).works).toMatchObject({
    hooks: { fields: { opening: typed('63.') } },
  });
});

test('a garment that isn’t there says so', async () => {
  const { store } = await jacket();
  const holder = holderOf(store, 'gone');
  await until(() => expect(holder.failed()).toMatchObject({ fault: 'gone' }));
  expect(holder.state()).toBeUndefined();
});
