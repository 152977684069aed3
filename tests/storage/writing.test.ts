import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withKept } from '../../src/garment/changes.ts';
import { type Garment, type Kept, newGarment } from '../../src/garment/garment.ts';
import { loadList } from '../../src/storage/garment-list.ts';
import { moveGarment, replaceGarment } from '../../src/storage/garment-moves.ts';
import { addGarment, changeGarment, loadGarment } from '../../src/storage/garments.ts';
import { openStore, type Store } from '../../src/storage/store.ts';
import { loadGarments } from './all-garments.ts';

let names = 0;
const fresh = () => openStore(`writing-${names++}`);
const hooks: Kept = {
  id: 'hooks',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  draft: { opening: '46.3' },
  runs: [{ planned: { '1': 96_000 }, made: { '1': '' } }],
};
const coat = (): Garment => withKept(newGarment('coat', 'Coat', 1), hooks, 2);
const faultOf = (work: Promise<unknown>) =>
  work.then(
    () => 'none',
    (error: { fault?: string }) => error.fault ?? String(error),
  );

/** What a crafted address, or a calculation with very many marks, would put into a record. */
const marks = (count: number) =>
  Object.fromEntries(Array.from({ length: count }, (_, i) => [String(i), i]));
const TOO_MUCH: Readonly<Record<string, Partial<Kept>>> = {
  'a very long text': { draft: { opening: 'x'.repeat(20_001) } },
  'hundreds of keys': {
    draft: Object.fromEntries(Array.from(Array(300), (_, i) => [`k${i}`, ''])),
  },
  'a very long key': { draft: { ['k'.repeat(81)]: '' } },
  'too many marks': { runs: [{ planned: marks(2001), made: {} }] },
  'too many runs': { runs: Array.from(Array(101), () => ({ planned: {}, made: {} })) },
  'a place that is no number': { runs: [{ planned: { '1': Number.NaN }, made: {} }] },
};

const WAYS: Readonly<Record<string, (store: Store, kept: Kept) => Promise<void>>> = {
  'keeping on it': (store, kept) => changeGarment(store, 'coat', (old) => withKept(old, kept, 3)),
  'a new garment': (store, kept) =>
    addGarment(store, withKept(newGarment('new', 'New', 3), kept, 3)),
  restoring: (store, kept) => replaceGarment(store, { ...coat(), kept: [kept] }, 'spare'),
  'taking off': (store, kept) =>
    changeGarment(store, 'coat', (old) => ({ ...old, kept: [], takenOff: [kept] })),
};

test.each(Object.keys(WAYS).flatMap((way) => Object.keys(TOO_MUCH).map((what) => ({ way, what }))))(
  '$way with $what is refused, and the garment is as it was',
  async ({ way, what }) => {
    const store = fresh();
    await addGarment(store, coat());
    const work = WAYS[way]?.(store, { ...hooks, ...TOO_MUCH[what] });
    expect(await faultOf(work ?? Promise.resolve())).toBe('limit');
    expect(await loadGarments(store)).toMatchObject({
      garments: [coat()],
      deleted: [],
      setAside: [],
    });
  },
);

test('2,000 hostile changes: what was written is read again, what was refused left all as it was', async () => {
  const store = fresh();
  await addGarment(store, coat());
  const text = fc.oneof(
    fc.string({ maxLength: 90, unit: 'binary' }),
    fc.nat(30_000).map((length) => 'x'.repeat(length)),
    fc.constantFrom('__proto__', 'constructor', '', ' ', '\uD800', '\u0000'),
  );
  const anything = fc.oneof(
    text,
    fc.double(),
    fc.anything({ maxDepth: 2, withNullPrototype: true }),
  );
  const draft = fc.dictionary(text, anything, { maxKeys: 130, size: 'max' });
  const run = fc.record({
    planned: fc.dictionary(text, anything),
    made: fc.dictionary(text, text),
  });
  const damage = fc.oneof(
    fc.record({ draft }),
    fc.record({ runs: fc.oneof(fc.array(run, { maxLength: 120 }), fc.anything()) }),
    fc.record({ id: anything }),
    fc.record({ name: text, stage: anything }),
    fc.record({ calculation: anything }),
  );
  const tried = { written: 0, refused: 0 };
  const attempt = async (harm: object) => {
    const before = JSON.stringify(await store.load('garment:coat'));
    const harmed = { ...hooks, ...harm } as Kept;
    const fault = await faultOf(
      changeGarment(store, 'coat', (old) => ({ ...old, kept: [harmed], edits: old.edits + 1 })),
    );
    const { garments, setAside } = await loadGarments(store);
    expect(setAside).toEqual([]);
    expect(garments).toHaveLength(1);
    if (fault === 'none') tried.written += 1;
    else {
      tried.refused += 1;
      expect(fault).toBe('limit');
      expect(JSON.stringify(await store.load('garment:coat'))).toBe(before);
    }
  };
  await fc.assert(fc.asyncProperty(damage, attempt), { numRuns: 2000, seed: 1912 });
  expect(tried.written).toBeGreaterThan(100);
  expect(tried.refused).toBeGreaterThan(500);
});

test('a record of a newer version is named so, wherever it is asked for, and stays as it is', async () => {
  const store = fresh();
  const later = { ...coat(), version: 3, pockets: [1] };
  await store.change('garment:coat', () => later);
  const byNone = (garment: Garment) => garment;
  expect(await faultOf(loadGarment(store, 'coat'))).toBe('newer');
  expect(await faultOf(changeGarment(store, 'coat', byNone))).toBe('newer');
  expect((await loadGarments(store)).setAside).toMatchObject([
    { damage: { kind: 'newer', version: 3 } },
  ]);
  expect(await store.load('garment:coat')).toEqual(later);
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
  const byNone = (garment: Garment) => garment;
  await moveGarment(openStore(name), 'hat', 'bin', 'spare');
  expect(await faultOf(changeGarment(store, 'hat', byNone))).toBe('gone');
  expect((await loadList(store)).cleared).toEqual([]);
  await clear(name);
  expect(await faultOf(changeGarment(store, 'coat', byNone))).toBe('cleared');
  expect(await faultOf(loadGarment(store, 'coat'))).toBe('cleared');
  expect(await faultOf(moveGarment(store, 'coat', 'bin', 'spare'))).toBe('cleared');
  expect(await faultOf(loadGarment(store, 'never here'))).toBe('gone');
  const after = await loadList(store);
  expect(after).toMatchObject({ garments: [], setAside: [] });
  expect(after.cleared.map(({ id }) => id).sort()).toEqual(['coat', 'hat']);
  await addGarment(store, coat());
  expect((await loadList(store)).cleared.map(({ id }) => id)).toEqual(['hat']);
});
