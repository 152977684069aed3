import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { closures } from '../../src/calculations/closures/closures.ts';
import { Choices } from '../../src/controls/choices.tsx';
import { open } from '../screens/helpers.tsx';

afterEach(cleanup);

const field = {
  kind: 'choice',
  key: 'ends',
  label: 'Ends',
  options: [
    { value: 'given', label: 'As given' },
    { value: 'half', label: 'Half a space' },
  ],
} as const;

const pressed = () =>
  screen.getAllByRole('button', { pressed: true }).map(({ textContent }) => textContent);

test('one way is chosen, the first where nothing is; a press chooses another', () => {
  const choose = vi.fn();
  const next = vi.fn();
  const choices = (chosen: string) => (
    <Choices field={field} chosen={chosen} hand="left" onChoose={choose} onNext={next} />
  );
  const { rerender } = render(choices(''));
  expect(pressed()).toEqual(['As given']);
  fireEvent.click(screen.getByRole('button', { name: 'Half a space' }));
  expect(choose).toHaveBeenCalledExactlyOnceWith('half');
  rerender(choices('half'));
  expect(pressed()).toEqual(['Half a space']);
  fireEvent.click(screen.getByRole('button', { name: 'Next' }));
  expect(next).toHaveBeenCalledOnce();
  expect(screen.getByRole('group', { name: 'Ends' }).dataset.hand).toBe('left');
});

test('its tile opens it where the pad was, and choosing changes the fields', async () => {
  open(closures);
  expect(screen.getByLabelText(/^First, from the top/)).toBeTruthy();
  fireEvent.click(await screen.findByRole('button', { name: /^Ends/ }));
  fireEvent.click(await screen.findByRole('button', { name: 'A whole space' }));
  expect(screen.queryByLabelText(/^First, from the top/)).toBeNull();
  expect(screen.getByRole('button', { name: /^Ends/ }).textContent).toContain('A whole space');
});
