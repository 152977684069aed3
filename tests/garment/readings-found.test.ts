import { expect, test } from 'vitest';
import { fieldText, partAt } from '../../src/garment/work-out/field-text.ts';
import { withReadings } from '../../src/garment/work-out/readings.ts';
import { inches, mm } from '../../src/lengths/length.ts';
import { letterOf } from '../../src/lengths/taken.ts';
import { quantity, typed } from './trial/garments.ts';

const [A, B, C] = [0, 1, 2].map(letterOf) as [string, string, string];
const found = (text: string) => withReadings(fieldText(typed(text)));

test('each length that was read gets a letter of its own, as it stands and how sure it is', () => {
  const { text, read } = found('2 + 46.32 ± 0.02 cm × 2 - (46 5/16 ± 0.02 in)');
  expect(text.text).toBe(`2 + ${A} × 2 - (${B})`);
  expect(read).toEqual([
    { value: mm(463.2), plusMinus: mm(0.2) },
    { value: inches(46.3125), plusMinus: inches(0.02) },
  ]);
  expect(found('5/8±0.01in').read).toEqual([{ value: inches(0.625), plusMinus: inches(0.01) }]);
});

test('their letters come after those of what is taken, and a place is in the part it was in', () => {
  const parts = [
    ...[quantity('front'), ...typed(' + 4.5 ± 0.1 cm'), ...typed(' + 1 ± 0.1 cm')],
    ...[...typed(' - 3 '), quantity('ease')],
  ];
  const { text } = withReadings(fieldText(parts));
  const [front, ease] = [A, B];
  const [first, second] = [C, letterOf(3)];
  expect(text.text).toBe(`${front} + ${first} + ${second} - 3 ${ease}`);
  const at = [front, first, second, '3', ease].map((one) => partAt(text, text.text.indexOf(one)));
  expect(at).toEqual([0, 1, 2, 3, 4]);
});

const NONE = [
  '46.3 cm',
  '',
  '±',
  '46.3 ± cm',
  '1.2.3 ± 0.1 cm',
  '46.3 ± 0.1.2 cm',
  '46.3 ± 0 cm',
  '46.3 ± 0.1 ell',
];
test.each(NONE.map((one) => [one]))(
  'nothing is read as sure to an end in “%s”, which stays',
  (text) => {
    const field = fieldText(typed(text));
    const { text: left, read } = withReadings(field);
    expect(read).toEqual([]);
    expect(left).toBe(field);
  },
);

test('what is no reading stays between those that are', () => {
  const { text, read } = found('1 ± 0.1 cm + 1.2.3 ± 0.1 cm + 3 ± 0.1 cm');
  expect(text.text).toBe(`${A} + 1.2.3 ± 0.1 cm + ${B}`);
  expect(read.map(({ value }) => value)).toEqual([mm(10), mm(30)]);
});

test('of 24 each is followed, of one more none: each would be worked out at both its ends', () => {
  const many = (count: number) => found(Array(count).fill('1 ± 0.1 cm').join('+')).read.length;
  expect([1, 2, 24, 25].map(many)).toEqual([1, 2, 24, 0]);
});
