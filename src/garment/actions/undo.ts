import type { Fact } from '../record/record.ts';
import { isObject } from '../record/sound-values.ts';
import { same } from '../work-out/same.ts';
import { at, type Edit, inverse } from './slots.ts';
import { type Done, type Refused, refuse, type State, settle } from './state.ts';
import { hasFacts } from './works.ts';

/** Takes one change back, and nothing made since. */
export function undo(state: State, id: number, now: number): Done {
  const change = state.log.find((one) => one.id === id);
  if (!change) return refuse(state, { why: 'not there', what: 'change' });
  for (const one of change.edits) {
    const refused = refusedFor(state, one);
    if (refused) return refuse(state, refused);
  }
  return settle(state, 'undo', inverse(change.edits), { now, press: change.press, undoes: id });
}

/** Takes the last press back, all of it when it made several. */
export function backOne(state: State, now: number): Done {
  const last = [...state.log].reverse().find(({ press }) => press);
  return last ? undo(state, last.id, now) : refuse(state, { why: 'not there', what: 'change' });
}

function refusedFor(state: State, { slot, before, after }: Edit): Refused | undefined {
  if (!same(at(state.record, slot), after)) return { why: 'changed since', slot };
  const [map, id = ''] = slot;
  const adds = slot.length === 2 && (map === 'works' || map === 'quantities');
  if (adds && before === undefined && hasFacts(state, id)) return { why: 'has facts', id };
  const wasMade = map === 'facts' && slot.length === 2 && after === undefined && isObject(before);
  return wasMade ? madeAgain(state, before as unknown as Fact) : undefined;
}

/** A step that was made anew meanwhile: two facts would stand at one place. */
function madeAgain({ answer }: State, { home, mark }: Fact): Refused | undefined {
  const again = (answer.sound.facts.get(home) ?? []).some(
    ({ fact }) => fact.mark?.rank === mark?.rank && fact.mark?.of === mark?.of,
  );
  return again ? { why: 'made again', home } : undefined;
}
