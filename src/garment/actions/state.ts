import { type Limit, overLimit, sizeOf } from '../record/limits.ts';
import type { Garment } from '../record/record.ts';
import type { Trouble } from '../work-out/result.ts';
import { same } from '../work-out/same.ts';
import type { Known } from '../work-out/seen-work.ts';
import { type Answer, workOut } from '../work-out/work-out.ts';
import { at, type Edit, edited, type Slot } from './slots.ts';

/** A settled change, or a press, as it can be taken back. */
export interface Change {
  id: number;
  what: string;
  edits: readonly Edit[];
  /** It made, measured or took back a fact. */
  press: boolean;
}

/** A garment in hand: its record, what it works out to, and what can be taken back. */
export interface State {
  record: Garment;
  known: Known;
  answer: Answer;
  /** The last changes and the last presses, oldest first. */
  log: readonly Change[];
  /** How many characters the record takes, near enough for its limit. */
  size: number;
}

/** A garment as it is written down: enough for what changes it and shows no number. */
export type Written = Pick<State, 'record' | 'log' | 'size'>;

/** Why something was not done; its sentence is in words. */
export type Refused =
  | { why: 'limit'; limit: Limit }
  | { why: 'circle'; path: readonly string[] }
  /** The key shows another number now. */
  | { why: 'stale'; shown?: number }
  | { why: 'waits'; home: string; trouble: Trouble }
  | {
      why:
        | 'undecided'
        | 'all made'
        | 'begun'
        | 'made before'
        | 'id taken'
        | 'a sum is not measured'
        | 'no tape';
    }
  | { why: 'long note' | 'many photos' }
  | { why: 'not there'; what: 'step' | 'mark' | 'fact' | 'work' | 'conflict' | 'way' | 'change' }
  /** What is to be taken back was changed again. */
  | { why: 'changed since'; slot: Slot }
  | { why: 'made again'; home: string }
  /** Something was made to what is to be taken back: so it would be otherwise than asked. */
  | { why: 'made to it'; change: number; homes: readonly string[] }
  /** What is to be taken off is taken by these fields. */
  | { why: 'taken'; by: readonly Slot[] }
  /** Something is made of it: it can be taken off instead. */
  | { why: 'has facts'; id: string };

export interface Done {
  state: State;
  refused?: Refused;
}

/** How many changes, and how many presses, can be taken back. */
const MOST_LOGGED = 100;

/** A garment taken in hand. What can be taken back of it is kept beside the record. */
export function begin(record: Garment, known: Known, log: readonly Change[] = []): State {
  return { ...written(record, log), known, answer: workOut(record, known) };
}

export function written(record: Garment, log: readonly Change[] = []): Written {
  return { record, log, size: sizeOf(record) };
}

/** The same garment once more of its calculations is known. */
export function withKnown(state: State, known: Known): State {
  return { ...state, known, answer: workOut(state.record, known, state.answer.memory) };
}

export function refuse(state: State, refused: Refused): Done {
  return { state, refused };
}

interface Settling {
  /** In ms since 1970. */
  now: number;
  press?: boolean;
  /** A circle it would close is refused. */
  byHand?: boolean;
  /** The change it takes back. */
  undoes?: number;
  /** What was let in when it was typed is never refused when it settles. */
  typed?: true;
  /** What it comes to, where that was worked out already. */
  ready?: Ready | undefined;
}

/** Edits made and worked out before they are settled. */
export interface Ready {
  record: Garment;
  answer: Answer;
}

/** Makes edits one change: worked out, within the limits, and to be taken back as one. */
export function settle(state: State, what: string, edits: readonly Edit[], given: Settling): Done {
  const next = put(state, what, edits, given);
  if ('why' in next) return refuse(state, next);
  if (next === state) return { state };
  const answer = given.ready?.answer ?? workOut(next.record, state.known, state.answer.memory);
  const path = given.byHand ? newCircle(answer, state.answer) : undefined;
  return path ? refuse(state, { why: 'circle', path }) : { state: { ...state, ...next, answer } };
}

/** Writes edits down as one change, within the limits: nothing is worked out. The same object where nothing changes. */
export function put(
  before: Written,
  what: string,
  edits: readonly Edit[],
  { now, press = false, undoes, typed, ready }: Settling,
): Written | Refused {
  // Typed and typed back is no change.
  const real = edits.filter((one) => !same(one.before, one.after));
  if (real.length === 0) return before;
  const counted = { changed: now, edits: before.record.edits + 1 };
  const record = { ...(ready?.record ?? edited(before.record, real)), ...counted };
  const size = before.size + real.reduce((sum, one) => sum + growth(one), 0);
  const limit = size > before.size && !typed ? overLimit(record, size) : undefined;
  if (limit) return { why: 'limit', limit };
  const change = { id: nextId(before.log, now), what, edits: real, press };
  return { record, size, log: logged(before.log, change, undoes) };
}

function growth({ slot, before, after }: Edit): number {
  const key = (slot.at(-1)?.length ?? 0) + 4;
  const [was, is] = [before, after].map((part) => (part === undefined ? 0 : sizeOf(part) + key));
  return (is ?? 0) - (was ?? 0);
}

/** A way round that wasn't there before. */
function newCircle(now: Answer, before: Answer): readonly string[] | undefined {
  for (const key of now.nodes.keys()) {
    const result = now.values.get(key);
    if (!result || result.ok || result.trouble.kind !== 'circle') continue;
    const was = before.values.get(key);
    if (was?.ok !== false || was.trouble.kind !== 'circle') return result.trouble.path;
  }
  return undefined;
}

/** By the time it is done: another tab's changes are not taken for it, though they come between. */
function nextId(log: readonly Change[], now: number): number {
  return log.reduce((most, { id }) => Math.max(most, id + 1), now);
}

/** Taking back a press leaves nothing to take back; taking back a change is itself one. */
function logged(log: readonly Change[], change: Change, undoes: number | undefined): Change[] {
  const kept = log.filter(({ id }) => id !== undoes);
  if (undoes !== undefined && change.press) return kept;
  const alike = kept.filter(({ press }) => press === change.press);
  const oldest = alike.length >= MOST_LOGGED ? alike[0] : undefined;
  return [...kept.filter((one) => one !== oldest), change];
}

/** The ids of all facts of a home. */
export function factIds({ answer }: State, home: string): string[] {
  return (answer.sound.facts.get(home) ?? []).map(({ id }) => id);
}

/** Whether something is at a place. */
export function isThere({ record }: State, slot: Slot): boolean {
  return at(record, slot) !== undefined;
}
