import { type Preview, previewOf } from '../../garment/backup/backup-preview.ts';
import {
  type BackupFault,
  type BackupRead,
  BackupReader,
} from '../../garment/backup/read-backup.ts';
import { findGarment } from '../../storage/garments.ts';
import type { Store } from '../../storage/store.ts';
import type { Watch } from './watch.ts';

/** So much of a file is read at once, in bytes: the page stays free for a press in between. */
const AT_ONCE = 250_000;

/** Reads a file piece by piece, until it ends or is known to be none of ours. */
export async function readFile(
  file: Blob,
  watch: Watch,
): Promise<BackupRead | { ok: false; fault: BackupFault | 'stopped' }> {
  const reader = new BackupReader();
  const decoder = new TextDecoder();
  for (let at = 0; at < file.size; at += AT_ONCE) {
    watch.show(at, file.size);
    const bytes = await file.slice(at, at + AT_ONCE).arrayBuffer();
    if (watch.signal.aborted) return { ok: false, fault: 'stopped' };
    const fault = reader.take(decoder.decode(bytes, { stream: true }));
    if (fault) return { ok: false, fault };
  }
  reader.take(decoder.decode());
  return reader.end();
}

/** What restoring each garment would change; undefined when it was stopped. */
export async function previewAll(
  store: Store,
  { garments, damaged }: Extract<BackupRead, { ok: true }>,
  watch: Watch,
): Promise<readonly Preview[] | undefined> {
  const all: Preview[] = [];
  for (const garment of garments) {
    watch.show(all.length, garments.length);
    // One that is gone, or whose record can't be read, is put back as a new one would be.
    const own = await findGarment(store, garment.id);
    if (watch.signal.aborted) return undefined;
    all.push(previewOf(own, garment, damaged.has(garment.id)));
  }
  return all;
}
