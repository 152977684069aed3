import { garmentFileWords as fileWords } from '#words/garment/garment-file-words.ts';
import { copyAsNewStart } from '../../garment/actions/copy.ts';
import { readStand } from '../../garment/backup/backup-due.ts';
import { standRestored } from '../../garment/backup/backup-stand.ts';
import { newGarment, renamed, shortened } from '../../garment/record/new-garment.ts';
import type { Garment } from '../../garment/record/record.ts';
import type { InventedGarment } from '../../screens/garments/deeds.ts';
import { moveGarment, replaceGarment } from '../../storage/garment-moves.ts';
import { addGarment, changeGarment, loadGarment } from '../../storage/garments.ts';
import { type Store, StoreError } from '../../storage/store.ts';
import { askToPersist, BACKUP_KEY, notKept, part, rememberOpen } from './deeds.ts';
import type { Chosen } from './restore-place.tsx';
import { tellTabs } from './tabs.ts';
import { type ShowWork, type Watch, watched } from './watch.ts';

/*
 * What is done to the store from the list of garments; fetched with the first of it.
 * Each ends when it is on the disk, and throws what `notKept` has words for.
 */

type Named = Pick<Garment, 'id'>;

export function make(store: Store, name: string): Promise<string> {
  return add(store, newGarment(crypto.randomUUID(), name, Date.now()));
}

export async function makeDemo(store: Store, which: InventedGarment): Promise<string> {
  const { workedDemo } = await part(import('./demo.ts'));
  return add(store, await workedDemo(which));
}

/** Plans and links as the start of another garment; what is made and decided doesn't go along. */
export async function copy(store: Store, { id }: Named): Promise<string> {
  const { record } = await loadGarment(store, id);
  const name = shortened(fileWords.copyOf(record.name));
  return add(store, copyAsNewStart(record, crypto.randomUUID(), name, Date.now()));
}

/** A new garment is the one that is open: resolves to its id. */
export async function add(store: Store, garment: Garment): Promise<string> {
  await addGarment(store, garment);
  tellTabs(garment.id);
  await rememberOpen(store, garment.id);
  askToPersist();
  return garment.id;
}

export async function rename(store: Store, { id }: Named, name: string): Promise<void> {
  await changeGarment(store, id, ({ record, log }) => ({
    record: renamed(record, name, Date.now()),
    log,
  }));
  tellTabs(id);
}

export async function putAway(store: Store, { id }: Named): Promise<void> {
  await moveGarment(store, id, 'bin', crypto.randomUUID());
  tellTabs(id);
}

export async function bringBack(store: Store, { id }: Named): Promise<void> {
  await moveGarment(store, id, 'here', crypto.randomUUID());
  tellTabs(id);
}

/** Puts what the browser has cleared back from memory. */
export async function putBackAll(store: Store, cleared: readonly Garment[]): Promise<void> {
  for (const garment of cleared) {
    await addGarment(store, garment);
    tellTabs(garment.id);
  }
}

/**
 * Restores what was chosen of a backup, garment by garment, until it is done, stopped, or one
 * could not be kept.
 * @returns what is to be said of it
 */
export async function restore(store: Store, chosen: Chosen, watch: Watch): Promise<string> {
  const asked = chosen.garments.filter(({ choice }) => choice !== 'skip');
  const restored: Garment[] = [];
  let done = 0;
  try {
    for (const { key, raw } of chosen.setAside) await store.change(key, (old) => old ?? raw);
    for (const { garment, choice } of asked) {
      watch.show(done, asked.length);
      if (watch.signal.aborted) return fileWords.restoredUntil(done, asked.length);
      const own = choice === 'take' ? garment : beside(garment);
      if (choice === 'take') await replaceGarment(store, own, crypto.randomUUID());
      else await addGarment(store, own);
      tellTabs(own.id);
      restored.push(own);
      done += 1;
    }
    return fileWords.restored(done);
  } catch (error) {
    return fileWords.restoredSome(done, asked.length, await notKept(error));
  } finally {
    await rememberFile(store, restored, chosen.at);
  }
}

/** What was restored is in its file: no backup is asked for on its account. Where that can't be kept, one is. */
async function rememberFile(store: Store, restored: readonly Garment[], at: number): Promise<void> {
  if (restored.length === 0) return;
  const held = restored.map(({ id, edits, facts }) => ({
    ...{ id, edits, facts: Object.keys(facts).length },
  }));
  try {
    await store.change(BACKUP_KEY, (last) => standRestored(readStand(last), held, at));
  } catch (error) {
    if (!(error instanceof StoreError)) throw error;
  }
}

/** The same, shown while it is done. */
export function restoreChosen(store: Store, chosen: Chosen, show: ShowWork): Promise<string> {
  return watched('restoring', show, (watch) => restore(store, chosen, watch));
}

/** The whole of it under another name, what is made included: nothing of a backup is left out. */
function beside(garment: Garment): Garment {
  const name = shortened(fileWords.copyOf(garment.name));
  return { ...garment, id: crypto.randomUUID(), name };
}
