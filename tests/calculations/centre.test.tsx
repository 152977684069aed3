import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { centre } from '../../src/calculations/centre/centre.ts';
import { boundsOf, stylesOf } from '../../src/drawing/figure.ts';
import { countedRow } from '../../src/drawing/row-figure.ts';
import { answer, answerTo, open, type } from '../screens/helpers.tsx';

afterEach(cleanup);

test('27 holes at 8 mm: the middle is hole 14, 20.8 cm in all (the invented waistcoat)', async () => {
  open(centre, { count: '27', pitch: '8 mm' });
  const said = await answer();
  expect(said).toContain('The middle is hole 14: 13 on each side. At this pitch that is 20.8 cm');
  expect(said).toContain('Quarters1/4'.slice(0, 8));
  expect(screen.getByRole('button', { name: 'Count' })).toBeTruthy();
});

test('a count that the tape doesn’t bear out is doubted, with the likelier one to take', async () => {
  open(centre, { count: '27', pitch: '8 mm', measured: '21.6' });
  expect(await answer()).toContain('28 holes are likelier');
  fireEvent.click(await screen.findByText('28 holes'));
  expect(await answer()).toContain('between holes 14 and 15');
});

test('a count that can’t be names its field', async () => {
  open(centre);
  type('Holes counted', '1');
  await screen.findByText(/Holes counted: give at least 2/);
});

test('the row is drawn hole to hole to scale, a long one round its middle', () => {
  expect(boundsOf(countedRow(5, 8)).width).toBeCloseTo(6 * 8, 6);
  // They are there already: nothing is to be cut.
  expect(stylesOf(countedRow(5, 8))).toEqual(['cloth', 'hole', 'measure']);
  expect(boundsOf(countedRow(2000, 8)).width).toBeCloseTo(16 * 8, 6);
});

test('where no count agrees with the length, none is offered', () => {
  const { offers, warnings } = answerTo(centre, { count: '9', pitch: '8 mm', measured: '1 mm' });
  expect(offers).toEqual([]);
  expect(warnings.join()).toMatch(/0\.1 cm was measured\. Count again/);
});

test('a count that is doubted is headed so, not as sure', () => {
  const headOf = (set: Record<string, string>) => answerTo(centre, set).headline.after;
  expect(headOf({ count: '27' })).toBe('holes');
  expect(headOf({ count: '27', other: '26' })).toBe('holes counted, in doubt');
  expect(headOf({ count: '27', measured: '30 cm' })).toBe('holes counted, in doubt');
});
