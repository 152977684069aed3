import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { App } from '../../../src/app/start/app.tsx';
import { Boundary } from '../../../src/app/start/boundary.tsx';
import type { Last } from '../../../src/app/start/last.ts';
import { readRoute } from '../../../src/app/start/route.ts';
import { type Store, StoreError } from '../../../src/storage/store.ts';
import { benchOf } from '../../controls/helpers.ts';

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

test.each(['refused', 'full', 'slow', 'outdated'] as const)(
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
    const said = {
      refused: /refuses storage/,
      full: /storage is full/,
      slow: /does not answer/,
      outdated: /newer version of this app has been at work/,
    };
    expect(await screen.findByText(said[fault])).toBeTruthy();
    fireEvent.click(screen.getByRole('link', { name: /^Settings/ }));
    fireEvent.click(await screen.findByLabelText('inches'));
    expect(screen.getByLabelText('inches')).toHaveProperty('checked', true);
    // Where it was set, not only at the start: in a word of its own for each cause.
    expect((await screen.findByRole('status')).textContent).toMatch(said[fault]);
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

test('the late news of an address that was there before takes no press back', async () => {
  start('#/closures/follow?opening=46.3&count=7&at=3');
  fireEvent.click(await screen.findByRole('button', { name: /Marked. Next/ }));
  fireEvent(window, new HashChangeEvent('hashchange'));
  expect(await screen.findByRole('heading', { name: 'Hook 5 of 7' })).toBeTruthy();
  await waitFor(() => expect(readRoute(location.hash)).toMatchObject({ draft: { at: '4' } }));
});

test('every setting has a name, and every way it can be', async () => {
  start('#/settings');
  await screen.findByRole('heading', { name: 'Settings' });
  // What is new is told in a group that opens, and sets nothing.
  const groups = screen.getAllByRole('group').filter((one) => one.tagName === 'FIELDSET');
  for (const group of groups) {
    expect(within(group).getAllByRole('radio', { checked: true })).toHaveLength(1);
    expect(group.textContent).not.toMatch(/undefined/);
  }
  expect(groups).toHaveLength(Object.keys(benchOf()).length);
});

test('a corner’s marks are followed edge by edge, each edge from its own place', async () => {
  start('#/corner?depth=4&side=1.5');
  fireEvent.click(await screen.findByRole('button', { name: 'Follow' }));
  expect(await screen.findByRole('heading', { name: 'Line 1 of 2' })).toBeTruthy();
  expect(screen.getByText('press, from the raw corner')).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: /Marked. Next/ }));
  expect(screen.getByText('mitre, from the raw corner')).toBeTruthy();
  expect(document.querySelector('.big')?.textContent).toMatch(/^3 cm/);
  fireEvent.click(screen.getByRole('button', { name: /Marked. Next/ }));
  expect(screen.getByRole('heading', { name: 'All 2 marked' })).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: /Next: Up the side/ }));
  expect(screen.getByRole('heading', { name: 'Line 1 of 2' })).toBeTruthy();
  expect(document.querySelector('.big')?.textContent).toMatch(/^4 cm/);
  fireEvent.click(screen.getByRole('button', { name: 'Along the bottom' }));
  expect(screen.getByRole('heading', { name: 'All 2 marked' })).toBeTruthy();
  fireEvent.click(screen.getByRole('button', { name: 'Up the side' }));
  fireEvent.click(screen.getByRole('button', { name: /Marked. Next/ }));
  fireEvent.click(screen.getByRole('button', { name: /Marked. Next/ }));
  expect(screen.getByRole('button', { name: /From the first again/ })).toBeTruthy();
});

test('a hem takes its numbers along to its facing and its corner', async () => {
  const numbers = 'depth=3&style=single&edgeStitch=0.4&finished=60&left=5';
  start(`#/hem?${numbers}&shape=rise&chord=40&rise=5`);
  fireEvent.click(await screen.findByRole('button', { name: 'Face it instead' }));
  expect(await screen.findByRole('heading', { name: 'Faced hem' })).toBeTruthy();
  const field = (label: RegExp) => screen.getByLabelText(label);
  expect(field(/^Depth, finished/)).toHaveProperty('value', '3');
  expect(field(/^Stitch in from edge/)).toHaveProperty('value', '0.4');
  // 40 cm across, 5 cm of rise: 42.5 cm (derived here).
  expect(field(/^Radius of the curve/)).toHaveProperty('value', '42.5 cm');
  expect(field(/^Finished length/)).toHaveProperty('value', '60');
  cleanup();
  start(`#/hem?${numbers}`);
  fireEvent.click(await screen.findByRole('button', { name: 'Vent or corner' }));
  expect(await screen.findByRole('heading', { name: 'Mitred corner' })).toBeTruthy();
  expect(field(/^Depth at the bottom/)).toHaveProperty('value', '3');
  expect(readRoute(location.hash).draft).toMatchObject({ turned: 'once', edgeStitch: '0.4' });
});

test('a hem turned twice brings its turning along as that of the facing’s free edge, in its unit', async () => {
  start('#/hem?depth=1+1%2F2&style=unequal&turn=3%2F8&edgeStitch=1%2F4&u=in', {
    bench: benchOf({ unit: 'in' }),
  });
  fireEvent.click(await screen.findByRole('button', { name: 'Face it instead' }));
  expect(await screen.findByRole('heading', { name: 'Faced hem' })).toBeTruthy();
  const field = (label: RegExp) => screen.getByLabelText(label);
  expect(field(/^Depth, finished/)).toHaveProperty('value', '1 1/2');
  expect(field(/^Free edge, turned/)).toHaveProperty('value', '3/8');
  // What a hem has no number for is as it starts, in the same unit.
  expect(field(/^Facing seam/)).toHaveProperty('value', '3/8');
  cleanup();
  // Turned once there is no turning to bring, though one was typed before.
  start('#/hem?depth=3&style=single&turn=9');
  fireEvent.click(await screen.findByRole('button', { name: 'Face it instead' }));
  expect(await screen.findByLabelText(/^Free edge, turned/)).toHaveProperty('value', '0.6');
});

test('a link in inches that leaves fields out has them as they start in inches', async () => {
  start('#/hem?depth=1&u=in');
  expect(await screen.findByLabelText(/^Depth, finished/)).toHaveProperty('value', '1 in');
  expect(screen.getByLabelText(/^First turn/)).toHaveProperty('value', '1/4 in');
});

test('what a link in inches leaves out is in inches also where it shows only later', async () => {
  start('#/hem?depth=1&style=single&u=in');
  fireEvent.click(await screen.findByRole('button', { name: /^Turned/ }));
  fireEvent.click(await screen.findByRole('button', { name: 'Twice, first less' }));
  expect(await screen.findByLabelText(/^First turn/)).toHaveProperty('value', '1/4 in');
});

test('a link without a unit means the same once the bench is set to another', async () => {
  start('#/hem?depth=3');
  fireEvent.click(await screen.findByRole('button', { name: 'Back' }));
  await screen.findByRole('heading', { name: 'Thumbrule' });
  cleanup();
  start('#/hem', { bench: benchOf({ unit: 'in' }), last: kept.get('last') as Last });
  expect(await screen.findByLabelText(/^Depth, finished/)).toHaveProperty('value', '3 cm');
  expect(screen.getByLabelText(/^First turn/)).toHaveProperty('value', '0.7 cm');
});

test('an unknown unit in a link is the bench’s own', async () => {
  start('#/hem?depth=1&u=ell');
  expect(await screen.findByLabelText(/^First turn/)).toHaveProperty('value', '0.7 cm');
});
