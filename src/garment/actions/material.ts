import { isId } from '../record/home.ts';
import type { Material } from '../record/material.ts';
import { isObject } from '../record/sound-values.ts';
import { at, edit, type Slot } from './slots.ts';
import { type Done, refuse, type State, settle } from './state.ts';

/** What can be said of a material as one thing. */
type Part = Exclude<keyof Material, 'serves' | 'long'>;

/** What is said of a material; undefined is said no more. */
export type MaterialSaying =
  | { id: string; set: { [Key in Part]?: Material[Key] | undefined } }
  /** Whether one need is taken of it, or how long its strip is. */
  | { id: string; need: string; serves: boolean | undefined }
  | { id: string; need: string; long: number | undefined }
  /** One of the maker's own. */
  | { id: string; add: Material }
  /** Nothing is said of it any more: one of the maker's own is gone. */
  | { id: string; forget: true };

/** Says something of a material: one change, of only what it names. */
export function sayMaterial(state: State, saying: MaterialSaying, now: number): Done {
  const { id } = saying;
  const there = at(state.record, ['materials', id]);
  if ('add' in saying && (there !== undefined || !isId(id))) {
    return refuse(state, { why: 'id taken' });
  }
  // What a newer build wrote there otherwise is not written over.
  if (there !== undefined && !isObject(there)) {
    return refuse(state, { why: 'not there', what: 'work' });
  }
  const edits = slotsOf(saying).map(([slot, said]) =>
    edit(state.record, ['materials', id, ...slot], said),
  );
  return settle(state, 'material', edits, { now });
}

function slotsOf(saying: MaterialSaying): [Slot, unknown][] {
  if ('set' in saying) return Object.entries(saying.set).map(([key, said]) => [[key], said]);
  if ('serves' in saying) return [[['serves', saying.need], saying.serves]];
  if ('long' in saying) return [[['long', saying.need], saying.long]];
  return [[[], 'add' in saying ? saying.add : undefined]];
}
