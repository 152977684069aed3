import { expect, test } from 'vitest';
import { needed } from '../../src/calculation/needed.ts';

test('what was read is handed on; what wasn’t is a bug that names it', () => {
  expect(needed({ count: 7, ease: 0 })).toEqual({ count: 7, ease: 0 });
  expect(() => needed({ count: 7, pitch: undefined, ease: undefined })).toThrow('pitch,ease');
});
