import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { App } from '../../src/app/app.tsx';
import { Boundary } from '../../src/app/boundary.tsx';
import { readRoute } from '../../src/app/route.ts';
import { type Store, StoreError } from '../../src/storage/store.ts';
import { benchOf } from '../controls/helpers.ts';

const kept = new Map<string, unknown>();
const store: Store = {
  load: async (key) => kept.get(key),
  transact: async () => Promise.reject(new StoreError('refused')),
  change: async (key, by) => void kept.set(key, by(kept.get(key))),
};

beforeEach(() => {
  kept.clear();
  history.replaceState(null, '', '#/');
});
afterEach(cleanup);

function start(hash: string, with_: Partial<Parameters<typeof App>[0]> = {}) {
  history.replaceState(null, '', hash);
  return render(
    <App store={store} bench={benchOf()} last={{}} storeFault={undefined} {...with_} />,
  );
}

test('home leads to a calculation, and back is safe', async () => {
  start('#/');
  fireEvent.click(await screen.findByRole('link', { name: /^Inches and centimetres/ }));
  const field = await screen.findByLabelText(/^Length/);
  fireEvent.input(field, { target: { value: '3 in' } });
  fireEvent.click(screen.getByRole('button', { name: 'Back' }));
  expect(await screen.findByRole('heading', { name: 'Thumbrule' })).toBeTruthy();
  expect(kept.get('last')).toMatchObject({ convert: expect.stringContaining('length=3+in') });
  fireEvent.click(screen.getByRole('link', { name: /^Inches and centimetres/ }));
  expect(await screen.findByLabelText(/^Length/)).toHaveProperty('value', '3 in');
});

test('an address that leads nowhere is named, with home around it', async () => {
  start('#/nowhere');
  expect(await screen.findByText(/There is nothing at “nowhere”/)).toBeTruthy();
  expect(screen.getByRole('link', { name: /^Closures/ })).toBeTruthy();
});

test('a link with nonsense values opens, and says what is wrong', async () => {
  start('#/closures?count=abc&opening=%00&u=ell&at=x');
  expect(await screen.findByText(/How many: “abc” was not understood/)).toBeTruthy();
});

test.each(['refused', 'full', 'slow'] as const)(
  'storage %s is said, and the app works',
  async (fault) => {
    const broken: Store = {
      load: async () => undefined,
      transact: async () => Promise.reject(new StoreError(fault)),
      change: async () => {
        throw new StoreError(fault);
      },
    };
    start('#/', { store: broken, storeFault: fault });
    const said = { refused: /refuses storage/, full: /storage is full/, slow: /does not answer/ };
    expect(await screen.findByText(said[fault])).toBeTruthy();
    fireEvent.click(screen.getByRole('link', { name: /^Settings/ }));
    fireEvent.click(await screen.findByLabelText('inches'));
    expect(screen.getByLabelText('inches')).toHaveProperty('checked', true);
  },
);

test('a setting is kept, and shown at once', async () => {
  start('#/settings');
  fireEvent.click(await screen.findByLabelText('night bench'));
  expect(document.documentElement.dataset.theme).toBe('night');
  expect(kept.get('settings')).toMatchObject({ theme: 'night' });
});

test('a screen that fails says so instead of a blank page, and leads home', () => {
  let failing = true;
  const Screen = () => {
    if (failing) throw new Error('a bug');
    return <p>home again</p>;
  };
  render(
    <Boundary>
      <Screen />
    </Boundary>,
  );
  expect(screen.getByRole('alert').textContent).toContain('a bug');
  failing = false;
  fireEvent.click(screen.getByRole('button'));
  expect(screen.getByText('home again')).toBeTruthy();
});

test('storage that fills up while the app runs is said at home, and no longer once it is mended', async () => {
  let full = true;
  const change: Store['change'] = async () => {
    if (full) throw new StoreError('full');
  };
  start('#/settings', { store: { ...store, change } });
  fireEvent.click(await screen.findByLabelText('left hand'));
  fireEvent.click(screen.getByRole('button', { name: 'Back' }));
  expect(await screen.findByText(/storage is full/)).toBeTruthy();
  full = false;
  fireEvent.click(screen.getByRole('link', { name: /^Settings/ }));
  fireEvent.click(await screen.findByLabelText('right hand'));
  fireEvent.click(screen.getByRole('button', { name: 'Back' }));
  expect(await screen.findByRole('heading', { name: 'Thumbrule' })).toBeTruthy();
  await waitFor(() => expect(screen.queryByText(/storage is full/)).toBeNull());
});

test('what was typed in inches means the same once the bench is set to centimetres', async () => {
  start('#/convert?length=5%2F8&u=in');
  expect(await screen.findByLabelText(/^Length/)).toHaveProperty('value', '5/8 in');
});

test('following from an address comes to the same mark', async () => {
  start('#/closures/follow?opening=46.3&count=7&at=3');
  expect(await screen.findByRole('heading', { name: 'Hook 4 of 7' })).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: /Marked. Next/ }));
  await waitFor(() =>
    expect(readRoute(location.hash)).toMatchObject({ mode: 'follow', draft: { at: '4' } }),
  );
});

test('every setting has a name, and every way it can be', async () => {
  start('#/settings');
  await screen.findByRole('heading', { name: 'Settings' });
  for (const group of screen.getAllByRole('group')) {
    expect(within(group).getAllByRole('radio', { checked: true })).toHaveLength(1);
    expect(group.textContent).not.toMatch(/undefined/);
  }
  expect(screen.getAllByRole('group')).toHaveLength(Object.keys(benchOf()).length);
});
