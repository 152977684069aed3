import { describe, expect, test } from 'vitest';

import { inches, LONGEST, mm } from '../../src/lengths/length.ts';
import type { ReadFaultKind } from '../../src/lengths/read-fault.ts';
import { readLength } from '../../src/lengths/read-length.ts';
import { readLengths } from '../../src/lengths/read-lengths.ts';
import type { Unit } from '../../src/lengths/unit.ts';

const value = (typed: string, bare: Unit = 'in') => {
  const read = readLength(typed, bare);
  return read.ok ? read.value : `${read.fault.kind} at ${read.fault.at}: ${read.fault.text}`;
};

describe('one number takes the unit of its field', () => {
  // What each way of writing means is common practice on tapes and patterns, no source.
  test.each([
    ['12', 12],
    ['12.5', 12.5],
    ['12,5', 12.5],
    ['.5', 0.5],
    [',5', 0.5],
    ['12.', 12],
    ['007', 7],
    ['0', 0],
    ['5/8', 0.625],
    ['5 / 8', 0.625],
    ['12/8', 1.5],
    ['1 5/8', 1.625],
    ['1  5/8', 1.625],
    ['1-5/8', 1.625],
    ['1\u20105/8', 1.625],
    ['1\u20115/8', 1.625],
    ['1⅝', 1.625],
    ['1 ⅝', 1.625],
    ['1-⅝', 1.625],
    ['5⁄8', 0.625],
    ['5∕8', 0.625],
    ['1 5⁄8', 1.625],
    ['\u00a012\u202f', 12],
    ['-3', -3],
    ['- 3', -3],
    ['−3', -3],
    ['–3', -3],
    ['-1-5/8', -1.625],
  ])('%s', (typed, expected) => {
    expect(value(typed)).toBe(inches(expected));
    expect(value(typed, 'cm')).toBe(mm(expected * 10));
  });

  test('a decimal comma is never a thousands mark', () => {
    expect(value('1,234', 'mm')).toBe(mm(1.234));
  });
});

// The names in Unicode's character table (block Number Forms and Latin-1), from memory.
test.each([
  ['¼', 1, 4],
  ['½', 1, 2],
  ['¾', 3, 4],
  ['⅐', 1, 7],
  ['⅑', 1, 9],
  ['⅒', 1, 10],
  ['⅓', 1, 3],
  ['⅔', 2, 3],
  ['⅕', 1, 5],
  ['⅖', 2, 5],
  ['⅗', 3, 5],
  ['⅘', 4, 5],
  ['⅙', 1, 6],
  ['⅚', 5, 6],
  ['⅛', 1, 8],
  ['⅜', 3, 8],
  ['⅝', 5, 8],
  ['⅞', 7, 8],
  ['↉', 0, 3],
])('the vulgar fraction %s is %i/%i', (typed, over, under) => {
  expect(readLength(typed, 'in')).toEqual(readLength(`${over}/${under}`, 'in'));
  expect(value(`2${typed}`)).toBe(inches(2 + over / under));
});

describe('units', () => {
  test.each<[string, number]>([
    ['15 mm', 15],
    ['15mm', 15],
    ['15 MM', 15],
    ['1.5cm', 15],
    ['1.2 m', 1200],
    ['1.2 M', 1200],
    ['5/8 in', 15.875],
    ['5/8in', 15.875],
    ['1 inch', 25.4],
    ['2 Inches', 50.8],
    ['5/8"', 15.875],
    ['5/8 "', 15.875],
    ['5/8″', 15.875],
    ['5/8”', 15.875],
    ['5/8“', 15.875],
    ["5/8''", 15.875],
    ['5/8′′', 15.875],
    ['5/8’’', 15.875],
    ['2 ft', 609.6],
    ["2'", 609.6],
    ['2′', 609.6],
    ['2’', 609.6],
    ['2 yd', 1828.8],
    ['1 yard', 914.4],
    ['2 yards', 1828.8],
    ['24 L', 15.24],
    ['24L', 15.24],
    ['1 line', 0.635],
    ['24 lines', 15.24],
    ['12. in', 304.8],
  ])('%s is %d mm', (typed, millimetres) => {
    for (const bare of ['mm', 'cm', 'in'] as const) {
      expect(value(typed, bare)).toBe(mm(millimetres));
    }
  });

  test('a small l is no button line: it can not be told from a one', () => {
    expect(value('24l')).toBe('not-understood at 2: l');
  });
});

describe('a larger unit followed by a smaller one adds', () => {
  test.each<[string, number]>([
    [`5' 3 1/2"`, 63.5],
    [`5'3 1/2"`, 63.5],
    ['5’ 3½”', 63.5],
    ["5'3''", 63],
    ['5 ft 3 in', 63],
    ['1 yd 9 in', 45],
    ['1 yd 2 ft 3 in', 63],
    [`-5' 3"`, -63],
    ['5 ft .5 in', 60.5],
    ['5ft3.5in', 63.5],
    [`5' ½"`, 60.5],
    [`2 × 5' 3"`, 126],
    [`5' 3" - 1-1/2`, 61.5],
  ])('%s is %d in', (typed, expected) => {
    expect(value(typed)).toBe(inches(expected));
  });

  test('metric', () => {
    expect(value('1 m 20 cm')).toBe(mm(1200));
    expect(value('1m20cm5mm')).toBe(mm(1205));
  });

  test.each([
    ['3 in 5 ft', 'not-understood at 5: 5 ft'],
    ['5 mm 3 cm', 'not-understood at 5: 3 cm'],
    ['1 m 3 in', 'not-understood at 4: 3 in'],
    ['1 in 4 L', 'not-understood at 5: 4 L'],
    ['1 in 2 in', 'not-understood at 5: 2 in'],
    ["5' 3", 'not-understood at 3: 3'],
    ["5' 3 + 1", 'not-understood at 3: 3'],
    ['1 yd 9 in 2 ft', 'not-understood at 10: 2 ft'],
    ['12 in 5/8', 'not-understood at 6: 5/8'],
    ['5 in in', 'not-understood at 5: in'],
    ['5 ft.5 in', 'not-understood at 4: .5'],
  ])('anything else side by side is not understood: %s', (typed, fault) => {
    expect(value(typed)).toBe(fault);
  });
});

describe('sums', () => {
  // Worked by hand.
  test('lengths of both systems', () => {
    expect(value('12 3/8 in + 1.5 cm - 2 × 5/8 in', 'mm')).toBe(mm(12.375 * 25.4 + 15 - 31.75));
  });

  test.each<[string, number]>([
    ['12 - 5/8', 11.375],
    ['12−5/8', 11.375],
    ['12 – 5/8', 11.375],
    ['12-5', 7],
    ['12 -5', 7],
    ['1/2-3/8', 0.125],
    ['1-5/8-3/8', 1.25],
    ['2-1-5/8', 0.375],
    ['12 in -5/8', 11.375],
    ['12"-5/8"', 11.375],
    ['1.5-5/8', 0.875],
    ['3 - 5', -2],
    ['-3 + 5', 2],
    ['2 × 3', 6],
    ['2 * 3', 6],
    ['2x3', 6],
    ['2 X 3', 6],
    ['2·3', 6],
    ['2 × 5/8 in', 1.25],
    ['5/8 in × 2', 1.25],
    ['5/8in x2', 1.25],
    ['5ftx2', 120],
    ['2 × 1-5/8', 3.25],
    ['2 × 3 + 1', 7],
    ['1 + 2 × 3', 7],
    ['12 ÷ 4', 3],
    ['12 ÷ (2 − 6)', -3],
    ['10 ÷ (−1) ÷ 3', -10 / 3],
    ['12 in ÷ 5', 2.4],
    ['12 ÷ 5/8', 19.2],
    ['12 in ÷ 4 × 3', 9],
    ['12 ÷ 1 1/2', 8],
    ['2 × 3 × 1 in ÷ 4', 1.5],
    ['(1 + 2) × 3', 9],
    ['(1 + 2 in) × 3', 9],
    ['2 × (1 + (2 − 1/2)) in', 5],
    ['(12 - 1-1/2 - 1/2) ÷ 4', 2.5],
    ['-(1 in + 2)', -3],
    ['(1 + 2) × 5/8 in', 1.875],
  ])('%s is %d in', (typed, expected) => {
    expect(value(typed)).toBe(inches(expected));
  });

  test('a product of bare numbers takes the unit of the field once', () => {
    expect(value('2 × 3', 'cm')).toBe(mm(60));
  });
});

describe('rounding', () => {
  test('is said, and is to the nearest 1/8000 mm', () => {
    expect(readLength('1/3 in', 'mm')).toEqual({ ok: true, value: 67_733, exact: false });
    expect(readLength('2/3 in', 'mm')).toEqual({ ok: true, value: 135_467, exact: false });
    expect(readLength('-2/3 in', 'mm')).toEqual({ ok: true, value: -135_467, exact: false });
  });

  test('midway goes to the even one, on both sides of nought', () => {
    const halves = ['1/16000', '3/16000', '5/16000', '-1/16000', '-3/16000', '-5/16000'];
    expect(halves.map((typed) => value(typed, 'mm'))).toEqual([0, 2, 2, 0, -2, -2]);
  });

  test('happens once, at the end of the sum', () => {
    expect(readLength('1/3 in + 1/3 in + 1/3 in', 'mm')).toEqual({
      ok: true,
      value: inches(1),
      exact: true,
    });
    expect(readLength('1 in ÷ 7 × 7', 'mm')).toEqual({ ok: true, value: inches(1), exact: true });
  });
});

describe('what is not read says what and where', () => {
  test.each<[string, ReadFaultKind, number, string]>([
    ['', 'empty', 0, ''],
    ['  ', 'empty', 0, ''],
    ['1/', 'unfinished', 0, '1/'],
    ['12 1/', 'unfinished', 3, '1/'],
    ['1/ + 2', 'unfinished', 0, '1/'],
    ['3 ×', 'unfinished', 2, '×'],
    ['in', 'unfinished', 0, 'in'],
    ['3 + in', 'unfinished', 4, 'in'],
    ['1 +', 'unfinished', 2, '+'],
    ['1 -', 'unfinished', 2, '-'],
    ['-', 'unfinished', 0, '-'],
    ['.', 'unfinished', 0, '.'],
    ['12 + .', 'unfinished', 5, '.'],
    ['abc', 'not-understood', 0, 'abc'],
    ['12 foo', 'not-understood', 3, 'foo'],
    ['constructor', 'not-understood', 0, 'constructor'],
    ['12 (3)', 'not-understood', 3, '('],
    ['(3 in) cm', 'not-understood', 7, 'cm'],
    ['3)', 'not-understood', 1, ')'],
    ['(3 + 4', 'unfinished', 0, '(3 + 4'],
    ['(3 + 4 ', 'unfinished', 0, '(3 + 4'],
    ['(', 'unfinished', 0, '('],
    ['()', 'not-understood', 1, ')'],
    ['(3 in ;', 'not-understood', 6, ';'],
    ['(3 in ½', 'not-understood', 6, '½'],
    ['1/(2)', 'fraction-of-other', 0, '1/('],
    ['(2 in) × (3 in)', 'length-times-length', 7, '× (3 in)'],
    ['1,000 mm', 'thousands-unclear', 0, '1,000'],
    ['3 + 2.500', 'thousands-unclear', 4, '2.500'],

    ['5 😀', 'not-understood', 2, '😀'],
    ['+ 5', 'not-understood', 0, '+'],
    ['5 + -3', 'not-understood', 4, '-'],
    ['--5', 'not-understood', 1, '-'],
    ['× 5', 'not-understood', 0, '×'],
    ['/8', 'not-understood', 0, '/'],
    ['1 1 1/2', 'not-understood', 2, '1'],
    ['1 2', 'not-understood', 2, '2'],
    ['1.5 1/2', 'not-understood', 4, '1'],
    ['12. 5/8', 'not-understood', 4, '5'],
    ['½ 1', 'not-understood', 2, '1'],
    ["24'''", 'not-understood', 4, "'"],
    ['5 in.', 'not-understood', 4, '.'],
    ['1.2.3', 'two-decimal-marks', 0, '1.2.3'],
    ['1,234.5', 'two-decimal-marks', 0, '1,234.5'],
    ['12 + 1..5', 'two-decimal-marks', 5, '1..5'],
    ['1.5/2', 'fraction-of-decimals', 0, '1.5/2'],
    ['1/2,5', 'fraction-of-decimals', 0, '1/2,5'],
    ['3 1.5/2', 'fraction-of-decimals', 2, '1.5/2'],
    ['1/2/3', 'fraction-of-other', 3, '/'],
    ['1 5/8 / 2', 'fraction-of-other', 6, '/'],
    ['5 in / 2', 'fraction-of-other', 5, '/'],
    ['½/2', 'fraction-of-other', 1, '/'],
    ['1/½', 'fraction-of-other', 0, '1/½'],
    ['1/0', 'zero-denominator', 0, '1/0'],
    ['3 + 1/0 in', 'zero-denominator', 4, '1/0'],
    ['5 in ÷ 0', 'divide-by-zero', 5, '÷ 0'],
    ['5 ÷ 0/4', 'divide-by-zero', 2, '÷ 0/4'],
    ['1 9/8', 'improper-mixed', 0, '1 9/8'],
    ['1 8/8', 'improper-mixed', 0, '1 8/8'],
    ['1-9/8', 'improper-mixed', 0, '1-9/8'],
    ['12 -5/8', 'hyphen-unclear', 0, '12 -5/8'],
    ['12- 5/8', 'hyphen-unclear', 0, '12- 5/8'],
    ['3 in + 12 -⅝', 'hyphen-unclear', 7, '12 -⅝'],
    ['12–5/8', 'hyphen-unclear', 0, '12–5/8'],
    [`5'-3"`, 'hyphen-unclear', 1, "'-3"],
    [`5'-½"`, 'hyphen-unclear', 1, "'-½"],
    ['5 ft -3 in', 'hyphen-unclear', 2, 'ft -3'],
    ['2 in × 3 in', 'length-times-length', 5, '× 3 in'],
    ['4 ÷ 2 in', 'divide-by-length', 2, '÷ 2 in'],
    ['4 in ÷ 2 in', 'divide-by-length', 5, '÷ 2 in'],
    [' 1001 m', 'too-long', 1, '1001 m'],
    ['-1001 m', 'too-long', 0, '-1001 m'],
    ['9'.repeat(200), 'too-long', 0, '9'.repeat(200)],
    ['9'.repeat(201), 'too-much-text', 200, '9'],
  ])('%s', (typed, kind, at, text) => {
    expect(readLength(typed, 'in')).toEqual({ ok: false, fault: { kind, at, text } });
  });

  // ISO 80000-1 has either mark for decimals; which one groups thousands is local custom.
  test('which numbers may be of grouped thousands', () => {
    const asked = (typed: string, mark?: '.' | ',') => {
      const read = readLength(typed, 'mm', mark);
      return !read.ok && read.fault.kind === 'thousands-unclear';
    };
    for (const typed of ['1,000', '1.000', '12,500', '999.990']) {
      for (const mark of [undefined, '.', ','] as const) expect(asked(typed, mark)).toBe(true);
    }
    expect(['1,375', '1.375'].map((typed) => asked(typed))).toEqual([false, false]);
    expect(['1,375', '1.375'].map((typed) => asked(typed, '.'))).toEqual([true, false]);
    expect(['1,375', '1.375'].map((typed) => asked(typed, ','))).toEqual([false, true]);
    for (const typed of ['12,5', '1,25', '0,125', '0.500', ',500', '1,3750', '1234,500']) {
      expect(asked(typed, '.')).toBe(false);
    }
  });

  test('the longest length is still read', () => {
    expect(value('1000 m')).toBe(LONGEST);
  });

  test('with spaces on both sides a hyphen after feet is a minus', () => {
    expect(value(`5' - 3"`)).toBe(inches(57));
  });

  test('of two faults the first is told', () => {
    expect(value('1 9/8 + 1.2.3')).toBe('improper-mixed at 0: 1 9/8');
  });
});

describe('a list', () => {
  test('reads each length, skipping what is empty', () => {
    expect(readLengths(' 4; ;12.5;1 5/8 in;', 'cm')).toEqual({
      ok: true,
      values: [mm(40), mm(125), inches(1.625)],
      exact: true,
    });
    expect(readLengths('', 'cm')).toEqual({ ok: true, values: [], exact: true });
  });

  test('says when one had to be rounded', () => {
    expect(readLengths('1; 1/3; 2', 'in')).toMatchObject({ ok: true, exact: false });
  });

  test('counts the place of a fault from the start of the whole text', () => {
    expect(readLengths('4;; 5 foo; 3', 'cm')).toEqual({
      ok: false,
      fault: { kind: 'not-understood', at: 6, text: 'foo' },
    });
  });
});

describe('how sure a number is, is no part of the length', () => {
  // ISO/IEC Guide 98-3:2008 (GUM), 7.2.2: "(100,021 47 ± 0,000 79) g", the unit after both.
  test.each([
    ['46.32 ± 0.02 cm', mm(463.2)],
    ['46,32 ± 0,02 cm', mm(463.2)],
    ['46.3±0.2mm', mm(46.3)],
    ['1 5/8 ± 0.01 in + 3 mm', inches(1.625) + mm(3)],
    ['2 × 46.3 ± 0.2 mm', mm(92.6)],
  ])('%s', (typed, expected) => {
    expect(value(typed)).toBe(expected);
  });

  test.each(['46.32 ± 0.02', '± 0.02 cm', '46 cm ± 2 mm', '46 ± cm'])('not so %s', (typed) => {
    expect(value(typed)).toMatch(/^not-understood at \d+: ±/);
  });

  test('nor in a list', () => {
    const read = readLengths('1.2; 46.32 ± 0.02 cm; 5', 'cm');
    expect(read).toMatchObject({ ok: true, values: [mm(12), mm(463.2), mm(50)] });
  });
});
