import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bmpOf } from '../../src/tape/bmp.ts';

// Source: Microsoft, "Bitmap Storage" and BITMAPINFOHEADER (Win32 documentation): a file header of
// 14 bytes, an info header of 40, 256 palette entries of blue, green, red and 0, then rows from the
// lowest up, each filled to a multiple of 4 bytes.
test('a picture of 3 by 2', () => {
  const file = bmpOf({ width: 3, height: 2, pixels: Uint8Array.from([1, 2, 3, 4, 5, 6]) });
  const view = new DataView(file.buffer);
  expect(String.fromCharCode(...file.subarray(0, 2))).toBe('BM');
  expect(view.getUint32(2, true)).toBe(14 + 40 + 1024 + 8);
  expect(view.getUint32(10, true)).toBe(1078);
  expect([14, 18, 22].map((at) => view.getInt32(at, true))).toEqual([40, 3, 2]);
  expect([26, 28].map((at) => view.getUint16(at, true))).toEqual([1, 8]);
  expect(view.getUint32(30, true)).toBe(0);
  expect([...file.subarray(54 + 4 * 200, 54 + 4 * 201)]).toEqual([200, 200, 200, 0]);
  expect([...file.subarray(1078)]).toEqual([4, 5, 6, 0, 1, 2, 3, 0]);
});

test('read by the format’s own rules, every picture is itself', () => {
  const size = fc.integer({ min: 1, max: 9 });
  fc.assert(
    fc.property(size, size, fc.infiniteStream(fc.integer({ min: 0, max: 255 })), (w, h, greys) => {
      const pixels = Uint8Array.from(greys.take(w * h));
      const file = bmpOf({ width: w, height: h, pixels });
      const view = new DataView(file.buffer);
      const [from, stride] = [view.getUint32(10, true), (((w * 8 + 31) >> 5) << 2) as number];
      const read = Array.from({ length: w * h }, (_, i) => {
        const y = Math.floor(i / w);
        const colour = file[from + (h - 1 - y) * stride + (i % w)]!;
        return file[54 + 4 * colour];
      });
      expect(read).toEqual([...pixels]);
      expect(file.length).toBe(from + stride * h);
    }),
  );
});
