import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { convert } from '../../src/calculations/convert/convert.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type } from '../screens/helpers.tsx';

afterEach(cleanup);

// One inch is 25.4 mm exactly: NBS Circular 572, addendum of 22 Jan 1960.
test('5/8 in is 1.6 cm on the tape, exactly 15.875 mm', async () => {
  open(convert, { length: '5/8 in' });
  const said = await answer();
  expect(said).toMatch(/^1\.6/);
  expect(said).toContain('Exactly 15.875 mm. The mark on your tape is 0.125 mm more.');
  expect(said).toContain('just on the mark');
});

test('one yard is 914.4 mm', async () => {
  open(convert, { length: '1 yd' });
  expect(await answer()).toContain('914.4 mm');
});

test('centimetres give inches, on the maker’s own graduation', async () => {
  open(convert);
  type('Length', '46,3');
  expect(await answer()).toMatch(/^18 1\/4.* in/);
  cleanup();
  const eighths = answerTo(convert, { length: '46.3' }, benchOf({ inch: '1/8in' }));
  expect(eighths.headline.number).toMatchObject({ whole: '18', fraction: { over: 1, under: 4 } });
});

// 24 button lines are 15.24 mm: 40 lines to the inch, sizes.com (a trade page).
test('button lines are a length too', async () => {
  open(convert, { length: '24 L' });
  const said = await answer();
  expect(said).toContain('15.24 mm');
  expect(said).toContain('In button lines (1/40 in)24');
});

test('a bench in inches takes a bare number as inches and answers in centimetres', async () => {
  open(convert, { length: '1' }, benchOf({ unit: 'in', decimalMark: ',' }));
  expect(await answer()).toMatch(/^2,5/);
});

test('what can’t be read is named with its place, and stays as typed', async () => {
  open(convert);
  type('Length', '12 -5/8');
  expect(await answer()).toMatch(/Length: is “12 -5\/8/);
  expect(screen.getByLabelText(/^Length/)).toHaveProperty('value', '12 -5/8');
  expect(screen.getByLabelText(/^Length/).getAttribute('aria-invalid')).toBe('true');
});

test('an unfinished number is no mistake', async () => {
  open(convert);
  type('Length', '5/');
  expect(await answer()).toContain('something is still missing');
  expect(screen.getByLabelText(/^Length/).getAttribute('aria-invalid')).toBe('false');
});

test('less than nothing is said so', async () => {
  open(convert);
  type('Length', '1 − 2');
  expect(await answer()).toContain('comes out below zero');
});

test('the first unit written says which tape the answer is for', () => {
  const unitOf = (length: string, unit: 'cm' | 'in') => {
    const { number } = answerTo(convert, { length }, benchOf({ unit })).headline;
    return typeof number === 'string' ? number : number.unit;
  };
  for (const typed of ['5 in x 2', '2 in * 3', '3 × 5/8 in', '5\'3"', '2 yards', '24 L', '1 FT']) {
    expect(unitOf(typed, 'cm'), typed).toBe('cm');
  }
  for (const typed of ['46.3', '3 cm x 2', '2 × 4 mm', '1.5 m ÷ 7', '4 CM']) {
    expect(unitOf(typed, 'cm'), typed).toBe('in');
  }
  expect(unitOf('5', 'in')).toBe('cm');
  expect(unitOf('2 x 12 cm', 'in')).toBe('in');
});

// 1 mm = 0.0393700… in: no decimals are exact.
test('what is rounded is not called exact, and its decimals have the mark that was chosen', async () => {
  open(convert, { length: '1 mm' }, benchOf({ unit: 'mm', decimalMark: ',' }));
  const said = await answer();
  expect(said).toContain('Nearly 0,0394 in');
  // The inch as its source writes it is the only point.
  expect(said.replace('The inch is 25.4 mm', '')).not.toMatch(/Exactly|\d\.\d/);
});

test('1,000 mm is asked about, and either meaning is one press away', async () => {
  open(convert, { length: '1,000 mm' });
  expect(await answer()).toContain('thousands or decimals?');
  fireEvent.click(await screen.findByRole('button', { name: 'I mean 1000 mm' }));
  expect(await answer()).toMatch(/^39 3\/8/);
});
