import { takersIn } from './put.ts';
import { edit, type Slot } from './slots.ts';
import { type Done, isThere, refuse, type State, settle } from './state.ts';

/** The fields that take a quantity. */
export function takersOf(state: State, quantity: string): Slot[] {
  return takersIn(state, (link) => 'quantity' in link && link.quantity === quantity);
}

/** Takes a quantity off the garment, which nothing may take. What was measured of it stays among what is made. */
export function remove(state: State, quantity: string, now: number): Done {
  const slot = ['quantities', quantity];
  if (!isThere(state, slot)) return refuse(state, { why: 'not there', what: 'work' });
  const by = takersOf(state, quantity);
  if (by.length > 0) return refuse(state, { why: 'taken', by });
  return settle(state, 'remove', [edit(state.record, slot, undefined)], { now });
}
