import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { garmentAddWords } from '#words/garment-add-words.ts';
import { OUTPUTS } from '../../../src/calculations/list.ts';
import { AddScreen } from '../../../src/screens/garment/add.tsx';
import { benchOf } from '../../controls/helpers.ts';

afterEach(cleanup);

const nothing = () => undefined;
const NONE = { off: [], said: undefined, onAdd: nothing, onMeasure: nothing, onPutBack: nothing };
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

test('every calculation that gives something can be added, and no other', () => {
  expect(Object.keys(garmentAddWords.works).sort()).toEqual(Object.keys(OUTPUTS).sort());
  const onAdd = vi.fn();
  shown({ onAdd });
  press('Hem');
  expect(onAdd).toHaveBeenCalledWith('hem', 'Hem');
});

test('a work that was taken off is put back by a press', () => {
  const onPutBack = vi.fn();
  shown({ off: [{ id: 'back', name: 'Back hem' }], onPutBack });
  press('Put Back hem back');
  expect(onPutBack).toHaveBeenCalledWith('back');
});
