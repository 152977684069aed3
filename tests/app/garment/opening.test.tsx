import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { benchSaid } from '../../../src/app/garment/last-homes.ts';
import { App } from '../../../src/app/start/app.tsx';
import { newGarment, renamed } from '../../../src/garment/record/new-garment.ts';
import type { Garment } from '../../../src/garment/record/record.ts';
import { addGarment, changeGarment } from '../../../src/storage/garments.ts';
import { openStore, type Store } from '../../../src/storage/store.ts';
import { benchOf } from '../../controls/helpers.ts';
import { withWork } from '../../storage/coats.ts';

let stores = 0;
let store: Store;
let kept: Store;
let quiet: Promise<void>;

beforeEach(() => {
  quiet = new Promise((done) => {
    vi.stubGlobal('requestIdleCallback', () => done());
  });
  kept = openStore(`app-opening-${stores++}`);
  store = kept;
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

function start(hash: string) {
  history.replaceState(null, '', hash);
  return render(<App store={store} bench={benchOf()} last={{}} storeFault={undefined} />);
}

const coat = () => withWork(newGarment('coat', 'Coat', 5), 'hooks', 5);

/** What its home said last: another number than it would say, so that the two are told apart. */
function saidBefore({ id, name, changed, edits }: Garment) {
  const last = {
    ...{ garment: id, name, made: '0 of 1 made', above: 'Hooks', number: '9.9 cm', below: '' },
    ...{ hand: 'right', bench: benchSaid(benchOf()), changed, edits },
  };
  return kept.change('last-home', () => ({ [id]: last }));
}

/** A store that gives no record of a garment before it is told to. */
function heldBack() {
  let letGo = () => {};
  const free = new Promise<void>((done) => {
    letGo = done;
  });
  let holds = false;
  store = {
    ...kept,
    transact: async (mode, work) => {
      if (holds) await free;
      return kept.transact(mode, work);
    },
  };
  return { hold: () => (holds = true), letGo };
}

const opened = () => screen.findByRole('button', { name: /^Coat/ });
/** The list, once what opening a garment needs has been fetched: only then it waits for a quiet moment. */
const listed = async () => {
  const one = await opened();
  await quiet;
  return one;
};

test('a garment opened from the list says at once what its home last said, and Made waits', async () => {
  await addGarment(kept, coat());
  await saidBefore((await kept.load('garment:coat')) as Garment);
  const held = heldBack();
  start('#/garments');
  const opener = await listed();
  held.hold();
  fireEvent.click(opener);
  expect(await screen.findByText(/9\.9/)).toBeTruthy();
  const key = screen.getByRole('region', { name: 'The next step' });
  expect(key.querySelector('button.made')).toHaveProperty('disabled', true);
  held.letGo();
  await waitFor(() => expect(screen.queryByText(/9\.9/)).toBeNull());
});

test('of a garment changed since then nothing is said before it is read', async () => {
  await addGarment(kept, coat());
  const before = (await kept.load('garment:coat')) as Garment;
  await saidBefore({ ...before, edits: before.edits + 1 });
  const held = heldBack();
  start('#/garments');
  const opener = await listed();
  held.hold();
  fireEvent.click(opener);
  await waitFor(() => expect(screen.queryByRole('article', { name: 'Coat' })).toBeNull());
  expect(screen.queryByText(/9\.9/)).toBeNull();
  held.letGo();
  await screen.findByRole('region', { name: 'The next step' });
});

test('what was changed on the list since a garment was in hand is there when it is opened again', async () => {
  await addGarment(kept, coat());
  const { unmount } = start('#/garments/open?g=coat');
  expect(await screen.findByRole('heading', { name: 'Coat' })).toBeTruthy();
  unmount();
  await changeGarment(kept, 'coat', ({ record, log }) => ({
    ...{ record: renamed(record, 'Mantle', Date.now()), log },
  }));
  start('#/garments/open?g=coat');
  expect(await screen.findByRole('heading', { name: 'Mantle' })).toBeTruthy();
});
