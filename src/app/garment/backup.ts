import { garmentFileWords as words } from '#words/garment/garment-file-words.ts';
import { asideLine, backupParts, garmentLine, writeBackup } from '../../garment/backup/backup.ts';
import { standOf } from '../../garment/backup/backup-stand.ts';
import type { Listed } from '../../garment/record/listed.ts';
import { readRecord } from '../../garment/record/read-record.ts';
import type { Garment } from '../../garment/record/record.ts';
import { garmentKeys, PREFIX } from '../../storage/garment-keys.ts';
import type { SetAside } from '../../storage/garment-list.ts';
import { withPhotos } from '../../storage/garment-photos.ts';
import { recordText } from '../../storage/record-text.ts';
import { type Store, StoreError } from '../../storage/store.ts';
import { saveFile, shareFile } from '../paper/save-file.ts';
import { BACKUP_KEY, PUT_OFF_KEY } from './deeds.ts';
import { type ShowWork, type Watch, watched } from './watch.ts';

/**
 * Hands every garment to the phone as one file, with the records that can't be read, as they
 * are; and remembers what was in it. Each is read by itself, so that the page is never held
 * up for long.
 *
 * @returns what is to be said of it
 */
export async function saveBackup(
  store: Store,
  watch: Watch,
  way: 'save' | 'share' = 'save',
): Promise<string | undefined> {
  const lines: string[] = [];
  const aside: string[] = [];
  const written: { id: string; edits: number; facts: number }[] = [];
  const keys = await garmentKeys(store);
  for (const [i, key] of keys.entries()) {
    watch.show(i, keys.length);
    const record = await store.load(key);
    if (watch.signal.aborted) return words.notWritten;
    const read = readRecord(record);
    if (read.ok && key.startsWith(PREFIX)) {
      lines.push(garmentLine(await withPhotos(store, read.value)));
      const { id, edits, facts } = read.value;
      written.push({ id, edits, facts: Object.keys(facts).length });
    } else if (!read.ok && record !== undefined) aside.push(asideLine(key, recordText(record)));
  }
  const became = await handOut(backupParts(lines, aside), way);
  if (became === 'called off') return words.notHandedOver;
  try {
    await store.change(BACKUP_KEY, () => standOf(written, Date.now()));
  } catch (error) {
    // Where storage is full the file is wanted most: it is there, and said to be.
    if (error instanceof StoreError) return words.notRemembered;
    throw error;
  }
  return way === 'share' && became === 'saved' ? words.savedInstead : undefined;
}

/** The same, shown while it is done. */
export function backUp(
  store: Store,
  show: ShowWork,
  way: 'save' | 'share',
): Promise<string | undefined> {
  return watched('writing', show, (watch) => saveBackup(store, watch, way));
}

/** A backup is not asked for again for a while. */
export function putOffBackup(store: Store, garments: readonly Listed[]): Promise<void> {
  return store.change(PUT_OFF_KEY, () => standOf(garments, Date.now()));
}

/** Hands garments that are only in memory to the phone, as a backup. */
export function saveFromMemory(garments: readonly Garment[]): void {
  saveParts([writeBackup(garments)]);
}

/** Hands the records that can't be read to the phone, whatever is in them. */
export function saveSetAside(setAside: readonly SetAside[]): void {
  saveFile('thumbrule-set-aside.json', json([recordText(setAside, 1)]));
}

/** What became of a backup: a phone that hands on no file of this kind saves it. */
async function handOut(parts: string[], way: 'save' | 'share') {
  if (way === 'share') return shareFile(backupName(), json(parts));
  saveParts(parts);
  return 'saved';
}

function saveParts(parts: string[]): void {
  saveFile(backupName(), json(parts));
}

function backupName(): string {
  return `thumbrule-${new Date().toISOString().slice(0, 10)}.json`;
}

function json(parts: string[]): Blob {
  return new Blob(parts, { type: 'application/json' });
}
