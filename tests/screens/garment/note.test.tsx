import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { NoteScreen } from '../../../src/screens/garment/order/note.tsx';
import { Noted } from '../../../src/screens/garment/order/noted.tsx';
import { benchOf } from '../../controls/helpers.ts';

afterEach(cleanup);
const done = { text: vi.fn(), photo: vi.fn(), off: vi.fn(), undo: vi.fn(), done: vi.fn() };
beforeEach(() => {
  for (const one of Object.values(done)) one.mockClear();
});

function show(set: Partial<Parameters<typeof NoteScreen>[0]> = {}) {
  render(
    <NoteScreen
      {...{ where: 'Hem: press', bench: benchOf(), note: undefined, photo: undefined }}
      {...{ opening: false, said: undefined, onText: done.text, onPhoto: done.photo }}
      {...{ onTakeOff: done.off, onUndo: undefined, onDone: done.done, ...set }}
    />,
  );
}
const press = (name: string) => fireEvent.click(screen.getByRole('button', { name }));
const type = (value: string) =>
  fireEvent.input(screen.getByLabelText('What to remember'), { target: { value } });

test('a text is kept, and left alone where nothing was typed', () => {
  show();
  press('Back');
  expect(done.text).not.toHaveBeenCalled();
  type('mind the nap');
  press('Keep the note');
  expect(done.text).toHaveBeenCalledWith('mind the nap');
  expect(done.done).toHaveBeenCalledTimes(2);
});

test('a photo goes with what is typed; it is shown, and taken off', () => {
  show();
  type('nap');
  const file = new File(['x'], 'nap.jpg', { type: 'image/jpeg' });
  fireEvent.change(screen.getByLabelText('Choose a photo'), { target: { files: [file] } });
  expect(done.photo).toHaveBeenCalledWith(file, 'nap');
  cleanup();
  show({ note: { text: 'nap', photo: 'p' }, photo: 'data:image/jpeg;base64,AAAA' });
  expect(screen.getByRole('img', { name: 'Photo at Hem: press' })).toBeTruthy();
  press('Take the photo off');
  expect(done.off).toHaveBeenCalledWith('nap');
});

test('a photo that isn’t on this phone is said to be missing; what went wrong is said', () => {
  show({ note: { photo: 'p' }, photo: null, said: 'No room.', onUndo: done.undo });
  expect(screen.getByText(/isn’t on this phone/)).toBeTruthy();
  expect(screen.getByRole('alert').textContent).toBe('No room.');
  press('Take the last change back');
  expect(done.undo).toHaveBeenCalled();
});

test('a photo that storage does not give is not said to be missing', () => {
  show({ note: { photo: 'p' }, photo: false });
  expect(screen.getByText(/storage does not answer/)).toBeTruthy();
  expect(screen.queryByText(/restore a backup/)).toBeNull();
});

test('on home it is seen, and opens', () => {
  render(
    <Noted
      {...{ where: 'Hem', text: 'nap', photo: 'data:image/jpeg;base64,AAAA', onOpen: done.done }}
    />,
  );
  fireEvent.click(screen.getByRole('button', { name: /nap/ }));
  expect(done.done).toHaveBeenCalled();
});
