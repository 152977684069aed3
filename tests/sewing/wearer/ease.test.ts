import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactLength, inches, toInches } from '../../../src/lengths/length.ts';
import { EASE_PLACES, easeVerdict, publishedEase } from '../../../src/sewing/wearer/ease.ts';

/* Wearing ease in inches as it is published, least and most; in front its row among the published values. */
test.each([
  ['8.1 8.5', 'bust', [1.5, 2], [2], [2.5]],
  ['8.2 8.5', 'dress-waist', [0.75, 1], [1], [1]],
  ['8.2 8.5', 'skirt-waist', [0.5, 0.75], [1], [1]],
  ['8.3 8.5', 'hip', [2, 2.75], [2], [3]],
  ['8.4', 'shirt-chest', [1.5, 3]],
  ['8.4', 'trouser-waist', [0.75, 1]],
  ['8.4', 'trouser-seat', [1.5, 2]],
  ['8.4', 'thigh', [1]],
  ['8.12', 'upper-arm', [2]],
] as const)('%s %s', (_, place, ...ranges) => {
  const given = publishedEase(place).map(({ least, most }) =>
    [least, most].flatMap((end) => (end === undefined ? [] : [toInches(end)])),
  );
  expect(given).toEqual(ranges);
});

test('where sources differ it is disputed: under all of them is under, over all is enough', () => {
  const bust = (value: number) => easeVerdict('bust', 'woven', inches(value));
  expect([1.25, 1.5, 2.25, 2.5, 6].map(bust)).toEqual([
    'under',
    'disputed',
    'disputed',
    'enough',
    'enough',
  ]);
  expect(bust(-0.5)).toBe('none');
  expect(easeVerdict('other', 'woven', inches(0))).toBe('unpublished');
});

test('8.6 cloth that stretches needs little ease, or none', () => {
  for (const ease of [-4, 0, 0.25]) {
    expect(easeVerdict('hip', 'stretch', inches(ease))).toBe('enough');
  }
});

test('more ease is never worse', () => {
  const order = ['none', 'under', 'disputed', 'enough'];
  const ease = fc.integer({ min: -800_000, max: 800_000 });
  fc.assert(
    fc.property(fc.constantFrom(...EASE_PLACES), ease, ease, (place, one, other) => {
      if (place === 'other') return;
      const [less, more] = one < other ? [one, other] : [other, one];
      const rank = (value: number) =>
        order.indexOf(easeVerdict(place, 'woven', exactLength(value)));
      expect(rank(less)).toBeLessThanOrEqual(rank(more));
    }),
    { seed: 1511 },
  );
});
