import { drawn, LONG_SIDE, type Photo } from './drawn.ts';
import { type PictureHeader, readHeader } from './picture-header.ts';
import type { PictureSize } from './picture-sizes.ts';

/**
 * Why a file can't be opened.
 * - `not-a-picture`: it is something else;
 * - `damaged`: a picture of a known kind that can't be decoded, often one cut short;
 * - `strange`: a kind of picture this browser doesn't know;
 * - `too-large`: decoding it would take more memory than a phone has;
 * - `unreadable`: its bytes can't be had, as when it has been moved or is elsewhere.
 */
export type FileFault = 'not-a-picture' | 'damaged' | 'strange' | 'too-large' | 'unreadable';

/** Above this many pixels a JPEG is shrunk while it is decoded, where the browser can do that. */
const LARGE = 9e6;
/** Above this many a JPEG in one pass is not decoded whole: 4 bytes each. */
const TOO_LARGE = 50e6;
/** Above this many no other picture is: besides, its decoder may keep as much again. */
const TOO_LARGE_OTHER = 25e6;
/** A file so large whose header doesn't tell its pixels is refused, too. */
const TOO_LARGE_BYTES = 4e6;
/** As much of a file as mostly holds its header, a preview and a colour profile included. */
const HEADER_BYTES = 512 * 1024;
/** And when depths or other pictures come before it. */
const LONG_HEADER_BYTES = 16 * 1024 * 1024;

/** Opens a photo, turned upright as the browser shows it. Never rejects. */
export async function openFile(
  file: Blob,
): Promise<{ ok: true; value: Photo } | { ok: false; fault: FileFault }> {
  const header = await headerOf(file).catch(() => undefined);
  if (!header) return { ok: false, fault: 'unreadable' };
  const { kind, size, onePass } = header;
  const refused = { ok: false, fault: kind === 'none' ? FAULTS.none : 'too-large' } as const;
  const unknown = file.size > TOO_LARGE_BYTES ? Infinity : 0;
  const pixels = size ? size.width * size.height : unknown;
  try {
    if (!onePass && pixels > TOO_LARGE_OTHER) return refused;
    const shrinks = kind === 'jpeg' && pixels > LARGE;
    const small = shrinks && size ? await decodedSmall(file, size) : undefined;
    if (!small && pixels > TOO_LARGE) return refused;
    return { ok: true, value: drawn(small ?? (await createImageBitmap(file))) };
  } catch {
    return { ok: false, fault: FAULTS[kind] };
  }
}

async function headerOf(file: Blob): Promise<PictureHeader> {
  const upTo = async (most: number) =>
    readHeader(new Uint8Array(await file.slice(0, most).arrayBuffer()));
  const header = await upTo(HEADER_BYTES);
  return header.size || file.size <= HEADER_BYTES ? header : upTo(LONG_HEADER_BYTES);
}

const FAULTS = {
  jpeg: 'damaged',
  png: 'damaged',
  other: 'strange',
  none: 'not-a-picture',
} as const;

/**
 * Decodes a JPEG at a fraction of its size, which takes a fraction of the memory; undefined where
 * the browser can't, or doesn't say how the picture must be turned.
 */
async function decodedSmall(file: Blob, size: PictureSize): Promise<VideoFrame | undefined> {
  if (typeof ImageDecoder === 'undefined') return undefined;
  // JPEG's blocks of 8 × 8 can be decoded as n × n: the least that is enough.
  const eighths = Math.min(8, Math.ceil((8 * LONG_SIDE) / Math.max(size.width, size.height)));
  const decoder = new ImageDecoder({
    data: file.stream(),
    type: 'image/jpeg',
    desiredWidth: Math.ceil((size.width * eighths) / 8),
    desiredHeight: Math.ceil((size.height * eighths) / 8),
  });
  try {
    const { image } = await decoder.decode();
    if ('rotation' in image) return image;
    image.close();
    return undefined;
  } finally {
    decoder.close();
  }
}
