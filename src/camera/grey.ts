import type { GreyImage } from '../tape/picture/grey-image.ts';

/** Rows turned at a time: a whole picture in colour would take four times its memory again. */
const BAND = 256;

/** What has pixels to give; a canvas's 2D context does. */
interface PixelSource {
  getImageData(x: number, y: number, width: number, height: number): { data: ArrayLike<number> };
}

/**
 * The grey picture of what is drawn.
 * Source of the weights of red, green and blue: ITU-R BT.601, luma.
 */
export function greyOf(source: PixelSource, width: number, height: number): GreyImage {
  const pixels = new Uint8Array(width * height);
  for (let top = 0; top < height; top += BAND) {
    const rows = Math.min(BAND, height - top);
    const { data } = source.getImageData(0, top, width, rows);
    const start = top * width;
    for (let i = 0; i < rows * width; i++) {
      const [red, green, blue] = [data[4 * i], data[4 * i + 1], data[4 * i + 2]] as const;
      pixels[start + i] = Math.round(
        0.299 * (red as number) + 0.587 * (green as number) + 0.114 * (blue as number),
      );
    }
  }
  return { width, height, pixels };
}
