import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tailOf } from '../../src/controls/pad-edit.ts';
import { digitKeys, type Fresh, lengthKeys, plainKeys } from '../../src/controls/pad-keys.ts';
import { benchOf } from './helpers.ts';

const KINDS = ['length', 'lengths', 'count', 'number'] as const;
const UNITS = ['mm', 'cm', 'm', 'in', 'ft', 'yd', 'L'];

/** Every key there is, for every kind of field, unit and bench. */
const keys = KINDS.flatMap((kind) =>
  UNITS.flatMap((unit) =>
    (['cm', 'mm', 'in'] as const).flatMap((benchUnit) => {
      const pad = { kind, unit, bench: benchOf({ unit: benchUnit, decimalMark: ',' }) };
      return [...digitKeys(pad), ...lengthKeys(pad), ...plainKeys()].filter((key) => key?.edit);
    }),
  ),
);
const anyKey = fc.constantFrom(...keys);
const fresh = fc.constantFrom<Fresh>('no', 'number', 'all');

test('no key of any pad fails or leaves nonsense, whatever stands in the field', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), anyKey, fresh, (text, key, state) => {
      const after = key?.edit?.(text, state);
      expect(typeof after).toBe('string');
      if (!text.includes('N')) expect(after).not.toMatch(/NaN|undefined|Infinity/);
    }),
    { numRuns: 1000 },
  );
});

const WHOLE = new Set(['erase', 'clear the field', 'next one in the list', 'brackets']);
const OPERATORS = new Set(['plus', 'minus', 'times', 'divided by']);

test('a key keeps what stands before the last number, also when that is typed anew', () => {
  const before = fc.constantFrom('12 + ', '5 cm − ', '1.2; 8.3; ');
  const last = fc.constantFrom('4', '5/8 in', '46.3');
  const state = fc.constantFrom<Fresh>('no', 'number');
  fc.assert(
    fc.property(before, last, anyKey, state, (head, number, key, now) => {
      if (!key || WHOLE.has(key.name) || OPERATORS.has(key.name)) return;
      expect(key.edit?.(head + number, now).startsWith(head)).toBe(true);
    }),
    { numRuns: 1000 },
  );
});

test('a number typed anew keeps its unit and loses its digits', () => {
  const pad = { kind: 'length', unit: 'in', bench: benchOf() } as const;
  const four = digitKeys(pad).find((key) => key?.face === '4');
  expect(four?.edit?.('12 + 5/8 in', 'number')).toBe('12 + 4 in');
  expect(four?.edit?.('12 + 5/8 in', 'all')).toBe('4 in');
  expect(four?.edit?.('12 + 5 in', 'no')).toBe('12 + 54 in');
});

test('the unit key goes to the other tape and back; the number stays', () => {
  const unitKey = (unit: string) =>
    digitKeys({ kind: 'length', unit, bench: benchOf() }).find((key) => key?.staysFresh);
  const inInches = unitKey('cm')?.edit?.('46.3', 'all') ?? '';
  expect(inInches).toBe('46.3 in');
  expect(unitKey('in')?.edit?.(inInches, 'number')).toBe('46.3');
  expect(tailOf(unitKey('in')?.edit?.('5 in', 'no') ?? '').unit).toBe('');
});

test('a list has a key for its next one, a count neither mark nor sign', () => {
  const names = (kind: (typeof KINDS)[number]) =>
    digitKeys({ kind, unit: 'cm', bench: benchOf() }).map((key) => key?.name);
  expect(names('lengths')).toContain('next one in the list');
  expect(names('number')).toContain('decimal mark');
  expect(names('count')).not.toContain('decimal mark');
});

test('a unit no tape is divided in has no nudge', () => {
  for (const unit of ['yd', 'ft', 'L', 'm']) {
    const named = digitKeys({ kind: 'length', unit, bench: benchOf() }).map((key) => key?.name);
    expect(named.some((name) => name?.startsWith('more by'))).toBe(false);
  }
});
