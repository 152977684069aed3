import { describe, expect, test } from 'vitest';
import { isFactorNext, typedOn, withTaken } from '../../src/garment/actions/typed-parts.ts';
import { letterOf } from '../../src/lengths/taken.ts';

const A = letterOf(0);
const B = letterOf(1);

describe('typing on from something taken', () => {
  test.each([
    ['behind a space a digit replaces it just as well', `${A} `, `${A} 5`, '5'],
    ['a space alone is typed', A, `${A} `, `${A} `],
    ['a sum that is put in replaces it', A, `${A}5 + 3`, '5 + 3'],
    ['a unit is nothing, whatever is put in with it', A, `${A} cm + 2`, A],
    ['nor is a word before a digit', A, `${A} in 5`, A],
  ])('%s', (_, before, after, made) => {
    expect(typedOn(before, after)).toBe(made);
  });
});

test('something is taken in the place of what is in a closed bracket, also where a space is behind', () => {
  expect(withTaken('2 × (3 + 4) ', A, false)).toBe(A);
  expect(withTaken('  12 + 3', A, false)).toBe(`  12 + ${A}`);
  expect(withTaken(`${B} × 2 ; `, A, false)).toBe(`${B} × 2 ; ${A}`);
});

test('a count belongs next to the sign alone, not once a factor stands there', () => {
  expect([`${A} × `, `${A} × 3`, `3 ÷ ${A} + `].map(isFactorNext)).toEqual([true, false, false]);
});
