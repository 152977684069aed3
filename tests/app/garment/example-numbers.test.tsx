import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { App } from '../../../src/app/start/app.tsx';
import { newGarment } from '../../../src/garment/record/new-garment.ts';
import { addGarment } from '../../../src/storage/garments.ts';
import { openStore, type Store } from '../../../src/storage/store.ts';
import { benchOf } from '../../controls/helpers.ts';

let stores = 0;
let store: Store;

beforeEach(async () => {
  store = openStore(`app-example-${stores++}`);
  await addGarment(store, newGarment('coat', 'Coat', 1));
});
afterEach(cleanup);

function start(hash: string) {
  history.replaceState(null, '', hash);
  render(<App store={store} bench={benchOf()} last={{}} storeFault={undefined} />);
}

const press = async (name: string | RegExp) =>
  fireEvent.click(await screen.findByRole('button', { name }));
const key = async () => within(await screen.findByRole('region', { name: 'The next step' }));

test('a work that was added and not looked at has an example for its numbers, wherever they are read', async () => {
  start('#/garments/open?g=coat&w=add');
  await press('Closures');
  expect(await screen.findByText(/An example: the numbers it began with/)).toBeTruthy();
  await press('Done');
  expect(await (await key()).findByText('example numbers')).toBeTruthy();
  cleanup();
  start('#/garments/sheet?g=coat');
  expect((await screen.findAllByText(/Put in your own first/)).length).toBeGreaterThan(0);
});

test('before a cut it is said in full; one number of the maker’s own takes it away', async () => {
  start('#/garments/open?g=coat&w=add');
  await press('Piece to cut');
  await screen.findByText(/An example: the numbers it began with/);
  await press('Done');
  await (await key()).findByText(/example numbers/);
  await press(/^Check/);
  expect(await screen.findByText(/Put in your own first/)).toBeTruthy();
  await press('Open the work');
  const width = await screen.findByLabelText(/^Finished width|^Width/, { selector: 'input' });
  fireEvent.input(width, { target: { value: '31' } });
  // Once of the field, once of the work.
  await press('Done');
  await screen.findByRole('button', { name: 'More' });
  expect(screen.queryByText(/An example/)).toBeNull();
  await press('Done');
  expect(await (await key()).findByText('then 65.5 cm')).toBeTruthy();
  expect(screen.queryByText(/example numbers/)).toBeNull();
});
