import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { saveBackup } from '../../../src/app/garment/backup.ts';
import { restore } from '../../../src/app/garment/changes.ts';
import { previewAll, readFile } from '../../../src/app/garment/file.ts';
import { App } from '../../../src/app/start/app.tsx';
import { garmentLine, writeBackup } from '../../../src/garment/backup/backup.ts';
import { newGarment } from '../../../src/garment/record/new-garment.ts';
import type { Fact, Garment } from '../../../src/garment/record/record.ts';
import { addGarment } from '../../../src/storage/garments.ts';
import { openStore, type Store, StoreError } from '../../../src/storage/store.ts';
import { benchOf } from '../../controls/helpers.ts';
import { loadGarments } from '../../storage/all-garments.ts';
import { hooks, withWork } from '../../storage/coats.ts';

let stores = 0;
let store: Store;
let saved: Blob[];

beforeEach(() => {
  store = openStore(`app-files-${stores++}`);
  saved = [];
  URL.createObjectURL = (blob) => {
    saved.push(blob as Blob);
    return 'blob:saved';
  };
  URL.revokeObjectURL = () => undefined;
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

function start(kept = store) {
  history.replaceState(null, '', '#/garments');
  return render(<App store={kept} bench={benchOf()} last={{}} storeFault={undefined} />);
}

const press = async (name: string | RegExp) =>
  fireEvent.click((await screen.findAllByRole('button', { name }))[0] as HTMLElement);
const choose = async (text: string) => {
  const input = await screen.findByLabelText('Restore from a file');
  const file = new File([text], 'backup.json', { type: 'application/json' });
  Object.defineProperty(input, 'files', { value: [file], configurable: true });
  fireEvent.change(input);
};
const textOf = (blob: Blob | undefined) =>
  new Promise<string>((done) => {
    const reader = new FileReader();
    reader.onload = () => done(String(reader.result));
    reader.readAsText(blob as Blob);
  });

const coat = (id = 'coat'): Garment => withWork(newGarment(id, `The ${id}`, 1), 'hooks', 1);
const unwatched = () => ({ show: () => undefined, signal: new AbortController().signal });

test('a backup holds every garment, and what can’t be read as it was; another phone gets both', async () => {
  const harmed = { version: 1, name: 7, deep: [1.5] };
  await addGarment(store, coat());
  await store.change('garment:bad', () => harmed);
  start();
  await press('Save a backup');
  await screen.findByText(/^Last backup/);
  const text = await textOf(saved[0]);
  cleanup();
  store = openStore(`app-files-${stores++}`);
  start();
  await choose(text);
  await screen.findByText(/One record in it could not be read/);
  await press('Restore what is chosen');
  await screen.findByText('1 restored.');
  expect(await store.load('garment:bad')).toEqual(harmed);
  expect((await loadGarments(store)).garments).toEqual([coat()]);
});

test('what was wrong with one file is not said beside what the next one holds', async () => {
  start();
  const whole = writeBackup([coat()]);
  await choose(whole.slice(0, 60));
  await screen.findByText(/cut off or damaged/);
  await choose(whole);
  await screen.findByText('The coat');
  expect(screen.queryByText(/cut off or damaged/)).toBeNull();
});

test('a changed digit is shown as damaged, looked at, and taken on purpose', async () => {
  start();
  await choose(writeBackup([coat()]).replace('46.3', '49.3'));
  await screen.findByText(/^Damaged: something in it was changed/);
  expect(screen.getByText('opening 49.3 · count 7')).toBeTruthy();
  fireEvent.click(screen.getByLabelText('Take the file’s'));
  await press('Restore what is chosen');
  await screen.findByText('1 restored.');
  expect((await loadGarments(store)).garments[0]?.works.hooks).toMatchObject({
    fields: { opening: [{ text: '49.3' }] },
  });
});

test('writing a backup shows how far it is and is stopped: no file, and none remembered', async () => {
  for (let i = 0; i < 20; i++) await addGarment(store, coat(`c${i}`));
  let held = 0;
  let release = () => {};
  const gate = new Promise<void>((open) => {
    release = open;
  });
  const slow: Store = {
    ...store,
    load: async (key) => {
      if (key.startsWith('garment:') && ++held > 5) await gate;
      return store.load(key);
    },
  };
  start(slow);
  await screen.findByRole('article', { name: 'The c1' });
  await press('Save a backup');
  const bar = await screen.findByRole('progressbar', { name: 'Writing the backup' });
  await waitFor(() => expect(screen.getByText('Writing the backup: 25 %')).toBeTruthy());
  expect(bar).toHaveProperty('max', 20);
  fireEvent.click(screen.getByRole('button', { name: 'Stop' }));
  release();
  expect(await screen.findByText('Stopped: no file was written.')).toBeTruthy();
  expect(saved).toEqual([]);
  expect(await store.load('last-backup')).toBeUndefined();
});

test('reading a file goes by pieces, says how far it is, and is stopped between two of them', async () => {
  const all = Array.from({ length: 30 }, (_, i) => ({
    ...coat(`c${i}`),
    works: Object.fromEntries(Array.from({ length: 200 }, (_, j) => [`k${j}`, hooks()])),
  }));
  const file = new Blob([writeBackup(all)]);
  const shown: number[] = [];
  const whole = await readFile(file, { ...unwatched(), show: (done) => shown.push(done) });
  expect(whole.ok && whole.garments).toEqual(all);
  expect(shown.length).toBeGreaterThan(3);
  const control = new AbortController();
  const watch = { signal: control.signal, show: (done: number) => done > 0 && control.abort() };
  expect(await readFile(file, watch)).toEqual({ ok: false, fault: 'stopped' });
  if (!whole.ok) throw new Error('unread');
  expect(await previewAll(store, whole, watch)).toBeUndefined();
  expect(await previewAll(store, whole, unwatched())).toHaveLength(30);
});

test('letters of several bytes are read whole where a piece ends within one', async () => {
  const name = '’☃🧵'.repeat(20);
  const all = Array.from({ length: 3000 }, (_, i) => newGarment(`c${i}`, name, 1));
  const read = await readFile(new Blob([writeBackup(all)]), unwatched());
  expect(read.ok && read.damaged.size).toBe(0);
  expect(read.ok && read.garments).toEqual(all);
});

const chosen = (count: number) => ({
  garments: Array.from({ length: count }, (_, i) => ({
    garment: coat(`c${i}`),
    choice: 'take' as const,
  })),
  setAside: [],
  at: 7,
});

test('a restore that fills the phone says how many are there, and which cause', async () => {
  let left = 2;
  const full: Store = {
    ...store,
    transact: (mode, work) => {
      if (mode === 'readwrite' && left-- <= 0) return Promise.reject(new StoreError('full'));
      return store.transact(mode, work);
    },
  };
  expect(await restore(full, chosen(5), unwatched())).toMatch(
    /^2 of 5 restored, the others are as they were\. Not kept: the phone’s storage is full/,
  );
  expect((await loadGarments(store)).garments).toHaveLength(2);
});

test('a restore is stopped between two garments, and says how many are there', async () => {
  const control = new AbortController();
  const watch = { signal: control.signal, show: (done: number) => done === 3 && control.abort() };
  expect(await restore(store, chosen(5), watch)).toMatch(/^Stopped: 3 of 5 restored/);
  expect((await loadGarments(store)).garments).toHaveLength(3);
});

test('what was restored is in its file: a backup is not asked for on its account, of others it still is', async () => {
  await restore(store, chosen(1), unwatched());
  const { edits } = coat();
  expect(await store.load('last-backup')).toEqual({
    at: 7,
    edits: { c0: edits },
    facts: { c0: 0 },
  });
  const stand = { at: 5, edits: { other: 3 }, facts: { other: 1 } };
  await store.change('last-backup', () => stand);
  await restore(store, chosen(1), unwatched());
  expect(await store.load('last-backup')).toEqual({
    ...{ at: 5, edits: { other: 3, c0: edits }, facts: { other: 1, c0: 0 } },
  });
});

test('a restore puts nothing on the phone that could not be read again', async () => {
  const harmed = { ...coat(), works: 'none' } as unknown as Garment;
  start();
  await choose(writeBackup([]).replace('[\n', `[\n${garmentLine(harmed)}\n`));
  expect(await screen.findByText(/its list of works is damaged/)).toBeTruthy();
  const taken = { garments: [{ garment: harmed, choice: 'take' as const }], setAside: [], at: 7 };
  expect(await restore(store, taken, unwatched())).toMatch(/more than one garment holds/);
  expect(await loadGarments(store)).toMatchObject({ garments: [], setAside: [] });
});

const third: Fact = {
  ...{ home: 'hooks||marks', shown: 1_232_000, plan: 1_232_000, tape: 8000, rule: 1, read: '' },
  ...{ when: 5, mark: { rank: 2, of: 7, asked: 1_232_000 } },
};

test('what is made here and not in the file is counted before it is taken; the one here is put away', async () => {
  const facts = { f1: third, f2: third, f3: third };
  await addGarment(store, { ...coat(), facts, edits: 9 });
  start();
  await choose(writeBackup([coat()]));
  expect(await screen.findByText(/3 made here are not in it/)).toBeTruthy();
  fireEvent.click(screen.getByLabelText('Take the file’s'));
  expect(screen.getByText(/would go to what is put away/)).toBeTruthy();
  await press('Restore what is chosen');
  await screen.findByText('1 restored.');
  const { garments, deleted } = await loadGarments(store);
  expect(garments).toEqual([coat()]);
  expect(deleted).toMatchObject([{ name: 'The coat', facts }]);
});

test('kept beside the one here it is whole, what is made included', async () => {
  await addGarment(store, coat());
  start();
  await choose(writeBackup([{ ...coat(), facts: { f1: third } }]));
  fireEvent.click(await screen.findByLabelText('Keep both'));
  await press('Restore what is chosen');
  await screen.findByText('1 restored.');
  const { garments } = await loadGarments(store);
  expect(garments.map(({ name }) => name).sort()).toEqual(['The coat', 'The coat, copy']);
  expect(garments.find(({ name }) => name.endsWith('copy'))?.facts).toEqual({ f1: third });
});

test('with full storage the backup is written all the same, and said to be', async () => {
  await addGarment(store, coat());
  const full: Store = { ...store, change: () => Promise.reject(new StoreError('full')) };
  expect(await saveBackup(full, unwatched())).toMatch(/^The file is written/);
  expect(await textOf(saved[0])).toContain('The coat');
});

test('cleared while the list is open: said, saved from memory, and put back', async () => {
  const name = `app-files-${stores++}`;
  store = openStore(name);
  await addGarment(store, coat());
  start();
  await screen.findByRole('article', { name: 'The coat' });
  const cleared = indexedDB.deleteDatabase(name);
  await new Promise((done) => {
    cleared.onsuccess = done;
  });
  await press(/^More with/);
  await press('Copy as a new start');
  expect(await screen.findByText(/has cleared what was kept here.*The coat/)).toBeTruthy();
  await press('Save it to a file');
  await waitFor(async () => expect(await textOf(saved[0])).toContain('"The coat"'));
  await press('Put it back');
  await waitFor(() => expect(screen.queryByText(/has cleared/)).toBeNull());
  expect((await loadGarments(store)).garments.map(({ id }) => id)).toContain('coat');
});
