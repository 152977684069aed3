import { expect, test } from 'vitest';
import { sizesOutputs } from '../../src/calculations/sizes/outputs.ts';
import { givenBy } from './given.ts';

const without = 'absent by what';

// 25.4 mm ÷ 12 = 2.117 mm (stashbandit.net, a teaching page, worked).
test('12 stitches to the inch are 2.117 mm long', () => {
  const given = givenBy(sizesOutputs, { stitch: '12', stitchBy: 'in' });
  expect(given.stitch).toBeCloseTo(2.117, 3);
  expect(given).toMatchObject({ 'per-inch': 12, button: without, needle: without });
});

// US Army TM 10-8400-201-23, §5-6: shirt and trouser buttons are 30 line. 3/4 in derived here.
test('a button of 19 mm is sold as 30 line, 3/4 in', () => {
  expect(givenBy(sizesOutputs, { what: 'button', button: '19 mm' })).toEqual({
    stitch: without,
    'per-inch': without,
    button: 19,
    'button-sold': 19.05,
    needle: without,
  });
});

// US 12 = metric 80: (12 − 8) × 5 + 60 (apparelscience.com, a trade page, worked).
test('a US 12 needle is metric 80; one that no one makes is said so of the needle', () => {
  const needle = { what: 'needle', needleBy: 'us' };
  expect(givenBy(sizesOutputs, { ...needle, needle: '12' }).needle).toBe(80);
  expect(givenBy(sizesOutputs, { ...needle, needle: '500' }).needle).toEqual(['needle']);
});
