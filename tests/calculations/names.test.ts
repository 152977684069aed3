import { expect, test } from 'vitest';
import { CALCULATION_NAMES } from '#words/calculations/calculation-names.ts';
import { calculationUses } from '#words/calculations/calculation-uses.ts';
import { STAGES } from '../../src/calculation/output.ts';
import { CALCULATIONS } from '../../src/calculations/list.ts';

const ids = Object.values(calculationUses).flatMap(({ of }) => Object.keys(of));

test('every calculation of the list is named once, at a stage of the work, in their order', () => {
  expect([...ids].sort()).toEqual(Object.keys(CALCULATIONS).sort());
  expect(Object.keys(CALCULATION_NAMES).sort()).toEqual(Object.keys(CALCULATIONS).sort());
  expect(Object.keys(calculationUses)).toEqual(STAGES.filter((stage) => stage in calculationUses));
});
