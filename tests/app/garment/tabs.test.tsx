import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { BACKUP_KEY } from '../../../src/app/garment/deeds.ts';
import { App } from '../../../src/app/start/app.tsx';
import { newGarment } from '../../../src/garment/record/new-garment.ts';
import { moveGarment } from '../../../src/storage/garment-moves.ts';
import { addGarment } from '../../../src/storage/garments.ts';
import { openStore, type Store } from '../../../src/storage/store.ts';
import { benchOf } from '../../controls/helpers.ts';

let stores = 0;
let store: Store;
let otherTab: BroadcastChannel;
let heard: unknown[];

beforeEach(async () => {
  store = openStore(`app-tabs-${stores++}`);
  await addGarment(store, newGarment('coat', 'Coat', 1));
  heard = [];
  otherTab = new BroadcastChannel('thumbrule-garment');
  otherTab.onmessage = ({ data }) => heard.push(data);
});
afterEach(() => {
  otherTab.close();
  cleanup();
});

function start(hash: string, of = store) {
  history.replaceState(null, '', hash);
  render(<App store={of} bench={benchOf()} last={{}} storeFault={undefined} />);
}

const press = async (name: string) => fireEvent.click(await screen.findByRole('button', { name }));
const listed = () => screen.queryByRole('article', { name: 'Coat' });

test('the list follows what another tab puts away and brings back', async () => {
  start('#/garments');
  await waitFor(() => expect(listed()).toBeTruthy());
  await moveGarment(store, 'coat', 'bin', 'spare');
  otherTab.postMessage('coat');
  await waitFor(() => expect(listed()).toBeNull());
  await screen.findByRole('button', { name: 'Bring back' });
  await moveGarment(store, 'coat', 'here', 'spare');
  otherTab.postMessage('coat');
  await waitFor(() => expect(listed()).toBeTruthy());
});

test('what another tab has put away is seen when the list is come back to', async () => {
  start('#/garments');
  await waitFor(() => expect(listed()).toBeTruthy());
  await moveGarment(store, 'coat', 'bin', 'spare');
  document.dispatchEvent(new Event('visibilitychange'));
  await waitFor(() => expect(listed()).toBeNull());
});

test('an open garment that another tab puts away says so without a press', async () => {
  start('#/garments/open?g=coat');
  await screen.findByRole('heading', { name: /Coat/ });
  await moveGarment(store, 'coat', 'bin', 'spare');
  otherTab.postMessage('coat');
  expect(await screen.findByText(/put away in another tab/)).toBeTruthy();
});

test('other tabs are told of what is put away, brought back, renamed, made and kept', async () => {
  start('#/garments');
  await press('More with Coat');
  await press('Put away');
  await waitFor(() => expect(heard).toEqual(['coat']));
  await press('Undo: bring back Coat');
  await waitFor(() => expect(heard).toEqual(['coat', 'coat']));
  await press('More with Coat');
  await press('Rename');
  fireEvent.input(await screen.findByLabelText('Name'), { target: { value: 'Cloak' } });
  await press('Rename');
  await waitFor(() => expect(heard).toHaveLength(3));
  fireEvent.input(await screen.findByLabelText(/A new garment/), { target: { value: 'Hat' } });
  await press('Make');
  await waitFor(() => expect(heard).toHaveLength(4));
  cleanup();
  start('#/hem/keep?u=cm&depth=2');
  await press('Keep it');
  await waitFor(() => expect(heard).toHaveLength(5));
});

test('nothing is said to be done before the list shows it, also where it is looked at twice', async () => {
  const looks: (() => void)[] = [];
  let slow = false;
  start('#/garments', {
    ...store,
    // What is read last of a look at the list.
    load: async (entry) => {
      if (slow && entry === BACKUP_KEY) await new Promise<void>((go) => looks.push(go));
      return store.load(entry);
    },
  });
  await press('More with Coat');
  slow = true;
  await press('Put away');
  await waitFor(() => expect(looks).toHaveLength(1));
  otherTab.postMessage('coat');
  await waitFor(() => expect(looks).toHaveLength(2));
  const undo = () => screen.queryByRole('button', { name: 'Undo: bring back Coat' });
  const early: boolean[] = [];
  const watch = new MutationObserver(() => early.push(Boolean(undo() && listed())));
  watch.observe(document, { subtree: true, childList: true });
  looks[0]?.();
  for (let turn = 0; turn < 30; turn++) await new Promise((next) => setTimeout(next));
  looks[1]?.();
  await waitFor(() => expect(undo()).toBeTruthy());
  watch.disconnect();
  expect(listed()).toBeNull();
  expect(early).not.toContain(true);
});
