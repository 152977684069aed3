import type { GreyImage, Point } from '../tape/reading.ts';
import { greyOf } from './grey.ts';
import { HEADER_BYTES, type PictureSize, readHeader } from './picture-header.ts';

/** A photo the right way up: to be seen, and to be read. Both have the same pixels. */
export interface Photo {
  picture: HTMLCanvasElement;
  image: GreyImage;
  /** Where the cross of the live picture stood that was frozen into it. */
  aimed?: Point;
}

/**
 * Why a file gives no photo.
 * - `not-a-picture`: it is something else;
 * - `damaged`: a picture of a known kind that can't be decoded, often one cut short;
 * - `strange`: a kind of picture this browser doesn't know;
 * - `too-large`: decoding it would take more memory than a phone has.
 */
export type PhotoFault = 'not-a-picture' | 'damaged' | 'strange' | 'too-large';

export type PhotoOutcome = { ok: true; value: Photo } | { ok: false; fault: PhotoFault };

/** The long side is shrunk by whole factors until it is below twice this: what the reader needs. */
const LONG_SIDE = 2000;
/** Above this many pixels a JPEG is shrunk while it is decoded, where the browser can do that. */
const LARGE = 9e6;
/** Above this many, four bytes each, a picture that must be decoded whole is refused. */
const TOO_LARGE = 50e6;
/** A file so large whose header doesn't tell its pixels is refused, too. */
const TOO_LARGE_BYTES = 60e6;

/** Opens a photo, turned upright as the browser shows it. Never rejects. */
export async function openPhoto(file: Blob): Promise<PhotoOutcome> {
  const header = readHeader(new Uint8Array(await file.slice(0, HEADER_BYTES).arrayBuffer()));
  const { size } = header;
  const unknown = file.size > TOO_LARGE_BYTES ? Infinity : 0;
  const pixels = size ? size.width * size.height : unknown;
  const shrinks = header.kind === 'jpeg' && pixels > LARGE;
  try {
    const small = shrinks && size ? await decodedSmall(file, size) : undefined;
    if (!small && pixels > TOO_LARGE) return { ok: false, fault: 'too-large' };
    return { ok: true, value: drawn(small ?? (await createImageBitmap(file))) };
  } catch {
    return { ok: false, fault: FAULTS[header.kind] };
  }
}

const FAULTS = {
  jpeg: 'damaged',
  png: 'damaged',
  other: 'strange',
  none: 'not-a-picture',
} as const;

/** The photo of what a camera shows now, aimed at its middle. */
export function photoOf(video: HTMLVideoElement): Photo {
  const photo = drawn(video);
  const { width, height } = photo.image;
  return { ...photo, aimed: { x: (width - 1) / 2, y: (height - 1) / 2 } };
}

type Drawable = ImageBitmap | VideoFrame | HTMLVideoElement;

function sizeOf(source: Drawable): readonly [number, number] {
  if ('displayWidth' in source) return [source.displayWidth, source.displayHeight];
  if ('videoWidth' in source) return [source.videoWidth, source.videoHeight];
  return [source.width, source.height];
}

/** How many times a picture is shrunk. */
function factorFor(width: number, height: number): number {
  return Math.max(1, Math.floor(Math.max(width, height) / LONG_SIDE));
}

function drawn(source: Drawable): Photo {
  const [fullWidth, fullHeight] = sizeOf(source);
  const factor = factorFor(fullWidth, fullHeight);
  const [width, height] = [Math.ceil(fullWidth / factor), Math.ceil(fullHeight / factor)];
  const picture = document.createElement('canvas');
  picture.width = width;
  picture.height = height;
  const pen = picture.getContext('2d', { willReadFrequently: true });
  if (!pen) throw new Error('no memory for the picture');
  pen.fillStyle = 'white'; // what is transparent in a picture is no black tape
  pen.fillRect(0, 0, width, height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(source, 0, 0, width, height);
  if ('close' in source) source.close();
  return { picture, image: greyOf(pen, width, height) };
}

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
