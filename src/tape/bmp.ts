import type { GreyImage } from './reading.ts';

const FILE_HEADER_BYTES = 14;
const INFO_HEADER_BYTES = 40;
const GREYS = 256;
const PALETTE_BYTES = 4 * GREYS;
const PIXELS_FROM = FILE_HEADER_BYTES + INFO_HEADER_BYTES + PALETTE_BYTES;
/** 150 dots to the inch: digits of 36 px then stand as tall as a headline, as engines expect. */
const DOTS_PER_METRE = 5900;

/**
 * The picture as a Windows bitmap file: 8 bits a pixel with a palette of greys, not compressed,
 * lowest row first, each row filled to four bytes. Engines take it without a decoder of their own.
 */
export function bmpOf({ width, height, pixels }: GreyImage): Uint8Array {
  const stride = Math.ceil(width / 4) * 4;
  const file = new Uint8Array(PIXELS_FROM + stride * height);
  const view = new DataView(file.buffer);
  file.set([0x42, 0x4d]); // BM
  view.setUint32(2, file.length, true);
  view.setUint32(10, PIXELS_FROM, true);
  view.setUint32(14, INFO_HEADER_BYTES, true);
  view.setInt32(18, width, true);
  view.setInt32(22, height, true);
  view.setUint16(26, 1, true); // planes
  view.setUint16(28, 8, true); // bits a pixel
  view.setUint32(34, stride * height, true);
  view.setUint32(38, DOTS_PER_METRE, true);
  view.setUint32(42, DOTS_PER_METRE, true);
  view.setUint32(46, GREYS, true);
  for (let grey = 0; grey < GREYS; grey++) {
    file.fill(
      grey,
      PIXELS_FROM - PALETTE_BYTES + 4 * grey,
      PIXELS_FROM - PALETTE_BYTES + 4 * grey + 3,
    );
  }
  for (let y = 0; y < height; y++) {
    const row = pixels.subarray(y * width, (y + 1) * width);
    file.set(row, PIXELS_FROM + (height - 1 - y) * stride);
  }
  return file;
}
