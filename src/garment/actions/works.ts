import { isId, readHome } from '../record/home.ts';
import type { Quantity, Work } from '../record/record.ts';
import { isOf, takersIn, todays, turnedAt, turnParts } from './put.ts';
import { edit, type Slot } from './slots.ts';
import { type Done, isThere, refuse, type State, settle } from './state.ts';
import { type FieldPlace, slotOf } from './typing.ts';

/** Adds a work or a quantity under an id no other has. */
export function add(
  state: State,
  to: 'works' | 'quantities',
  id: string,
  it: Work | Quantity,
  now: number,
): Done {
  const taken = isThere(state, ['works', id]) || isThere(state, ['quantities', id]);
  if (taken || !isId(id)) return refuse(state, { why: 'id taken' });
  return settle(state, 'add', [edit(state.record, [to, id], it)], { now, byHand: true });
}

/** Puts today's numbers in the place of the links of a field. */
export function unlink(state: State, place: FieldPlace, now: number): Done {
  const side = 'work' in place ? (place.side ?? '') : '';
  const edits = turnedAt(state.record, slotOf(place), side, (part, at) =>
    'link' in part ? todays(state, part, at) : part,
  );
  return settle(state, 'unlink', edits, { now });
}

/** A side has no number of its own at a field any more: there it takes what all sides have. */
export function share(state: State, place: FieldPlace, now: number): Done {
  const own = 'work' in place && place.side !== undefined;
  if (!own) return refuse(state, { why: 'not there', what: 'work' });
  return settle(state, 'share', [edit(state.record, slotOf(place), undefined)], { now });
}

/** Takes a work off the garment; what hangs on it waits, or gets today's numbers. Its facts stay. */
export function takeOff(state: State, work: string, leave: 'wait' | 'number', now: number): Done {
  const known = state.answer.sound.works.get(work);
  if (!known || known.off) return refuse(state, { why: 'not there', what: 'work' });
  const off = edit(state.record, ['works', work, 'off'], true);
  const put =
    leave === 'number'
      ? turnParts(state, (part, side) =>
          'link' in part && isOf(part.link, work) ? todays(state, part, side) : part,
        )
      : [];
  return settle(state, 'take off', [off, ...put], { now });
}

/** Puts a work back, with the links that numbers stood for. */
export function putBack(state: State, work: string, now: number): Done {
  if (!state.answer.sound.works.get(work)?.off) {
    return refuse(state, { why: 'not there', what: 'work' });
  }
  const links = turnParts(state, (part) =>
    'was' in part && part.was && isOf(part.was, work) ? { link: part.was } : part,
  );
  return settle(
    state,
    'put back',
    [edit(state.record, ['works', work, 'off'], undefined), ...links],
    {
      now,
    },
  );
}

/** Whether something is made of a work or a quantity. */
export function hasFacts({ answer }: State, id: string): boolean {
  const { facts, before } = answer.sound;
  return [...facts.keys(), ...before.keys()].some((home) => readHome(home).id === id);
}

/** What is said of works or quantities; undefined is said no more. */
export interface Saying {
  of: 'works' | 'quantities';
  ids: readonly string[];
  set: {
    name?: string;
    final?: true | undefined;
    /** Of a quantity. */
    body?: true | undefined;
    /** Of a quantity: which measure of a body it is. */
    measure?: string | undefined;
    /** Of a work: how often it is done. */
    sides?: readonly string[] | undefined;
  };
}

/** Says something of works or quantities: one change. */
export function say(state: State, { of, ids, set }: Saying, now: number): Done {
  if (!ids.every((id) => isThere(state, [of, id]))) {
    return refuse(state, { why: 'not there', what: 'work' });
  }
  const edits = ids.flatMap((id) =>
    Object.entries(set).map(([key, said]) => edit(state.record, [of, id, key], said)),
  );
  return settle(state, 'say', edits, { now });
}

/** The fields of others that take something of a work. */
export function hangsOn(state: State, work: string): Slot[] {
  const takers = takersIn(state, (link) => isOf(link, work));
  return takers.filter(([map, id]) => !(map === 'works' && id === work));
}
