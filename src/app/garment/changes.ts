import { garmentFileWords as fileWords } from '#words/garment-file-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { hasRoom } from '../../garment/changes.ts';
import { type Garment, type Kept, newGarment } from '../../garment/garment.ts';
import { copied, putBack, renamed, withoutKept } from '../../garment/list-changes.ts';
import { moveGarment, replaceGarment } from '../../storage/garment-moves.ts';
import { addGarment, changeGarment, GarmentError } from '../../storage/garments.ts';
import type { Store } from '../../storage/store.ts';

import { askToPersist, notKept, part, rememberOpen } from './deeds.ts';
import type { Chosen } from './restore-place.tsx';
import { type ShowWork, type Watch, watched } from './watch.ts';

/*
 * What is done to the store from the list of garments; fetched with the first of it.
 * Each ends when it is on the disk, and throws what `notKept` has words for.
 */

export function make(store: Store, name: string): Promise<string> {
  return add(store, newGarment(crypto.randomUUID(), name, Date.now()));
}

export async function makeDemo(store: Store, bench: Bench): Promise<string> {
  const { workedDemo } = await part(import('./demo.ts'));
  return add(store, await workedDemo(bench));
}

export function copy(store: Store, garment: Garment): Promise<string> {
  return add(store, copyOf(garment));
}

/** A new garment is the one that is open: resolves to its id. */
async function add(store: Store, garment: Garment): Promise<string> {
  await addGarment(store, garment);
  await rememberOpen(store, garment.id);
  askToPersist();
  return garment.id;
}

function copyOf(garment: Garment): Garment {
  return copied(garment, crypto.randomUUID(), fileWords.copyOf(garment.name), Date.now());
}

export function rename(store: Store, { id }: Garment, name: string): Promise<void> {
  return changeGarment(store, id, (garment) => renamed(garment, name, Date.now()));
}

export function remove(store: Store, { id }: Garment): Promise<void> {
  return moveGarment(store, id, 'bin', crypto.randomUUID());
}

export function bringBack(store: Store, { id }: Pick<Garment, 'id'>): Promise<void> {
  return moveGarment(store, id, 'here', crypto.randomUUID());
}

export function takeOff(store: Store, { id }: Garment, kept: Kept): Promise<void> {
  return changeGarment(store, id, (garment) => {
    if (!hasRoom(garment.takenOff)) throw new GarmentError('many');
    return withoutKept(garment, kept.id, Date.now());
  });
}

/** Puts back what was taken off; the last of it, where the same was taken off before. */
export function putOn(store: Store, { id }: Garment, kept: Kept): Promise<void> {
  return changeGarment(store, id, (garment) => {
    if (!hasRoom(garment.kept)) throw new GarmentError('many');
    const place = garment.takenOff.map((one) => one.id).lastIndexOf(kept.id);
    return putBack(garment, place, crypto.randomUUID(), Date.now());
  });
}

/** Puts what the browser has cleared back from memory. */
export async function putBackAll(store: Store, cleared: readonly Garment[]): Promise<void> {
  for (const garment of cleared) await addGarment(store, garment);
}

/**
 * Restores what was chosen of a backup, garment by garment, until it is done, stopped, or one
 * could not be kept.
 * @returns what is to be said of it
 */
export async function restore(store: Store, chosen: Chosen, watch: Watch): Promise<string> {
  const asked = chosen.garments.filter(({ choice }) => choice !== 'skip');
  let done = 0;
  try {
    for (const { key, raw } of chosen.setAside) await store.change(key, (old) => old ?? raw);
    for (const { garment, choice } of asked) {
      watch.show(done, asked.length);
      if (watch.signal.aborted) return fileWords.restoredUntil(done, asked.length);
      if (choice === 'take') await replaceGarment(store, garment, crypto.randomUUID());
      else await addGarment(store, copyOf(garment));
      done += 1;
    }
    return fileWords.restored(done);
  } catch (error) {
    return fileWords.restoredSome(done, asked.length, await notKept(error));
  }
}

/** The same, shown while it is done. */
export function restoreChosen(store: Store, chosen: Chosen, show: ShowWork): Promise<string> {
  return watched('restoring', show, (watch) => restore(store, chosen, watch));
}
