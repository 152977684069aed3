import fc from 'fast-check';
import { expect, test } from 'vitest';
import { same } from '../../src/garment/work-out/same.ts';

test('values, lists and records are the same where everything in them is, in whatever order of keys', () => {
  expect(same(Number.NaN, Number.NaN)).toBe(true);
  expect(same({ a: [1, { b: null }], c: 'x' }, { c: 'x', a: [1, { b: null }] })).toBe(true);
  expect(same([], [])).toBe(true);
  expect(same({}, {})).toBe(true);
});

const OTHER: readonly (readonly [unknown, unknown])[] = [
  [1, 2],
  [1, '1'],
  ['a', ['a']],
  [{}, 'text'],
  [{}, undefined],
  [null, {}],
  [undefined, null],
  [[], {}],
  [['a'], { 0: 'a' }],
  [[1, 2], [1]],
  [[1], [1, 2]],
  [{ a: 1 }, { a: 1, b: 2 }],
  [{ a: undefined }, { b: undefined }],
  [{ a: { b: 1 } }, { a: { b: 2 } }],
  [{ toString: undefined }, { a: undefined }],
  [0, -0],
];
test.each(OTHER)('%j is not %j, from either side', (one, other) => {
  expect(same(one, other)).toBe(false);
  expect(same(other, one)).toBe(false);
});

test('law: as a record is written and read again it is the same; one number more, and it isn’t', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 3 }), fc.integer(), (value, more) => {
      const text = JSON.stringify(value);
      expect(same(JSON.parse(text), JSON.parse(text))).toBe(true);
      expect(same([JSON.parse(text), more], [JSON.parse(text), more + 1])).toBe(false);
    }),
    { numRuns: 60 },
  );
});
