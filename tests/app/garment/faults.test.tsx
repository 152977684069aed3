import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { garmentWords } from '#words/garment/garment-words.ts';
import { App } from '../../../src/app/start/app.tsx';
import { act } from '../../../src/garment/actions/act.ts';
import { begin } from '../../../src/garment/actions/state.ts';
import { newGarment } from '../../../src/garment/record/new-garment.ts';
import type { Fact, Part, Work } from '../../../src/garment/record/record.ts';
import { loadList } from '../../../src/storage/garment-list.ts';
import { addGarment, changeGarment, loadGarment } from '../../../src/storage/garments.ts';
import { openStore, type Store, StoreError, type StoreFault } from '../../../src/storage/store.ts';
import { benchOf } from '../../controls/helpers.ts';
import { loadGarments } from '../../storage/all-garments.ts';
import { recording, withWork, hooks as work } from '../../storage/coats.ts';

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

const text = (typed: string): Part[] => [{ text: typed, unit: 'cm' }];
const hooks = (opening: string): Work =>
  work({
    fields: { opening: text(opening), count: text('2'), top: text('1'), bottom: text('1') },
  });
const coat = () => withWork(newGarment('coat', 'Coat', 1), 'hooks', 1, hooks('10'));
/** Another tab puts another opening there. */
const elsewhere = (opening: string) =>
  changeGarment(
    openStore(name),
    'coat',
    recording((garment) => withWork(garment, 'hooks', 2, hooks(opening))),
  );
const worksNow = async () => (await loadGarments(store)).garments[0]?.works ?? {};
const openingNow = async () => {
  const { fields } = (await worksNow()).hooks as Work;
  return fields.opening?.map((part) => 'text' in part && part.text).join();
};

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
    change: fail,
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

test('what the storage was slow to keep, and has kept since, is not said to be missing any more', async () => {
  await addGarment(store, coat());
  let slow = false;
  start('#/garments/open?g=coat&w=hooks', {
    ...store,
    transact: (mode, work) => {
      if (mode === 'readonly' || !slow) return store.transact(mode, work);
      slow = false;
      return Promise.reject(new StoreError('slow'));
    },
  });
  // Its drawing, which may be there by then, has a key of that name, too.
  const selector = 'input';
  const opening = await screen.findByLabelText<HTMLInputElement>(/^Opening/, { selector });
  slow = true;
  fireEvent.input(opening, { target: { value: '20' } });
  expect(await screen.findByText(SAID.slow)).toBeTruthy();
  // What is done next tries it again, too.
  fireEvent.input(opening, { target: { value: '21' } });
  await waitFor(() => expect(screen.queryByText(SAID.slow)).toBeNull());
  location.hash = '#/garments/open?g=coat';
  await screen.findByRole('button', { name: /^Made|^Check/ });
  expect(screen.queryByText(SAID.slow)).toBeNull();
});

test('what there was no room for is tried again by a press, on whichever screen of the garment', async () => {
  await addGarment(store, coat());
  let full = false;
  start('#/garments/open?g=coat&w=hooks', {
    ...store,
    transact: (mode, work) =>
      full && mode === 'readwrite'
        ? Promise.reject(new StoreError('full'))
        : store.transact(mode, work),
  });
  const opening = await screen.findByLabelText<HTMLInputElement>(/^Opening/, { selector: 'input' });
  full = true;
  fireEvent.input(opening, { target: { value: '20' } });
  const again = { name: garmentWords.tryNow };
  for (const [at, its] of [
    ['w=hooks', '.garment-work:not(.measures)'],
    ['w=materials', '.materials'],
    ['w=lay', '.lay'],
    ['w=order', '.order'],
    ['w=add', '.adding'],
    ['n=hooks||', '.note-screen'],
    ['', '.in-hand'],
    ['w=measures', '.measures:not(.materials)'],
  ] as const) {
    location.hash = `#/garments/open?g=coat&${at}`;
    const place = () => document.querySelector<HTMLElement>(its);
    await waitFor(() => expect(place()).not.toBeNull());
    const here = within(place() as HTMLElement);
    expect(await here.findByText(SAID.full), at).toBeTruthy();
    expect(await here.findByRole('button', again), at).toBeTruthy();
  }
  full = false;
  fireEvent.click(await screen.findByRole('button', again));
  await waitFor(() => expect(screen.queryByText(SAID.full)).toBeNull());
  await waitFor(async () => expect(await openingNow()).toBe('20'));
});

test('a list that storage was slow to give comes without a press, and nothing is said of it any more', async () => {
  await addGarment(store, coat());
  let asleep = 1;
  start('#/garments', {
    ...store,
    transact: (mode, work) => {
      asleep -= 1;
      return asleep < 0 ? store.transact(mode, work) : Promise.reject(new StoreError('slow'));
    },
  });
  expect(await screen.findByText(SAID.slow)).toBeTruthy();
  expect(await screen.findByRole('article', { name: 'Coat' })).toBeTruthy();
  await waitFor(() => expect(screen.queryByText(SAID.slow)).toBeNull());
});

const NEWER = /kept by a newer version of this app/;

test('a garment of a newer version: opening it says so, and it stays as it was', async () => {
  const later = { ...coat(), version: 4, pockets: [1] };
  await store.change('garment:coat', () => later);
  start('#/garments/open?g=coat');
  expect(await screen.findByText(NEWER)).toBeTruthy();
  expect(await store.load('garment:coat')).toEqual(later);
});

test('a garment that another tab’s newer version has changed meanwhile: keeping says so', async () => {
  await addGarment(store, coat());
  start('#/hem/keep?u=cm&depth=2');
  await screen.findByRole('button', { name: 'Keep it' });
  const later = { ...coat(), version: 4 };
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

test.each(Object.keys(CRAFTED))(
  'a crafted address, %s, kept: what was there is as it was',
  async (what) => {
    await addGarment(store, coat());
    start(`#/hem/keep?u=cm&${CRAFTED[what]}`);
    await press('Keep it');
    await waitFor(async () => expect(Object.keys(await worksNow())).toHaveLength(2));
    expect((await worksNow()).hooks).toEqual(coat().works.hooks);
    expect((await loadGarments(store)).setAside).toEqual([]);
  },
);

test('a garment that has no room: refused in words', async () => {
  const works = Object.fromEntries(Array.from({ length: 500 }, (_, i) => [`w${i}`, hooks('10')]));
  await addGarment(store, { ...coat(), works });
  start('#/hem/keep?u=cm&depth=2');
  await press('Keep it');
  expect(await screen.findByText(/more than one garment holds \(500 works/)).toBeTruthy();
  expect(Object.keys(await worksNow())).toHaveLength(500);
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
    Object.values(await worksNow()).filter((one) => (one as Work).calculation === 'hem');
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

const OPENED = '#/closures/keep?u=cm&count=2&top=1&bottom=1&kept=coat.hooks&opening=';

test('numbers another tab has changed meanwhile are not written over without a word', async () => {
  await addGarment(store, coat());
  start(`${OPENED}20`);
  await screen.findByRole('button', { name: 'Keep it' });
  await elsewhere('30');
  await press('Keep it');
  expect(await screen.findByText(CHANGED)).toBeTruthy();
  expect(await openingNow()).toBe('30');
  await press('Keep it');
  await waitFor(async () => expect(await openingNow()).toBe('20'));
});

test('nor what it has changed before the form to keep was opened, and that is asked once', async () => {
  await addGarment(store, coat());
  start(`${OPENED}20`);
  await press('Keep it');
  // What is kept by now is what the page has seen.
  fireEvent.input(await screen.findByDisplayValue('20'), { target: { value: '25' } });
  await elsewhere('30');
  await press('Keep');
  await press('Keep it');
  expect(await screen.findByText(CHANGED)).toBeTruthy();
  expect(await openingNow()).toBe('30');
  await press('Keep it');
  await waitFor(async () => expect(await openingNow()).toBe('25'));
});

test('what nobody has changed meanwhile is kept anew without a question, and is one change to take back', async () => {
  await addGarment(store, coat());
  start(`${OPENED}20`);
  await press('Keep it');
  await waitFor(async () => expect(await openingNow()).toBe('20'));
  const { record, log } = await loadGarment(store, 'coat');
  expect(Object.keys(record.works)).toEqual(['hooks']);
  expect(log.map(({ what }) => what)).toEqual(['keep']);
  const state = act(begin(record, new Map(), log), {
    do: 'undo',
    change: log[0]?.id ?? 0,
    now: 9,
  }).state;
  expect(state.record.works.hooks).toMatchObject({ fields: { opening: text('10') } });
});

test('a measure taken in another tab meanwhile is not written over without a word; others stay', async () => {
  await addGarment(store, coat());
  start(`${OPENED}10&made=2%3D9.2 cm`);
  await screen.findByRole('button', { name: 'Keep it' });
  const made = (rank: number, shown: number, measured?: number): Fact => ({
    ...{ home: 'hooks||marks', shown, plan: shown, tape: 8000, rule: 1, read: '', when: 1 },
    ...{ mark: { rank, of: 2, asked: shown }, ...(measured !== undefined && { measured }) },
  });
  const [first, second] = [made(0, 80_000), made(1, 720_000, 696_000)];
  const put = recording((now) => ({ ...now, facts: { a: first, b: second } }));
  await changeGarment(openStore(name), 'coat', put);
  const facts = async () => (await loadGarments(store)).garments[0]?.facts;
  await press('Keep it');
  expect(await screen.findByText(/was measured in another tab, too/)).toBeTruthy();
  expect(await facts()).toEqual({ a: first, b: second });
  await press('Keep it');
  await waitFor(async () =>
    expect(await facts()).toEqual({ a: first, b: { ...second, measured: 736_000 } }),
  );
});
