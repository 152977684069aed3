import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readHeader } from '../../src/camera/picture-header.ts';

const ascii = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
const bytes = (...parts: number[]) => Uint8Array.from(parts);
/** Whole numbers laid out with their last byte first, or last. */
const little = (value: number, count: number) =>
  Array.from({ length: count }, (_, i) => Math.floor(value / 256 ** i) % 256);
const big = (value: number, count: number) => little(value, count).reverse();

/** Segments as ITU-T T.81, annex B has them: an application's, then the frame header. */
const jpeg = (frame: number) =>
  bytes(
    ...[0xff, 0xd8, 0xff, 0xe1, 0, 6, 1, 2, 3, 4],
    ...[0xff, 0xff, 0xc4, 0, 3, 9],
    ...[0xff, frame, 0, 11, 8, 0x23, 0x28, 0x2e, 0xe0, 1, 0, 0, 0],
  );

/** The signature, then IHDR. Source: PNG (ISO/IEC 15948), 5.2 and 11.2.2. */
const PNG = [0x89, ...ascii('PNG\r\n\x1a\n'), 0, 0, 0, 13, ...ascii('IHDR')];
const png = bytes(...PNG, ...big(4096, 4), ...big(3072, 4));

/**
 * The logical screen, a table of two colours, a comment, a control block, then the first image.
 * Source: GIF89a, sections 17 to 20, 23 and 24.
 */
const gif = (screen: readonly [number, number]) =>
  bytes(
    ...ascii('GIF89a'),
    ...screen.flatMap((side) => little(side, 2)),
    ...[0x80, 0, 0, 1, 2, 3, 4, 5, 6],
    ...[0x21, 0xfe, 2, 0x2c, 0x2c, 1, 0x2c, 0],
    ...[0x21, 0xf9, 4, 0, 0, 0, 0, 0],
    ...[0x2c, ...little(10, 2), ...little(20, 2), ...little(5000, 2), ...little(4000, 2), 0],
  );

/** Source: BITMAPFILEHEADER, then BITMAPINFOHEADER or BITMAPCOREHEADER, Windows GDI. */
const bmp = (header: number, sides: number[]) =>
  bytes(
    ...ascii('BM'),
    ...little(9999, 4),
    0,
    0,
    0,
    0,
    ...little(54, 4),
    header,
    0,
    0,
    0,
    ...sides,
  );
const bmpInfo = (width: number, height: number) =>
  bmp(40, [...little(width, 4), ...little(height, 4)]);

/** Source: WebP (RFC 9649), 2.3 and 2.4. */
const webp = (chunk: string, ...data: number[]) =>
  bytes(...ascii('RIFF'), ...little(9999, 4), ...ascii(`WEBP${chunk}`), ...little(99, 4), ...data);
/** A key frame of 10000 × 9000. Source: VP8 (RFC 6386), 9.1; the upper two bits say how to scale. */
const vp8 = webp('VP8 ', 0x10, 2, 0, 0x9d, 1, 0x2a, 0x10, 0x67, 0x28, 0xa3);
/** Both sides less one, in 14 bits each. Source: WebP (RFC 9649), 3.4. */
const vp8l = webp('VP8L', 0x2f, ...little(16383 - 1 + (10000 - 1) * 2 ** 14 + 2 ** 28, 4));
/** Both sides less one, in 24 bits each. Source: WebP (RFC 9649), 2.7.1. */
const vp8x = webp('VP8X', 0x10, 0, 0, 0, ...little(100_000 - 1, 3), ...little(70_000 - 1, 3));

/** A box, with its length in 32 bits. Source: ISO/IEC 14496-12, 4.2. */
const box = (type: string, ...inside: number[]): number[] => [
  ...big(8 + inside.length, 4),
  ...ascii(type),
  ...inside,
];
/** A box with its length in 64 bits. */
const longBox = (type: string, ...inside: number[]): number[] => [
  ...[0, 0, 0, 1],
  ...ascii(type),
  ...big(16 + inside.length, 8),
  ...inside,
];
const NO_FLAGS = [0, 0, 0, 0];
/** Source: ISO/IEC 23008-12, 6.5.3. */
const ispe = (width: number, height: number) =>
  box('ispe', ...NO_FLAGS, ...big(width, 4), ...big(height, 4));
/** A tiled photo with a preview, its properties after other boxes. Source: ISO/IEC 23008-12, 6 and 9.3. */
const heif = (brand: string, wrap = box) =>
  bytes(
    ...box('ftyp', ...ascii(brand), ...NO_FLAGS, ...ascii('mif1')),
    ...box('free', 1, 2, 3),
    ...wrap(
      'meta',
      ...NO_FLAGS,
      ...box('hdlr', ...NO_FLAGS),
      ...box(
        'iprp',
        ...box(
          'ipco',
          ...ispe(512, 512),
          ...box('irot', 1),
          ...ispe(8064, 6048),
          ...ispe(320, 240),
        ),
        ...box('ipma', ...NO_FLAGS),
      ),
    ),
  );

const KNOWN: [string, Uint8Array, string, number, number][] = [
  ['PNG', png, 'png', 4096, 3072],
  ['GIF whose screen is larger', gif([9000, 8000]), 'other', 9000, 8000],
  ['GIF whose first image is larger', gif([1, 1]), 'other', 5010, 4020],
  ['BMP', bmpInfo(7000, 5000), 'other', 7000, 5000],
  ['BMP from the top down', bmpInfo(7000, 2 ** 32 - 5000), 'other', 7000, 5000],
  ['old BMP', bmp(12, [...little(640, 2), ...little(480, 2)]), 'other', 640, 480],
  ['WebP (VP8)', vp8, 'other', 10000, 9000],
  ['WebP (VP8L)', vp8l, 'other', 16383, 10000],
  ['WebP (VP8X)', vp8x, 'other', 100_000, 70_000],
  ['HEIC', heif('heic'), 'other', 8064, 6048],
  ['AVIF', heif('avif'), 'other', 8064, 6048],
  ['HEIF with a long box', heif('mif1', longBox), 'other', 8064, 6048],
];

test.each(KNOWN)('%s says its size', (_, file, kind, width, height) => {
  expect(readHeader(file)).toEqual({ kind, size: { width, height }, onePass: false });
});

test.each([
  [0xc0, true],
  [0xc1, true],
  [0xc2, false],
])(
  'a JPEG says its size in frame %i, after other segments, and whether it is one pass',
  (frame, onePass) => {
    const size = { width: 12000, height: 9000 };
    expect(readHeader(jpeg(frame))).toEqual({ kind: 'jpeg', size, onePass });
  },
);

test('a box that goes to the end of the file needs no length', () => {
  const file = heif('heic');
  const meta = 20 + 11;
  file.set([0, 0, 0, 0], meta);
  expect(readHeader(file).size).toEqual({ width: 8064, height: 6048 });
});

test('a picture of no width has no size', () => {
  expect(readHeader(bmpInfo(0, 5)).size).toBeUndefined();
  expect(readHeader(bytes(...PNG, ...big(0, 4), ...big(9, 4))).size).toBeUndefined();
});

test.each(['II*\0', 'MM\0*', 'GIF89a', 'RIFF\x01\x02\x03\x04WEBPALPH', 'BM', '\0\0\0\x18ftypheic'])(
  'pictures that don’t tell their size are known as such: %j',
  (begins) => {
    expect(readHeader(bytes(...ascii(begins)))).toMatchObject({ kind: 'other', size: undefined });
  },
);

test.each(['', 'hello', '%PDF-1.7', '<svg'])('what is no picture is known: %j', (begins) => {
  expect(readHeader(bytes(...ascii(begins))).kind).toBe('none');
});

describe('hostile files', () => {
  const files = [jpeg(0xc0), ...KNOWN.map(([, file]) => file)];
  const kept = (file: Uint8Array) => {
    const { size } = readHeader(file);
    if (!size) return;
    expect(size.width).toBeGreaterThan(0);
    expect(size.height).toBeGreaterThan(0);
  };

  test('one cut short anywhere is read without an error, and gives no other size', () => {
    for (const file of files) {
      const { kind, size } = readHeader(file);
      for (let length = 0; length < file.length; length++) {
        const cut = readHeader(file.subarray(0, length));
        if (length >= 16) expect(cut.kind).toBe(kind);
        // Of a GIF or HEIF the larger of two may not have come yet.
        if (cut.size) expect(cut.size.width).toBeLessThanOrEqual(size?.width ?? 0);
      }
    }
  });

  test('any bytes after the beginning give a size or none, and never an error or a hang', () => {
    const begins = fc.constantFrom(
      ...files.flatMap((file) => [12, 16, 31, 60].map((n) => file.subarray(0, n))),
    );
    fc.assert(
      fc.property(begins, fc.uint8Array({ maxLength: 300 }), (start, rest) =>
        kept(Uint8Array.from([...start, ...rest])),
      ),
      { numRuns: 2000 },
    );
  });

  test('any bytes changed in a real one do neither', () => {
    const changes = fc.array(fc.tuple(fc.nat(400), fc.nat(255)), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(fc.constantFrom(...files), changes, (file, changed) => {
        const other = file.slice();
        for (const [at, value] of changed) other[at % other.length] = value;
        kept(other);
      }),
      { numRuns: 2000 },
    );
  });

  test('box in box in box to the end of a long file is gone through at once', () => {
    const deep = Array.from({ length: 60_000 }, () => [0, 0, 0, 0, ...ascii('meta')]).flat();
    const file = Uint8Array.from([...heif('heic').subarray(0, 20), ...deep]);
    expect(readHeader(file)).toMatchObject({ kind: 'other', size: undefined });
  });
});
