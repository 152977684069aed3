import type { Garment, Kept } from '../../garment/garment.ts';
import { findGarment } from '../../storage/garments.ts';
import type { Store } from '../../storage/store.ts';

export interface Opened {
  garment: Garment;
  kept: Kept;
}

/** The garment and the thing kept on it that a draft was opened from, when they are still there. */
export async function loadOpened(
  store: Store,
  place: string | undefined,
): Promise<Opened | undefined> {
  const parts = place?.split('.') ?? [];
  // An id of a backup's may have dots in it.
  for (let i = 1; i < parts.length; i++) {
    const garment = await findGarment(store, parts.slice(0, i).join('.'));
    const id = parts.slice(i).join('.');
    const kept = garment?.kept.find((one) => one.id === id);
    if (garment && kept) return { garment, kept };
  }
  return undefined;
}
