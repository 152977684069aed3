import { readHome } from '../record/home.ts';
import type { Fact, MadeBefore } from '../record/record.ts';
import { isObject } from '../record/sound-values.ts';
import { same } from '../work-out/same.ts';
import { at, type Edit, inverse } from './slots.ts';
import { type Change, type Done, type Refused, refuse, type State, settle } from './state.ts';
import { hasFacts } from './works.ts';

/**
 * The last press of a garment, which is the one that is taken back. What is made of a work that is taken
 * off is kept with it: nobody sees it, and nobody means it.
 */
export function lastPress({ log, record }: State): Change | undefined {
  const isSeen = ({ slot: [, id = ''], before }: Edit) => {
    // What else a press writes has no home, and so is of no work.
    const { home = '' } = Object(at(record, ['facts', id]) ?? before) as Partial<Fact>;
    return !at(record, ['works', readHome(home).id, 'off']);
  };
  return [...log].reverse().find(({ press, edits }) => press && edits.every(isSeen));
}

/**
 * Takes one change back, all of it when it made several, and nothing made since. Where something was made to it, that is said first:
 * with the change taken back it would be otherwise than asked.
 * @param sure the maker has seen that, and wants it all the same
 */
export function undo(
  state: State,
  id: number,
  { now, sure = false }: { now: number; sure?: boolean },
): Done {
  const change = state.log.find((one) => one.id === id);
  if (!change) return refuse(state, { why: 'not there', what: 'change' });
  for (const one of change.edits) {
    const refused = refusedFor(state, one);
    if (refused) return refuse(state, refused);
  }
  const { press } = change;
  const edits = change.edits.filter((one) => !staysBegun(state, change, one));
  const done = settle(state, 'undo', inverse(edits), { now, press, undoes: id });
  const homes = sure || press ? [] : madeTo(state, done.state, id);
  return homes.length > 0 ? refuse(state, { why: 'made to it', change: id, homes }) : done;
}

/** Where what was made since a change would be otherwise than asked without it. */
function madeTo(state: State, without: State, id: number): string[] {
  const open = new Set(state.answer.conflicts.map(({ home }) => home));
  const since = new Set(
    state.log.flatMap((one) =>
      one.press && one.id > id ? one.edits.flatMap(({ slot }) => slot[1] ?? []) : [],
    ),
  );
  return without.answer.conflicts
    .filter(({ home, facts }) => !open.has(home) && facts.some((fact) => since.has(fact)))
    .map(({ home }) => home);
}

/** A row is begun as long as a fact of it stands that the change didn't make. */
function staysBegun(
  { answer }: State,
  { edits }: Change,
  { slot: [map, home = ''] }: Edit,
): boolean {
  if (map !== 'begun') return false;
  const own = new Set(edits.map(({ slot }) => slot[1]));
  return (answer.sound.facts.get(home) ?? []).some(({ id }) => !own.has(id));
}

function refusedFor(state: State, { slot, before, after }: Edit): Refused | undefined {
  if (!same(at(state.record, slot), after)) return { why: 'changed since', slot };
  const [map, id = ''] = slot;
  const adds = slot.length === 2 && (map === 'works' || map === 'quantities');
  if (adds && before === undefined && hasFacts(state, id)) return { why: 'has facts', id };
  const wasMade = map === 'facts' && after === undefined && isObject(before);
  return wasMade ? madeAgain(state, before as unknown as Fact | MadeBefore) : undefined;
}

/** A step that was made anew meanwhile: two facts would stand at one place. */
function madeAgain({ answer }: State, fact: Fact | MadeBefore): Refused | undefined {
  const { home } = fact;
  const { facts, before } = answer.sound;
  const mark = 'before' in fact ? undefined : fact.mark;
  const isThat = (other: Fact) => other.mark?.rank === mark?.rank && other.mark?.of === mark?.of;
  const again =
    before.has(home) ||
    (facts.get(home) ?? []).some((other) => 'before' in fact || isThat(other.fact));
  return again ? { why: 'made again', home } : undefined;
}
