import { readHome } from '../record/home.ts';
import { askedKey } from '../work-out/node.ts';
import { at, type Slot } from './slots.ts';
import type { Change, State } from './state.ts';
import { undo } from './undo.ts';

/** The change that brought a conflict, and the garment as it would be without it. */
export interface Cause {
  change: Change;
  without: State;
}

/** How many of the newest changes are tried: each means to work the garment out once. */
const MOST_TRIED = 40;

/**
 * The newest change that, taken back alone, leaves no conflict at a home. That something was made
 * there is none: what is made isn't unmade by taking it back; nor is what was so before. Undefined
 * where none is known.
 */
export function causeOf(state: State, home: string): Cause | undefined {
  const behind = reach(state, home);
  const likely = since(state, home)
    .reverse()
    .filter((change) => touches(state, change, behind) && !makesAt(state, change, home));
  for (const change of likely.slice(0, MOST_TRIED)) {
    const { state: without, refused } = undo(state, change.id, {
      now: state.record.changed,
      sure: true,
    });
    const open = without.answer.conflicts.some((one) => one.home === home);
    if (!refused && !open) return { change, without };
  }
  return undefined;
}

/** The changes since the first was made of what is otherwise than asked: what was so then has not brought it. */
function since({ log, answer }: State, home: string): Change[] {
  const facts = answer.conflicts.find((one) => one.home === home)?.facts ?? [];
  const presses = facts.map((id) =>
    log.findIndex(({ edits }) => edits.some(({ slot }) => isFact(slot) && slot[1] === id)),
  );
  // The press that made one may be too long ago to be in the log.
  return log.slice(Math.min(...presses, log.length) + 1);
}

/** Quantities and works whose numbers are read by what is asked at a home, its own work among them. */
function reach({ answer }: State, home: string): Set<string> {
  const keys = new Set([home, askedKey(home)]);
  for (const key of keys) for (const source of answer.sources(key)) keys.add(source);
  return new Set([...keys].map((key) => readHome(key).id));
}

function touches(state: State, { edits }: Change, behind: ReadonlySet<string>): boolean {
  return edits.some(({ slot, before }) => behind.has(idOf(state, slot, before)));
}

/** The quantity or work that a place of the record belongs to. */
function idOf({ record }: State, slot: Slot, before: unknown): string {
  const [map, id = ''] = slot;
  if (map !== 'facts') return readHome(id).id;
  const fact = (at(record, slot.slice(0, 2)) ?? before) as { home?: unknown } | undefined;
  return readHome(String(fact?.home)).id;
}

/** Whether it brought a fact that is there. */
function makesAt(state: State, { edits }: Change, home: string): boolean {
  return edits.some(({ slot }) => {
    const fact = isFact(slot)
      ? (at(state.record, slot) as { home?: unknown } | undefined)
      : undefined;
    return fact?.home === home;
  });
}

/** Whether an edit is of a whole fact. */
function isFact(slot: Slot): boolean {
  return slot[0] === 'facts' && slot.length === 2;
}
