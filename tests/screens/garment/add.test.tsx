import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { AddScreen } from '../../../src/screens/garment/add/add.tsx';
import { benchOf } from '../../controls/helpers.ts';

afterEach(cleanup);

const nothing = () => undefined;
const NONE = {
  off: [],
  said: undefined,
  onAdd: nothing,
  offers: () => true,
  onMeasure: nothing,
  onMaterials: nothing,
  onLay: nothing,
  onPutBack: nothing,
};
const shown = (set: Partial<Parameters<typeof AddScreen>[0]>) =>
  render(
    <AddScreen
      {...NONE}
      name="Coat"
      bench={benchOf()}
      onAll={nothing}
      onLeave={nothing}
      {...set}
    />,
  );
const press = (name: string) => fireEvent.click(screen.getByRole('button', { name }));

test('what gives something to a garment can be added, and nothing else', () => {
  const onAdd = vi.fn();
  shown({ onAdd, offers: (id) => id !== 'convert' });
  expect(screen.queryByRole('button', { name: 'Inches and centimetres' })).toBeNull();
  press('Hem');
  expect(onAdd).toHaveBeenCalledWith('hem', 'Hem');
});

test('what is to be at hand is one press from here', () => {
  const onMaterials = vi.fn();
  shown({ onMaterials });
  press('Materials: what to buy');
  expect(onMaterials).toHaveBeenCalledOnce();
});

test('a work that was taken off is put back by a press', () => {
  const onPutBack = vi.fn();
  shown({ off: [{ id: 'back', name: 'Back hem' }], onPutBack });
  press('Put Back hem back');
  expect(onPutBack).toHaveBeenCalledWith('back');
});
