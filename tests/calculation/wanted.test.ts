import { expect, test } from 'vitest';
import { wanted } from '../../src/calculation/wanted.ts';

test('what was read is given; what is wanted and was not asked for is a bug, said by name', () => {
  const read: { count: number | undefined; pitch: number | undefined } = {
    count: 0,
    pitch: undefined,
  };
  expect(wanted(read, 'count')).toBe(0);
  expect(() => wanted(read, 'pitch')).toThrow('pitch is wanted');
});
