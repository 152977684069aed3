import type { Work } from '../record/record.ts';
import { edit } from './slots.ts';
import { type Done, isThere, refuse, type State, settle } from './state.ts';

/** Another place among all works, or quantities. */
export interface Ranking {
  of: 'works' | 'quantities';
  id: string;
  rank: number;
  /** Of others that make room for it: only where there was none between two. */
  room?: Readonly<Record<string, number>> | undefined;
}

/** Gives a work, or a quantity, another rank: one change, of its own rank alone wherever that will do. */
export function rank(state: State, { of, id, rank: to, room = {} }: Ranking, now: number): Done {
  const all = Object.entries({ ...room, [id]: to });
  if (!all.every(([one]) => isThere(state, [of, one]))) {
    return refuse(state, { why: 'not there', what: 'work' });
  }
  const edits = all.map(([one, place]) => edit(state.record, [of, one, 'rank'], place));
  return settle(state, 'rank', edits, { now });
}

/**
 * The rank that brings a work one place earlier, or later, among those that are on the garment.
 * Undefined where it is the first, or the last.
 */
export function moved(state: State, id: string, by: -1 | 1): Ranking | undefined {
  const works = [...state.answer.sound.works].filter(([, { off }]) => !off);
  const at = works.findIndex(([one]) => one === id);
  const past = works[at + by];
  if (at < 0 || !past) return undefined;
  const [, near] = past;
  const far = works[at + 2 * by]?.[1].rank ?? near.rank + by;
  const between = (near.rank + far) / 2;
  const fits = between !== near.rank && between !== far;
  return { of: 'works', id, ...(fits ? { rank: between } : renumbered(works, at, by)) };
}

/** Where two have the same rank, as after a merge, or there is no number between them: all anew. */
function renumbered(works: readonly [string, Work][], at: number, by: -1 | 1) {
  const order = works.map(([id]) => id);
  const [own = ''] = order.splice(at, 1);
  order.splice(at + by, 0, own);
  const room = Object.fromEntries(order.map((one, i) => [one, i + 1]));
  return { rank: at + by + 1, room };
}
