import { writeBackup } from '../garment/backup.ts';
import { standOf } from '../garment/backup-due.ts';
import { loadGarments, type SetAside } from '../storage/garments.ts';
import { recordText } from '../storage/record-text.ts';
import type { Store } from '../storage/store.ts';
import { BACKUP_KEY } from './garment-deeds.ts';
import { saveFile } from './save-file.ts';

/** Hands every garment to the phone as one file, and remembers what was in it. */
export async function saveBackup(store: Store): Promise<void> {
  const { garments } = await loadGarments(store);
  saveFile(`thumbrule-${new Date().toISOString().slice(0, 10)}.json`, json(writeBackup(garments)));
  await store.change(BACKUP_KEY, () => standOf(garments, Date.now()));
}

/** Hands the records that can't be read to the phone, whatever is in them. */
export async function saveSetAside(setAside: readonly SetAside[]): Promise<void> {
  saveFile('thumbrule-set-aside.json', json(recordText(setAside, 1)));
}

function json(text: string): Blob {
  return new Blob([text], { type: 'application/json' });
}
