import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { openPhoto } from '../../src/camera/photo.ts';

/** A file that says it is so long and so many pixels, by PNG's IHDR (ISO/IEC 15948, 11.2.2). */
function png(width: number, height: number): Blob {
  const head = new DataView(new ArrayBuffer(24));
  [0x89504e47, 0x0d0a1a0a, 13, 0x49484452, width, height].forEach((word, i) => {
    head.setUint32(4 * i, word);
  });
  return new Blob([head]);
}

/** By its frame header, after as many bytes of other segments (ITU-T T.81, annex B). */
function jpeg(frame: number, width: number, height: number, before = 0): Blob {
  const segments = Math.ceil(before / 65_537);
  const bytes = new Uint8Array(2 + segments * 65_537 + 9);
  const view = new DataView(bytes.buffer);
  view.setUint16(0, 0xffd8);
  for (let i = 0; i < segments; i++) view.setUint32(2 + i * 65_537, 0xffe1ffff);
  const at = 2 + segments * 65_537;
  view.setUint16(at, 0xff00 + frame);
  view.setUint16(at + 5, height);
  view.setUint16(at + 7, width);
  return new Blob([bytes]);
}

/** Of the beginning given and so many bytes. */
const fileOf = (begins: string, length: number) =>
  new Blob([begins, new Uint8Array(length - begins.length)]);

const decode = vi.fn();
const closed = vi.fn();
beforeEach(() => {
  vi.clearAllMocks();
  decode.mockImplementation(async () => ({ width: 2, height: 1, close: closed }));
  vi.stubGlobal('createImageBitmap', decode);
  HTMLCanvasElement.prototype.getContext = (() => ({
    fillRect: () => undefined,
    drawImage: () => undefined,
    getImageData: () => ({ data: new Uint8ClampedArray(8) }),
  })) as never;
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const within: [string, Blob][] = [
  ['a PNG of 24 million pixels', png(6000, 4000)],
  ['a JPEG of 48 million in one pass', jpeg(0xc0, 8000, 6000)],
  ['a JPEG of 24 million in many', jpeg(0xc2, 6000, 4000)],
  ['a small file of an unknown kind', fileOf('II*\0', 1000)],
];

test.each(within)('%s is decoded, and its memory given back', async (_, file) => {
  expect(await openPhoto(file)).toMatchObject({ ok: true, value: { image: { width: 2 } } });
  expect(closed).toHaveBeenCalledOnce();
});

const beyond: [string, Blob, string][] = [
  ['a PNG of 26 million pixels', png(6500, 4000), 'too-large'],
  ['a JPEG of 26 million in many passes', jpeg(0xc2, 6500, 4000), 'too-large'],
  ['a JPEG of 60 million where none can be shrunk', jpeg(0xc0, 10_000, 6000), 'too-large'],
  ['the same after two pictures of depths', jpeg(0xc0, 10_000, 6000, 2e6), 'too-large'],
  ['a large TIFF', fileOf('MM\0*', 5e6), 'too-large'],
  ['a large GIF that says nothing of its size', fileOf('GIF89a', 5e6), 'too-large'],
  ['a large file of another kind', fileOf('%PDF-1.7', 5e6), 'not-a-picture'],
];

test.each(beyond)('%s is refused undecoded', async (_, file, fault) => {
  expect(await openPhoto(file)).toEqual({ ok: false, fault });
  expect(decode).not.toHaveBeenCalled();
});

test('a photo with five megabytes of depths before its size is opened', async () => {
  const file = jpeg(0xc0, 4000, 2000, 5e6);
  expect(await openPhoto(file)).toMatchObject({ ok: true });
});

test('where it can’t be drawn, the memory is given back as well', async () => {
  HTMLCanvasElement.prototype.getContext = () => null;
  expect(await openPhoto(png(9, 9))).toEqual({ ok: false, fault: 'damaged' });
  expect(closed).toHaveBeenCalledOnce();
});

test('a file whose bytes can’t be had is said', async () => {
  const file = png(9, 9);
  const gone = new DOMException('gone', 'NotReadableError');
  file.slice = () => ({ arrayBuffer: () => Promise.reject(gone) }) as never;
  expect(await openPhoto(file)).toEqual({ ok: false, fault: 'unreadable' });
  file.slice = () => {
    throw gone;
  };
  expect(await openPhoto(file)).toEqual({ ok: false, fault: 'unreadable' });
});

test.each(['reading', 'decoding'])('%s that never ends is given up', async (what) => {
  vi.useFakeTimers();
  const file = png(9, 9);
  const never = new Promise<never>(() => undefined);
  if (what === 'reading') file.slice = () => ({ arrayBuffer: () => never }) as never;
  else decode.mockReturnValue(never);
  const settled = vi.fn();
  void openPhoto(file).then(settled);
  await vi.advanceTimersByTimeAsync(29_000);
  expect(settled).not.toHaveBeenCalled();
  await vi.advanceTimersByTimeAsync(1_000);
  expect(settled).toHaveBeenCalledExactlyOnceWith({ ok: false, fault: 'slow' });
});

test('without the part that opens files it is said', async () => {
  vi.resetModules();
  vi.doMock('../../src/camera/open-file.ts', () => {
    throw new TypeError('no connection');
  });
  const { openPhoto: alone } = await import('../../src/camera/photo.ts');
  expect(await alone(png(9, 9))).toEqual({ ok: false, fault: 'unfetched' });
  vi.doUnmock('../../src/camera/open-file.ts');
});
