import { expect, test } from 'vitest';

import { readCount, readNumber } from '../../src/lengths/read-number.ts';

// Worked by hand.
test.each([
  ['7', 7],
  ['2.5', 2.5],
  ['2,5', 2.5],
  ['1/2', 0.5],
  ['1 1/2', 1.5],
  ['6½', 6.5],
  ['-3', -3],
  ['0.1', 0.1],
  ['-0', 0],
  ['9007199254740991', 9007199254740991],
  ['-9007199254740991', -9007199254740991],
  ['0.1 + 0.2', 0.3],
  ['2 × 7', 14],
  ['(2 + 5) × 2', 14],
  ['12 ÷ (2 − 6)', -3],
  ['46.3 cm ÷ 8 mm', 57.875],
  ['(46.3 cm − 1.2 cm) ÷ 8 mm + 1', 57.375],
])('reads the number %s', (typed, value) => {
  expect(readNumber(typed)).toEqual({ ok: true, value });
});

test.each([
  ['', 'empty', 0, ''],
  ['5 in', 'length-for-number', 0, '5 in'],
  ['5 in + 2', 'length-for-number', 0, '5 in + 2'],
  ['5 in × 2', 'length-for-number', 0, '5 in × 2'],
  ['(5 in + 2) ÷ 1 in', 'length-for-number', 1, '5 in + 2'],
  ['2 ÷ 5 in', 'divide-by-length', 2, '÷ 5 in'],
  ['1,000', 'thousands-unclear', 0, '1,000'],
  ['in', 'unfinished', 0, 'in'],
  ['6 %', 'not-understood', 2, '%'],
  ['1/', 'unfinished', 0, '1/'],
  [' 9007199254740993', 'too-large', 1, '9007199254740993'],
  ['-9007199254740993', 'too-large', 0, '-9007199254740993'],
  ['1 ÷ 0', 'divide-by-zero', 2, '÷ 0'],
  ['9'.repeat(200), 'too-large', 0, '9'.repeat(200)],
])('does not read %s as a number', (typed, kind, at, text) => {
  expect(readNumber(typed)).toStrictEqual({ ok: false, fault: { kind, at, text } });
  expect(readCount(typed)).toStrictEqual({ ok: false, fault: { kind, at, text } });
});

test.each([
  ['7', 7],
  ['7,0', 7],
  ['-2', -2],
  ['0', 0],
  ['6/2', 3],
  ['2 × 7', 14],
  ['18 in ÷ 1 1/2 in + 1', 13],
])('reads the count %s', (typed, value) => {
  expect(readCount(typed)).toEqual({ ok: true, value });
});

test.each([
  ['2.5', 0, '2.5', 2],
  [' 1/3 ', 1, '1/3', 0],
  ['46.3 cm ÷ 8 mm', 0, '46.3 cm ÷ 8 mm', 57],
  // Nearer to a whole number than a double can tell.
  ['9007199254740990.3', 0, '9007199254740990.3', 9007199254740990],
])('a count is whole, %s is not', (typed, at, text, below) => {
  expect(readCount(typed)).toEqual({ ok: false, fault: { kind: 'not-whole', at, text, below } });
});
