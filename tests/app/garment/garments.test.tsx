import 'fake-indexeddb/auto';
import {
  cleanup,
  configure,
  fireEvent,
  render,
  screen,
  waitFor,
  within,
} from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { App } from '../../../src/app/start/app.tsx';
import { readRoute } from '../../../src/app/start/route.ts';
import type { Bench } from '../../../src/calculation/bench.ts';
import { stateOf } from '../../../src/calculation/parted.ts';
import { closures } from '../../../src/calculations/closures/closures.ts';
import { withKept } from '../../../src/garment/changes.ts';
import { type Garment, type Kept, newGarment } from '../../../src/garment/garment.ts';
import { keptOf } from '../../../src/garment/kept.ts';
import { withoutKept } from '../../../src/garment/list-changes.ts';
import { addGarment, changeGarment } from '../../../src/storage/garments.ts';
import { openStore, type Store, StoreError } from '../../../src/storage/store.ts';
import { benchOf } from '../../controls/helpers.ts';
import { loadGarments } from '../../storage/all-garments.ts';

// Parts are fetched, and the store writes, on a machine that may be busy.
configure({ asyncUtilTimeout: 20_000 });

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

function start(hash: string, bench: Partial<Bench> = {}, kept = store) {
  history.replaceState(null, '', hash);
  return render(<App store={kept} bench={benchOf(bench)} last={{}} storeFault={undefined} />);
}

const press = async (name: string | RegExp) =>
  fireEvent.click(await screen.findByRole('button', { name }));
const heading = (name: string | RegExp) => screen.findByRole('heading', { level: 1, name });
const next = () => fireEvent.click(screen.getByRole('button', { name: /press anywhere/ }));
const here = async () => (await loadGarments(store)).garments;
const onlyOne = async (): Promise<Garment> => {
  const [garment] = await here();
  if (!garment) throw new Error('no garment is kept');
  return garment;
};
const runsOf = async (id: string) =>
  (await onlyOne()).kept.find((kept) => kept.id === id)?.runs ?? [];

const kept = (set: Partial<Kept>): Kept => ({
  id: 'hooks',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  // Published in no table: two marks and three are enough to pass from run to run.
  draft: { u: 'cm', opening: '10', count: '2', top: '1', bottom: '1' },
  runs: [],
  ...set,
});

/** A hem of three lines is turned up before two hooks are sewn on: kept the other way round. */
async function keepCoat(...more: Kept[]) {
  const hem = kept({
    id: 'hem',
    name: 'Front hem',
    stage: 'turn-up',
    calculation: 'hem',
    draft: { u: 'cm', depth: '2', style: 'unequal', turn: '0.7', edgeStitch: '0.2' },
  });
  const coat = [kept({}), hem, ...more].reduce(
    (garment, one) => withKept(garment, one, Date.now()),
    newGarment('coat', 'Coat', Date.now()),
  );
  await addGarment(store, coat);
}

test('one press follows all marks of a garment: run by run, in order of the work', async () => {
  await keepCoat();
  start('#/garments');
  await press('Follow all marks, in order');
  await heading(/^Press line|1 of \d/);
  const first = (await screen.findByRole('heading', { level: 1 })).textContent ?? '';
  const lines = Number(/of (\d+)/.exec(first)?.[1]);
  expect(lines).toBeGreaterThan(1);
  expect(screen.getByText(/New run: Front hem. Measure from the raw edge/)).toBeTruthy();
  next();
  expect(screen.getByText('Front hem · Turn up · Coat')).toBeTruthy();
  expect(screen.queryByText(/New run/)).toBeNull();
  for (let i = 1; i < lines; i++) next();
  await heading('Hook 1 of 2');
  expect(screen.getByText(/New run: Hooks. Measure from the top edge/)).toBeTruthy();
  expect(screen.getByText(/child under three/)).toBeTruthy();
  next();
  next();
  await heading(`All ${lines + 2} marks made`);
  await waitFor(async () => {
    expect(Object.values((await runsOf('hooks'))[0]?.made ?? {})).toEqual(['', '']);
    expect(Object.keys((await runsOf('hem'))[0]?.made ?? {})).toHaveLength(lines);
  });
});

test('after a reload it goes on where it was; begun again, what is made is passed over', async () => {
  await keepCoat();
  start('#/garments/follow?g=coat&only=hooks');
  await heading('Hook 1 of 2');
  next();
  await heading('Hook 2 of 2');
  await waitFor(async () => expect((await runsOf('hooks'))[0]?.made).toEqual({ '1': '' }));
  await waitFor(() => expect(readRoute(location.hash).draft.at).toBe('1'));
  const address = location.hash;
  cleanup();
  start(address);
  await heading('Hook 2 of 2');
  await press('Back one');
  await heading('Hook 1 of 2');
  expect(screen.getByText('Made, as planned.')).toBeTruthy();
  expect(screen.getByRole('button', { name: /^Next to make/ })).toBeTruthy();
  await press('Not made yet');
  await waitFor(async () => expect((await runsOf('hooks'))[0]?.made).toEqual({}));
  next();
  await heading('Hook 2 of 2');
  cleanup();
  start('#/garments/follow?g=coat&only=hooks');
  await heading('Hook 2 of 2');
});

test('a corner kept before its marks could be followed is: edge by edge, from the raw corner', async () => {
  const draft = { u: 'cm', depth: '4', side: '1.5', turned: 'twice' };
  const corner = { id: 'vent', name: 'Vent', stage: 'turn-up', calculation: 'corner' } as const;
  await keepCoat(kept({ ...corner, draft }));
  start('#/garments/follow?g=coat&only=vent');
  await heading('Line 1 of 2');
  const begins = (edge: string) =>
    screen.getByText(`New run: Vent, ${edge}, turn pressed. Measure from the raw corner.`);
  begins('Along the bottom');
  expect(screen.getByText(/what is cut off stays off/)).toBeTruthy();
  next();
  // 4 and 1.5 deep at a right angle: 3 along the bottom, 8 up the side (derived here).
  expect(document.querySelector('.big')?.textContent).toMatch(/^3 cm/);
  next();
  begins('Up the side');
  next();
  expect(document.querySelector('.big')?.textContent).toMatch(/^8 cm/);
  await press('Made elsewhere');
  fireEvent.input(await screen.findByLabelText(/where it really is/), { target: { value: '8.1' } });
  fireEvent.click(screen.getByRole('button', { name: 'Keep this measure' }));
  await waitFor(async () => {
    const at = (mm: number) => mm * 8000;
    expect(await runsOf('vent')).toEqual([
      { planned: { '1': at(15), '2': at(30) }, made: { '1': '', '2': '' } },
      { planned: { '1': at(40), '2': at(80) }, made: { '1': '', '2': '8.1 cm' } },
    ]);
  });
});

test('what was really measured is kept beside its plan when it differs, and only then', async () => {
  await keepCoat();
  start('#/garments/follow?g=coat&only=hooks');
  await heading('Hook 1 of 2');
  const measure = async (typed: string) => {
    await press('Made elsewhere');
    fireEvent.input(await screen.findByLabelText(/where it really is/), {
      target: { value: typed },
    });
    fireEvent.click(screen.getByRole('button', { name: 'Keep this measure' }));
  };
  await measure('1');
  await waitFor(async () => expect((await runsOf('hooks'))[0]?.made).toEqual({ '1': '' }));
  await measure('1.5');
  expect(await screen.findByText('Made at 1.5 cm: 0.5 cm off the plan')).toBeTruthy();
  await waitFor(async () => {
    expect((await runsOf('hooks'))[0]).toEqual({
      planned: { '1': 80_000, '2': 720_000 },
      made: { '1': '1.5 cm' },
    });
  });
  await press('Close');
  await press('1 as made');
  expect(await screen.findByText('planned 1 cm')).toBeTruthy();
  expect(screen.getByText('as made 1.5 cm')).toBeTruthy();
  expect(screen.getByText('0.5 cm further on')).toBeTruthy();
});

test('the rest is spaced anew around what is made, and that is undone by one press', async () => {
  const seven = { u: 'cm', opening: '46.3', count: '7', top: '1.2', bottom: '2.5' };
  await keepCoat(kept({ id: 'seven', name: 'Seven hooks', draft: seven }));
  start('#/garments/follow?g=coat&only=seven');
  await heading('Hook 1 of 7');
  next();
  await press('Made elsewhere');
  fireEvent.input(await screen.findByLabelText(/where it really is/), { target: { value: '9' } });
  fireEvent.click(screen.getByRole('button', { name: 'Keep this measure' }));
  await press('Space the rest anew');
  const undo = await screen.findByRole('button', { name: 'Undo the new spacing' });
  await waitFor(async () => {
    const garment = await onlyOne();
    expect(garment.kept.find(({ id }) => id === 'seven')?.draft.sewn).toBe('1.2 cm; 9 cm');
  });
  const [run] = await runsOf('seven');
  // The plan of what is made stays as it was first; what is left has moved.
  expect(run?.planned['2']).toBe(8.3 * 80_000);
  expect(run?.planned['3']).toBe(15.96 * 80_000);
  expect(run?.made).toEqual({ '1': '', '2': '9 cm' });
  fireEvent.click(undo);
  await waitFor(async () => {
    const [first] = await runsOf('seven');
    expect(first?.planned['3']).toBe(15.4 * 80_000);
  });
});

test('the rest spaced anew keeps the level, and what gives way is said at once', async () => {
  const draft = { u: 'cm', opening: '46.3', count: '3', top: '1.2', bottom: '2.5', level: '30' };
  await keepCoat(kept({ id: 'level', name: 'At a level', draft }));
  start('#/garments/follow?g=coat&only=level');
  await heading('Hook 1 of 3');
  next();
  await heading('Hook 2 of 3');
  await press('Made elsewhere');
  fireEvent.input(screen.getByLabelText(/where it really is/), { target: { value: '15' } });
  fireEvent.click(screen.getByRole('button', { name: 'Keep this measure' }));
  expect(screen.queryByText(/gives way/)).toBeNull();
  await press('Space the rest anew');
  expect(
    await screen.findByText(/The bottom end gives way: .* 16\.3 cm from the edge/),
  ).toBeTruthy();
  await waitFor(async () => {
    const [run] = await runsOf('level');
    expect(run?.planned['3']).toBe(30 * 80_000);
  });
  await press('Undo the new spacing');
  await waitFor(() => expect(screen.queryByText(/gives way/)).toBeNull());
});

test('a spacing that can’t be says which field, and changes nothing', async () => {
  await keepCoat();
  start('#/garments/follow?g=coat&only=hooks');
  await heading('Hook 1 of 2');
  await press('Made elsewhere');
  fireEvent.input(await screen.findByLabelText(/where it really is/), { target: { value: '12' } });
  fireEvent.click(screen.getByRole('button', { name: 'Keep this measure' }));
  await press('Space the rest anew');
  expect(await screen.findByText(/can’t be spaced anew/)).toBeTruthy();
  expect(screen.getByText(/12 cm/, { selector: '.answer *' })).toBeTruthy();
  expect((await onlyOne()).kept.find(({ id }) => id === 'hooks')?.draft.sewn).toBeUndefined();
});

test('a calculation without an answer is left out, named with its field, and can be opened', async () => {
  await keepCoat(
    kept({ id: 'bad', name: 'Buttons', draft: { u: 'cm', count: 'many' } }),
    kept({ id: 'later', name: 'From later', calculation: 'spinning' }),
  );
  start('#/garments/follow?g=coat&k=hooks&run=0&at=1');
  await heading('Hook 2 of 2');
  expect(screen.getByText(/Left out, since there is no answer: Buttons, From later/)).toBeTruthy();
  next();
  await heading(/^1 of \d+ marks made$/);
  expect(screen.getByText(/Buttons: its numbers give no answer/)).toBeTruthy();
  expect(screen.getByText(/How many: “many” was not understood/)).toBeTruthy();
  expect(screen.getByText(/From later: this version of the app doesn’t know/)).toBeTruthy();
  await press('Open Buttons');
  expect(await screen.findByLabelText(/^How many/)).toHaveProperty('value', 'many');
});

test('a garment without marks, and one that is gone, say so and lead back', async () => {
  await addGarment(store, newGarment('coat', 'Coat', 1));
  start('#/garments/follow?g=coat');
  await heading(/There are no marks to follow/);
  cleanup();
  start('#/garments/follow?g=other');
  expect(await screen.findByText(/that garment was deleted/)).toBeTruthy();
  await press('Back');
  expect(await screen.findByRole('article', { name: 'Coat' })).toBeTruthy();
});

/** A store that can be full, or slow, at will. */
function troubled() {
  const state = { full: false, hold: Promise.resolve() };
  const kept: Store = {
    ...store,
    change: async (...given) => {
      await state.hold;
      if (state.full && given[0].startsWith('garment:')) throw new StoreError('full');
      await store.change(...given);
    },
  };
  return { state, kept };
}

/** Whether closing the page now would be warned of. */
const warns = () => !dispatchEvent(new Event('beforeunload', { cancelable: true }));

test('while storage is full marks are held, said so, warned of, and kept as soon as it can be', async () => {
  await keepCoat();
  const { state, kept: full } = troubled();
  start('#/garments/follow?g=coat&only=hooks', {}, full);
  await heading('Hook 1 of 2');
  expect(warns()).toBe(false);
  state.full = true;
  next();
  expect(
    await screen.findByText(/storage is full.*One change is held in this page only/),
  ).toBeTruthy();
  await heading('Hook 2 of 2');
  expect(warns()).toBe(true);
  next();
  // Said at the end, which does not call made what is not kept.
  await heading('0 of 2 marks made');
  expect(screen.getByText('2 more being kept: not on the phone yet.')).toBeTruthy();
  fireEvent.click(screen.getAllByRole('button', { name: /^Close/ })[0] as HTMLElement);
  await heading('Leave before it is kept?');
  await press(/^Stay here/);
  await heading('0 of 2 marks made');
  fireEvent.click(screen.getAllByRole('button', { name: /^Close/ })[0] as HTMLElement);
  await press('Leave, and keep the page open');
  await screen.findByRole('article', { name: 'Coat' });
  expect(warns()).toBe(true);
  expect(screen.getByText(/2 changes are held in this page only/)).toBeTruthy();
  expect(screen.getByRole('button', { name: 'Try again now' })).toBeTruthy();
  // Come back to, it is still there, and kept once there is room.
  cleanup();
  start('#/garments/follow?g=coat&only=hooks', {}, full);
  await heading('0 of 2 marks made');
  state.full = false;
  await press('Try again now');
  await heading('All 2 marks made');
  expect(Object.values((await runsOf('hooks'))[0]?.made ?? {})).toEqual(['', '']);
  await waitFor(() => expect(warns()).toBe(false));
});

test('a mark is not called made before it is on the disk, and pressing on is not slowed', async () => {
  await keepCoat();
  const { state, kept: slow } = troubled();
  start('#/garments/follow?g=coat&only=hooks', {}, slow);
  await heading('Hook 1 of 2');
  let done: () => void = () => undefined;
  state.hold = new Promise((resolve) => {
    done = resolve;
  });
  next();
  await heading('Hook 2 of 2');
  await press('Back one');
  await heading('Hook 1 of 2');
  expect(screen.getByText('Made, and being kept: not on the phone yet.')).toBeTruthy();
  expect(screen.queryByText('Made, as planned.')).toBeNull();
  done();
  expect(await screen.findByText('Made, as planned.')).toBeTruthy();
});

/** The calculation with this id kept with other numbers, as another tab would. */
async function keepAnew(id: string, set: Record<string, string>) {
  const there = (await onlyOne()).kept.find((one) => one.id === id);
  const draft = { ...closures.start(benchOf()), ...there?.draft, ...set };
  await changeGarment(store, 'coat', (garment) => {
    const before = garment.kept.find((one) => one.id === id);
    if (!before) throw new Error('not kept');
    const anew = keptOf(closures, stateOf(draft), benchOf(), before);
    return withKept(garment, { ...before, ...anew }, Date.now());
  });
}

const seven = kept({
  id: 'seven',
  name: 'Seven hooks',
  draft: { u: 'cm', opening: '46.3', count: '7', top: '1.2', bottom: '2.5' },
});

test('a mark of a plan that was changed in another tab is refused, in words', async () => {
  await keepCoat(seven);
  start('#/garments/follow?g=coat&only=seven');
  await heading('Hook 1 of 7');
  await keepAnew('seven', { count: '8' });
  next();
  expect(await screen.findByText(/its numbers were changed in another tab/)).toBeTruthy();
  expect((await runsOf('seven'))[0]?.made).toEqual({});
  expect(await screen.findByText(/of 8$/)).toBeTruthy();
});

test('a mark of something taken off in another tab is kept with it, and said', async () => {
  await keepCoat(seven);
  start('#/garments/follow?g=coat&only=seven');
  await heading('Hook 1 of 7');
  await changeGarment(store, 'coat', (garment) => withoutKept(garment, 'seven', Date.now()));
  next();
  expect(await screen.findByText(/Seven hooks was taken off this garment/)).toBeTruthy();
  expect((await onlyOne()).takenOff[0]?.runs[0]?.made).toEqual({ '1': '' });
});

test('seven hooks, two made, changed to eight: what is made is there once, and six are left', async () => {
  await keepCoat(seven);
  start('#/garments/follow?g=coat&k=seven&run=0&at=0&only=seven');
  await heading('Hook 1 of 7');
  next();
  await heading('Hook 2 of 7');
  cleanup();
  start('#/garments/follow?g=coat&k=seven&run=0&at=6&only=seven');
  await heading('Hook 7 of 7');
  next();
  await heading('2 of 7 marks made');
  cleanup();
  await keepAnew('seven', { count: '8' });
  expect((await runsOf('seven'))[0]?.made).toEqual({ '1': '', '8': '' });
  start('#/garments');
  expect(await screen.findByText('2 of 8 made')).toBeTruthy();
  cleanup();
  await keepAnew('seven', { count: '1' });
  start('#/garments');
  expect(await screen.findByText('1 of 1 made, and 1 more than asked for')).toBeTruthy();
  await press(/^Follow all/);
  await heading(/1 of \d/);
});

test('steps are from where the last mark was made, and what is made since a new spacing stays made when that is undone', async () => {
  await keepCoat(seven);
  start('#/garments/follow?g=coat&only=seven');
  await heading('Hook 1 of 7');
  next();
  await press('Made elsewhere');
  fireEvent.input(await screen.findByLabelText(/where it really is/), { target: { value: '9' } });
  await press('Keep this measure');
  await press(/^Next to make/);
  await heading('Hook 3 of 7');
  expect(screen.getByText('6.4 cm from the last mark')).toBeTruthy();
  await press('Space the rest anew');
  expect(await screen.findByText('7 cm from the last mark')).toBeTruthy();
  next();
  await heading('Hook 4 of 7');
  await press('Undo the new spacing');
  await waitFor(async () => {
    const [run] = await runsOf('seven');
    expect(run?.planned['4']).toBe(22.5 * 80_000);
    expect(run?.made).toEqual({ '1': '', '2': '9 cm', '3': '159.6 mm' });
  });
});

test('a measure of another plan is not taken along when it is kept, and said', async () => {
  await addGarment(store, newGarment('coat', 'Coat', 1));
  start('#/closures/follow?u=cm&opening=46.3&count=7&top=1.2&bottom=2.5&at=1');
  await heading('Hook 2 of 7');
  await press('Made elsewhere');
  fireEvent.input(await screen.findByLabelText(/where it really is/), { target: { value: '9' } });
  await press('Keep this measure');
  await waitFor(() => expect(readRoute(location.hash).draft.made).toBe('2=9 cm'));
  const { draft } = readRoute(location.hash);
  cleanup();
  start(`#/closures/keep?${new URLSearchParams({ ...draft, count: '8' })}`);
  expect(await screen.findByText(/not taken along: Hook 2 at 9 cm/)).toBeTruthy();
  await press('Keep it');
  await waitFor(async () => expect((await onlyOne()).kept[0]?.runs[0]?.made).toEqual({}));
});

test('marks typed in centimetres are followed in inches at the same places', async () => {
  await keepCoat();
  start('#/garments/follow?g=coat&only=hooks', { unit: 'in' });
  await heading('Hook 1 of 2');
  // 1 cm is 0.3937 in, 6/16 to the nearest sixteenth.
  expect(screen.getByText(/3\/8/)).toBeTruthy();
});

test('the demo’s marks have planned places at once, from the calculations themselves', async () => {
  start('#/garments', { unit: 'in' });
  await press('Show the invented one');
  await screen.findByRole('button', { name: 'Follow all marks, in order' });
  const demo = await onlyOne();
  expect(demo).toMatchObject({ invented: true, name: expect.stringContaining('invented') });
  expect(screen.getByText(/Invented, to show the app with/)).toBeTruthy();
  const hooks = demo.kept.find(({ id }) => id === 'hooks');
  // Seven hooks along 46.3 cm, 1.2 and 2.5 cm from the ends: (46.3 − 3.7) / 6 = 7.1 cm apart.
  expect(Object.values(hooks?.runs[0]?.planned ?? {})).toEqual(
    [1.2, 8.3, 15.4, 22.5, 29.6, 36.7, 43.8].map((cm) => Math.round(cm * 80_000)),
  );
  for (const one of demo.kept.filter(({ id }) => id !== 'side')) {
    expect(Object.keys(one.runs[0]?.planned ?? {}).length, one.name).toBeGreaterThan(0);
  }
  expect(screen.getAllByRole('button', { name: 'Follow' }).length).toBeGreaterThan(2);
});

test('one garment is open at a time, it is remembered, and Keep puts onto it', async () => {
  await addGarment(store, newGarment('coat', 'Coat', 1));
  await addGarment(store, newGarment('hat', 'Hat', 2));
  start('#/garments');
  const card = async (name: string) => within(await screen.findByRole('article', { name }));
  const opener = async (name: string) => (await card(name)).getByRole('button', { name: /kept$/ });
  expect((await opener('Hat')).getAttribute('aria-expanded')).toBe('true');
  fireEvent.click(await opener('Coat'));
  expect((await opener('Coat')).getAttribute('aria-expanded')).toBe('true');
  expect((await opener('Hat')).getAttribute('aria-expanded')).toBe('false');
  await waitFor(async () => expect(await store.load('open-garment')).toBe('coat'));
  cleanup();
  start('#/garments');
  expect((await opener('Coat')).getAttribute('aria-expanded')).toBe('true');
  cleanup();
  start('#/closures/keep');
  expect(await screen.findByLabelText(/On which garment/)).toHaveProperty('value', 'coat');
  await press('Keep it');
  await waitFor(async () =>
    expect((await here()).find(({ id }) => id === 'coat')?.kept).toHaveLength(1),
  );
});

test('keeping again never takes away what was measured meanwhile', async () => {
  await keepCoat();
  start('#/garments');
  const row = (await screen.findByText('Hooks')).closest('li');
  fireEvent.click(within(row as HTMLElement).getByRole('button', { name: 'Open' }));
  await screen.findByLabelText(/^Opening/);
  const opened = location.hash;
  cleanup();
  // Another tab follows the marks while this one has the calculation open.
  start('#/garments/follow?g=coat&only=hooks');
  await heading('Hook 1 of 2');
  await press('Made elsewhere');
  fireEvent.input(await screen.findByLabelText(/where it really is/), { target: { value: '1.5' } });
  fireEvent.click(screen.getByRole('button', { name: 'Keep this measure' }));
  await waitFor(async () => expect((await runsOf('hooks'))[0]?.made).toEqual({ '1': '1.5 cm' }));
  cleanup();
  start(opened.replace('#/closures?', '#/closures/keep?'));
  await press('Keep it');
  await screen.findByLabelText(/^Opening/);
  expect((await runsOf('hooks'))[0]).toEqual({
    planned: { '1': 80_000, '2': 720_000 },
    made: { '1': '1.5 cm' },
  });
});

test('taking off is undone by one press, also after a reload', async () => {
  await keepCoat();
  start('#/garments');
  const row = (await screen.findByText('Hooks')).closest('li');
  fireEvent.click(within(row as HTMLElement).getByRole('button', { name: 'Take off' }));
  await press('Undo: put Hooks back on');
  await waitFor(async () => expect((await onlyOne()).kept).toHaveLength(2));
  const again = (await screen.findByText('Hooks')).closest('li');
  fireEvent.click(within(again as HTMLElement).getByRole('button', { name: 'Take off' }));
  await waitFor(async () => expect((await onlyOne()).kept).toHaveLength(1));
  cleanup();
  start('#/garments');
  await press('Put back on');
  await waitFor(async () => expect((await onlyOne()).kept).toHaveLength(2));
});

test('a backup is asked for a week after the last one, can be put off, and says what it lacks', async () => {
  await addGarment(store, newGarment('coat', 'Coat', Date.now()));
  await store.change('last-backup', () => ({ at: Date.now() - 8 * DAY, edits: {} }));
  start('#/garments');
  expect(await screen.findByText('1 change in 8 days since the last backup.')).toBeTruthy();
  await press('Not now');
  await waitFor(() => expect(screen.queryByText(/since the last backup/)).toBeNull());
  cleanup();
  start('#/garments');
  await screen.findByRole('article', { name: 'Coat' });
  expect(screen.queryByText(/since the last backup/)).toBeNull();
});

test('a full garment says so, and nothing on it is lost', async () => {
  const many = Array.from({ length: 500 }, (_, i) => kept({ id: `k${i}`, name: `Kept ${i}` }));
  await addGarment(store, { ...newGarment('coat', 'Coat', 1), kept: many });
  start('#/closures/keep');
  await press('Keep it');
  expect(await screen.findByText(/holds 500 already/)).toBeTruthy();
  expect((await onlyOne()).kept).toHaveLength(500);
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
  await addGarment(store, withKept(newGarment('coat', 'Coat', 1), kept({}), 1));
  start('#/closures/paper?u=cm&opening=10&count=2&top=1&bottom=1&kept=coat.hooks');
  await waitFor(() =>
    expect(screen.getByLabelText('Name on the pages')).toHaveProperty('value', 'Coat: Hooks'),
  );
  cleanup();
  start('#/closures/paper?u=cm&opening=10&count=2&top=1&bottom=1');
  expect(await screen.findByLabelText('Name on the pages')).toHaveProperty('value', 'Closures');
});

test('a strip kept on a garment is counted by its own numbers', async () => {
  const draft = { u: 'cm', length: '40', pitch: '0.8', rows: 'one', fit: 'split' };
  const strip = kept({ id: 'strip', name: 'Front edge', calculation: 'edging', draft });
  await addGarment(store, withKept(newGarment('coat', 'Coat', 1), strip, 1));
  start('#/garments');
  await screen.findByText('Front edge');
  fireEvent.click(screen.getByRole('button', { name: 'Open' }));
  await press('Find its middle');
  expect(await heading('Centre by counting')).toBeTruthy();
  expect(screen.getByLabelText(/^Holes counted/)).toHaveProperty('value', '50');
  expect(screen.getByLabelText(/^Hole to hole/)).toHaveProperty('value', '0.8 cm');
  expect(screen.getByLabelText(/^First to last/)).toHaveProperty('value', '39.2 cm');
});
