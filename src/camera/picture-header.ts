/** What the first bytes of a file say it is. `other` is a picture no size is read of. */
export interface PictureHeader {
  kind: 'jpeg' | 'png' | 'other' | 'none';
  /** Pixels of the picture as it is stored, turned or not, when the header tells. */
  size: PictureSize | undefined;
}

export interface PictureSize {
  width: number;
  height: number;
}

/** As much of a file as holds its header, a preview and a colour profile before it included. */
export const HEADER_BYTES = 512 * 1024;

/** Beginnings of picture files that browsers know, or that phones make; `.` is any byte. */
const OTHERS = [
  /^GIF8/,
  /^RIFF....WEBP/s,
  /^BM/,
  /^....ftyp(heic|heix|mif1|msf1|avif)/s,
  /^II\*\0/,
];

/**
 * Reads what kind of picture a file is and how many pixels it has, without decoding it: a
 * picture too large for the phone's memory must be known before it is opened.
 */
export function readHeader(bytes: Uint8Array): PictureHeader {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return { kind: 'jpeg', size: jpegSize(view) };
  const begins = String.fromCharCode(...bytes.subarray(0, 16));
  if (begins.startsWith('\x89PNG\r\n\x1a\n')) {
    const known = bytes.length >= 24;
    const size = known ? { width: view.getUint32(16), height: view.getUint32(20) } : undefined;
    return { kind: 'png', size };
  }
  const known = OTHERS.some((beginning) => beginning.test(begins));
  return { kind: known ? 'other' : 'none', size: undefined };
}

/** Walks the segments to the frame header. Source: ITU-T T.81, annex B. */
function jpegSize(view: DataView): PictureSize | undefined {
  let at = 2;
  while (at + 9 <= view.byteLength) {
    if (view.getUint8(at) !== 0xff) return undefined;
    const marker = view.getUint8(at + 1);
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    // A fill byte stands alone; every other segment before the frame has a length.
    at += marker === 0xff ? 1 : 2 + view.getUint16(at + 2);
  }
  return undefined;
}
