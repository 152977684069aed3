import { readHome } from '../record/home.ts';
import { LONGEST_NOTE, MOST_PHOTOS } from '../record/limits.ts';
import type { Note } from '../record/record.ts';
import { edit } from './slots.ts';
import { type Done, isThere, refuse, type State, settle } from './state.ts';

/** Keeps what the maker wants remembered at a step, or at a whole work; nothing takes it off. */
export function note(state: State, home: string, given: Note | undefined, now: number): Done {
  if (!isThere(state, ['works', readHome(home).id])) {
    return refuse(state, { why: 'not there', what: 'work' });
  }
  const text = given?.text?.trim() ?? '';
  if (text.length > LONGEST_NOTE) return refuse(state, { why: 'long note' });
  const photo = given?.photo;
  const others = [...state.answer.sound.notes].filter(([at, one]) => at !== home && one.photo);
  if (photo !== undefined && others.length >= MOST_PHOTOS) {
    return refuse(state, { why: 'many photos' });
  }
  const kept: Note = { ...(text && { text }), ...(photo !== undefined && { photo }) };
  const after = Object.keys(kept).length > 0 ? kept : undefined;
  return settle(state, 'note', [edit(state.record, ['notes', home], after)], { now });
}
