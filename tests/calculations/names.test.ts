import { expect, test } from 'vitest';
import { calculationNames } from '#words/calculation-names.ts';
import { STAGES } from '../../src/calculation/output.ts';
import { CALCULATIONS } from '../../src/calculations/list.ts';

const ids = Object.values(calculationNames).flatMap(({ of }) => Object.keys(of));

test('every calculation of the list is named once, at a stage of the work, in their order', () => {
  expect([...ids].sort()).toEqual(Object.keys(CALCULATIONS).sort());
  expect(Object.keys(calculationNames)).toEqual(
    STAGES.filter((stage) => stage in calculationNames),
  );
});
