import { garmentWords as words } from '#words/garment/garment-words.ts';
import { askNewer } from '../../controls/newer/newer-ask.ts';
import type { Listed } from '../../garment/record/listed.ts';
import { GarmentError } from '../../storage/garments.ts';
import { type Store, StoreError } from '../../storage/store.ts';
import { OPEN_KEY } from './open-keys.ts';

/** When the last backup was made, and when it was put off. */
export const BACKUP_KEY = 'last-backup';
export const PUT_OFF_KEY = 'backup-put-off';

/** A part of the app that could not be fetched. */
class PartError extends Error {}

/** A part of the app fetched when it is wanted. */
export function part<Part>(load: Promise<Part>): Promise<Part> {
  return load.catch((cause: unknown) => {
    throw new PartError('not fetched', { cause });
  });
}

/**
 * Why something was not kept, as a sentence with the mend. What is no such fault is a bug,
 * and is thrown on.
 */
export async function notKept(error: unknown): Promise<string> {
  if (error instanceof PartError) return notFetched();
  if (!(error instanceof GarmentError || error instanceof StoreError)) throw error;
  const { fault } = error;
  if (fault === 'gone') return words.gone;
  return import('#words/garment/garment-failed-words.ts').then(
    ({ garmentFailedWords }) => garmentFailedWords[fault],
    notFetched,
  );
}

/** There is no connection, or the host has another build. */
async function notFetched(): Promise<string> {
  return (await askNewer('deed')) ?? words.notFetched;
}

/** Remembers which garment is open. Where that can't be kept, what was done still is. */
export function rememberOpen(store: Store, id: string): Promise<void> {
  return store.change(OPEN_KEY, () => id).catch(() => undefined);
}

/** Which garment is to be shown open: what was opened last, at first the latest changed. */
export async function loadOpen(store: Store, garments: readonly Listed[]): Promise<string> {
  const open = await store.load(OPEN_KEY);
  return typeof open === 'string' ? open : (garments[0]?.id ?? '');
}

/** Asks once that the browser doesn't clear what is kept when space runs out. */
export function askToPersist(): void {
  void navigator.storage?.persist?.().catch(() => false);
}
