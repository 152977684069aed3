import type { Garment, Quantity, Work } from '../../garment/record/record.ts';
import { soundOf } from '../../garment/record/sound.ts';
import { findGarment } from '../../storage/garments.ts';
import type { Store } from '../../storage/store.ts';

/** A work or a quantity that is on a garment. */
export interface Opened {
  garment: Garment;
  id: string;
  kept: Work | Quantity;
}

/** Where something is kept, as the address of a calculation holds it. */
export function placeOf(garment: string, id: string): string {
  return `${garment}.${id}`;
}

/** The garment and the thing on it that a draft was kept as, when they are still there. */
export async function loadOpened(
  store: Store,
  place: string | undefined,
): Promise<Opened | undefined> {
  const parts = place?.split('.') ?? [];
  // An id of a backup's may have dots in it.
  for (let i = 1; i < parts.length; i++) {
    const garment = await findGarment(store, parts.slice(0, i).join('.'));
    const id = parts.slice(i).join('.');
    const kept = garment && keptIn(garment, id);
    if (kept) return { garment, id, kept };
  }
  return undefined;
}

export function keptIn(garment: Garment, id: string): Work | Quantity | undefined {
  const { works, quantities } = soundOf(garment);
  return works.get(id) ?? quantities.get(id);
}
