import { describe, expect, test } from 'vitest';

import { STEP, toGraduation } from '../../src/lengths/graduation.ts';
import { exactLength, inches, type Length, mm, ZERO } from '../../src/lengths/length.ts';
import {
  remainder,
  showExact,
  shownNumber,
  shownText,
  showOnTape,
} from '../../src/lengths/show-length.ts';

// Worked by hand throughout.
describe('on the tape in hand', () => {
  test('a fraction comes apart for sup and sub', () => {
    expect(showOnTape(inches(1.625), STEP['1/8in'], 'in')).toEqual({
      negative: false,
      whole: '1',
      fraction: { over: 5, under: 8 },
      unit: 'in',
      rounded: false,
    });
  });

  test.each([
    [inches(1.625), '1/8in', 'in', '1 5/8 in'],
    [inches(0.625), '1/16in', 'in', '5/8 in'],
    [inches(2), '1/32in', 'in', '2 in'],
    [inches(1.99), '1/8in', 'in', '2 in'],
    [ZERO, '1/8in', 'in', '0 in'],
    [mm(154), '1mm', 'cm', '15.4 cm'],
    [mm(154.5), '0.5mm', 'cm', '15.45 cm'],
    [mm(15.5), '0.5mm', 'mm', '15.5 mm'],
    [mm(15.4), '1mm', 'mm', '15 mm'],
    [mm(150), '1mm', 'cm', '15 cm'],
    [mm(-3), '1mm', 'mm', '−3 mm'],
    [inches(-0.625), '1/8in', 'in', '−5/8 in'],
    // Tape and unit of different systems: decimals enough to tell the marks apart.
    [inches(0.625), '1/16in', 'mm', '15.9 mm'],
    [inches(0.625), '1/8in', 'cm', '1.59 cm'],
    [mm(16), '1mm', 'in', '0.63 in'],
    [mm(25.5), '0.5mm', 'in', '1 in'],
  ] as const)('%d units on a %s tape in %s: %s', (value, step, unit, text) => {
    expect(shownText(showOnTape(value, STEP[step], unit), '.')).toBe(text);
  });

  test('says when what is shown is not quite the length', () => {
    const rounded = (x: Length, step: Length, unit: 'mm' | 'in') =>
      showOnTape(x, step, unit).rounded;
    expect(rounded(mm(16), STEP['1mm'], 'mm')).toBe(false);
    expect(rounded(inches(0.625), STEP['1mm'], 'mm')).toBe(true);
    expect(rounded(inches(0.625), STEP['1/8in'], 'in')).toBe(false);
    expect(rounded(inches(0.625), STEP['1/8in'], 'mm')).toBe(true);
    expect(rounded(mm(0.4), STEP['1mm'], 'mm')).toBe(true);
  });

  test('nothing rounded away leaves no minus sign', () => {
    expect(shownText(showOnTape(mm(-0.4), STEP['1mm'], 'mm'), '.')).toBe('0 mm');
    expect(shownText(showExact(mm(-0.04), 'mm', 1), '.')).toBe('0 mm');
  });

  test('the remainder is what rounding left out', () => {
    // 5/8 in is 15.875 mm: 16 mm on the tape, less 0.125.
    expect(remainder(inches(0.625), STEP['1mm'])).toBe(mm(-0.125));
    expect(remainder(inches(0.625), STEP['1/8in'])).toBe(0);
    expect(remainder(exactLength((mm(15) / 7) * 7), STEP['1mm'])).toBe(0);
  });
});

test('a graduation finer than any tape here has is shown whole', () => {
  expect(shownText(showOnTape(mm(1.25), mm(0.25), 'mm'), '.')).toBe('1.25 mm');
  expect(shownText(showOnTape(mm(1.125), mm(0.125), 'cm'), '.')).toBe('0.1125 cm');
});

test.each([
  [90, 6, '.', '90'],
  [1 / 3, 4, ',', '0,3333'],
  [2 / 3, 2, '.', '0.67'],
  [57.875, 2, ',', '57,88'],
  [2.4, 0, '.', '2'],
  [-1.25, 1, '.', '-1.2'],
] as const)('the number %d to %d decimals: %s%s', (value, places, mark, text) => {
  expect(shownNumber(value, places, mark)).toBe(text);
});

describe('exactly', () => {
  test.each([
    [inches(0.625), 'mm', '15.875 mm', false],
    [inches(0.625), 'cm', '1.5875 cm', false],
    [inches(0.625), 'in', '5/8 in', false],
    [inches(1.015625), 'in', '1 1/64 in', false],
    [inches(0.1), 'in', '0.1 in', false],
    [mm(10), 'in', '0.3937 in', true],
    [mm(-10), 'in', '−0.3937 in', true],
    [mm(254), 'in', '10 in', false],
    [inches(1 / 64), 'mm', '0.3969 mm', true],
    [inches(1 / 32), 'mm', '0.7938 mm', true],
    [inches(3 / 32), 'mm', '2.3812 mm', true],
    [mm(0.01), 'cm', '0.001 cm', false],
    [mm(1_000_000), 'mm', '1000000 mm', false],
  ] as const)('%d units in %s: %s', (value, unit, text, rounded) => {
    const shown = showExact(value, unit);
    expect(shownText(shown, '.')).toBe(text);
    expect(shown.rounded).toBe(rounded);
  });

  test('to as many places as asked', () => {
    const text = (places: number) => shownText(showExact(inches(0.625), 'mm', places), '.');
    expect([0, 1, 2, 3, 6].map(text)).toEqual([
      '16 mm',
      '15.9 mm',
      '15.88 mm',
      '15.875 mm',
      '15.875 mm',
    ]);
  });

  test('with the decimal mark asked for', () => {
    expect(shownText(showExact(mm(12.5), 'cm'), ',')).toBe('1,25 cm');
  });

  test('a true division is rounded, its noise is not', () => {
    expect(showExact(exactLength(mm(10) / 3), 'mm')).toMatchObject({
      decimals: '3333',
      rounded: true,
    });
    expect(showExact(exactLength((mm(15.3) / 7) * 7), 'mm')).toMatchObject({ rounded: false });
  });
});

describe('the nearest graduation', () => {
  // Midway goes to the even graduation: NIST Handbook 44, §10.3.
  test('midway goes to the even one', () => {
    const halves = [0.5, 1.5, 2.5, 3.5, -0.5, -1.5, -2.5].map((x) =>
      toGraduation(mm(x), STEP['1mm']),
    );
    expect(halves).toEqual([0, 2, 2, 4, 0, -2, -2].map((x) => mm(x)));
    expect(toGraduation(inches(1 / 16), STEP['1/8in'])).toBe(0);
    expect(toGraduation(inches(3 / 16), STEP['1/8in'])).toBe(inches(1 / 4));
  });

  test('midway is midway however it was worked out', () => {
    for (let count = 2; count <= 60; count++) {
      for (let i = 1; i < count; i++) {
        const there = exactLength((mm(i + 0.5) / count) * count);
        expect(toGraduation(there, STEP['1mm'])).toBe(mm(i % 2 === 0 ? i : i + 1));
      }
    }
  });
});
