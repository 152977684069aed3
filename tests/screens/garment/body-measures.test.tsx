import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test } from 'vitest';
import { type Action, act } from '../../../src/garment/actions/act.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import type { Quantity } from '../../../src/garment/record/record.ts';
import { mm } from '../../../src/lengths/length.ts';
import { Measures } from '../../../src/screens/garment/measures/measures.tsx';
import { benchOf } from '../../controls/helpers.ts';
import { garmentOf, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';

afterEach(cleanup);

const bench = benchOf();
const height: Quantity = {
  ...{ name: 'Height', kind: 'length', rank: 1, parts: typed('176') },
  ...{ body: true, measure: 'height' },
};
const hem: Quantity = { name: 'Hem', kind: 'length', rank: 2, parts: typed('240') };

function show(quantities: Record<string, Quantity> = { height, hem }) {
  let latest: State = begin(garmentOf({ quantities }), KNOWN);
  function Hand() {
    const [state, setState] = useState(latest);
    const onAct = (action: Action) => {
      latest = act(latest, action).state;
      setState(latest);
    };
    return <Measures {...{ state, bench, onAct, onDone: () => undefined, Laid: () => null }} />;
  }
  render(<Hand />);
  return { state: () => latest };
}

const press = async (name: string | RegExp) =>
  fireEvent.click(await screen.findByRole('button', { name }));
const key = (name: string) => {
  const pad = within(screen.getByRole('group', { name: 'Number pad' }));
  fireEvent.pointerDown(pad.getByRole('button', { name }), { button: 0 });
};
const type = (number: string) => {
  for (const digit of number) key(digit);
};
const added = (state: State) =>
  Object.values(state.record.quantities as Record<string, Quantity>).slice(2);

// Row 8.7: the smaller size where the bust exceeds the high bust by 2 in.
test('the high bust is found by that name, with what it is for', async () => {
  show();
  await press('Add a measure');
  const girths = await screen.findByRole('region', { name: 'Girths: round the body' });
  fireEvent.click(within(girths).getByRole('button', { name: 'Upper chest girth' }));
  expect(
    screen.getByRole('img', { name: /^Drawing: Round the body close under the arms/ }),
  ).toBeTruthy();
  expect(screen.getByText(/^The high bust. Where the bust is 5 cm \(2 in\) more/)).toBeTruthy();
  expect(screen.getByText(/named as in the standards, from memory/)).toBeTruthy();
});

test('a measure is chosen from its group, shown where it is taken, added and typed', async () => {
  const { state } = show();
  await press('Add a measure');
  const girths = await screen.findByRole('region', { name: 'Girths: round the body' });
  fireEvent.click(within(girths).getByRole('button', { name: 'Natural waist girth' }));
  // Which waist, how, over what, and who names it so: rows 19.1 and 19.2.
  expect(screen.getByRole('heading').textContent).toBe('Natural waist girth');
  expect(screen.getByRole('img', { name: /^Drawing: Where a belt settles/ })).toBeTruthy();
  expect(screen.getByText(/^Not the level waist of the standard/)).toBeTruthy();
  expect(screen.getByText(/Over what is worn beneath the garment/)).toBeTruthy();
  expect(screen.getByText(/named as in ISO 8559-1:2017/)).toBeTruthy();
  await press('Add it');
  // It stays in sight above the keys.
  expect(await screen.findByRole('img', { name: /^Drawing: Where a belt settles/ })).toBeTruthy();
  type('88');
  await press('Done');
  const [one] = added(state());
  expect(one).toMatchObject({
    ...{ name: 'Natural waist girth', kind: 'length', rank: 3 },
    ...{ body: true, measure: 'natural-waist-girth' },
  });
  expect(await screen.findByRole('img', { name: /^Drawing: Where a belt settles/ })).toBeTruthy();
});

test('it is found by a plain word; one that is there already is marked', async () => {
  show();
  await press('Add a measure');
  const search = await screen.findByRole('searchbox');
  fireEvent.input(search, { target: { value: 'biceps' } });
  const found = within(screen.getByRole('navigation', { name: 'Measures of the body' }));
  expect(found.getAllByRole('button').map(({ textContent }) => textContent)).toEqual([
    'Upper-arm girth',
  ]);
  fireEvent.input(search, { target: { value: 'tall' } });
  expect(found.getAllByRole('button')[0]?.textContent).toBe('Height ✓');
});

test('where sides may differ, left and right are each a number', async () => {
  const { state } = show();
  await press('Add a measure');
  await press('Wrist girth');
  await press('Add left and right');
  type('17');
  await press('Done');
  expect(added(state()).map(({ name, measure, rank }) => [name, measure, rank])).toEqual([
    ['Wrist girth, left', 'wrist-girth', 3],
    ['Wrist girth, right', 'wrist-girth', 4],
  ]);
  expect(screen.getByRole('heading').textContent).toBe('Wrist girth, left');
  await press('Done');
  await press('Add a measure');
  await press('Hip girth');
  expect(screen.queryByRole('button', { name: 'Add left and right' })).toBeNull();
});

test('a slip is asked about where it stands, once said to be right no more, and never refused', async () => {
  const { state } = show();
  await press('Add a measure');
  await press('Inside leg length');
  await press('Add it');
  type('31');
  await press('Done');
  // Row 20.40: 0.447 × 176 = 78.672.
  const asks = /At least 78\.7 cm is usual beside this Height: is one of them mistaken\?/;
  expect(await screen.findByText(asks)).toBeTruthy();
  const [id = ''] = Object.keys(state().record.quantities).slice(-1);
  const result = state().answer.values.get(homeOf(id));
  expect(result?.ok && result.value).toBe(mm(310));
  await press('It is right');
  expect(screen.queryByText(asks)).toBeNull();
  expect(added(state())[0]).toMatchObject({ final: true });
});

test('a measure of nothing is asked about, and worked with all the same', async () => {
  const { state } = show();
  await press('Add a measure');
  await press('Scye depth');
  await press('Add it');
  type('0');
  await press('Done');
  const asks = 'No measure of a body is nothing, or less: is this right?';
  expect(await screen.findByText(asks)).toBeTruthy();
  const [id = ''] = Object.keys(state().record.quantities).slice(-1);
  expect(state().answer.values.get(homeOf(id))).toMatchObject({ ok: true, value: mm(0) });
});

test('which measure a number is, can be said later; of a newer build’s it keeps the number', async () => {
  const { state } = show({ height: { ...height, measure: 'tail-girth' }, hem });
  await press(/^Hem/);
  await press(/^Which measure of the body/);
  await press('Hip girth');
  await press('It is this one');
  expect(state().record.quantities.hem).toMatchObject({ measure: 'hip-girth', body: true });
  await press('Done');
  await press(/^Height/);
  expect(screen.queryByRole('img')).toBeNull();
  expect(screen.getByText('176 cm')).toBeTruthy();
});

test('what is done with a measure stands beneath what is scrolled: how it is taken hides none of it', async () => {
  show();
  await press(/^Height/);
  expect(await screen.findByRole('img', { name: /^Drawing: / })).toBeTruthy();
  const above = within(screen.getByRole('region', { name: 'Height' }));
  expect(above.queryAllByRole('button')).toEqual([]);
  // Whatever the list above it has been scrolled to.
  const always = within(screen.getByRole('navigation', { name: 'Height' }));
  expect(always.getAllByRole('button').map(({ textContent }) => textContent)).toEqual([
    'Done',
    'Type it anew',
  ]);
});
