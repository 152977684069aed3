import { doubtIn } from '../../lengths/doubt-in.ts';
import { overLimit, sizeOf } from '../record/limits.ts';
import type { Garment, Parts } from '../record/record.ts';
import { isObject } from '../record/sound-values.ts';
import { fieldText } from '../work-out/field-text.ts';
import { same } from '../work-out/same.ts';
import { type Answer, workOut } from '../work-out/work-out.ts';
import { at, type Edit, edit, edited, type Slot } from './slots.ts';
import {
  type Done,
  isThere,
  put,
  type Ready,
  refuse,
  type State,
  settle,
  type Written,
} from './state.ts';

/** A field: of a quantity, or of a work, shared by its sides unless one is named. */
export type FieldPlace = { quantity: string } | { work: string; field: string; side?: string };

/** What is being typed. */
export interface Pending {
  place: FieldPlace;
  parts: Parts;
}

export function slotOf(place: FieldPlace): Slot {
  if ('quantity' in place) return ['quantities', place.quantity, 'parts'];
  const { work, field, side } = place;
  return side === undefined
    ? ['works', work, 'fields', field]
    : ['works', work, 'own', side, field];
}

/** Whether there is a work, or a quantity, for a field to be of. */
export function isPlaceThere(state: State, place: FieldPlace): boolean {
  return isThere(state, slotOf(place).slice(0, 2));
}

/** What a record says is being typed, where that can be read; a part of it may be anything, as in any field. */
export function pendingOf({ pending }: Garment): Pending | undefined {
  if (!isObject(pending) || !isObject(pending.place)) return undefined;
  if (!Array.isArray(pending.parts)) return undefined;
  const { quantity, work, field, side } = pending.place;
  const ofWork = typeof work === 'string' && typeof field === 'string';
  const named = side === undefined || typeof side === 'string';
  const isPlace = typeof quantity === 'string' || (ofWork && named);
  return isPlace ? (pending as unknown as Pending) : undefined;
}

/** Types into a field without settling. A link that would close a circle is refused, when it is taken. */
export function type(state: State, pending: Pending, now: number): Done {
  if (pending.parts.some((part) => 'link' in part)) {
    const edits = typedEdits(state, pending);
    const tried = settle(state, 'type', edits, { now, byHand: true });
    if (tried.refused) return { state, refused: tried.refused };
  }
  const limit = overLimit(state.record, state.size + sizeOf(pending.parts));
  if (limit === 'size') return refuse(state, { why: 'limit', limit });
  return { state: { ...state, record: { ...state.record, pending } } };
}

/** Settles what is being typed: one change, whatever was typed in between. Never refused for a circle. */
export function settleTyping(state: State, now: number): Done {
  if (state.record.pending === undefined) return { state };
  const { record, edits } = typedIn(state.record);
  const ready = readyOf(state);
  return settle({ ...state, record }, 'type', edits, { now, typed: true, ready });
}

/** The same of a garment of which nothing is shown. */
export function putTyping(before: Written, now: number): Written {
  if (before.record.pending === undefined) return before;
  const { record, edits } = typedIn(before.record);
  const next = put({ ...before, record }, 'type', edits, { now, typed: true });
  // What was let in when it was typed is never refused.
  return 'why' in next ? before : next;
}

/** A record without what is being typed, and what that brings to it; nothing where it has no place any more. */
function typedIn(typing: Garment) {
  const { pending: _, ...record } = typing;
  const read = pendingOf(typing);
  const isTyped = read && at(record, slotOf(read.place).slice(0, 2)) !== undefined;
  return { record, edits: isTyped ? typedEdits({ record }, read) : [] };
}

/** The garment as it would be with what is being typed: for before → after. */
export function previewOf(state: State): Answer {
  const { record, known, answer } = state;
  const pending = pendingOf(record);
  if (!pending) return answer;
  const there = readyOf(state);
  if (there) return there.answer;
  const { pending: _, ...typed } = edited(record, typedEdits({ record }, pending));
  const preview = workOut(typed, known, answer.memory);
  previews.set(pending, { record: typed, answer: preview, from: answer });
  return preview;
}

/** What was worked out of what is being typed: settling it comes to the very same. */
const previews = new WeakMap<Pending, Ready & { from: Answer }>();

/** The preview of what is being typed, where it was made, and of what this very garment comes to. */
function readyOf({ record, answer }: State): Ready | undefined {
  const pending = pendingOf(record);
  const ready = pending && previews.get(pending);
  return ready?.from === answer ? ready : undefined;
}

/** What is put into a field. How sure a reading was goes with the number that was read. */
export function typedEdits({ record }: Pick<State, 'record'>, { place, parts }: Pending): Edit[] {
  const typed = edit(record, slotOf(place), parts);
  if (!('quantity' in place) || same(typed.before, typed.after)) return [typed];
  return [typed, edit(record, ['quantities', place.quantity, 'plusMinus'], doubtOf(parts))];
}

/** How sure the one number is that was read: a sum has the doubts of its parts. */
function doubtOf(parts: Parts): number | undefined {
  const { text, how } = fieldText(parts);
  return parts.length === 1 ? doubtIn(text, how.unit, how.decimalMark) : undefined;
}
