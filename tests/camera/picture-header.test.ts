import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readHeader } from '../../src/camera/picture-header.ts';

const ascii = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
const bytes = (...parts: number[]) => Uint8Array.from(parts);

/** Segments as ITU-T T.81, annex B has them: an application's, then the frame header. */
const jpeg = (frame: number) =>
  bytes(
    ...[0xff, 0xd8, 0xff, 0xe1, 0, 6, 1, 2, 3, 4],
    ...[0xff, 0xff, 0xc4, 0, 3, 9],
    ...[0xff, frame, 0, 11, 8, 0x23, 0x28, 0x2e, 0xe0, 1, 0, 0, 0],
  );

test.each([0xc0, 0xc1, 0xc2])('a JPEG says its size in frame %i, after other segments', (frame) => {
  expect(readHeader(jpeg(frame))).toEqual({ kind: 'jpeg', size: { width: 12000, height: 9000 } });
});

test('a PNG says its size in its first chunk', () => {
  const png = [0x89, ...ascii('PNG\r\n\x1a\n'), 0, 0, 0, 13, ...ascii('IHDR')];
  expect(readHeader(bytes(...png, 0, 0, 0x10, 0, 0, 0, 0x0c, 0))).toEqual({
    kind: 'png',
    size: { width: 4096, height: 3072 },
  });
  expect(readHeader(bytes(...png))).toEqual({ kind: 'png', size: undefined });
});

test.each(['GIF89a', 'RIFF\x01\x02\x03\x04WEBPVP8 ', 'BM', '\0\0\0\x18ftypheic', 'II*\0'])(
  'other pictures are known as such: %j',
  (begins) => {
    expect(readHeader(bytes(...ascii(begins))).kind).toBe('other');
  },
);

test.each(['', 'hello', '%PDF-1.7', '<svg'])('what is no picture is known: %j', (begins) => {
  expect(readHeader(bytes(...ascii(begins))).kind).toBe('none');
});

test('a JPEG cut short, or of nonsense, has no size and doesn’t hang', () => {
  expect(readHeader(bytes(0xff, 0xd8))).toEqual({ kind: 'jpeg', size: undefined });
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (rest) => {
      const { kind } = readHeader(Uint8Array.from([0xff, 0xd8, ...rest]));
      expect(kind).toBe('jpeg');
    }),
  );
});
