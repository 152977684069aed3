import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
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

function start(hash: string) {
  history.replaceState(null, '', hash);
  render(<App store={store} bench={benchOf()} last={{}} storeFault={undefined} />);
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
