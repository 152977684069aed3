import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pgmOf } from '../../../src/tape/picture/pgm.ts';

// Source: Netpbm, "PGM format specification": magic number P5, width, height, the greatest grey,
// one white space, then rows from the top down, one byte a pixel.
test('a picture of 3 by 2', () => {
  const file = pgmOf({ width: 3, height: 2, pixels: Uint8Array.from([1, 2, 3, 4, 5, 255]) });
  expect(String.fromCharCode(...file.subarray(0, 11))).toBe('P5\n3 2\n255\n');
  expect([...file.subarray(11)]).toEqual([1, 2, 3, 4, 5, 255]);
});

test('read by the format’s own rules, every picture is itself', () => {
  const size = fc.integer({ min: 1, max: 40 });
  fc.assert(
    fc.property(size, size, fc.infiniteStream(fc.integer({ min: 0, max: 255 })), (w, h, greys) => {
      const pixels = Uint8Array.from(greys.take(w * h));
      const file = pgmOf({ width: w, height: h, pixels });
      const [, width, height, greatest] =
        /^P5\s(\d+)\s(\d+)\s(\d+)\s/.exec(String.fromCharCode(...file.subarray(0, 20))) ?? [];
      expect([width, height, greatest].map(Number)).toEqual([w, h, 255]);
      expect([...file.subarray(file.length - w * h)]).toEqual([...pixels]);
    }),
  );
});
