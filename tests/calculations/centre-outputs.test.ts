import { expect, test } from 'vitest';
import { centreOutputs } from '../../src/calculations/centre/outputs.ts';
import { givenBy } from './given.ts';

// The invented waistcoat, counted by hand: 27 holes have 13 on either side of hole 14, and 26 spaces of 8 mm.
test('27 holes at 8 mm: the middle is hole 14, 104 mm from the first', () => {
  const { holes, ...rest } = givenBy(centreOutputs, { count: '27', pitch: '8 mm' });
  expect(rest).toEqual({ count: 27, middle: 14, 'to-middle': 104, span: 208 });
  expect(holes).toHaveLength(27);
});

// oaksidesaddlery.uk, saddlery rules (a trade page): a belt with 7 holes has its fit at hole 4.
test('of a belt’s holes the middle is counted without a pitch, and nothing is measured', () => {
  const without = 'absent by pitch';
  expect(givenBy(centreOutputs, { count: '7', pitch: '' })).toEqual({
    holes: without,
    count: 7,
    middle: 4,
    'to-middle': without,
    span: without,
  });
});

test('of an even count the middle is between two, and a doubt of the count changes nothing', () => {
  const doubted = { count: '26', other: '27', measured: '30 cm' };
  expect(givenBy(centreOutputs, doubted)).toMatchObject({ count: 26, middle: 13.5 });
});
