import type { Photo } from './drawn.ts';
import type { FileFault } from './open-file.ts';

export type { Photo };

/**
 * Why a file gives no photo.
 * - `slow`: it isn't open after a time in which any photo would be;
 * - `unfetched`: the part of the app that opens photos can't be fetched.
 */
export type PhotoFault = FileFault | 'slow' | 'unfetched';

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
