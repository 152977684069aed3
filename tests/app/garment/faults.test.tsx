import 'fake-indexeddb/auto';
import { cleanup, configure, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { App } from '../../../src/app/start/app.tsx';
import { withKept } from '../../../src/garment/changes.ts';
import { type Kept, newGarment } from '../../../src/garment/garment.ts';
import { loadList } from '../../../src/storage/garment-list.ts';
import { addGarment, changeGarment } from '../../../src/storage/garments.ts';
import { openStore, type Store, StoreError, type StoreFault } from '../../../src/storage/store.ts';
import { benchOf } from '../../controls/helpers.ts';
import { loadGarments } from '../../storage/all-garments.ts';

// Parts are fetched, and the store writes, on a machine that may be busy.
configure({ asyncUtilTimeout: 20_000 });

let stores = 0;
let store: Store;

let name: string;

beforeEach(() => {
  name = `app-faults-${stores++}`;
  store = openStore(name);
});
afterEach(cleanup);

function start(hash: string, kept = store) {
  history.replaceState(null, '', hash);
  return render(<App store={kept} bench={benchOf()} last={{}} storeFault={undefined} />);
}

const press = async (name: string | RegExp) =>
  fireEvent.click(await screen.findByRole('button', { name }));

const hooks: Kept = {
  id: 'hooks',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  draft: { u: 'cm', opening: '10', count: '2', top: '1', bottom: '1' },
  runs: [],
};
const coat = () => withKept(newGarment('coat', 'Coat', 1), hooks, 1);

/** Sentences of their own, so that what is done about it is the right thing. */
const SAID: Readonly<Record<StoreFault, RegExp>> = {
  refused: /the browser refuses storage\. Allow site data/,
  full: /the phone’s storage is full\. Free some space/,
  slow: /storage does not answer\. Close other tabs/,
  outdated: /newer version of this app has been at work on this phone/,
};

/** A store that reads, and keeps nothing of garments. */
function failing(fault: StoreFault): Store {
  const fail = () => Promise.reject(new StoreError(fault));
  return {
    ...store,
    transact: (mode, work) => (mode === 'readwrite' ? fail() : store.transact(mode, work)),
    change: (key, by) => (key.startsWith('garment:') ? fail() : store.change(key, by)),
  };
}

test.each(Object.keys(SAID) as StoreFault[])('kept on a garment with storage %s', async (fault) => {
  await addGarment(store, coat());
  start('#/hem/keep?u=cm&depth=2', failing(fault));
  await press('Keep it');
  expect(await screen.findByText(SAID[fault])).toBeTruthy();
  expect((await loadGarments(store)).garments).toEqual([coat()]);
});

test.each(Object.keys(SAID) as StoreFault[])('a new garment with storage %s', async (fault) => {
  start('#/garments', failing(fault));
  fireEvent.input(await screen.findByLabelText(/A new garment/), { target: { value: 'Hat' } });
  await press('Make');
  expect(await screen.findByText(SAID[fault])).toBeTruthy();
});

test('that it could not be remembered which garment is open is no reason to say “not kept”', async () => {
  const full: Store = {
    ...store,
    change: (key, by) =>
      key === 'open-garment' ? Promise.reject(new StoreError('full')) : store.change(key, by),
  };
  start('#/hem/keep?u=cm&depth=2', full);
  fireEvent.input((await screen.findAllByLabelText(/A new garment/)).at(-1) as HTMLElement, {
    target: { value: 'Hat' },
  });
  await press('Keep it');
  expect(await screen.findByLabelText(/^Finished depth|^Depth/)).toBeTruthy();
  expect((await loadGarments(store)).garments).toMatchObject([{ name: 'Hat' }]);
});

const NEWER = /kept by a newer version of this app/;

test('a garment of a newer version: following it says so, and it stays as it was', async () => {
  const later = { ...coat(), version: 3, pockets: [1] };
  await store.change('garment:coat', () => later);
  start('#/garments/follow?g=coat');
  expect(await screen.findByText(NEWER)).toBeTruthy();
  expect(await store.load('garment:coat')).toEqual(later);
});

test('a garment that another tab’s newer version has changed meanwhile: keeping says so', async () => {
  await addGarment(store, coat());
  start('#/hem/keep?u=cm&depth=2');
  await screen.findByRole('button', { name: 'Keep it' });
  const later = { ...coat(), version: 3 };
  await store.change('garment:coat', () => later);
  await press('Keep it');
  expect(await screen.findByText(NEWER)).toBeTruthy();
  expect(await store.load('garment:coat')).toEqual(later);
});

const CRAFTED: Readonly<Record<string, string>> = {
  'a text of 30,000 characters': `depth=${'9'.repeat(30_000)}`,
  '300 keys': Array.from({ length: 300 }, (_, i) => `k${i}=1`).join('&'),
  'a key of 100 letters': `${'k'.repeat(100)}=1`,
};

test.each(Object.keys(CRAFTED))('a crafted address, %s, kept: refused in words', async (what) => {
  await addGarment(store, coat());
  start(`#/hem/keep?u=cm&${CRAFTED[what]}`);
  await press('Keep it');
  expect(await screen.findByText(/more than a garment can hold/)).toBeTruthy();
  expect(await loadGarments(store)).toMatchObject({ garments: [coat()], setAside: [] });
});

test('what the browser cleared while the app was open is said where it is missed', async () => {
  await addGarment(store, coat());
  start('#/hem/keep?u=cm&depth=2');
  await screen.findByRole('button', { name: 'Keep it' });
  const cleared = indexedDB.deleteDatabase(name);
  await new Promise((done) => {
    cleared.onsuccess = done;
  });
  await press('Keep it');
  expect(await screen.findByText(/the browser has cleared what was kept/)).toBeTruthy();
  await waitFor(async () => expect((await loadList(store)).cleared).toHaveLength(1));
});

test('the same kept from two tabs: the second is told that it is there, and asked', async () => {
  await addGarment(store, coat());
  const tab = async () => {
    start('#/hem/keep?u=cm&depth=2');
    await press('Keep it');
  };
  const hems = async () =>
    (await loadGarments(store)).garments[0]?.kept.filter((one) => one.calculation === 'hem');
  await tab();
  await waitFor(async () => expect(await hems()).toHaveLength(1));
  cleanup();
  await tab();
  expect(await screen.findByText(/^Already on that garment/)).toBeTruthy();
  expect(await hems()).toHaveLength(1);
  await press('Keep it');
  await waitFor(async () => expect(await hems()).toHaveLength(2));
});

const CHANGED = /^Not kept: it was changed on the garment since it was opened here/;

test('numbers another tab has changed meanwhile are not written over without a word', async () => {
  await addGarment(store, coat());
  start('#/closures/keep?u=cm&opening=20&count=2&top=1&bottom=1&kept=coat.hooks');
  await screen.findByRole('button', { name: 'Keep it' });
  const other = { ...hooks, draft: { ...hooks.draft, opening: '30' } };
  await changeGarment(openStore(name), 'coat', (garment) => withKept(garment, other, 2));
  const opening = async () =>
    (await loadGarments(store)).garments[0]?.kept.find(({ id }) => id === 'hooks')?.draft.opening;
  await press('Keep it');
  expect(await screen.findByText(CHANGED)).toBeTruthy();
  expect(await opening()).toBe('30');
  await press('Keep it');
  await waitFor(async () => expect(await opening()).toBe('20'));
});

/** Opens the hooks from the garment, and types how long the opening is instead. */
async function openAndType(opening: string) {
  start('#/garments');
  await press('Open');
  const field = await screen.findByDisplayValue('10');
  fireEvent.input(field, { target: { value: opening } });
}
const hooksNow = async () =>
  (await loadGarments(store)).garments[0]?.kept.find(({ id }) => id === 'hooks');

test('nor what it has changed before the form to keep was opened, and that is asked once', async () => {
  await addGarment(store, coat());
  await openAndType('20');
  const other = { ...hooks, draft: { ...hooks.draft, opening: '30' } };
  await changeGarment(openStore(name), 'coat', (garment) => withKept(garment, other, 2));
  await press('Keep');
  await press('Keep it');
  expect(await screen.findByText(CHANGED)).toBeTruthy();
  expect((await hooksNow())?.draft.opening).toBe('30');
  await press('Keep it');
  await waitFor(async () => expect((await hooksNow())?.draft.opening).toBe('20'));
  // What is kept by now is what was seen last.
  fireEvent.input(await screen.findByDisplayValue('20'), { target: { value: '25' } });
  await press('Keep');
  await press('Keep it');
  await waitFor(async () => expect((await hooksNow())?.draft.opening).toBe('25'));
});

test('what nobody has changed meanwhile is kept anew without a question', async () => {
  await addGarment(store, coat());
  await openAndType('20');
  await press('Keep');
  await press('Keep it');
  await waitFor(async () => expect((await hooksNow())?.draft.opening).toBe('20'));
  expect((await hooksNow())?.draft).not.toHaveProperty('seen');
});

test('a stage another tab has moved it to meanwhile is not taken back without a word', async () => {
  await addGarment(store, coat());
  await openAndType('20');
  await press('Keep');
  await screen.findByRole('button', { name: 'Keep it' });
  const moved: Kept = { ...hooks, stage: 'edge' };
  await changeGarment(openStore(name), 'coat', (garment) => withKept(garment, moved, 2));
  await press('Keep it');
  expect(await screen.findByText(CHANGED)).toBeTruthy();
  expect(await hooksNow()).toEqual(moved);
});

test('a measure taken in another tab meanwhile is not written over without a word; others stay', async () => {
  await addGarment(store, coat());
  start('#/closures/keep?u=cm&opening=10&count=2&top=1&bottom=1&kept=coat.hooks&made=2%3D9.2 cm');
  await screen.findByRole('button', { name: 'Keep it' });
  const made = (measured: Record<string, string>) => ({
    ...hooks,
    runs: [{ planned: { '1': 80_000, '2': 720_000 }, made: measured }],
  });
  const other = openStore(name);
  await changeGarment(other, 'coat', (now) => withKept(now, made({ '1': '', '2': '8.7 cm' }), 2));
  const measures = async () =>
    (await loadGarments(store)).garments[0]?.kept.find(({ id }) => id === 'hooks')?.runs[0]?.made;
  await press('Keep it');
  expect(await screen.findByText(/was measured in another tab, too/)).toBeTruthy();
  expect(await measures()).toEqual({ '1': '', '2': '8.7 cm' });
  await press('Keep it');
  await waitFor(async () => expect(await measures()).toEqual({ '1': '', '2': '9.2 cm' }));
});
