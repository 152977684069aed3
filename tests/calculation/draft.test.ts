import { expect, test } from 'vitest';
import { readDraft } from '../../src/calculation/draft.ts';
import { countOf, lengthsOf, numberOf } from '../../src/calculation/draft-numbers.ts';
import { chosen } from '../../src/calculation/fields.ts';
import { inches, mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';

const bench = benchOf();

test('a length is read in the bench’s unit, unless another is written', () => {
  const read = readDraft({ top: '1.2', bottom: '1 in' }, bench);
  expect(read.length('top')).toBe(mm(12));
  expect(read.length('bottom')).toBe(inches(1));
  expect(readDraft({ top: '1.5' }, benchOf({ unit: 'in' })).length('top')).toBe(inches(1.5));
  expect(read.faults).toEqual([]);
});

test('what can’t be read is a fault of its own field, and the rest is read on', () => {
  const read = readDraft({ top: '1.2.3', bottom: '2' }, bench);
  expect(read.length('top')).toBeUndefined();
  expect(read.length('bottom')).toBe(mm(20));
  expect(read.length('opening')).toBeUndefined();
  expect(read.faults).toMatchObject([
    { field: 'top', why: { of: 'reading', fault: { kind: 'two-decimal-marks' } } },
    { field: 'opening', why: { of: 'reading', fault: { kind: 'empty' } } },
  ]);
});

test('a length that may be left out is no fault when it is; nonsense is', () => {
  const read = readDraft({ level: '  ', width: 'wide' }, bench);
  expect(read.maybeLength('level')).toBeUndefined();
  expect(read.maybeLength('missing')).toBeUndefined();
  expect(read.faults).toEqual([]);
  expect(read.maybeLength('width')).toBeUndefined();
  expect(read.faults).toMatchObject([{ field: 'width' }]);
});

test('counts are whole, numbers need not be', () => {
  const read = readDraft({ count: '7', half: '2.5', none: '' }, bench);
  expect(countOf(read, 'count')).toBe(7);
  expect(numberOf(read, 'half')).toBe(2.5);
  expect(countOf(read, 'half')).toBeUndefined();
  expect(countOf(read, 'none')).toBeUndefined();
  expect(read.faults.map(({ field }) => field)).toEqual(['half', 'none']);
});

test('a list may be empty; one that can’t be read is a fault', () => {
  const read = readDraft({ sewn: '1.2; 3 in', none: '', bad: '1.2; 3/' }, bench);
  expect(lengthsOf(read, 'sewn', bench)).toEqual([mm(12), inches(3)]);
  expect(lengthsOf(read, 'none', bench)).toEqual([]);
  expect(read.faults).toEqual([]);
  expect(lengthsOf(read, 'bad', bench)).toEqual([]);
  expect(read.faults).toMatchObject([{ field: 'bad' }]);
});

test('a choice that is unknown is the first one, whatever it is called', () => {
  const ways = { even: 'Even', exact: 'Exact' };
  expect(chosen({ by: 'exact' }, 'by', ways)).toBe('exact');
  for (const by of ['', 'odd', 'constructor', '__proto__', 'toString']) {
    expect(chosen({ by }, 'by', ways)).toBe('even');
  }
  expect(chosen({}, 'by', ways)).toBe('even');
});
