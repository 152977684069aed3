import type { MadeBefore } from '../record/record.ts';
import { takenUp } from './make.ts';
import { edit } from './slots.ts';
import { type Done, isThere, refuse, type State, settle } from './state.ts';

/** What is said to be made before the app knew: steps nothing of which is made. */
export interface Before {
  homes: readonly string[];
  /** The new fact's id; several get it with their numbers behind. */
  id: string;
  now: number;
}

/**
 * Says of steps, or of whole rows, that they were made before the app knew: one press. They count as
 * made and have no number of their own; whoever needs it takes the plan, as it is now.
 */
export function makeBefore(state: State, { homes, id, now }: Before): Done {
  const steps = new Map(state.answer.steps.map((step) => [step.home, step]));
  const wanted = [...new Set(homes)];
  for (const home of wanted) {
    const step = steps.get(home);
    if (!step) return refuse(state, { why: 'not there', what: 'step' });
    if (step.made > 0) return refuse(state, { why: step.made === step.of ? 'all made' : 'begun' });
  }
  const ids = wanted.map((_, i) => (wanted.length > 1 ? `${id}-${i + 1}` : id));
  if (ids.some((one) => isThere(state, ['facts', one]))) return refuse(state, { why: 'id taken' });
  const edits = wanted.flatMap((home, i) => {
    const fact: MadeBefore = { home, before: true, when: now };
    return [edit(state.record, ['facts', ids[i] ?? id], fact), takenUp(state, home)];
  });
  return settle(state, 'make before', edits, { now, press: true });
}

/** Passes a step over, or takes it up again. */
export function pass(state: State, home: string, over: boolean, now: number): Done {
  const step = state.answer.steps.find((one) => one.home === home);
  if (over && !step) return refuse(state, { why: 'not there', what: 'step' });
  if (over && step?.made === step?.of) return refuse(state, { why: 'all made' });
  const edits = [edit(state.record, ['passed', home], over ? true : undefined)];
  return settle(state, 'pass', edits, { now });
}
