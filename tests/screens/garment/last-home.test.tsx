import { render, screen } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { isLastHome, LastHomeView } from '../../../src/screens/garment/home/last-home.tsx';

const LAST = {
  garment: 'g',
  name: 'Coat',
  made: '3 of 9 made',
  above: 'Back hem: press the first turn, from the raw edge',
  number: '24 13/16 in',
  below: 'then 2.7 cm',
  hand: 'left',
  bench: 'cm',
  changed: 1,
  edits: 0,
} as const;

test('until a garment is worked out, its next number stands there and can’t be pressed', () => {
  render(<LastHomeView last={LAST} />);
  const key = screen.getByRole('region', { name: 'The next step' });
  expect(key.textContent).toMatch(/24 .*13.16.* in/);
  expect(key.getAttribute('data-hand')).toBe('left');
  expect(screen.getByRole('button')).toHaveProperty('disabled', true);
});

test('what is kept of another garment, or is no home, is not shown', () => {
  expect(isLastHome(LAST, 'g')).toBe(true);
  expect(isLastHome(LAST, 'other')).toBe(false);
  expect(isLastHome({ ...LAST, number: 7 }, 'g')).toBe(false);
  expect(isLastHome(undefined, 'g')).toBe(false);
});
