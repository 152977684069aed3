import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { act } from '../../src/garment/actions/act.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { newGarment, renamed } from '../../src/garment/record/new-garment.ts';
import type { Fact, Garment } from '../../src/garment/record/record.ts';
import { loadList } from '../../src/storage/garment-list.ts';
import { moveGarment, replaceGarment } from '../../src/storage/garment-moves.ts';
import { addGarment, changeGarment, type Logged, loadGarment } from '../../src/storage/garments.ts';
import { openStore, type Store } from '../../src/storage/store.ts';
import { loadGarments } from './all-garments.ts';
import { hooks, recording, withWork } from './coats.ts';

let names = 0;
const fresh = () => openStore(`writing-${names++}`);
const coat = (): Garment => withWork(newGarment('coat', 'Coat', 1), 'hooks', 2);
const faultOf = (work: Promise<unknown>) =>
  work.then(
    () => 'none',
    (error: { fault?: string }) => error.fault ?? String(error),
  );
const same = (now: Logged) => ({ ...now });

const many = <One>(count: number, one: (i: number) => One) =>
  Object.fromEntries(Array.from({ length: count }, (_, i) => [`n${i}`, one(i)]));
const fact: Fact = {
  ...{ home: 'hooks||marks', shown: 96_000, plan: 96_000, tape: 8000, rule: 1, read: '', when: 1 },
};
/** One more than a garment holds of each. */
const TOO_MUCH: Readonly<Record<string, Partial<Garment>>> = {
  '501 works': { works: many(501, () => hooks()) },
  '5,001 facts': { facts: many(5001, (i) => ({ ...fact, mark: { rank: i, of: 6000, asked: 1 } })) },
  'a million characters': { works: { hooks: hooks({ name: 'x'.repeat(1_100_000) }) } },
};

test.each(Object.keys(TOO_MUCH))('%s are refused, and the garment is as it was', async (what) => {
  const store = fresh();
  await addGarment(store, coat());
  const grow = recording((old) => ({ ...old, ...TOO_MUCH[what] }));
  expect(await faultOf(changeGarment(store, 'coat', grow))).toBe('limit');
  expect(await loadGarments(store)).toMatchObject({
    garments: [coat()],
    deleted: [],
    setAside: [],
  });
});

test.each(Object.keys(TOO_MUCH))(
  'a garment of %s, once there, is changed but not grown',
  async (what) => {
    const store = fresh();
    const large = { ...coat(), ...TOO_MUCH[what] };
    await replaceGarment(store, large, 'spare');
    await changeGarment(
      store,
      'coat',
      recording((old) => renamed(old, 'Cloak', 3)),
    );
    expect(await store.load('garment:coat')).toMatchObject({ name: 'Cloak' });
    const more = recording((old) => ({
      ...withWork(old, 'more', 4),
      facts: { ...old.facts, more: fact },
    }));
    expect(await faultOf(changeGarment(store, 'coat', more))).toBe('limit');
  },
);

test('2,000 hostile changes: what was written is read again, what was refused left all as it was', async () => {
  const store = fresh();
  await addGarment(store, coat());
  const text = fc.oneof(
    fc.string({ maxLength: 90, unit: 'binary' }),
    fc.constantFrom('__proto__', 'constructor', '', ' ', '\uD800', '\u0000'),
  );
  const anything = fc.oneof(text, fc.double(), fc.anything({ maxDepth: 2 }));
  const map = fc.dictionary(text, anything, { maxKeys: 20 });
  const damage = fc.oneof(
    fc.record({ works: fc.oneof(map, anything) }),
    fc.record({ facts: fc.oneof(map, anything), begun: fc.oneof(map, anything) }),
    fc.record({ id: anything }),
    fc.record({ name: anything, invented: anything }),
    fc.record({ changed: anything }),
    fc.record({ pending: anything, decisions: map, pockets: anything }),
  );
  const tried = { written: 0, refused: 0 };
  const attempt = async (harm: object) => {
    const before = JSON.stringify(await store.load('garment:coat'));
    const by = recording((old) => ({ ...old, ...harm, edits: old.edits + 1 }) as Garment);
    const fault = await faultOf(changeGarment(store, 'coat', by));
    const { garments, setAside } = await loadGarments(store);
    expect(setAside).toEqual([]);
    expect(garments).toHaveLength(1);
    if (fault === 'none') {
      tried.written += 1;
      const { record } = await loadGarment(store, 'coat');
      expect(() => begin(record, new Map())).not.toThrow();
      await changeGarment(store, 'coat', recording(coat));
    } else {
      tried.refused += 1;
      expect(JSON.stringify(await store.load('garment:coat'))).toBe(before);
    }
  };
  await fc.assert(fc.asyncProperty(damage, attempt), { numRuns: 2000, seed: 1912 });
  expect(tried.written).toBeGreaterThan(300);
  expect(tried.refused).toBeGreaterThan(300);
});

test('a record of a newer version is named so, wherever it is asked for, and stays as it is', async () => {
  const store = fresh();
  const later = { ...coat(), version: 4, pockets: [1] };
  await store.change('garment:coat', () => later);
  expect(await faultOf(loadGarment(store, 'coat'))).toBe('newer');
  expect(await faultOf(changeGarment(store, 'coat', same))).toBe('newer');
  expect((await loadGarments(store)).setAside).toMatchObject([
    { damage: { kind: 'newer', version: 4 } },
  ]);
  expect(await store.load('garment:coat')).toEqual(later);
});

test('what a newer build wrote into a record of this version is written back', async () => {
  const store = fresh();
  const later = {
    ...coat(),
    pockets: [1],
    works: { hooks: { ...hooks(), lining: { red: true } } },
  };
  await store.change('garment:coat', () => later);
  await changeGarment(
    store,
    'coat',
    recording((old) => renamed(old, 'Cloak', 3)),
  );
  expect(await store.load('garment:coat')).toEqual({
    ...later,
    ...{ name: 'Cloak', changed: 3, edits: 3 },
  });
});

/** Something done to a garment as a screen does it, with what can be taken back of it. */
const doing =
  (...actions: Parameters<typeof act>[1][]) =>
  ({ record, log }: Logged): Logged => {
    const state = actions.reduce(
      (so, action) => act(so, action).state,
      begin(record, new Map(), log),
    );
    return { record: state.record, log: state.log };
  };
const rank = (to: number) => ({ do: 'rank', of: 'works', id: 'hooks', rank: to, now: to }) as const;

test('the log lies beside the record, goes where it goes, and is in no other’s', async () => {
  const store = fresh();
  await addGarment(store, coat());
  await changeGarment(store, 'coat', doing(rank(5), rank(6)));
  const { log } = await loadGarment(store, 'coat');
  expect(log.map(({ what }) => what)).toEqual(['rank', 'rank']);
  await changeGarment(store, 'coat', doing({ do: 'undo', change: log.at(-1)?.id ?? 0, now: 7 }));
  expect((await loadGarment(store, 'coat')).record.works.hooks).toMatchObject({ rank: 5 });
  // Put away and back it can still be taken back; what is restored in its place has none.
  await moveGarment(store, 'coat', 'bin', 'spare');
  expect(await store.load('log:garment:coat')).toBeUndefined();
  await moveGarment(store, 'coat', 'here', 'spare');
  expect((await loadGarment(store, 'coat')).log).toHaveLength(2);
  await replaceGarment(store, coat(), 'spare');
  expect((await loadGarment(store, 'coat')).log).toEqual([]);
  expect(await store.load('log:deleted:spare')).toHaveLength(2);
});

test('a harmed log takes nothing with it but itself', async () => {
  for (const harmed of [
    7,
    { 0: 1 },
    [{ id: 1 }],
    [{ id: 1, what: 'x', edits: [{ slot: ['__proto__', 'x'] }], press: true }],
  ]) {
    const store = fresh();
    await addGarment(store, coat());
    await store.change('log:garment:coat', () => harmed);
    expect(await loadGarment(store, 'coat')).toEqual({ record: coat(), log: [] });
    await changeGarment(store, 'coat', doing(rank(5)));
    expect((await loadGarment(store, 'coat')).log).toHaveLength(1);
  }
});

test('two tabs doing things to one garment at once: each is done once, and stands in the log', async () => {
  const name = `writing-${names++}`;
  const tabs = [openStore(name), openStore(name)] as const;
  await addGarment(tabs[0], coat());
  const add = (store: Store, i: number) => {
    const it = hooks({ name: `W${i}`, rank: i });
    return changeGarment(store, 'coat', doing({ do: 'add', to: 'works', id: `w${i}`, it, now: i }));
  };
  for (let i = 0; i < 80; i += 8) {
    await Promise.all(Array.from({ length: 8 }, (_, j) => add(tabs[j % 2 === 0 ? 0 : 1], i + j)));
  }
  const { record, log } = await loadGarment(tabs[0], 'coat');
  expect(Object.keys(record.works)).toHaveLength(81);
  expect(record.edits).toBe(coat().edits + 80);
  expect(new Set(log.map(({ id }) => id)).size).toBe(80);
});

test('where nothing is changed nothing is written, and an older record stays as it is', async () => {
  const store = fresh();
  const older = { version: 2, id: 'coat', name: 'Coat', invented: false, changed: 1, edits: 1 };
  const second = { ...older, kept: [], takenOff: [] };
  await store.change('garment:coat', () => second);
  await changeGarment(store, 'coat', (now) => now);
  expect(await store.load('garment:coat')).toEqual(second);
});

/** As a browser does where a maker clears the site's data. */
async function clear(name: string): Promise<void> {
  const request = indexedDB.deleteDatabase(name);
  await new Promise((done) => {
    request.onsuccess = done;
  });
}

test('what the browser cleared is told from what another tab deleted, and is still in memory', async () => {
  const name = `writing-${names++}`;
  const store = openStore(name);
  await addGarment(store, coat());
  await addGarment(store, newGarment('hat', 'Hat', 1));
  await moveGarment(openStore(name), 'hat', 'bin', 'spare');
  expect(await faultOf(changeGarment(store, 'hat', same))).toBe('gone');
  expect((await loadList(store)).cleared).toEqual([]);
  await clear(name);
  expect(await faultOf(changeGarment(store, 'coat', same))).toBe('cleared');
  expect(await faultOf(loadGarment(store, 'coat'))).toBe('cleared');
  expect(await faultOf(moveGarment(store, 'coat', 'bin', 'spare'))).toBe('cleared');
  expect(await faultOf(loadGarment(store, 'never here'))).toBe('gone');
  const after = await loadList(store);
  expect(after).toMatchObject({ garments: [], setAside: [] });
  expect(after.cleared.map(({ id }) => id).sort()).toEqual(['coat', 'hat']);
  await addGarment(store, coat());
  expect((await loadList(store)).cleared.map(({ id }) => id)).toEqual(['hat']);
});
