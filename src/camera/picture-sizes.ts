/** In pixels, as the picture is stored, turned or not. */
export interface PictureSize {
  width: number;
  height: number;
}

/** The area that screen and first frame cover. Source: GIF89a, sections 18, 20 and 23 to 26. */
export function gifSize(view: DataView): PictureSize {
  const pair = (at: number) => [view.getUint16(at, true), view.getUint16(at + 2, true)] as const;
  const [width, height] = pair(6);
  const flags = view.getUint8(10);
  // A table of colours has three bytes for each.
  let at = 13 + (flags & 0x80 ? 3 << ((flags & 7) + 1) : 0);
  while (view.getUint8(at) === 0x21) {
    at += 2;
    while (view.getUint8(at) > 0) at += 1 + view.getUint8(at);
    at += 1;
  }
  if (view.getUint8(at) !== 0x2c) return { width, height };
  const [[left, top], [across, down]] = [pair(at + 1), pair(at + 5)];
  return { width: Math.max(width, left + across), height: Math.max(height, top + down) };
}

/** Source: BITMAPCOREHEADER and BITMAPINFOHEADER, Windows GDI ([MS-WMF] 2.2.2.2 and 2.2.2.3). */
export function bmpSize(view: DataView): PictureSize {
  if (view.getUint32(14, true) === 12) {
    return { width: view.getUint16(18, true), height: view.getUint16(20, true) };
  }
  // Rows from the top down have a height below nothing.
  return { width: view.getInt32(18, true), height: Math.abs(view.getInt32(22, true)) };
}

/** Source: WebP (RFC 9649), 2.5 to 2.7 and 3.4; VP8 (RFC 6386), 9.1. */
export function webpSize(view: DataView): PictureSize | undefined {
  const low = (at: number) => view.getUint16(at, true);
  switch (view.getUint32(12)) {
    case 0x56503820: // 'VP8 ': 14 bits each, after the frame tag and the start code
      return { width: low(26) & 0x3fff, height: low(28) & 0x3fff };
    case 0x5650384c: {
      // 'VP8L': 14 bits each, less one, after the signature
      const bits = view.getUint32(21, true);
      return { width: (bits & 0x3fff) + 1, height: ((bits >> 14) & 0x3fff) + 1 };
    }
    case 0x56503858: {
      // 'VP8X': 24 bits each, less one, after the flags
      const less = (at: number) => low(at) + (view.getUint8(at + 2) << 16);
      return { width: less(24) + 1, height: less(27) + 1 };
    }
    default:
      return undefined;
  }
}

/** Where a picture's extents are, box within box. */
const PATH = [0x6d657461, 0x69707270, 0x6970636f, 0x69737065]; // meta, iprp, ipco, ispe

/**
 * The largest extent of HEIC or AVIF: the whole picture has one, beside its tiles and its preview.
 * Source: ISO/IEC 14496-12, 4.2 (boxes); ISO/IEC 23008-12, 6.5.3 (ispe) and 9.3 (iprp, ipco).
 */
export function heifSize(view: DataView, from = 0, to = view.byteLength, depth = 0): PictureSize {
  let largest: PictureSize = { width: 0, height: 0 };
  let at = from;
  while (at + 8 <= to) {
    const long = view.getUint32(at) === 1;
    const body = at + (long ? 16 : 8);
    // None given: to the end of the file.
    const length = long ? Number(view.getBigUint64(at + 8)) : view.getUint32(at) || to;
    const end = Math.min(to, at + length);
    if (end < body) break;
    if (view.getUint32(at + 4) === PATH[depth]) {
      const found =
        depth === 3
          ? { width: view.getUint32(body + 4), height: view.getUint32(body + 8) }
          : heifSize(view, depth ? body : body + 4, end, depth + 1);
      if (found.width * found.height > largest.width * largest.height) largest = found;
    }
    at = end;
  }
  return largest;
}

/** A JPEG's size, and whether it comes in one pass: then it can be decoded in little memory. */
export interface JpegFrame extends PictureSize {
  onePass: boolean;
}

/** Walks the segments to the frame header. Source: ITU-T T.81, annex B. */
export function jpegFrame(view: DataView): JpegFrame | undefined {
  let at = 2;
  while (view.getUint8(at) === 0xff) {
    const marker = view.getUint8(at + 1);
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) {
      const [height, width] = [view.getUint16(at + 5), view.getUint16(at + 7)];
      return { width, height, onePass: marker < 0xc2 };
    }
    // A fill byte stands alone; every other segment before the frame has a length.
    at += marker === 0xff ? 1 : 2 + view.getUint16(at + 2);
  }
  return undefined;
}
