import {
  bmpSize,
  gifSize,
  heifSize,
  jpegFrame,
  type PictureSize,
  webpSize,
} from './picture-sizes.ts';

/** What the first bytes of a file say it is. `other` is a picture of another kind. */
export interface PictureHeader {
  kind: 'jpeg' | 'png' | 'other' | 'none';
  /** Pixels of the picture as it is stored, turned or not, when the header tells. */
  size: PictureSize | undefined;
  /** Whether decoding it small takes little memory: a JPEG that comes in one pass. */
  onePass: boolean;
}

type Known = Pick<PictureHeader, 'kind'> & {
  begins: RegExp;
  sizeOf: (view: DataView) => (PictureSize & { onePass?: boolean }) | undefined;
};

/** Picture files that browsers know, or that phones make; `.` is any byte. */
const KINDS: readonly Known[] = [
  { kind: 'jpeg', begins: /^\xff\xd8/, sizeOf: jpegFrame },
  { kind: 'png', begins: /^\x89PNG\r\n/, sizeOf: pngSize },
  { kind: 'other', begins: /^GIF8/, sizeOf: gifSize },
  { kind: 'other', begins: /^RIFF....WEBP/s, sizeOf: webpSize },
  { kind: 'other', begins: /^BM/, sizeOf: bmpSize },
  { kind: 'other', begins: /^....ftyp(he[iv][cmsx]|mif[12]|msf1|avi[fs])/s, sizeOf: heifSize },
  { kind: 'other', begins: /^(II\*\0|MM\0\*)/, sizeOf: () => undefined }, // TIFF
];

/**
 * Reads what kind of picture a file is and how many pixels it has, without decoding it: a
 * picture too large for the phone's memory must be known before it is opened. Never throws.
 */
export function readHeader(bytes: Uint8Array): PictureHeader {
  const begins = String.fromCharCode(...bytes.subarray(0, 16));
  const known = KINDS.find((one) => one.begins.test(begins));
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const found = sizeIn(view, known);
  const size = found && found.width > 0 && found.height > 0 ? found : undefined;
  return {
    kind: known?.kind ?? 'none',
    size: size && { width: size.width, height: size.height },
    onePass: size?.onePass ?? false,
  };
}

function sizeIn(view: DataView, known: Known | undefined) {
  try {
    return known?.sizeOf(view);
  } catch {
    return undefined; // it ends before it has said so
  }
}

/** Source: PNG (ISO/IEC 15948), 11.2.2. */
function pngSize(view: DataView): PictureSize {
  return { width: view.getUint32(16), height: view.getUint32(20) };
}
