import type { GreyImage } from '../tape/picture/grey-image.ts';
import type { Point } from '../tape/picture/place.ts';
import { greyOf } from './grey.ts';

/** A photo the right way up: to be seen, and to be read. Both have the same pixels. */
export interface Photo {
  picture: HTMLCanvasElement;
  image: GreyImage;
  /** Where the cross of the live picture stood that was frozen into it, if it was held over a tape. */
  aimed?: Point;
}

/** The long side is shrunk by whole factors until it is below twice this: what the reader needs. */
export const LONG_SIDE = 2000;

/**
 * The photo of what a camera shows now.
 * @param held the tape was held under the cross: its middle is what is aimed at
 */
export function photoOf(video: HTMLVideoElement, held: boolean): Photo {
  const photo = drawn(video);
  if (!held) return photo;
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

/** Shrinks a picture to what the reader needs, and turns it grey. Takes the memory of a frame back. */
export function drawn(source: Drawable): Photo {
  try {
    return shrunk(source);
  } finally {
    if ('close' in source) source.close();
  }
}

function shrunk(source: Drawable): Photo {
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
  return { picture, image: greyOf(pen, width, height) };
}
