import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { FindScreen } from '../../../src/screens/find/find.tsx';

const onOpen = vi.fn();
const onLeave = vi.fn();
beforeEach(() => {
  vi.clearAllMocks();
  render(<FindScreen hand="right" onOpen={onOpen} onLeave={onLeave} />);
});
afterEach(cleanup);

const look = (text: string) =>
  fireEvent.input(screen.getByRole('searchbox'), { target: { value: text } });
const shown = () =>
  within(screen.getByRole('navigation'))
    .getAllByRole('button')
    .map((button) => button.textContent);

test('calculations stand at their stage; one press opens', () => {
  const stage = screen.getByRole('region', { name: 'Turn up' });
  fireEvent.click(within(stage).getByRole('button', { name: 'Hem' }));
  expect(onOpen).toHaveBeenCalledWith('hem', 'Hem');
});

test('what is typed finds by name and by use', () => {
  look('how much ribbon');
  expect(shown()).toEqual(['Lacing']);
  look('drawstring');
  expect(shown()).toEqual(['Drawstring and its casing']);
  look('pin tucks');
  expect(shown()).toEqual(['Tucks']);
  look('frill');
  expect(shown()).toEqual(expect.arrayContaining(['Gathers and frills']));
  look('waistband');
  expect(shown()).toEqual(expect.arrayContaining(['Waistband and cuff']));
  look('collar');
  expect(shown()).toEqual(expect.arrayContaining(['Collar']));
  look('godet');
  expect(shown()).toEqual(expect.arrayContaining(['Flare, godets, another length']));
  look('uneven hem');
  expect(shown()).toEqual(expect.arrayContaining(['Hem levelled from the floor']));
  look('bust dart');
  expect(shown()).toEqual(expect.arrayContaining(['Darts between two girths', 'One dart']));
  look('');
  expect(shown().length).toBeGreaterThan(10);
});

test('where nothing fits that is said, and all stay in reach', () => {
  look('anvil');
  expect(screen.getByRole('status').textContent).toMatch(/anvil/);
  expect(shown()).toContain('Hem');
  look('hem');
  expect(screen.getByRole('status').textContent).toBe('');
});

test('pressed, the field goes above the phone’s own keys and stays there', () => {
  const search = () => document.querySelector('search')?.dataset.searching;
  expect(search()).toBe('false');
  fireEvent.focus(screen.getByRole('searchbox'));
  expect(search()).toBe('true');
  fireEvent.blur(screen.getByRole('searchbox'));
  expect(search()).toBe('true');
});
