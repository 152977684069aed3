import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { App } from '../../../src/app/start/app.tsx';
import { readRoute } from '../../../src/app/start/route.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import { newGarment } from '../../../src/garment/record/new-garment.ts';
import type { Fact, Garment, Quantity, Work } from '../../../src/garment/record/record.ts';
import { addGarment } from '../../../src/storage/garments.ts';
import { openStore, type Store } from '../../../src/storage/store.ts';
import { benchOf } from '../../controls/helpers.ts';
import { loadGarments } from '../../storage/all-garments.ts';
import { hooks, withWork } from '../../storage/coats.ts';

const DAY = 24 * 60 * 60 * 1000;
let stores = 0;
let store: Store;

beforeEach(() => {
  store = openStore(`app-garments-${stores++}`);
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

function start(hash: string, bench: Parameters<typeof benchOf>[0] = {}) {
  history.replaceState(null, '', hash);
  return render(<App store={store} bench={benchOf(bench)} last={{}} storeFault={undefined} />);
}

const press = async (name: string | RegExp) =>
  fireEvent.click(await screen.findByRole('button', { name }));
const here = async () => (await loadGarments(store)).garments;
const onlyOne = async (): Promise<Garment> => {
  const [garment] = await here();
  if (!garment) throw new Error('no garment is kept');
  return garment;
};
const onlyWork = async () => Object.entries((await onlyOne()).works)[0] as [string, Work];
const isOpen = (id: string) =>
  waitFor(() =>
    expect(readRoute(location.hash)).toMatchObject({
      ...{ screen: 'garments', mode: 'open', draft: { g: id } },
    }),
  );
const text = (typed: string, unit = 'cm') => [{ text: typed, unit }];
const coat = () => withWork(newGarment('coat', 'Coat', Date.now()), 'hooks', Date.now());

test('a garment that is made is opened, and is first on the list from then on', async () => {
  await addGarment(store, newGarment('hat', 'Hat', Date.now() + DAY));
  start('#/garments');
  fireEvent.input(await screen.findByLabelText(/A new garment/), { target: { value: 'Coat' } });
  await press('Make');
  const made = async () => (await here()).find(({ name }) => name === 'Coat');
  await waitFor(async () => expect(await made()).toBeTruthy());
  await isOpen((await made())?.id ?? '');
  cleanup();
  start('#/garments');
  await screen.findByRole('article', { name: 'Coat' });
  const names = screen.getAllByRole('article', { name: /./ }).map((one) => one.ariaLabel);
  expect(names).toEqual(['Coat', 'Hat']);
});

test('a garment is opened from the list, and is the one that is kept on', async () => {
  await addGarment(store, coat());
  await addGarment(store, newGarment('hat', 'Hat', Date.now() + DAY));
  start('#/garments');
  await press('Coat1 work');
  await isOpen('coat');
  await waitFor(async () => expect(await store.load('open-garment')).toBe('coat'));
  cleanup();
  start('#/closures/keep');
  expect(await screen.findByLabelText(/On which garment/)).toHaveProperty('value', 'coat');
  await press('Keep it');
  await waitFor(async () => {
    const now = (await here()).find(({ id }) => id === 'coat');
    expect(Object.keys(now?.works ?? {})).toHaveLength(2);
  });
});

test('the address that followed a garment before opens it, or the work it followed', async () => {
  await addGarment(store, coat());
  const { unmount } = start('#/garments/follow?g=coat');
  expect(await screen.findByRole('heading', { level: 1, name: 'Coat' })).toBeTruthy();
  unmount();
  start('#/garments/follow?g=coat&only=hooks');
  expect(await screen.findByRole('heading', { level: 1, name: /Hooks/ })).toBeTruthy();
});

test('a copy is a new start: plans go along, what is made doesn’t', async () => {
  const fact: Fact = {
    ...{
      home: homeOf('hooks', '', 'marks'),
      shown: 1,
      plan: 1,
      tape: 1,
      rule: 1,
      read: '',
      when: 1,
    },
  };
  await addGarment(store, { ...coat(), facts: { fact } });
  start('#/garments');
  await press('More with Coat');
  await press('Copy as a new start');
  await waitFor(async () => expect(await here()).toHaveLength(2));
  const copy = (await here()).find(({ id }) => id !== 'coat') as Garment;
  expect(copy).toMatchObject({ name: 'Coat, copy', facts: {}, works: coat().works });
  await isOpen(copy.id);
});

test('a garment is renamed, put away, and back by one press or from what is put away', async () => {
  await addGarment(store, coat());
  start('#/garments');
  await press('More with Coat');
  await press('Rename');
  fireEvent.input(await screen.findByLabelText('Name'), { target: { value: ' Cloak ' } });
  await press('Rename');
  await press('More with Cloak');
  await waitFor(async () => expect((await onlyOne()).name).toBe('Cloak'));
  await press('Put away');
  await press('Undo: bring back Cloak');
  await press('More with Cloak');
  await press('Put away');
  await waitFor(async () => expect(await here()).toEqual([]));
  cleanup();
  start('#/garments');
  await press('Bring back');
  await waitFor(async () => expect(await here()).toMatchObject([{ id: 'coat', name: 'Cloak' }]));
});

test('the demo is worked out, linked and partly made whatever the bench measures in', async () => {
  start('#/garments', { unit: 'in' });
  await press('Show an invented waistcoat');
  await waitFor(async () => expect(await here()).toHaveLength(1));
  const demo = await onlyOne();
  expect(demo).toMatchObject({ invented: true, name: expect.stringContaining('(invented)') });
  const row = Object.values(demo.facts) as Fact[];
  const hooked = row.filter(({ home }) => home === homeOf('hooks', '', 'marks'));
  expect(hooked.map(({ shown, measured }) => (measured ?? shown) / 80_000)).toEqual([
    1.2, 8.3, 15.8,
  ]);
  await isOpen(demo.id);
});

test('a calculation is kept with every field, in the unit it was typed in', async () => {
  await addGarment(store, newGarment('coat', 'Coat', 1));
  start('#/closures/keep?u=in&opening=18 1/4&count=7&top=1/2&bottom=1', { unit: 'in' });
  await press('Keep it');
  await waitFor(async () => expect(Object.keys((await onlyOne()).works)).toHaveLength(1));
  const [id, work] = await onlyWork();
  expect(work).toMatchObject({ calculation: 'closures', name: 'Closures', rank: 1 });
  expect(work).not.toHaveProperty('older');
  expect(work.fields).toMatchObject({ opening: text('18 1/4', 'in'), by: text('count', 'in') });
  expect(readRoute(location.hash).draft.kept).toBe(`coat.${id}`);
});

test('a bench that writes commas says so with what it keeps', async () => {
  await addGarment(store, newGarment('coat', 'Coat', 1));
  start('#/closures/keep?u=cm&opening=46,3&count=7', { decimalMark: ',' });
  await press('Keep it');
  await waitFor(async () => expect(Object.keys((await onlyOne()).works)).toHaveLength(1));
  const [, work] = await onlyWork();
  expect(work.fields.opening).toEqual([{ text: '46,3', unit: 'cm', mark: ',' }]);
});

test('a length kept for itself is a number of the garment', async () => {
  await addGarment(store, newGarment('coat', 'Coat', 1));
  start('#/convert/keep?u=cm&length=62.4');
  fireEvent.input(await screen.findByLabelText('Name'), { target: { value: 'Armhole' } });
  await press('Keep it');
  await waitFor(async () => expect(Object.keys((await onlyOne()).quantities)).toHaveLength(1));
  const [quantity] = Object.values((await onlyOne()).quantities) as Quantity[];
  expect(quantity).toMatchObject({ name: 'Armhole', kind: 'length', parts: text('62.4') });
  expect((await onlyOne()).works).toEqual({});
});

test('what was measured on a page is kept as made, at its mark; of another plan it is not, and said', async () => {
  await addGarment(store, newGarment('coat', 'Coat', 1));
  const page = 'u=cm&opening=46.3&count=7&top=1.2&bottom=2.5&made=3%3D15.8 cm';
  start(`#/closures/keep?${page}`);
  await press('Keep it');
  await waitFor(async () => expect(Object.keys((await onlyOne()).facts)).toHaveLength(1));
  const [id] = await onlyWork();
  expect(Object.values((await onlyOne()).facts)).toMatchObject([
    {
      ...{ home: homeOf(id, '', 'marks'), shown: 15.4 * 80_000, measured: 15.8 * 80_000 },
      mark: { rank: 2, of: 7 },
    },
  ]);
});

const full = (works: number) => {
  const each = Array.from({ length: works }, (_, i) => [`w${i}`, hooks({ rank: i + 1 })]);
  return { ...newGarment('coat', 'Coat', 1), works: Object.fromEntries(each) as Garment['works'] };
};
const CLOSED = 'u=cm&opening=46.3&count=7&top=1.2&bottom=2.5';

test.each([
  ['a 501st work', full(500), CLOSED, /^Not kept: it is more than one garment holds \(500 works/],
  [
    'more than a kilometre',
    full(1),
    'u=cm&opening=100001&count=7&top=1.2&bottom=2.5',
    /^Not kept: a length is a kilometre at the most\./,
  ],
  [
    'a mark measured more than a kilometre away',
    full(1),
    `${CLOSED}&made=3%3D100001 cm`,
    /^Not kept: a length is a kilometre at the most\./,
  ],
  [
    'the same without its unit',
    full(1),
    `${CLOSED}&made=3%3D100001`,
    /^Not kept: a length is a kilometre at the most\./,
  ],
  [
    'a row of 10,001 places',
    full(1),
    `${CLOSED}&follow=${'1;'.repeat(10_000)}1`,
    /^Not kept: a row has 10,000 marks at the most\./,
  ],
  [
    'a character too many',
    { ...full(1), notes: { w0: { text: 'x'.repeat(999_000) } } },
    CLOSED,
    /^Not kept: it is more than one garment holds/,
  ],
] as const)(
  '%s is refused in words from its page, and the garment is as it was',
  async (_, garment, page, said) => {
    await addGarment(store, garment as Garment);
    const before = await store.load('garment:coat');
    start(`#/closures/keep?${page}`);
    await press('Keep it');
    expect(await screen.findByText(said)).toBeTruthy();
    expect(await store.load('garment:coat')).toEqual(before);
    expect(await store.load('log:garment:coat')).toBeUndefined();
  },
);

test('a length for itself of more than a kilometre is refused in words, too, and one in inches', async () => {
  await addGarment(store, newGarment('coat', 'Coat', 1));
  for (const typed of ['u=cm&length=100001', 'u=in&length=39371']) {
    start(`#/convert/keep?${typed}`);
    await press('Keep it');
    expect(await screen.findByText(/^Not kept: a length is a kilometre at the most/)).toBeTruthy();
    cleanup();
  }
  expect((await onlyOne()).quantities).toEqual({});
});

test('of a work done left and right it is asked which side was measured, and that one has it', async () => {
  const kept = 'u=cm&opening=46.3&count=7&top=1.2&bottom=2.5';
  await addGarment(store, newGarment('coat', 'Coat', 1));
  start(`#/closures/keep?${kept}`);
  await press('Keep it');
  await waitFor(async () => expect(Object.keys((await onlyOne()).works)).toHaveLength(1));
  const [id, work] = await onlyWork();
  cleanup();
  await addGarment(store, {
    ...{ ...(await onlyOne()), id: 'sides', name: 'Sides' },
    works: { [id]: { ...work, sides: ['left', 'right'] } },
  });
  start(`#/closures/keep?${kept}&made=3%3D15.8 cm&kept=sides.${id}`);
  const asked = await screen.findByRole('group', { name: 'Which side was measured' });
  expect(within(asked).getAllByRole('radio')).toHaveLength(2);
  expect(screen.getByRole('button', { name: 'Keep it' })).toHaveProperty('disabled', true);
  fireEvent.click(within(asked).getByRole('radio', { name: 'right' }));
  await press('Keep it');
  const sides = async () => (await here()).find((one) => one.id === 'sides') as Garment;
  await waitFor(async () => expect(Object.keys((await sides()).facts)).toHaveLength(1));
  expect(Object.values((await sides()).facts)).toMatchObject([
    { home: homeOf(id, 'right', 'marks'), measured: 15.8 * 80_000 },
  ]);
  expect(Object.keys((await sides()).begun)).toEqual([homeOf(id, 'right', 'marks')]);
});

test('a measure of another plan is not taken along when it is kept, and said', async () => {
  await addGarment(store, newGarment('coat', 'Coat', 1));
  start('#/closures/follow?u=cm&opening=46.3&count=7&top=1.2&bottom=2.5&at=1');
  await screen.findByRole('heading', { level: 1, name: 'Hook 2 of 7' });
  await press('Made elsewhere');
  fireEvent.input(await screen.findByLabelText(/where it really is/), { target: { value: '9' } });
  await press('Keep this measure');
  await waitFor(() => expect(readRoute(location.hash).draft.made).toBe('2=9 cm'));
  const { draft } = readRoute(location.hash);
  cleanup();
  start(`#/closures/keep?${new URLSearchParams({ ...draft, count: '8' })}`);
  expect(await screen.findByText(/not taken along: Hook 2 at 9 cm/)).toBeTruthy();
  await press('Keep it');
  await waitFor(async () => expect(Object.keys((await onlyOne()).works)).toHaveLength(1));
  expect((await onlyOne()).facts).toEqual({});
});

test('a backup is asked for a week after the last one, can be put off, and says what it lacks', async () => {
  await addGarment(store, newGarment('coat', 'Coat', Date.now()));
  await store.change('last-backup', () => ({ at: Date.now() - 8 * DAY, edits: {} }));
  start('#/garments');
  expect(
    await screen.findByText(
      'Only on this phone: 1 garment, 1 change in 8 days since the last backup.',
    ),
  ).toBeTruthy();
  await press('Not now');
  await waitFor(() => expect(screen.queryByText(/since the last backup/)).toBeNull());
  cleanup();
  start('#/garments');
  await screen.findByRole('article', { name: 'Coat' });
  expect(screen.queryByText(/since the last backup/)).toBeNull();
});

test('it is asked for where the garment is made, too: put off there, or done, it is gone', async () => {
  await addGarment(store, newGarment('coat', 'Coat', Date.now()));
  start('#/garments/open?g=coat');
  await screen.findByRole('button', { name: 'Coat' });
  expect(screen.queryByText(/^Only on this phone/)).toBeNull();
  for (const way of ['Not now', 'Save a backup']) {
    await store.change('last-backup', () => ({ at: Date.now() - 8 * DAY, edits: {} }));
    await store.change('backup-put-off', () => undefined);
    cleanup();
    start('#/garments/open?g=coat');
    const line = 'Only on this phone: 1 garment, 1 change in 8 days since the last backup.';
    expect(await screen.findByText(line)).toBeTruthy();
    await press(way);
    await waitFor(() => expect(screen.queryByText(line)).toBeNull());
  }
  await waitFor(async () =>
    expect(await store.load('last-backup')).toMatchObject({ edits: { coat: 1 } }),
  );
});

test('records set aside are saved as they are', async () => {
  const saved: Blob[] = [];
  URL.createObjectURL = (blob) => {
    saved.push(blob as Blob);
    return 'blob:saved';
  };
  URL.revokeObjectURL = () => undefined;
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
  const harmed = { version: 1, name: 7, deep: { big: 5n } };
  await store.change('garment:bad', () => harmed);
  start('#/garments');
  await press('Save what was set aside');
  await waitFor(() => expect(saved).toHaveLength(1));
  expect(saved[0]?.size).toBeGreaterThan(50);
  expect(await store.load('garment:bad')).toEqual(harmed);
});

test('on paper a kept calculation is called by its garment and its name', async () => {
  await addGarment(store, coat());
  start('#/closures/paper?u=cm&opening=10&count=2&top=1&bottom=1&kept=coat.hooks');
  await waitFor(() =>
    expect(screen.getByLabelText('Name on the pages')).toHaveProperty('value', 'Coat: Hooks'),
  );
  cleanup();
  start('#/closures/paper?u=cm&opening=10&count=2&top=1&bottom=1');
  expect(await screen.findByLabelText('Name on the pages')).toHaveProperty('value', 'Closures');
});
