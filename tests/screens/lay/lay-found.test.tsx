import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { type Fall, LayFound, type LaySums, stepsOf } from '../../../src/screens/lay/lay-found.tsx';
import { benchOf } from '../../controls/helpers.ts';

afterEach(cleanup);

const SUMS: LaySums = { most: '190 cm', sold: '1.9 m', takes: '187 cm', beside: [], used: '82.1' };
const FELL: Fall[] = [
  { seconds: 0.2, length: 2100 },
  { seconds: 5, length: 2000 },
  { seconds: 10, length: 1870 },
];
const show = (sums: LaySums | undefined, fell: readonly Fall[] = []) =>
  render(<LayFound bench={benchOf()} sums={sums} fell={fell} />);
const headline = () => document.querySelector('.to-buy');
const text = () => document.body.textContent;

test('the length to buy is the headline; what it takes and how well it is used stand under it', () => {
  show(SUMS);
  expect(headline()?.textContent).toBe('Buy 190 cm (1.9 m)');
  expect(text()).toMatch(/Takes 187 cm.* · 82.1 % used/);
  expect(screen.queryByRole('img')).toBeNull();
});

test('where what to buy can’t be reckoned the length itself is the headline, and is said once', () => {
  show({ ...SUMS, most: '187 cm', sold: undefined, takes: undefined });
  expect(headline()?.textContent).toBe('Takes 187 cm');
  expect(text()?.match(/187/g)).toHaveLength(1);
});

test('no length is told where there is none, but how it fell before is', () => {
  show(undefined, FELL);
  expect(headline()).toBeNull();
  expect(text()).toMatch(/Found: 210 cm → 200 cm → 187 cm/);
});

test('the length is seen to fall over the seconds it took, and is said', () => {
  show(SUMS, FELL);
  const fell = screen.getByRole('img', { name: 'The length fell from 210 cm to 187 cm in 10 s' });
  expect(fell.querySelector('path')?.getAttribute('d')).toBe(stepsOf(FELL));
  // 100 of 230 mm after half the time, all of them at its end.
  expect(stepsOf(FELL)).toBe('M0 0H45V8.7H90V20H100');
});

test('one lay is no fall, and a fall that can’t be shown is a line', () => {
  show(SUMS, FELL.slice(0, 1));
  expect(screen.queryByRole('img')).toBeNull();
  expect(text()).toMatch(/Found: 210 cm/);
  expect(stepsOf([])).toBe('');
  expect(stepsOf([{ seconds: 0, length: 5 }])).toBe('M0 0H100');
});
