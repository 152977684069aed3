import type { Garment } from '../garment/record/record.ts';
import type { Store } from './store.ts';

/**
 * Garments as this page last read or wrote them, by id.
 *
 * The app never takes a garment off the phone: what is deleted lies in the bin. One that
 * is in neither place was cleared by the browser, and this is all that is left of it.
 */
const memories = new WeakMap<Store, Map<string, Garment>>();

export function remember(store: Store, garment: Garment): void {
  const memory = memories.get(store) ?? new Map<string, Garment>();
  memory.set(garment.id, garment);
  memories.set(store, memory);
}

/** All that this page has had of a store. */
export function remembered(store: Store): readonly Garment[] {
  return [...(memories.get(store)?.values() ?? [])];
}
