import type { GreyImage, Point } from '../tape/reading.ts';

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
 * - `too-large`: decoding it would take more memory than a phone has;
 * - `unreadable`: its bytes can't be had, as when it has been moved or is elsewhere;
 * - `slow`: it isn't open after a time in which any photo would be;
 * - `unfetched`: the part of the app that opens photos can't be fetched.
 */
export type PhotoFault =
  | 'not-a-picture'
  | 'damaged'
  | 'strange'
  | 'too-large'
  | 'unreadable'
  | 'slow'
  | 'unfetched';

export type PhotoOutcome = { ok: true; value: Photo } | { ok: false; fault: PhotoFault };

/** For reading and decoding a file, on a slow phone. */
const OPEN_MS = 30_000;

/** Opens a photo, turned upright as the browser shows it. Never rejects, nor takes for ever. */
export async function openPhoto(file: Blob): Promise<PhotoOutcome> {
  let limit: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<PhotoOutcome>((settle) => {
    limit = setTimeout(() => settle({ ok: false, fault: 'slow' }), OPEN_MS);
  });
  const outcome = await Promise.race([opened(file), late]);
  clearTimeout(limit);
  return outcome;
}

/** What opens files is fetched when there is one: the screen comes sooner without. */
function opened(file: Blob): Promise<PhotoOutcome> {
  return import('./open-file.ts').then(
    ({ openFile }) => openFile(file),
    () => ({ ok: false, fault: 'unfetched' }),
  );
}
