import type { GreyImage } from './grey-image.ts';

/**
 * The picture as a portable greymap file (Netpbm PGM, binary "P5"): a header in ASCII, then one
 * byte a pixel from the upper left. Engines take it as it is; a Windows bitmap tesseract.js
 * first copies byte by byte, which took longer than the reading.
 */
export function pgmOf({ width, height, pixels }: GreyImage): Uint8Array {
  const header = `P5\n${width} ${height}\n255\n`;
  const file = new Uint8Array(header.length + pixels.length);
  for (let i = 0; i < header.length; i++) file[i] = header.charCodeAt(i);
  file.set(pixels, header.length);
  return file;
}
