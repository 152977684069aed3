import { cleanup, configure, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { App } from '../../src/app/app.tsx';
import { checkScale } from '../../src/app/glass-place.tsx';
import { readRoute } from '../../src/app/route.ts';
import { type Store, StoreError } from '../../src/storage/store.ts';
import { glassWords } from '../../src/words/glass-words.ts';
import { benchOf } from '../controls/helpers.ts';

configure({ asyncUtilTimeout: 10_000 });

const kept = new Map<string, unknown>();
const store: Store = {
  load: async (key) => kept.get(key),
  transact: async () => Promise.reject(new StoreError('refused')),
  change: async (key, by) => void kept.set(key, by(kept.get(key))),
};

beforeEach(() => {
  kept.clear();
});
afterEach(cleanup);

function start(hash: string, with_: Store = store) {
  history.replaceState(null, '', hash);
  return render(<App store={with_} bench={benchOf()} last={{}} storeFault={undefined} />);
}

const press = async (name: string | RegExp) =>
  fireEvent.click(await screen.findByRole('button', { name }));
const STRIP = '#/edging/glass?length=40&pitch=0.8';
const SCALE = { pxPerMm: 6, ratio: 1 };

test('nothing is shown before the screen was measured twice; then it is, and stays so', async () => {
  start(STRIP);
  expect(await screen.findByText(/Nothing is shown at true size/)).toBeTruthy();
  // The guess of six pixels to a millimetre fits, once for either side.
  await press('It matches');
  expect(screen.getByText(/turn the card/)).toBeTruthy();
  await press('It matches');
  expect(await screen.findByText(/^Stretch 1 of/)).toBeTruthy();
  expect((kept.get('glass') as typeof SCALE).pxPerMm).toBeCloseTo(6, 1);
  cleanup();
  start(STRIP);
  expect(await screen.findByText(/^Stretch 1 of/)).toBeTruthy();
  await press('Measure anew');
  expect(screen.getByText(/Nothing is shown at true size/)).toBeTruthy();
  expect(kept.get('glass')).toBeUndefined();
});

test('two measurements that don’t agree are refused, and begun again', async () => {
  start(STRIP);
  await press('It matches');
  for (let i = 0; i < 12; i++) await press('One pixel more');
  await press('It matches');
  expect((await screen.findByRole('alert')).textContent).toMatch(/differ by 3\.\d %/);
  expect(screen.getByText(/its long side up and down/)).toBeTruthy();
  expect(kept.get('glass')).toBeUndefined();
});

test('where the card is longer than the screen its short side serves, from both ends', async () => {
  start(STRIP);
  await press('The card is longer than the screen');
  expect(screen.getByText(/its short side up and down/)).toBeTruthy();
  await press('It matches');
  expect(screen.getByText(/from the other end/)).toBeTruthy();
  await press('It matches');
  expect(await screen.findByText(/^Stretch 1 of/)).toBeTruthy();
});

test('a run longer than the screen is stepped through, and a reload comes back to the stretch', async () => {
  kept.set('glass', SCALE);
  start(STRIP);
  expect(await screen.findByText(/Lay the phone on the work/)).toBeTruthy();
  expect(screen.getByText('zero: measured from the cut end')).toBeTruthy();
  await press('Next stretch');
  const said = screen.getByText(
    /Slide the phone on until this line lies on mark \d+\./,
  ).textContent;
  await waitFor(() => expect(readRoute(location.hash).draft.stretch).toBe('1'));
  cleanup();
  start(location.hash);
  expect((await screen.findByText(/Slide the phone on/)).textContent).toBe(said);
  await press('Back one');
  expect(screen.getByText(/Lay the phone on the work/)).toBeTruthy();
});

test('a screen whose pixels have changed is measured anew', async () => {
  kept.set('glass', { ...SCALE, ratio: 2 });
  start(STRIP);
  expect((await screen.findByRole('alert')).textContent).toBe(glassWords.changed);
});

test('no answer has nothing to show, and a stretch that is not there is the nearest', async () => {
  kept.set('glass', SCALE);
  start('#/edging/glass?length=40&pitch=0');
  expect((await screen.findByRole('alert')).textContent).toBe(glassWords.nothing);
  cleanup();
  start(`${STRIP}&stretch=99`);
  expect(await screen.findByText(/^Stretch (\d+) of \1\./)).toBeTruthy();
});

test('storage that refuses is said, and the scale holds as long as the page', async () => {
  const refusing: Store = {
    ...store,
    change: async () => Promise.reject(new StoreError('refused')),
  };
  start(STRIP, refusing);
  await press('It matches');
  await press('It matches');
  expect(await screen.findByText(new RegExp(glassWords.notKept))).toBeTruthy();
  expect(screen.getByText(/^Stretch 1 of/)).toBeTruthy();
});

test('what was kept is looked at before it is believed', () => {
  expect(checkScale(SCALE)).toEqual(SCALE);
  for (const nonsense of [
    undefined,
    null,
    6,
    'x',
    {},
    { pxPerMm: '6', ratio: 1 },
    { pxPerMm: Number.NaN, ratio: 1 },
    { pxPerMm: 1e9, ratio: 1 },
    { pxPerMm: 6, ratio: 0 },
  ]) {
    expect(checkScale(nonsense)).toBeUndefined();
  }
});
