import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  isFactorNext,
  partsOf,
  typedOn,
  withTaken,
} from '../../src/garment/actions/typed-parts.ts';
import type { Part } from '../../src/garment/record/record.ts';
import { fieldText } from '../../src/garment/work-out/field-text.ts';
import { letterOf } from '../../src/lengths/taken.ts';
import { output, quantity, typed } from './trial/garments.ts';

const A = letterOf(0);
const B = letterOf(1);
const how = { unit: 'cm', decimalMark: '.' } as const;

const link = fc.constantFrom(
  quantity('front'),
  output('hem', 'allowance'),
  output('hem', 'cut', 'total'),
);
const piece = fc
  .stringMatching(/^[0-9 +−×÷().;a-z]{1,12}$/)
  .chain((text) =>
    fc.constantFrom<Part[]>(...(['cm', 'mm', 'in'] as const).map((unit) => typed(text, unit))),
  );
const parts = fc
  .array(
    fc.oneof(
      piece,
      link.map((one): Part[] => [one]),
    ),
    { maxLength: 8 },
  )
  .map((all) => all.flat());

describe('what is typed as parts', () => {
  test('text and letters come back as they were, whatever is taken', () => {
    fc.assert(
      fc.property(parts, (any) => {
        const once = fieldText(any);
        const again = fieldText(partsOf(once.text, once.taken, once.how));
        expect([again.text, again.taken]).toEqual([once.text, once.taken]);
      }),
      { seed: 1401, numRuns: 500 },
    );
  });

  test('parts of one bench that lie apart come back as they are', () => {
    const sum: Part[] = [...typed('2 × ('), output('hem', 'allowance'), ...typed(' + 1)')];
    const { text, taken } = fieldText(sum);
    expect(partsOf(text, taken, how)).toEqual(sum);
    expect(partsOf(text, taken, { unit: 'in', decimalMark: ',' })[0]).toEqual({
      text: '2 × (',
      unit: 'in',
      mark: ',',
    });
  });

  test('a letter that stands for nothing is left out, and an emptied field still has a part', () => {
    expect(partsOf(`1 + ${B}`, [quantity('front')], how)).toEqual(typed('1 + '));
    expect(partsOf('', [], how)).toEqual(typed(''));
  });
});

describe('typing on from something taken', () => {
  test.each([
    ['a digit replaces it', A, `${A}5`, '5'],
    ['in a sum, too', `1 + ${A}`, `1 + ${A}.`, '1 + .'],
    ['a sign goes on', A, `${A} + `, `${A} + `],
    ['a bracket closes', `(${A}`, `(${A})`, `(${A})`],
    ['a unit is nothing: it has one', A, `${A} cm`, A],
    ['what was erased is erased', `1 + ${A}`, '1 +', '1 +'],
    ['elsewhere nothing is changed', `${A} + 1`, `${A} + 12`, `${A} + 12`],
  ])('%s', (_, before, after, made) => {
    expect(typedOn(before, after)).toBe(made);
  });

  test.each([
    ['what is to be typed anew', '12', true, A],
    ['nothing yet', '', false, A],
    ['after a sign', '12 + ', false, `12 + ${A}`],
    ['in the last number’s place', '12 + 3', false, `12 + ${A}`],
    ['in another one’s place', `12 − ${B}`, false, `12 − ${A}`],
    ['a closed bracket is one number', '2 × (3 + 4)', false, A],
    ['after an open one', '2 × (', false, `2 × (${A}`],
  ])('it is taken %s', (_, text, anew, made) => {
    expect(withTaken(text, A, anew)).toBe(made);
  });

  test('a count belongs after × and ÷', () => {
    expect([`${A} × `, `${A} ÷`, `${A} + `, '2'].map(isFactorNext)).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});
