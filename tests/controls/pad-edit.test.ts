import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nudge } from '../../src/controls/nudge.ts';
import {
  erase,
  tailOf,
  typeBracket,
  typeDigit,
  typeOperator,
  typePoint,
  typeSeparator,
  typeSixteenths,
  typeStroke,
  typeUnit,
} from '../../src/controls/pad-edit.ts';
import { readLength } from '../../src/lengths/read-length.ts';
import { benchOf } from './helpers.ts';

test('digits and the decimal mark make a number, once', () => {
  const typed = ['4', '6'].reduce(typeDigit, '');
  expect(typePoint(typed, '.')).toBe('46.');
  expect(typePoint('46.', '.')).toBe('46.');
  expect(typePoint('46.3', ',')).toBe('46.3');
});

test('fraction keys add up to a reduced mixed number', () => {
  expect(typeSixteenths('', 10)).toBe('5/8');
  expect(typeSixteenths('1', 10)).toBe('1 5/8');
  expect(typeSixteenths('5/8', 1)).toBe('11/16');
  expect(typeSixteenths('7/8', 2)).toBe('1');
  expect(typeSixteenths('12.5', 2)).toBe('12 5/8');
  expect(typeSixteenths('1/3', 2)).toBe('1/3');
});

test('a digit after a whole fraction of a tape is a slip and does nothing', () => {
  expect(typeDigit('5/8', '3')).toBe('5/8');
  expect(typeDigit('5/1', '6')).toBe('5/16');
  expect(typeDigit('5/3', '2')).toBe('5/32');
});

test('one key opens a bracket, closes it, or puts all in brackets', () => {
  const keys = ['2', '×', '(', '3', '+', '4', '(', '÷', '7'];
  const typed = keys.reduce((text, key) => {
    if (key === '(') return typeBracket(text);
    return /\d/.test(key) ? typeDigit(text, key) : typeOperator(text, key as '×' | '+' | '÷');
  }, '');
  expect(typed).toBe('2 × (3 + 4) ÷ 7');
  expect(typeBracket('46.3 − 1.2 − 2.5')).toBe('(46.3 − 1.2 − 2.5)');
  expect(typeBracket('4; 12 − 3')).toBe('4; 12 − 3');
  expect(typeBracket('4; ')).toBe('4; (');
});

test('nothing is added to a closed bracket but a unit and an operator', () => {
  for (const closed of ['(3 + 4)', '(3 + 4) cm']) {
    expect(typeDigit(closed, '5')).toBe(closed);
    expect(typePoint(closed, '.')).toBe(closed);
    expect(typeSixteenths(closed, 2)).toBe(closed);
    expect(typeStroke(closed)).toBe(closed);
    expect(nudge(closed, benchOf(), 8000)).toBe(closed);
  }
  expect(typeUnit('(3 + 4)', 'cm')).toBe('(3 + 4) cm');
  expect(typeUnit('(3 + 4) cm', 'cm')).toBe('(3 + 4)');
  expect(erase('(3 + 4) cm')).toBe('(3 + 4)');
  expect(erase('(3 + 4)')).toBe('(3 + 4');
  expect(typeOperator('2 × (', '+')).toBe('2 × (');
  expect(typeDigit('2 × (3', '5')).toBe('2 × (35');
});

test('a stroke needs a whole number before it', () => {
  expect(typeStroke('5')).toBe('5/');
  expect(typeStroke('5.5')).toBe('5.5');
  expect(typeStroke('')).toBe('');
});

test('the unit goes after the number and keys go on before it', () => {
  expect(typeUnit('5/8', 'in')).toBe('5/8 in');
  expect(typeUnit('5/8 in', 'in')).toBe('5/8');
  expect(typeSixteenths('5/8 in', 1)).toBe('11/16 in');
  expect(typeDigit('4 cm', '6')).toBe('46 cm');
});

test('an operator follows a number, and a second one replaces the first', () => {
  expect(typeOperator('5 cm', '+')).toBe('5 cm + ');
  expect(typeOperator('5 cm + ', '−')).toBe('5 cm − ');
  expect(typeOperator('', '×')).toBe('');
});

test('a list gets one separator after each length', () => {
  expect(typeSeparator('1.2')).toBe('1.2; ');
  expect(typeSeparator('1.2; ')).toBe('1.2; ');
});

test('erasing goes back through number, unit and operator', () => {
  const steps = ['12 in + 5 cm', '12 in +  cm', '12 in + ', '12 in', '1 in', ' in', ''];
  for (let i = 1; i < steps.length; i++) expect(erase(steps[i - 1] as string)).toBe(steps[i]);
});

const keys = fc.constantFrom(
  (text: string) => typeDigit(text, '7'),
  (text: string) => typePoint(text, ','),
  (text: string) => typeStroke(text),
  (text: string) => typeUnit(text, 'mm'),
  (text: string) => typeSixteenths(text, 3),
);

test('whatever is typed, a key of a number leaves all before the last number alone', () => {
  fc.assert(
    fc.property(fc.string(), fc.constantFrom('1.2', '5/8', '3 in', ''), keys, (junk, last, key) => {
      const head = `${junk} + `;
      const before = `${head}${last}`;
      expect(key(before).startsWith(tailOf(before).head)).toBe(true);
    }),
  );
});

test('no key ever fails, on any text', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), keys, (text, key) => {
      expect(typeof key(text)).toBe('string');
      expect(typeof erase(text)).toBe('string');
      expect(typeof typeOperator(text, '÷')).toBe('string');
    }),
  );
});

test('sixteenths add up exactly, and are reduced', () => {
  fc.assert(
    fc.property(fc.nat(400), fc.integer({ min: 1, max: 15 }), (have, more) => {
      const first = typeSixteenths('', have);
      const text = typeSixteenths(first === '' ? '0' : first, more);
      const sum = readLength(text, 'in');
      expect(sum).toMatchObject({ ok: true, value: (have + more) * 12_700 });
      expect(text).toMatch(/^\d+$|^(\d+ )?\d*[13579]\/(2|4|8|16)$/);
    }),
  );
});

/** Sums such as a maker types, each number with a digit to come. */
const sums = fc
  .array(fc.constantFrom('4', '12', '46.3', '12 in', '5 cm', '3,5 mm', '2 yd'), { maxLength: 4 })
  .chain((terms) => fc.constantFrom(' + ', ' − ', '; ').map((between) => terms.join(between)));

test('a digit typed and erased again leaves the text as it was', () => {
  fc.assert(
    fc.property(sums, fc.constantFrom('0', '5', '9'), (text, digit) => {
      expect(erase(typeDigit(text, digit))).toBe(text);
    }),
  );
});

test('a text as long as only an address can hold does not hold the keys up', () => {
  const long = `${' '.repeat(100_000)}x`;
  for (const text of [long, `1${long}1`, '1+'.repeat(50_000)]) {
    expect(typeDigit(text, '4')).toBe(`${text}4`);
    expect(typeOperator(text, '×').endsWith(' × ')).toBe(true);
    expect(erase(text).length).toBeLessThan(text.length);
  }
});

test('a number read off a photo loses its doubt once it is changed', () => {
  const read = '46.32 ± 0.02 cm';
  expect(tailOf(read)).toEqual({ head: '', number: '46.32', unit: ' cm' });
  expect(typeDigit(read, '5')).toBe('46.325 cm');
  expect(erase(read)).toBe('46.3 cm');
  expect(typeUnit(read, 'mm')).toBe('46.32 mm');
  expect(typeOperator(read, '÷')).toBe('46.32 ± 0.02 cm ÷ ');
  expect(typeDigit('3 cm + 46.32 ± 0.02 cm', '5')).toBe('3 cm + 46.325 cm');
});
