import { cleanup, fireEvent, screen, waitFor } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { act } from '../../../src/garment/actions/act.ts';
import { begin } from '../../../src/garment/actions/state.ts';
import type { Parts } from '../../../src/garment/record/record.ts';
import { garmentOf, quantity, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';
import { openIn, skirt } from './work-hand.tsx';

afterEach(cleanup);

const field = (label: string) =>
  screen.getByLabelText<HTMLInputElement>(new RegExp(`^${label}`), { selector: 'input' });
const type = (label: string, text: string) => {
  fireEvent.focus(field(label));
  fireEvent.input(field(label), { target: { value: text } });
};
const alert = () => screen.findByRole('alert').then(({ textContent }) => textContent);

test('more than a kilometre is refused before anything is written, and the field shows what stands there', async () => {
  const held = await openIn(skirt, 'hem');
  type('Depth, finished', '100000');
  const before = held.state.record;
  type('Depth, finished', '100001');
  expect(await alert()).toBe(
    'Not done: a length is a kilometre at the most. Look at the number and at its unit, and type it again.',
  );
  expect(held.state.record).toBe(before);
  await waitFor(() => expect(field('Depth, finished').value).toBe('100000'));
  type('Depth, finished', '4');
  await waitFor(() => expect(screen.queryByRole('alert')).toBeNull());
});

test('a field takes 24 numbers, and not one more', async () => {
  const sum = (links: number): Parts =>
    Array.from({ length: links }, (_, i) => [
      ...(i > 0 ? typed(' + ') : []),
      quantity('front'),
    ]).flat();
  const garment = {
    ...skirt,
    works: {
      ...skirt.works,
      close: {
        ...(skirt.works.close as object),
        fields: { opening: sum(24), count: typed('7'), top: typed('1'), bottom: typed('1') },
      },
    },
  };
  const held = await openIn(garment, 'close');
  fireEvent.focus(field('Opening'));
  fireEvent.input(field('Opening'), { target: { value: `${field('Opening').value} + ` } });
  const before = held.state.record;
  fireEvent.click(screen.getByRole('button', { name: 'From the garment' }));
  fireEvent.click(await screen.findByRole('button', { name: /^Front edge/ }));
  expect(await alert()).toMatch(/^Not done: a field takes 24 numbers at the most\./);
  expect(held.state.record).toBe(before);
});

test('a row of 10,001 places is refused, one of 10,000 is not', async () => {
  const list = (count: number) => Array.from({ length: count }, (_, i) => i).join('; ');
  const garment = garmentOf({
    works: {
      row: {
        name: 'Row',
        calculation: 'toy-follow',
        rank: 1,
        fields: { row: typed('1; 2', 'mm'), by: typed('0') },
      },
    },
  });
  const held = await openIn(garment, 'row', {});
  const place = { work: 'row', field: 'row' } as const;
  held.act({ do: 'type', place, parts: typed(list(10_000), 'mm'), now: 1 });
  expect(held.refused).toBeUndefined();
  const before = held.state.record;
  type('Row', list(10_001));
  expect(await alert()).toMatch(/^Not done: a row has 10,?000 marks at the most\./);
  expect(held.state.record).toBe(before);
  // A quantity that is added is held to the same.
  const it = { name: 'Long', kind: 'run', rank: 9, parts: typed(list(10_001), 'mm') } as const;
  const added = act(begin(skirt, KNOWN), { do: 'add', to: 'quantities', id: 'q', it, now: 1 });
  expect(added.refused).toEqual({ why: 'limit', limit: 'row' });
});

test('nothing longer is measured or allowed either', () => {
  const state = begin(skirt, KNOWN);
  const measured = 8000 * 1_000_001;
  const refused = [
    act(state, { do: 'measure', quantity: 'front', measured, tape: 8000, id: 'm', now: 1 }),
    act(state, { do: 'make', home: 'close||marks', tape: 8000, id: 'm', measured, now: 1 }),
  ].map((done) => [done.refused, done.state === state]);
  expect(refused).toEqual(Array(2).fill([{ why: 'limit', limit: 'length' }, true]));
});

test('a count in a sum of lengths is a problem at that part, by its name', async () => {
  const garment = {
    ...skirt,
    works: {
      ...skirt.works,
      close: {
        ...(skirt.works.close as object),
        fields: {
          ...{ opening: [quantity('front'), ...typed(' + '), quantity('snaps')] },
          ...{ count: typed('7'), top: typed('1'), bottom: typed('1') },
        },
      },
    },
  };
  await openIn(garment, 'close');
  expect(
    screen.getByText(/^Opening: Snaps is not of the kind that belongs there, as a count among/),
  ).toBeTruthy();
  // After a sign a length is wanted, and no count is offered.
  fireEvent.focus(field('Opening'));
  fireEvent.input(field('Opening'), { target: { value: '2 + ' } });
  fireEvent.click(screen.getByRole('button', { name: 'From the garment' }));
  expect(await screen.findByRole('button', { name: /^Front edge/ })).toBeTruthy();
  expect(screen.queryByRole('button', { name: /^Snaps/ })).toBeNull();
});
