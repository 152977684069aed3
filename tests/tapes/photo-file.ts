import sharp from 'sharp';
import type { GreyImage } from '../../src/tape/picture/grey-image.ts';

/** As much as a phone hands over. */
const MOST_PIXELS = 120e6;

/** A picture file as upright grey, as the app makes it: Rec. 601 luma of sRGB, on white where clear. */
export async function greyOfFile(file: string | Buffer): Promise<GreyImage> {
  const { data, info } = await sharp(file, { limitInputPixels: MOST_PIXELS })
    .rotate()
    .flatten({ background: '#fff' })
    .toColourspace('srgb')
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { width, height, channels } = info;
  const pixels = new Uint8Array(width * height);
  for (let i = 0; i < pixels.length; i++) {
    const at = i * channels;
    const red = data[at] ?? 0;
    const green = channels < 3 ? red : (data[at + 1] ?? 0);
    const blue = channels < 3 ? red : (data[at + 2] ?? 0);
    pixels[i] = Math.round(0.299 * red + 0.587 * green + 0.114 * blue);
  }
  return { width, height, pixels };
}
